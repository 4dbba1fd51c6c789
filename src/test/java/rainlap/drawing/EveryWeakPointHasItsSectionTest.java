package rainlap.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import rainlap.Shipped;
import rainlap.check.CheckResult;
import rainlap.check.Checker;
import rainlap.file.ElevationFile;
import rainlap.material.Layer;
import rainlap.paper.Group;
import rainlap.paper.Mark;
import rainlap.practice.Practices;
import rainlap.wall.Elevation;
import rainlap.wall.Stage;

/** A weak point of no or one defence is shown in a section on the sheets, whatever its rule and its place. */
class EveryWeakPointHasItsSectionTest {

    @Test
    void onTheSheets() {
        Map<String, String> without = new TreeMap<>();
        everything((name, result) -> {
            String words = String.join(" ", words(result));
            int at = words.indexOf("Without a section");
            if (at >= 0) {
                without.put(name, words.substring(at, Math.min(words.length(), at + 300)));
            }
        });
        assertEquals(Map.of(), without);
    }

    interface Use {
        void of(String name, CheckResult result);
    }

    static void everything(Use use) {
        for (Path p : files()) {
            Elevation e = ElevationFile.read(p).elevation().orElseThrow();
            for (Stage stage : Stage.values()) {
                if (stage == Stage.WRAP || e.pieces().stream().anyMatch(x -> x.material().layer() != Layer.WRAP)) {
                    use.of(p.subpath(Math.max(0, p.getNameCount() - 2), p.getNameCount()) + " " + stage, Checker.check(e, stage, Practices.find(e.practice().orElse("common")).orElseThrow()));
                }
            }
        }
        Shipped.inBuildings().forEach(w -> use.of(w.file() + " in its building", w.result()));
    }

    private static List<String> words(CheckResult result) {
        List<String> out = new ArrayList<>();
        Sheets.of(result, TitleBlock.BLANK).forEach(s -> words(s.marks(), out));
        return out;
    }

    private static void words(List<Mark> marks, List<String> out) {
        for (Mark m : marks) {
            if (m instanceof Group g) {
                words(g.marks(), out);
            } else if (m instanceof rainlap.paper.Text t) {
                out.add(t.text());
            }
        }
    }

    private static List<Path> files() {
        try (Stream<Path> shipped = Files.list(Path.of("elevations")); Stream<Path> bare = Files.list(Path.of("src/test/resources/few-defences"));
                Stream<Path> examples = Files.walk(Path.of("src/main/resources/rules"))) {
            return Stream.concat(Stream.concat(shipped, bare).filter(f -> f.toString().endsWith(".json")), examples.filter(f -> f.getFileName().toString().startsWith("bad-"))).sorted().toList();
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }
}
