package rainlap.water;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import rainlap.geom.Point;
import rainlap.stack.Stack;
import rainlap.wall.Changed;
import rainlap.wall.Elevation;
import rainlap.wall.Opening;
import rainlap.wall.Penetration;
import rainlap.wall.Piece;
import rainlap.wall.Stage;

/** The same wall mirrored, moved, written down in another order or driven harder: what the trace then says follows. */
class TraceMetamorphicTest {
    private static final int UPRIGHT = 120, SLOPED = 40;

    private static Stream<Walls> exact() {
        return Stream.concat(Walls.upright(UPRIGHT), Walls.shipped());
    }

    private static Stream<Walls> all() {
        return Stream.concat(exact(), Walls.sloped(SLOPED));
    }

    /**
     * On level and plumb edges exactly. Under sloped edges water is driven as far, but not to the same places, from left and from right: on random sloped walls
     * triangles of some millimetres beside steep edges differ, so nothing is claimed of them here.
     */
    @Test void aMirroredWallIsWetWhereItsImageIs() {
        Walls.all(exact(), (e, w) -> Wetted.difference(w.wetted(e).changed(Changed::mirrored, (p, s) -> Changed.mirrored(p, s, e)),
                w.wetted(Changed.mirrored(e)), w.tolerance()));
    }

    /** As far as 5 km, to the right and down. */
    @Test void aWallMovedByWholeMetresIsWetAsBefore() {
        long by = 500_000_000;
        Walls.all(all(), (e, w) -> Wetted.difference(w.wetted(e).changed(s -> s, (p, s) -> s.isWall() ? new Point(p.x() + by, p.y() - by) : p),
                w.wetted(Changed.moved(e, by, -by)), w.tolerance()));
    }

    @Test void theOrderOfTheFileSaysNothingButWhatLiesOutsideWhat() {
        Walls.all(all(), (e, w) -> Wetted.difference(w.wetted(e), w.wetted(shuffled(e, w.stage(), w.random())), w.tolerance()));
    }

    /** Openings and penetrations in any order; pieces that lie on each other nowhere, and are not tucked under each other, too. */
    private static Elevation shuffled(Elevation e, Stage stage, Random random) {
        List<Piece> pieces = new ArrayList<>(e.pieces());
        Stack stack = Stack.of(e, stage);
        for (int k = 0; k < 20 * pieces.size() && pieces.size() > 1; k++) {
            int i = random.nextInt(pieces.size() - 1);
            Piece a = pieces.get(i), b = pieces.get(i + 1);
            if (!overlap(stack, a, b) && !a.under().contains(b.id()) && !b.under().contains(a.id())) {
                Collections.swap(pieces, i, i + 1);
            }
        }
        List<Penetration> pipes = new ArrayList<>(e.penetrations());
        Collections.reverse(pipes);
        List<Opening> openings = new ArrayList<>(e.openings());
        Collections.reverse(openings);
        return new Elevation(e.name(), e.practice(), e.exposure(), e.outline(), openings, pipes, e.materials(), pieces, List.of());
    }

    private static boolean overlap(Stack stack, Piece a, Piece b) {
        return stack.surfaces().stream().anyMatch(s -> stack.on(s).stream().filter(f -> f.piece().id().equals(a.id())).anyMatch(
                f -> stack.on(s).stream().anyMatch(g -> g.piece().id().equals(b.id()) && f.region().overlaps(g.region()))));
    }

    /** On sloped random walls triangles of a few millimetres beside steep edges fall dry under a longer drive, so nothing is claimed of them here. */
    @Test void aLongerDriveNeverRaisesDefences() {
        Walls.all(exact(), (e, w) -> {
            Random random = w.random();
            Drive d = w.drive();
            long up = random.nextInt(4000), aside = random.nextInt(12_000);
            Wetted now = w.wetted(e);
            StringBuilder wrong = new StringBuilder();
            for (long[] more : new long[][] {{up, 0}, {0, aside}, {up, aside}}) {
                Drive longer = new Drive(d.rise() + more[0], d.creep() + more[1], d.shelteredRise() + more[0], d.pressurePa(), List.of());
                wrong.append(Wetted.told("with " + more[0] + " more rise, " + more[1] + " more creep no longer ",
                        now.beyond(Wetted.of(e, w.stage(), longer), w.tolerance())));
            }
            return wrong.toString();
        });
    }
}
