package rainlap.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import rainlap.check.CheckResult;
import rainlap.check.Checker;
import rainlap.check.WeakPoint;
import rainlap.geom.Box;
import rainlap.geom.Point;
import rainlap.material.Catalogue;
import rainlap.material.MaterialKind;
import rainlap.paper.Area;
import rainlap.paper.Clip;
import rainlap.paper.Group;
import rainlap.paper.Mark;
import rainlap.paper.Occupied;
import rainlap.paper.PaperBox;
import rainlap.paper.Sheet;
import rainlap.paper.SheetCheck;
import rainlap.practice.Practices;
import rainlap.rule.Finding;
import rainlap.rule.Place;
import rainlap.wall.Elevation;
import rainlap.wall.Exposure;
import rainlap.wall.Opening;
import rainlap.wall.Piece;
import rainlap.wall.Stage;
import rainlap.wall.Surface;

/** A long wall (invented) over several sheets: what runs through several bays is marked in each of them, and each is dimensioned. */
class BaysTest {
    private static final double LENGTH = 60_000;
    private static final String REVERSE = "reverse-lap";

    @ParameterizedTest
    @EnumSource(Sheets.Paper.class)
    void aLongStretchIsMarkedInEachBayItRunsThrough(Sheets.Paper paper) {
        CheckResult wall = wall();
        List<Sheet> bays = bays(wall, paper);
        assertTrue(bays.size() > 2, "several bays");
        int number = number(wall);
        for (int i = 0; i < bays.size(); i++) {
            List<Mark> marks = bays.get(i).marks();
            assertEquals(List.of(), SheetCheck.of(bays.get(i)));
            assertEquals(1, groups(marks, "label-" + number).size(), "mark in bay " + (i + 1));
            List<String> words = SheetWords.of(List.of(bays.get(i)));
            for (int other : new int[] {i, i + 2}) {
                assertEquals(other > 0 && other <= bays.size(), words.contains("match line, bay " + other), "bay " + (i + 1) + " says where it goes on: " + other);
            }
            assertTrue(words.stream().filter(w -> w.startsWith("+")).toList().contains("+2400"), "level of the eave in bay " + (i + 1));
            Group place = groups(marks, "place-" + number).get(0);
            assertEquals(i == 0 || i == bays.size() - 1 ? 1 : 2, place.marks().stream().filter(Area.class::isInstance).count(), "heads that say it goes on, bay " + (i + 1));
        }
    }

    /** The dot of its leader stands on what this bay shows of it. */
    @ParameterizedTest
    @EnumSource(Sheets.Paper.class)
    void itsLeaderEndsOnIt(Sheets.Paper paper) {
        CheckResult wall = wall();
        WeakPoint p = wall.weakPoints().get(number(wall) - 1);
        for (Bay bay : Bay.of(Extents.of(wall), true, paper.ways().get(0))) {
            PaperBox drawn = bay.placing().view().box(bay.extents().sheets());
            WeakPlaces.Drawn one = new WeakPlaces(bay.placing().view(), drawn).draw(List.of(p), new Occupied()).get(0);
            assertTrue(one.sites().size() > 2, "a choice of places");
            assertTrue(one.sites().stream().allMatch(drawn.grown(0.02)::holds), "on the bay");
        }
    }

    /** A short one in what two bays both show stands on one sheet only; one across a match line that no bay shows whole, on two. */
    @ParameterizedTest
    @EnumSource(Sheets.Paper.class)
    void whatOneBayShowsWholeIsMarkedOnce(Sheets.Paper paper) {
        CheckResult wall = wall();
        List<Bay> bays = Bay.of(Extents.of(wall), true, paper.ways().get(0));
        long match = bays.get(0).matches().get(0).x(), width = bays.get(1).extents().sheets().width();
        assertEquals(List.of(bays.get(0)), Bay.marking(bays, at(wall, match - 100_00, match + 100_00)));
        assertEquals(List.of(bays.get(1)), Bay.marking(bays, at(wall, match - 100_00, match + 1000_00)));
        assertEquals(bays.subList(0, 2), Bay.marking(bays, at(wall, match - 400_00, match + 400_00)));
        assertEquals(bays.subList(0, 3), Bay.marking(bays, at(wall, match - 400_00, match + width)));
    }

