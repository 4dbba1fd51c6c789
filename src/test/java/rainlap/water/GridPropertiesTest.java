package rainlap.water;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.function.LongFunction;
import java.util.function.UnaryOperator;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import rainlap.geom.Box;
import rainlap.geom.Point;
import rainlap.geom.Region;
import rainlap.geom.Ring;
import rainlap.joint.Drawn;
import rainlap.joint.RandomWall;
import rainlap.stack.Stack;
import rainlap.wall.EdgeRole;
import rainlap.wall.Elevation;
import rainlap.wall.Opening;
import rainlap.wall.Piece;
import rainlap.wall.Shape;
import rainlap.wall.Stage;
import rainlap.wall.Surface;

/** What holds of any wall, on upright random ones: mirrored, moved, with a longer drive. */
class GridPropertiesTest {
    private static final long RISE = 2500, CREEP = 15000, WIDE = 400_000;

    private static LongStream uprightSeeds() {
        return LongStream.range(0, 250).filter(seed -> TraceAgainstGrid.isUpright(RandomWall.upright(seed).stack()));
    }

    @Test void aMirroredWallIsMirrored() {
        long walls = uprightSeeds().peek(seed -> {
            Elevation e = RandomWall.upright(seed).elevation();
            sameAt(seed, e, changed(e, p -> WIDE - p, 0), p -> new Point(WIDE - p.x(), p.y()));
        }).count();
        assertTrue(walls > 10, "only " + walls + " walls were upright");
    }

    @Test void aWallMovedByWholeMetresIsTheSame() {
        uprightSeeds().limit(40).forEach(seed -> {
            Elevation e = RandomWall.upright(seed).elevation();
            sameAt(seed, e, changed(e, x -> x, 300_000), p -> new Point(p.x(), p.y() + 300_000));
        });
    }

    private static void sameAt(long seed, Elevation e, Elevation other, UnaryOperator<Point> map) {
        Stack s = Stack.of(e, Stage.WRAP);
        GridSimulation image = GridSimulation.of(Stack.of(other, Stage.WRAP), RISE, CREEP, 1000);
        GridSimulation same = GridSimulation.of(s, RISE, CREEP, 1000);
        TraceAgainstGrid against = new TraceAgainstGrid(s, RISE, CREEP, 1000);
        List<TraceAgainstGrid.Disagreement> all = against.with((surface, p) -> surface.isWall() ? image.defences(surface, map.apply(p)) : same.defences(surface, p));
        assertEquals(List.of(), all, () -> against.report(seed, all));
    }

    /** Wall pieces only, as random walls have them. */
    private static Elevation changed(Elevation e, LongFunction<Long> x, long up) {
        LongFunction<Long> y = v -> v + up;
        List<Piece> pieces = e.pieces().stream().map(p -> new Piece(p.id(), p.material(), p.shapes().stream()
                .map(s -> new Shape(Surface.WALL, s.regions().stream().map(r -> changed(r, x, y)).toList())).toList(), p.under(), p.bond(), p.cuts())).toList();
        List<Opening> openings = e.openings().stream().map(o -> new Opening(o.id(), o.kind(), changed(Region.of(o.rect()), x, y).box(), o.reveal(),
                o.noHeadFlashing(), o.eaveOverhang(), o.eaveAbove())).toList();
        Box b = changed(e.outline().region(), x, y).box();
        return new Elevation(e.name(), e.practice(), e.exposure(), Drawn.wall().outline(b.minX() / 100.0, b.minY() / 100.0,
                b.width() / 100.0, b.height() / 100.0, EdgeRole.FREE).elevation().outline(), openings, List.of(), e.materials(), pieces, List.of());
    }

    private static Region changed(Region r, LongFunction<Long> x, LongFunction<Long> y) {
        return new Region(Ring.of(r.shell().points().stream().map(p -> new Point(x.apply(p.x()), y.apply(p.y()))).toList()), List.of());
    }

    @Test void aLongerDriveNeverRaisesDefences() {
        uprightSeeds().forEach(seed -> {
            Stack s = RandomWall.upright(seed).stack();
            GridSimulation less = GridSimulation.of(s, RISE, CREEP, 1000), higher = GridSimulation.of(s, 2 * RISE, CREEP, 1000),
                    wider = GridSimulation.of(s, RISE, 2 * CREEP, 1000);
            for (GridSimulation.Cell c : less.cells()) {
                assertTrue(higher.defences(c.surface(), c.centre()) <= c.defences(), () -> "seed " + seed + " " + c);
                assertTrue(wider.defences(c.surface(), c.centre()) <= c.defences(), () -> "seed " + seed + " " + c);
            }
        });
    }
}
