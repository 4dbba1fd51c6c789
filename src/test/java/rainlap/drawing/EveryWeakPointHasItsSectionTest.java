package rainlap.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import rainlap.Shipped;
import rainlap.check.CheckResult;
import rainlap.check.WeakPoint;
import rainlap.file.ElevationFile;
import rainlap.material.Layer;
import rainlap.paper.Group;
import rainlap.paper.Mark;
import rainlap.paper.Text;
import rainlap.wall.Elevation;
import rainlap.wall.Stage;

/** A weak point of no or one defence is shown in a section on the sheets, whatever its rule and its place. */
class EveryWeakPointHasItsSectionTest {

    @Test
    void onTheSheets() {
        Map<String, String> without = new TreeMap<>();
        everything((name, result) -> {
            String words = String.join(" ", SheetWords.of(Drawn.of(result)));
            int at = words.indexOf("Without a section");
            if (at >= 0) {
                without.put(name, words.substring(at, Math.min(words.length(), at + 300)));
            }
        });
        assertEquals(Map.of(), without);
    }

    /** Marks in the heads of sections, and what their words tell, hold the number of each. */
    @Test
    void someSectionTellsItsNumber() {
        Map<String, Object> without = new TreeMap<>();
        everything((name, result) -> {
            for (Sheets.Paper paper : Sheets.Paper.values()) {
                List<String> words = Drawn.of(result, paper).stream().flatMap(s -> sections(s.marks())).toList();
                Set<String> told = new TreeSet<>(words);
                Pattern.compile("This cut shows ([0-9, ]+) too").matcher(String.join(" ", words)).results().forEach(m -> told.addAll(List.of(m.group(1).split(", "))));
                List<Integer> untold = result.weakPoints().stream().filter(MendedCuts::isAsked).map(WeakPoint::number).filter(n -> !told.contains(n.toString())).toList();
                if (!untold.isEmpty()) {
                    without.put(name + " " + paper, untold);
                }
            }
        });
        assertEquals(Map.of(), without);
    }

    /** A lap that grows along its edge is dimensioned where it is cut: the figure says so, and the mended one is in whole millimetres as the words have it. */
    @Test
    void aLapThatChangesSaysWhereItIsMeasured() {
        CheckResult r = Shipped.all().stream().filter(w -> w.file().contains("bakery-trailer-right")).findFirst().orElseThrow().result();
        for (Sheets.Paper paper : Sheets.Paper.values()) {
            List<String> words = SheetWords.of(Drawn.of(r, paper));
            assertTrue(words.stream().anyMatch(w -> w.matches("[0-9]+ here")), paper + " " + words);
            assertTrue(words.contains("118") && words.stream().noneMatch("117.99"::equals), words.toString());
        }
    }

    /** All words of sections; lines of one text are joined. */
    private static Stream<String> sections(List<Mark> marks) {
        return marks.stream().flatMap(m -> !(m instanceof Group g) ? Stream.of() : g.id().filter(id -> id.startsWith("section-") && !id.equals("section-planes")).isPresent() ? words(g.marks()) : sections(g.marks()));
    }

    private static Stream<String> words(List<Mark> marks) {
        return marks.stream().flatMap(m -> m instanceof Group g ? words(g.marks()) : m instanceof Text t ? Stream.of(t.text()) : Stream.of());
    }

    interface Use {
        void of(String name, CheckResult result);
    }

    static void everything(Use use) {
        for (Path p : Shipped.withWrongWalls()) {
            Elevation e = ElevationFile.read(p).elevation().orElseThrow();
            for (Stage stage : Stage.values()) {
                if (stage == Stage.WRAP || e.pieces().stream().anyMatch(x -> x.material().layer() != Layer.WRAP)) {
                    use.of(p.subpath(Math.max(0, p.getNameCount() - 2), p.getNameCount()) + " " + stage, Shipped.checked(p, e, stage));
                }
            }
        }
        Shipped.inBuildings().forEach(w -> use.of(w.file() + " in its building", w.result()));
    }
}