    /** From match line to match line, so that the bays add up to the wall. */
    @ParameterizedTest
    @EnumSource(Sheets.Paper.class)
    void eachBayHasAnOverallDimension(Sheets.Paper paper) {
        CheckResult wall = wall();
        List<Long> lengths = new ArrayList<>();
        for (Sheet sheet : bays(wall, paper)) {
            List<String> told = SheetWords.of(List.of(new Sheet(sheet.size(), "", "en", groups(sheet.marks(), "dimensions").stream().map(Mark.class::cast).toList())));
            String overall = told.stream().filter(t -> t.endsWith(" of 60000")).findFirst().orElseThrow(() -> new AssertionError(told.toString()));
            lengths.add(Long.parseLong(overall.split(" ")[0]));
        }
        assertEquals(LENGTH, lengths.stream().mapToLong(Long::longValue).sum(), lengths.size() / 2.0, "but for rounding");
    }

    /** On a lying A4 sheet a column of sections is so low that a mended cut with many words finds no room: the one as drawn says so. */
    @ParameterizedTest
    @EnumSource(Sheets.Paper.class)
    void aWindowWithoutAFlashingFindsRoomOrSaysThatThereIsNone(Sheets.Paper paper) {
        CheckResult wall = wall(List.of(new Opening("W1", Opening.Kind.WINDOW, Box.ofMm(4000, 1700, 900, 500), 90_00, Optional.empty(), OptionalLong.empty(), OptionalLong.empty())));
        assertTrue(wall.weakPoints().stream().anyMatch(p -> p.finding().rule().equals("missing-head-flashing")));
        List<Sheet> sheets = Sheets.of(wall, TitleBlock.BLANK, paper);
        sheets.forEach(s -> assertEquals(List.of(), SheetCheck.of(s)));
    }

    private static WeakPoint at(CheckResult wall, long from, long to) {
        Finding f = wall.weakPoints().get(number(wall) - 1).finding();
        Place place = Place.line(wall.evidence().elevation(), Surface.WALL,
                List.of(new Point(from, 1400_00), new Point(to, 1400_00)));
        return new WeakPoint(1, new Finding(f.rule(), f.pieces(), place, f.measured(), f.required(), f.unit(), f.drawn(), f.asked(), f.source(), f.spokenBy(),
                f.says(), f.remedy(), f.defences(), f.joint(), f.path(), f.litresPerHour()));
    }

    private static List<Sheet> bays(CheckResult wall, Sheets.Paper paper) {
        return Sheets.of(wall, TitleBlock.BLANK, paper).stream().filter(s -> !groups(s.marks(), "elevation").isEmpty()).toList();
    }

    private static int number(CheckResult wall) {
        return wall.weakPoints().stream().filter(p -> p.finding().rule().equals(REVERSE)).findFirst().orElseThrow().number();
    }

    private static List<Group> groups(List<Mark> marks, String id) {
        List<Group> out = new ArrayList<>();
        for (Mark m : marks) {
            if (m instanceof Group g && g.id().equals(Optional.of(id))) {
                out.add(g);
            }
            out.addAll(m instanceof Group g ? groups(g.marks(), id) : m instanceof Clip c ? groups(c.marks(), id) : List.of());
        }
        return out;
    }

    /** Two courses, the lower one outside along the whole wall. */
    private static CheckResult wall() {
        return wall(List.of());
    }

    private static CheckResult wall(List<Opening> openings) {
        List<Piece> pieces = List.of(SampleWall.piece("M2", MaterialKind.MEMBRANE, SampleWall.rect(0, 1300, LENGTH, 1100), List.of(), List.of()),
                SampleWall.piece("M1", MaterialKind.MEMBRANE, SampleWall.rect(0, -40, LENGTH, 1440), List.of(), List.of()));
        Elevation e = new Elevation("Long shed", Optional.empty(), Exposure.UNSTATED, SampleWall.outline(LENGTH, 2400, OptionalLong.empty()), openings, List.of(),
                Catalogue.builtIn(), pieces, List.of());
        return Checker.check(e, Stage.WRAP, Practices.find("au-abcb-2022").orElseThrow());
    }
}
