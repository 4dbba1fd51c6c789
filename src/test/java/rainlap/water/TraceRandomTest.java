package rainlap.water;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import rainlap.joint.RandomWall;
import rainlap.stack.Stack;
import rainlap.wall.Stage;

/** The trace against the grid simulation on walls that nobody drew. */
class TraceRandomTest {
    private static final long RISE = 2500, CREEP = 15000;
    private static final Drive DRIVE = new Drive(RISE, CREEP, RISE, OptionalDouble.empty(), List.of());
    private static final int UPRIGHT = 1700;
    /** A lattice of every corner and drive is exact where all is upright: lines between them would only cost time. */
    private static final double COARSE = 1000;

    @Test void uprightWallsAgreeInEveryCell() {
        none(LongStream.range(0, 4L * UPRIGHT).filter(seed -> TraceAgainstGrid.isUpright(RandomWall.upright(seed).stack()))
                .limit(UPRIGHT).boxed().toList().parallelStream().map(TraceRandomTest::upright));
    }

    private static String upright(long seed) {
        Stack stack = RandomWall.upright(seed).stack();
        TraceAgainstGrid against = new TraceAgainstGrid(stack, RISE, CREEP, COARSE);
        return told(against, seed, stack.stage(), against.with(new TraceLookup(stack, DRIVE)));
    }

    private static String told(TraceAgainstGrid against, long seed, Stage stage, List<TraceAgainstGrid.Disagreement> all) {
        return all.isEmpty() ? "" : stage.word() + " stage, " + against.report(seed, all);
    }

    private static void none(Stream<String> told) {
        List<String> wrong = told.filter(s -> !s.isEmpty()).toList();
        assertTrue(wrong.isEmpty(), () -> wrong.size() + " walls differ\n" + wrong.stream().limit(5).collect(Collectors.joining("\n")));
    }
}
