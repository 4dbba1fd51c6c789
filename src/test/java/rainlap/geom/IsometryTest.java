package rainlap.geom;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.Random;
import java.util.function.UnaryOperator;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import rainlap.wall.Opening;
import rainlap.wall.Side;

/** Against the moves themselves, place by place, and against the area a region's edges go round, which tells on which side its interior lies. */
class IsometryTest {
    private static final Opening O = new Opening("W1", Opening.Kind.WINDOW, new Box(1_000, 2_000, 6_000, 9_000), 800, Optional.empty(), OptionalLong.empty(), OptionalLong.empty());

    @ParameterizedTest
    @EnumSource(Side.class)
    void aMoveKnownFromThreePlacesMovesEveryOther(Side side) {
        check(p -> O.toWall(side, p));
        check(p -> O.toSurface(side, p));
    }

    private static void check(UnaryOperator<Point> move) {
        Isometry it = Isometry.of(move);
        Random r = new Random(1);
        for (int i = 0; i < 50; i++) {
            long x = r.nextInt(20_000) - 10_000, y = r.nextInt(20_000) - 10_000;
            assertEquals(move.apply(new Point(x, y)), new Point(it.x(x, y), it.y(x, y)));
        }
        List<Segment> edges = Region.of(new Box(100, 200, 700, 400)).edges();
        assertEquals(around(edges), around(edges.stream().map(it::of).toList()), "interior on the left as before");
        assertEquals(new Box(100, 200, 700, 400), Isometry.of(back(it)).of(it.of(new Box(100, 200, 700, 400))));
    }

    /** Twice the area that edges go round, positive with the interior on the left. */
    private static long around(List<Segment> edges) {
        return edges.stream().mapToLong(s -> (long) s.ax() * s.by() - (long) s.bx() * s.ay()).sum();
    }

    private static UnaryOperator<Point> back(Isometry it) {
        return p -> {
            long x = p.x() - it.x0(), y = p.y() - it.y0();
            return new Point(it.xx() * x + it.yx() * y, it.xy() * x + it.yy() * y);
        };
    }
}
