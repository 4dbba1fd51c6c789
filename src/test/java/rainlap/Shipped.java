package rainlap;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Stream;
import rainlap.building.Building;
import rainlap.check.BuildingChecker;
import rainlap.check.CheckResult;
import rainlap.check.Checker;
import rainlap.check.Rules;
import rainlap.file.BuildingFile;
import rainlap.file.ElevationFile;
import rainlap.file.Reading;
import rainlap.practice.Practices;
import rainlap.rule.RuleInfo;
import rainlap.wall.Elevation;
import rainlap.wall.Stage;

/**
 * The elevations in {@code elevations/}, read and checked at the stage they are drawn for: finished where they expect
 * something of the cavity or the face, else at the hold point.
 */
public record Shipped(String file, Elevation wall, CheckResult result) {

    /** Each is checked once for all tests. */
    private static final Map<String, CheckResult> CHECKED = new ConcurrentHashMap<>();
    private static List<Shipped> inBuildings;

    public static List<Shipped> all() {
        try (Stream<Path> files = Files.list(Path.of("elevations"))) {
            return files.filter(f -> f.toString().endsWith(".json")).sorted().map(Shipped::read).toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The walls of the buildings in {@code elevations/buildings/} as the buildings' checks give them, wrapped. */
    public static synchronized List<Shipped> inBuildings() {
        inBuildings = inBuildings == null ? readBuildings() : inBuildings;
        return inBuildings;
    }

    private static List<Shipped> readBuildings() {
        try (Stream<Path> files = Files.list(Path.of("elevations/buildings"))) {
            return files.sorted().flatMap(f -> {
                String name = f.getFileName().toString().replace(".json", "");
                Building b = BuildingFile.read(f).building().orElseThrow();
                return BuildingChecker.check(b, Stage.WRAP, e -> Practices.find(e.practice().orElseThrow()).orElseThrow(), Rules.all(), 1).walls().stream()
                        .map(w -> new Shipped(name + ": " + w.wall().id(), w.wall().elevation(), w.result()));
            }).toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The files of all shipped walls, of what the rules' pages show as wrong, and of walls on which that has few defences. */
    public static List<Path> withWrongWalls() {
        try (Stream<Path> shipped = Files.list(Path.of("elevations")); Stream<Path> few = Files.list(Path.of("src/test/resources/few-defences"));
                Stream<Path> examples = Files.walk(Path.of("src/main/resources/rules"))) {
            return Stream.concat(Stream.concat(shipped, few).filter(f -> f.toString().endsWith(".json")),
                    examples.filter(f -> f.getFileName().toString().startsWith("bad-"))).sorted().toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Shipped read(Path path) {
        Reading reading = ElevationFile.read(path);
        Elevation wall = reading.elevation().orElseThrow(() -> new AssertionError(reading.problems().toString()));
        return new Shipped(path.getFileName().toString().replace(".json", ""), wall, checked(path, wall, stage(wall)));
    }

    /** A file's wall at a stage under its own practice, or the common one. */
    public static CheckResult checked(Path path, Elevation wall, Stage stage) {
        return CHECKED.computeIfAbsent(path.normalize() + " " + stage, k -> Checker.check(wall, stage, Practices.find(wall.practice().orElse("common")).orElseThrow()));
    }

    static Stage stage(Elevation wall) {
        return wall.expected().stream().map(x -> Rules.find(x.rule()).orElseThrow().info().theme())
                .anyMatch(t -> t == RuleInfo.Theme.CAVITY || t == RuleInfo.Theme.FACE) ? Stage.FINISHED : Stage.WRAP;
    }

    static CheckResult check(Elevation wall) {
        return check(wall, stage(wall));
    }

    static CheckResult check(Elevation wall, Stage stage) {
        return Checker.check(wall, stage, Practices.find(wall.practice().orElseThrow()).orElseThrow());
    }

    /** The same wall, alone, checked at another stage. */
    public Shipped at(Stage stage) {
        return new Shipped(file, wall, checked(Path.of("elevations", file + ".json"), wall, stage));
    }

    /** Whether anything of the cavity or the face is drawn, so that the stages differ. */
    boolean hasTwoStages() {
        return Stage.drawn(wall) == Stage.FINISHED;
    }

    boolean isSound() {
        return wall.expected().isEmpty();
    }

    @Override
    public String toString() {
        return file;
    }
}
