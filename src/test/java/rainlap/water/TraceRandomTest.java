package rainlap.water;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import rainlap.file.ElevationFile;
import rainlap.joint.RandomWall;
import rainlap.practice.Practices;
import rainlap.stack.Stack;
import rainlap.wall.Elevation;
import rainlap.wall.Stage;

/** The trace against the grid simulation: on walls that nobody drew, and on every shipped one. */
class TraceRandomTest {
    private static final long RISE = 2500, CREEP = 15000;
    private static final Drive DRIVE = new Drive(RISE, CREEP, RISE, OptionalDouble.empty(), List.of());
    private static final int UPRIGHT = 1700, DUCTS = 250, SLOPED = 350;
    /** A lattice of every corner and drive is exact where all is upright: lines between them would only cost time. Sloped edges get their stairs. */
    private static final double COARSE = 1000;
    /** Where an edge is sloped the raster decides; what differs is looked at again, finer. */
    private static final double FINE = 100;

    @Test void uprightWallsAgreeInEveryCell() {
        none(LongStream.range(0, 4L * UPRIGHT).filter(seed -> TraceAgainstGrid.isUpright(RandomWall.upright(seed).stack()))
                .limit(UPRIGHT).boxed().toList().parallelStream().map(TraceRandomTest::upright));
    }

    private static String upright(long seed) {
        return upright(seed, RandomWall.upright(seed).stack());
    }

    private static String upright(long seed, Stack stack) {
        TraceAgainstGrid against = new TraceAgainstGrid(stack, RISE, CREEP, COARSE);
        return told(against, seed, stack.stage(), against.with(new TraceLookup(stack, DRIVE)));
    }

    @Test void uprightWallsWithDuctsAgreeInEveryCell() {
        none(LongStream.range(0, DUCTS).boxed().toList().parallelStream().map(seed -> upright(seed, RandomDucts.in(RandomWall.upright(seed), seed))));
    }

    @Test void slopedWallsAgreeToWithinAStair() {
        none(LongStream.range(0, SLOPED).boxed().toList().parallelStream().map(TraceRandomTest::sloped));
    }

    private static String sloped(long seed) {
        Stack stack = RandomWall.of(seed).stack();
        TraceAgainstGrid against = new TraceAgainstGrid(stack, RISE, CREEP, COARSE);
        return told(against, seed, stack.stage(), against.lasting(RISE, CREEP, COARSE, new TraceLookup(stack, DRIVE)));
    }

    @Test void shippedWallsAgree() throws IOException {
        try (Stream<Path> files = Files.list(Path.of("elevations"))) {
            List<Path> all = files.filter(f -> f.toString().endsWith(".json")).sorted().toList();
            assertTrue(all.size() >= 10, all::toString);
            none(all.stream().flatMap(f -> Stream.of(Stage.values()).map(stage -> shipped(f, stage))));
        }
    }

    private static String shipped(Path file, Stage stage) {
        Elevation e = ElevationFile.read(file).elevation().orElseThrow();
        Stack stack = Stack.of(e, stage);
        Drive drive = Drive.of(e.exposure(), Practices.find(e.practice().orElseThrow()).orElseThrow(), stage);
        assertEquals(drive.rise(), drive.shelteredRise(), "the grid knows one rise only");
        TraceAgainstGrid against = new TraceAgainstGrid(stack, drive.rise(), drive.creep(), FINE);
        List<TraceAgainstGrid.Disagreement> all = against.lasting(drive.rise(), drive.creep(), FINE, new TraceLookup(stack, drive));
        return all.isEmpty() ? "" : file.getFileName() + ", " + told(against, 0, stage, all);
    }

    private static String told(TraceAgainstGrid against, long seed, Stage stage, List<TraceAgainstGrid.Disagreement> all) {
        return all.isEmpty() ? "" : stage.word() + " stage, " + against.report(seed, all);
    }

    private static void none(Stream<String> told) {
        List<String> wrong = told.filter(s -> !s.isEmpty()).toList();
        assertTrue(wrong.isEmpty(), () -> wrong.size() + " walls differ\n" + wrong.stream().limit(5).collect(Collectors.joining("\n")));
    }
}
