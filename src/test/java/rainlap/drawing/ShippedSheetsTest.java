package rainlap.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import rainlap.Shipped;
import rainlap.check.CheckResult;
import rainlap.check.Checker;
import rainlap.file.ElevationFile;
import rainlap.paper.Group;
import rainlap.paper.Mark;
import rainlap.paper.PaperBox;
import rainlap.paper.Polyline;
import rainlap.paper.Sheet;
import rainlap.paper.SheetCheck;
import rainlap.paper.SheetSize;
import rainlap.paper.SvgWriter;
import rainlap.paper.Text;
import rainlap.practice.Practice;
import rainlap.practice.Practices;
import rainlap.report.RuleExamples;
import rainlap.wall.Elevation;
import rainlap.wall.Stage;

/** The sheets of the walls that ship, at both stages. */
class ShippedSheetsTest {

    static Stream<Path> elevations() throws IOException {
        try (Stream<Path> files = Files.list(Path.of("elevations"))) {
            return files.filter(f -> f.toString().endsWith(".json")).sorted().toList().stream();
        }
    }

    @ParameterizedTest
    @MethodSource("elevations")
    void areSoundOnPaper(Path file) {
        Elevation e = ElevationFile.read(file).elevation().orElseThrow();
        Practice practice = e.practice().flatMap(Practices::find).orElse(Practices.common());
        for (Stage stage : Stage.values()) {
            CheckResult result = Checker.check(e, stage, practice);
            for (Sheet s : Drawn.of(result)) {
                assertEquals(List.of(), SheetCheck.of(s), file + " " + stage);
                assertEquals(List.of(), WrittenOver.by(s.marks()), file + " " + stage + ": words under the water's way");
                assertEquals(List.of(), OutOfSection.of(s.marks()), file + " " + stage + ": the water's way leaves the section");
            }
        }
    }

    @ParameterizedTest
    @MethodSource("rainlap.Shipped#inBuildings")
    void areSoundOnPaperInTheirBuildings(Shipped wall) {
        for (Sheet s : Drawn.of(wall.result())) {
            assertEquals(List.of(), SheetCheck.of(s), wall.file());
            assertEquals(List.of(), WrittenOver.by(s.marks()), wall.file() + ": words under the water's way");
        }
    }

    private static CheckResult result(String name, Stage stage) {
        Elevation e = ElevationFile.read(Path.of("elevations", name)).elevation().orElseThrow();
        return Shipped.checked(Path.of("elevations", name), e, stage);
    }

    /** Its elevation is small, so the table begins higher than it does elsewhere. */
    @ParameterizedTest
    @EnumSource(Stage.class)
    void theTableTakesTheRoomBeneathASmallElevation(Stage stage) throws IOException {
        CheckResult gable = result("boat-shed-gable.json", stage);
        StringWriter first = new StringWriter();
        SvgWriter.write(Drawn.of(gable).get(0), first);
        gable.weakPoints().forEach(p -> assertTrue(first.toString().contains("\"row-" + p.number() + "\""), "all rows on the first sheet, " + p.number()));
    }

    @Test
    void theTableGoesOnBesideItsFirstPart() {
        List<Sheet> sheets = Drawn.of(result("bakery-trailer-rear.json", Stage.WRAP));
        assertEquals(3, sheets.size());
        assertEquals(List.of("findings", "findings-2"), tables(sheets.get(1)));
    }

    /** A few lines of notes begin no sheet of their own while there is room beneath the sections; none is lost on the way. */
    @Test
    void theLastNotesStandBeneathTheSections() {
        List<Sheet> kiosk = Drawn.of(result("ferry-kiosk-front.json", Stage.WRAP));
        assertEquals(List.of("findings", "findings-notes"), kiosk.stream().flatMap(s -> tables(s).stream()).toList());
        String words = String.join(" ", SheetWords.of(kiosk));
        assertTrue(words.contains("is not drawn. l/h: what runs over or beside the place, or falls on it, on what lies outermost"), words);
        assertTrue(words.contains("Not named on the drawing for want of room"), words);
    }

    /** The parts of the table on a sheet, by their ids. */
    private static List<String> tables(Sheet sheet) {
        return sheet.marks().stream().filter(m -> m instanceof Group).flatMap(m -> ((Group) m).id().stream()).filter(id -> id.startsWith("findings")).toList();
    }

    /** With its fold and dimensions it is 215 high. */
    @ParameterizedTest
    @EnumSource(Stage.class)
    void aHighWallTakesTheWholeSheetAtALargeScale(Stage stage) {
        assertEquals(20, Bay.of(Extents.of(result("bird-cabin-front.json", stage)), true, SheetSize.A3).get(0).placing().view().scale());
    }

    /** A window has lines and words of its own. */
    @Test
    void noLeaderRunsOverTheKiosksWindow() {
        CheckResult kiosk = result("ferry-kiosk-front.json", Stage.FINISHED);
        View view = Bay.of(Extents.of(kiosk), true, SheetSize.A3).get(0).placing().view();
        List<PaperBox> openings = kiosk.evidence().elevation().openings().stream().map(o -> view.box(o.rect()).grown(-0.5)).toList();
        List<Polyline> leaders = new ArrayList<>();
        leaders(Drawn.of(kiosk).get(0).marks(), false, leaders);
        assertFalse(leaders.isEmpty());
        assertEquals(List.of(), leaders.stream().filter(l -> openings.stream().anyMatch(o -> l.segments().stream().anyMatch(o::meets))).toList());
    }

    private static void leaders(List<Mark> marks, boolean inside, List<Polyline> out) {
        for (Mark m : marks) {
            if (m instanceof Group g) {
                leaders(g.marks(), inside || g.classes().contains(SheetCheck.LEADER), out);
            } else if (inside && m instanceof Polyline line) {
                out.add(line);
            }
        }
    }

    /** The end lap of the north side is wetted behind the cladding, but the way goes on through the lap beneath it. */
    @Test
    void aSectionWithoutWaterSaysThatItGetsInElsewhere() {
        List<Sheet> sheets = Drawn.of(result("estuary-hut-north.json", Stage.FINISHED));
        String note = "Water gets in beside this cut.";
        assertTrue(section(sheets, "end lap too short").contains(note), "no water is drawn there");
        assertFalse(section(sheets, "reverse lap").contains(note), "its water is drawn");
    }

    /** A tape that covers the edge that is told leaves the frame bare further down in the gap: the rain is drawn there. */
    @Test
    void rainIsDrawnWhereAGapIsBare() {
        Elevation e = ElevationFile.read("gap", RuleExamples.bytes("open-gap", "bad-7-tape-too-high.json")).elevation().orElseThrow();
        List<Sheet> sheets = Drawn.of(Checker.check(e, Stage.WRAP, Practices.common()));
        assertFalse(section(sheets, "open gap").contains("Water gets in beside this cut."));
    }

    /** All the words of the section with a title. */
    private static String section(List<Sheet> sheets, String title) {
        return Stream.of("A", "B", "C", "D", "E", "F", "G", "H", "J", "K").map(letter -> {
            List<String> texts = new ArrayList<>();
            sheets.forEach(s -> texts(s.marks(), "section-" + letter, false, texts));
            return String.join(" ", texts);
        }).filter(words -> words.contains(title)).findFirst().orElseThrow();
    }

    private static void texts(List<Mark> marks, String section, boolean inside, List<String> out) {
        for (Mark m : marks) {
            if (m instanceof Group g) {
                texts(g.marks(), section, inside || g.id().filter(section::equals).isPresent(), out);
            } else if (inside && m instanceof Text t) {
                out.add(t.text());
            }
        }
    }
}
