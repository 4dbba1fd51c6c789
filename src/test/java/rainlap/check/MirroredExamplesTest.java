package rainlap.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import rainlap.file.ElevationFile;
import rainlap.geom.Box;
import rainlap.practice.Practice;
import rainlap.practice.Practices;
import rainlap.rule.Evidence;
import rainlap.rule.Finding;
import rainlap.rule.Rule;
import rainlap.wall.Changed;
import rainlap.wall.Elevation;
import rainlap.wall.Stage;
import rainlap.wall.Surface;

/** Every example, mirrored left to right, gives mirrored findings. */
class MirroredExamplesTest {
    private static final Path RULES = Path.of("src/main/resources/rules");

    @TestFactory
    Stream<DynamicTest> mirrored() throws IOException {
        List<Rule> ours = Rules.all();
        List<Path> files = new ArrayList<>();
        for (Rule r : ours) {
            try (Stream<Path> in = Files.list(RULES.resolve(r.info().id()))) {
                in.filter(f -> f.toString().endsWith(".json")).forEach(files::add);
            }
        }
        assertTrue(files.size() > 50, files.size() + " examples");
        return files.stream().sorted(Comparator.naturalOrder()).map(f -> DynamicTest.dynamicTest(RULES.relativize(f).toString(), () -> {
            Elevation e = ElevationFile.read(f).elevation().orElseThrow();
            assertEquals(found(e, ours, true), found(Changed.mirrored(e), ours, false));
        }));
    }

    private static Set<String> found(Elevation e, List<Rule> rules, boolean mirror) {
        Practice p = e.practice().flatMap(Practices::find).orElse(Practices.common());
        Set<String> out = new TreeSet<>();
        Checker.check(Evidence.of(e, Stage.drawn(e), p), rules).weakPoints().forEach(w -> out.add(text(w.finding(), mirror)));
        return out;
    }

    private static String text(Finding f, boolean mirror) {
        Box b = f.where().box();
        Box at = mirror ? new Box(-b.maxX(), b.minY(), -b.minX(), b.maxY()) : b;
        Surface on = mirror ? Changed.mirrored(f.where().surface()) : f.where().surface();
        return f.rule() + f.pieces() + on.name() + mm(at.minX()) + mm(at.minY()) + mm(at.maxX()) + mm(at.maxY())
                + f.measured().stream().mapToObj(m -> " measured " + Math.round(m)).toList() + f.required() + f.defences();
    }

    /** Whole millimetres: beside a sloped edge 0.02 mm is the same line, and which side it falls to depends on the sense of the edge. */
    private static String mm(long units) {
        return " " + Math.round(units / 100.0);
    }
}
