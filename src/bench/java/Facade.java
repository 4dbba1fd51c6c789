import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalLong;
import java.util.Random;
import java.util.function.Function;
import rainlap.geom.Box;
import rainlap.geom.Region;
import rainlap.material.Catalogue;
import rainlap.wall.EdgeRole;
import rainlap.wall.Elevation;
import rainlap.wall.Exposure;
import rainlap.wall.Opening;
import rainlap.wall.Outline;
import rainlap.wall.OutlineEdge;
import rainlap.wall.Piece;

/** A made-up facade of carefully laid bays, one in twenty of them with a fault; about three times as wide as high. */
final class Facade {
    private static final int A_BAY = 30;
    private static final Exposure WIND = new Exposure(OptionalDouble.of(26), OptionalDouble.empty(), Optional.empty(), OptionalDouble.empty(), OptionalDouble.empty(),
            Optional.empty(), Optional.empty(), OptionalDouble.empty(), Optional.empty());

    private final Random random = new Random(1);
    private final boolean isShuffled;
    private final double jitter;
    private final List<Piece> pieces = new ArrayList<>();
    private final List<Opening> openings = new ArrayList<>();

    private Facade(String kind) {
        this.jitter = kind.equals("jittered") ? 0.3 : 0;
        this.isShuffled = kind.equals("shuffled");
    }

    /** @param kind aligned, jittered (every corner by up to 0.3 mm) or shuffled (all but sheets at random within what must come before and after) */
    static Elevation of(int pieces, String kind) {
        Facade f = new Facade(kind);
        int bays = Math.max(1, pieces / A_BAY), across = (int) Math.ceil(Math.sqrt(bays * 3.0)), storeys = Math.max(1, Math.round(bays / (float) across));
        List<Bay> all = new ArrayList<>();
        for (int s = 0; s < storeys; s++) {
            List<Bay> storey = f.bays(s, across);
            all.addAll(storey);
            f.lay(storey, s);
        }
        f.loose(all, Bay::cladding);
        Region wall = Region.of(Box.ofMm(0, 0, across * 3000.0, storeys * 3000.0));
        List<OutlineEdge> edges = wall.edges().stream().map(s -> new OutlineEdge(s, EdgeRole.FREE, Optional.empty())).toList();
        return new Elevation("facade", Optional.empty(), WIND, new Outline(wall, edges, OptionalLong.empty()), f.openings,
                List.of(), Catalogue.builtIn(), f.pieces, List.of());
    }

    private List<Bay> bays(int storey, int across) {
        Bay.Fault[] faults = Bay.Fault.values();
        List<Bay> out = new ArrayList<>();
        for (int i = 0; i < across; i++) {
            Bay.Fault fault = random.nextInt(20) > 0 ? Bay.Fault.NONE : faults[1 + random.nextInt(faults.length - 1)];
            out.add(new Bay("s" + storey + "b" + i, i * 3000.0, storey * 3000.0, fault, random, jitter));
        }
        out.forEach(b -> openings.add(b.opening()));
        return out;
    }

    private void lay(List<Bay> bays, int storey) {
        for (int course = storey == 0 ? -1 : 0; course < 3; course++) {
            for (int i = 0; i < bays.size(); i++) {
                pieces.addAll(bays.get(i).sheet(course, Math.floorMod(storey + course, 2) == 0, i == 0, i == bays.size() - 1));
            }
            int c = course;
            if (course == 1) {
                pieces.addAll(Bay.atLeftEnd("s" + storey, storey * 3000.0, random, jitter));
            }
            loose(bays, b -> b.tape(c));
            if (course == 1) {
                loose(bays, Bay::window);
            }
        }
    }

    private void loose(List<Bay> bays, Function<Bay, List<Piece>> part) {
        List<Bay> order = new ArrayList<>(bays);
        if (isShuffled) {
            Collections.shuffle(order, random);
        }
        order.forEach(b -> pieces.addAll(part.apply(b)));
    }
}
