package rainlap.rule;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import rainlap.geom.Box;
import rainlap.geom.BoxTree;
import rainlap.geom.Intervals;
import rainlap.geom.Overlay;
import rainlap.geom.Region;
import rainlap.material.MaterialKind;
import rainlap.stack.Face;
import rainlap.wall.Piece;
import rainlap.wall.Shape;
import rainlap.wall.Surface;

/** The cladding of the finished wall and what lies near it. */
public final class Cladding {
    private Cladding() {}

    /** What to answer where there is none, as at the wrap stage. */
    public static Outcome none() {
        return new Outcome.DoesNotApply("no cladding is drawn at this stage");
    }

    public static boolean is(Face f) {
        return isOf(f, MaterialKind.CLADDING);
    }

    public static boolean isOf(Face f, MaterialKind kind) {
        return f.kind() == kind;
    }

    /** The sheets on the wall, in laying order. */
    public static List<Face> sheets(Evidence e) {
        return e.onWall(MaterialKind.CLADDING);
    }

    /** The faces of a kind on the wall that share an area with a face and lie inside it, nearer the frame, in laying order. */
    public static List<Face> behind(Evidence e, Face f, MaterialKind kind) {
        return e.stack().meeting(Surface.WALL, f.box()).stream()
                .filter(g -> isOf(g, kind) && e.stack().isOutside(f, g) && g.region().overlaps(f.region())).toList();
    }

    /** Whether a face lies on a batten, and so off the wrap; told at the wrap stage too, when battens are not looked at. */
    public static boolean isOnBatten(Evidence e, Face f) {
        return f.surface().isWall() && e.shared().of(Battens.class, () -> Battens.of(e)).areBeneath(e, f);
    }

    /** The battens on the wall, by their numbers in laying order. */
    private record Battens(List<Integer> numbers, List<Region> regions, BoxTree tree) {
        static Battens of(Evidence e) {
            List<Integer> numbers = new ArrayList<>();
            List<Region> regions = new ArrayList<>();
            List<Piece> pieces = e.elevation().pieces();
            for (int i = 0; i < pieces.size(); i++) {
                for (Shape s : pieces.get(i).material().kind() == MaterialKind.BATTEN ? pieces.get(i).shapes() : List.<Shape>of()) {
                    regions.addAll(s.on().isWall() ? s.regions() : List.of());
                    numbers.addAll(Collections.nCopies(regions.size() - numbers.size(), i));
                }
            }
            return new Battens(numbers, regions, new BoxTree(regions.stream().map(Region::box).toList()));
        }

        boolean areBeneath(Evidence e, Face f) {
            return Arrays.stream(tree.meeting(f.box())).anyMatch(i -> regions.get(i).overlaps(f.region()) && e.stack().order().isOutside(f.number(), numbers.get(i)));
        }
    }

    /** Where along x a face lies within a box. */
    public static Intervals across(Face f, Box within) {
        if (!f.box().overlaps(within)) {
            return Intervals.NONE;
        }
        List<Intervals> out = new ArrayList<>();
        List<Region> parts = f.region().isBox() ? List.of(f.region()) : Overlay.intersection(List.of(f.region()), List.of(Region.of(within)));
        parts.forEach(r -> out.add(Intervals.of(Math.max(r.box().minX(), within.minX()), Math.min(r.box().maxX(), within.maxX()))));
        return Intervals.unionOf(out);
    }
}
