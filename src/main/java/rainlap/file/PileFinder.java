package rainlap.file;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import rainlap.geom.Box;
import rainlap.geom.BoxTree;
import rainlap.geom.Region;
import rainlap.wall.Piece;
import rainlap.wall.Shape;
import rainlap.wall.Surface;

/** Refuses more pieces on one spot than {@link Limits#layers}. Looks at the middle of every piece. */
final class PileFinder {
    private final List<Region> regions = new ArrayList<>();
    private final List<String> owners = new ArrayList<>();

    static void refusePiles(List<Piece> pieces, Ids<Piece> ids, Problems problems) {
        if (pieces.size() <= problems.limits().layers()) {
            return;
        }
        Map<Surface, PileFinder> surfaces = new TreeMap<>();
        for (Piece p : pieces) {
            for (Shape s : p.shapes()) {
                surfaces.computeIfAbsent(s.on(), k -> new PileFinder()).add(p.id(), s.regions());
            }
        }
        for (PileFinder f : surfaces.values()) {
            if (f.refusePile(ids, problems)) {
                return;
            }
        }
    }

    private void add(String owner, List<Region> shape) {
        for (Region r : shape) {
            regions.add(r);
            owners.add(owner);
        }
    }

    private boolean refusePile(Ids<Piece> ids, Problems problems) {
        int most = problems.limits().layers();
        BoxTree tree = new BoxTree(regions.stream().map(Region::box).toList());
        for (int i = 0; i < regions.size(); i++) {
            Box b = regions.get(i).box();
            long x = (b.minX() + b.maxX()) / 2, y = (b.minY() + b.maxY()) / 2;
            int[] count = {0};
            tree.query(new Box(x, y, x, y), j -> count[0] += regions.get(j).covers(x, y) ? 1 : 0);
            if (count[0] > most) {
                problems.add(ids.places().get(owners.get(i)), "more than " + most + " pieces lie on one spot, here in the middle of "
                        + Quoted.text(owners.get(i)), "a wall has a few layers; look for pieces that were written again and again");
                return true;
            }
        }
        return false;
    }
}
