package rainlap.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.util.TreeMap;
import java.util.Map;
import org.junit.jupiter.api.Test;
import rainlap.Shipped;
import rainlap.check.CheckResult;
import rainlap.check.Checker;
import rainlap.file.ElevationFile;
import rainlap.material.Layer;
import rainlap.practice.Practices;
import rainlap.wall.Elevation;
import rainlap.wall.Stage;

/** A weak point of no or one defence is shown in a section on the sheets, whatever its rule and its place. */
class EveryWeakPointHasItsSectionTest {

    @Test
    void onTheSheets() {
        Map<String, String> without = new TreeMap<>();
        everything((name, result) -> {
            String words = String.join(" ", SheetWords.of(Sheets.of(result, TitleBlock.BLANK)));
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
        for (Path p : Shipped.withWrongWalls()) {
            Elevation e = ElevationFile.read(p).elevation().orElseThrow();
            for (Stage stage : Stage.values()) {
                if (stage == Stage.WRAP || e.pieces().stream().anyMatch(x -> x.material().layer() != Layer.WRAP)) {
                    use.of(p.subpath(Math.max(0, p.getNameCount() - 2), p.getNameCount()) + " " + stage, Checker.check(e, stage, Practices.find(e.practice().orElse("common")).orElseThrow()));
                }
            }
        }
        Shipped.inBuildings().forEach(w -> use.of(w.file() + " in its building", w.result()));
    }
}
