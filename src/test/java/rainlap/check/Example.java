package rainlap.check;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import rainlap.file.ElevationFile;
import rainlap.file.Reading;
import rainlap.practice.Limit;
import rainlap.practice.Practice;
import rainlap.practice.Practices;
import rainlap.practice.ShiftedPractice;
import rainlap.rule.Evidence;
import rainlap.rule.Finding;
import rainlap.rule.Rule;
import rainlap.wall.Elevation;
import rainlap.wall.Stage;

/** An example elevation in a rule's folder, read and with its evidence gathered once for all tests. */
record Example(String rule, Path file, Evidence evidence) {
    static final Path RULES = Path.of("src/main/resources/rules");

    private static final class Read {
        static final List<Example> ALL = Rules.all().stream().flatMap(r -> read(r.info().id()).stream()).toList();
    }

    static List<Example> all() {
        return Read.ALL;
    }

    static List<Example> of(String rule) {
        return all().stream().filter(x -> x.rule.equals(rule)).toList();
    }

    private static List<Example> read(String rule) {
        Path folder = RULES.resolve(rule);
        if (!Files.isDirectory(folder)) {
            return List.of();
        }
        try (Stream<Path> files = Files.list(folder)) {
            return files.filter(f -> f.toString().endsWith(".json")).sorted().map(f -> new Example(rule, f, gather(f))).toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static Evidence gather(Path file) {
        Reading r = ElevationFile.read(file);
        assertEquals(List.of(), r.problems().stream().flatMap(p -> p.lines().stream()).toList(), () -> file + " is no sound elevation");
        Elevation e = r.elevation().orElseThrow();
        return Evidence.of(e, Stage.drawn(e), e.practice().map(p -> Practices.find(p).orElseThrow()).orElse(Practices.common()));
    }

    Elevation elevation() {
        return evidence.elevation();
    }

    Practice practice() {
        return evidence.practice();
    }

    String name() {
        return file.getFileName().toString();
    }

    boolean isGood() {
        return name().startsWith("good-");
    }

    CheckResult check() {
        return Checker.check(evidence, Rules.all());
    }

    List<Finding> find(Rule own) {
        return found(evidence, own);
    }

    /** What its own rule finds when one limit is another. */
    List<Finding> findWith(Rule own, Limit limit, double value) {
        return found(evidence.under(ShiftedPractice.of(evidence.practice(), limit, value)), own);
    }

    private static List<Finding> found(Evidence e, Rule own) {
        return Checker.check(e, List.of(own)).weakPoints().stream().map(WeakPoint::finding).toList();
    }
}
