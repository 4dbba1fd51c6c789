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
    private static final int UPRIGHT = 1700, DUCTS = 250, RETURNS = 300, SLOPED = 350;
    /** Further than the drives of the other walls, so that more of it comes to an end of a sill. */
    private static final long FAR = 30000;
    /** A lattice of every corner and drive is exact where all is upright: lines between them would only cost time. Sloped edges get their stairs. */
    private static final double COARSE = 1000;
    private static final String FURTHEST = "jp-manual";
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
        return upright(seed, stack, CREEP);
    }

    private static String upright(long seed, Stack stack, long creep) {
        TraceAgainstGrid against = new TraceAgainstGrid(stack, RISE, creep, COARSE);
        return told(against, seed, stack.stage(), against.with(new TraceLookup(stack, new Drive(RISE, creep, RISE, OptionalDouble.empty(), List.of()))));
    }

    @Test void uprightWallsWithDuctsAgreeInEveryCell() {
        none(LongStream.range(0, DUCTS).boxed().toList().parallelStream().map(seed -> upright(seed, RandomDucts.in(RandomWall.upright(seed), seed))));
    }

    @Test void uprightWallsWithPiecesTurnedUpTheJambsAgreeInEveryCell() {
        none(LongStream.range(0, 6L * RETURNS).filter(seed -> !RandomWall.upright(seed).elevation().openings().isEmpty())
                .filter(seed -> TraceAgainstGrid.isUpright(RandomWall.upright(seed).stack())).limit(RETURNS).boxed().toList().parallelStream()
                .map(seed -> upright(seed, RandomReturns.in(RandomWall.upright(seed), seed), seed % 2 == 0 ? CREEP : FAR)));
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
            none(all.parallelStream().flatMap(f -> Stream.of(Stage.values()).flatMap(stage -> shipped(f, stage))));
        }
    }

    /** Under the practice it names, and where that is another distance, pushed as far as any practice has it. */
    private static Stream<String> shipped(Path file, Stage stage) {
        Elevation e = ElevationFile.read(file).elevation().orElseThrow();
        return Stream.of(e.practice().orElseThrow(), FURTHEST).map(p -> Drive.of(e.exposure(), Practices.find(p).orElseThrow(), stage))
                .collect(Collectors.toMap(d -> List.of(d.rise(), d.creep()), d -> d, (one, same) -> one)).values().stream()
                .map(d -> shipped(file, Stack.of(e, stage), d));
    }

    private static String shipped(Path file, Stack stack, Drive drive) {
        assertEquals(drive.rise(), drive.shelteredRise(), "the grid knows one rise only");
        TraceAgainstGrid against = new TraceAgainstGrid(stack, drive.rise(), drive.creep(), FINE);
        List<TraceAgainstGrid.Disagreement> all = against.lasting(drive.rise(), drive.creep(), FINE, new TraceLookup(stack, drive));
        return all.isEmpty() ? "" : file.getFileName() + ", creep " + drive.creep() + ", " + told(against, 0, stack.stage(), all);
    }

    private static String told(TraceAgainstGrid against, long seed, Stage stage, List<TraceAgainstGrid.Disagreement> all) {
        return all.isEmpty() ? "" : stage.word() + " stage, " + against.report(seed, all);
    }

    private static void none(Stream<String> told) {
        List<String> wrong = told.filter(s -> !s.isEmpty()).toList();
        assertTrue(wrong.isEmpty(), () -> wrong.size() + " walls differ\n" + wrong.stream().limit(5).collect(Collectors.joining("\n")));
    }
}
