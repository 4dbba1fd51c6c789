package rainlap;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import rainlap.check.CheckResult;
import rainlap.check.Checker;
import rainlap.file.ElevationFile;
import rainlap.file.Reading;
import rainlap.practice.Practices;
import rainlap.wall.Elevation;
import rainlap.wall.Stage;

/** The elevations in {@code elevations/}, read and checked. */
record Shipped(String file, Elevation wall, CheckResult result) {

    static List<Shipped> all() {
        try (Stream<Path> files = Files.list(Path.of("elevations"))) {
            return files.filter(f -> f.toString().endsWith(".json")).sorted().map(Shipped::read).toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Shipped read(Path path) {
        Reading reading = ElevationFile.read(path);
        Elevation wall = reading.elevation().orElseThrow(() -> new AssertionError(reading.problems().toString()));
        return new Shipped(path.getFileName().toString().replace(".json", ""), wall, check(wall));
    }

    static CheckResult check(Elevation wall) {
        return check(wall, Stage.WRAP);
    }

    static CheckResult check(Elevation wall, Stage stage) {
        return Checker.check(wall, stage, Practices.find(wall.practice().orElseThrow()).orElseThrow());
    }

    boolean isSound() {
        return wall.expected().isEmpty();
    }

    @Override
    public String toString() {
        return file;
    }
}
