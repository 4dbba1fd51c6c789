package rainlap.water;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.function.BiFunction;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import rainlap.file.ElevationFile;
import rainlap.joint.RandomWall;
import rainlap.practice.Practices;
import rainlap.wall.Elevation;
import rainlap.wall.Piece;
import rainlap.wall.Stage;

/** Walls to hold a property of the trace against: random ones from a seed, and those that ship. */
record Walls(String name, long seed, Elevation wall, Stage stage, Drive drive, boolean isUpright) {

    /** What a property has against a wall; empty if it holds. */
    interface Property extends BiFunction<Elevation, Walls, String> {}

    static Stream<Walls> upright(int count) {
        return LongStream.range(0, count).mapToObj(s -> new Walls("RandomWall.upright(" + s + ")", s, RandomWall.upright(s).elevation(), Stage.WRAP,
                drive(s), true));
    }

    static Stream<Walls> sloped(int count) {
        return LongStream.range(0, count).mapToObj(s -> new Walls("RandomWall.of(" + s + ")", s, RandomWall.of(s).elevation(), Stage.WRAP,
                drive(s), false));
    }

    /** At both stages, each with what drives there. */
    static Stream<Walls> shipped() {
        try (Stream<Path> files = Files.list(Path.of("elevations"))) {
            return files.filter(f -> f.toString().endsWith(".json")).sorted().toList().stream().flatMap(f -> {
                Elevation e = ElevationFile.read(f).elevation().orElseThrow();
                return Stream.of(Stage.values()).map(s -> new Walls(f.getFileName() + " at the " + s.word() + " stage", f.getFileName().hashCode(), e, s,
                        Drive.of(e.exposure(), Practices.find(e.practice().orElseThrow()).orElseThrow(), s), false));
            });
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Drive drive(long seed) {
        Random r = random(seed);
        return drive(r.nextInt(5) == 0 ? 0 : 500 + r.nextInt(5000), r.nextInt(5) == 0 ? 0 : 2000 + r.nextInt(16_000));
    }

    static Drive drive(long rise, long creep) {
        return new Drive(rise, creep, rise, OptionalDouble.empty(), List.of());
    }

    private static Random random(long seed) {
        return new Random(seed * 0x9E3779B97F4A7C15L + 1);
    }

    /** For what is chosen at random on this wall. */
    Random random() {
        return random(seed);
    }

    /** By how many grid units the wet frame may differ: sloped edges, and what is driven from them, are rounded. */
    long tolerance() {
        return isUpright ? 0 : 2;
    }

    Wetted wetted(Elevation e) {
        return Wetted.of(e, stage, drive);
    }

    /** Holds a property against walls, and tells for those it fails on what is wrong with how few pieces. */
    static void all(Stream<Walls> walls, Property property) {
        List<Walls> wrong = walls.toList().parallelStream().filter(w -> !w.wrong(property, w.wall).isEmpty()).toList();
        assertTrue(wrong.isEmpty(), () -> wrong.size() + " walls fail: " + wrong.stream().map(Walls::name).toList() + "\n"
                + wrong.stream().limit(3).map(w -> w.told(property)).collect(Collectors.joining("\n")));
    }

    private String told(Property property) {
        Elevation least = least(e -> !wrong(property, e).isEmpty());
        return name + ", rise " + drive.rise() + ", creep " + drive.creep() + " units: " + wrong(property, least) + TraceAgainstGrid.asDrawn(least);
    }

    /** A trace that throws is wrong too, and its wall is told. */
    private String wrong(Property property, Elevation e) {
        try {
            return property.apply(e, this);
        } catch (RuntimeException thrown) {
            return thrown + "\n";
        }
    }

    /** Takes piece after piece away while it still fails. */
    private Elevation least(Predicate<Elevation> fails) {
        Elevation now = wall;
        for (boolean shorter = true; shorter;) {
            shorter = false;
            for (int i = now.pieces().size() - 1; i >= 0; i--) {
                Elevation next = now.withPieces(without(now.pieces(), i));
                if (!next.pieces().isEmpty() && fails.test(next)) {
                    now = next;
                    shorter = true;
                }
            }
        }
        return now;
    }

    static List<Piece> without(List<Piece> pieces, int number) {
        String gone = pieces.get(number).id();
        return new ArrayList<>(IntStream.range(0, pieces.size()).filter(i -> i != number).mapToObj(pieces::get).map(p -> new Piece(p.id(), p.material(),
                p.shapes(), p.under().stream().filter(u -> !u.equals(gone)).toList(), p.bond(), p.cuts())).toList());
    }
}
