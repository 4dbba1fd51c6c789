package rainlap.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.StringWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import rainlap.check.CheckResult;
import rainlap.geom.Box;
import rainlap.material.Catalogue;
import rainlap.paper.Sheet;
import rainlap.paper.SheetCheck;
import rainlap.paper.SheetSize;
import rainlap.paper.SvgWriter;
import rainlap.practice.Practices;
import rainlap.rule.Evidence;
import rainlap.wall.Elevation;
import rainlap.wall.Exposure;
import rainlap.wall.Stage;

class PlacingTest {

    @Test
    void theLargestScaleThatFitsIsTaken() {
        double room = Slots.Layout.BESIDE.wall().width();
        assertEquals(20, scale(room * 20, 2000));
        assertEquals(50, scale(room * 20 + 1, 2000));
        assertEquals(5, scale(room * 5, 500));
        assertEquals(10, scale(room * 5 + 1, 500));
    }

    @Test
    void aWallTooLongBesideSectionsTakesTheWholeWidth() {
        double room = Slots.Layout.BESIDE.wall().width();
        assertEquals(Slots.Layout.BESIDE, only(room * 20, 2000).placing().layout());
        Bay wide = only(room * 20 + 1, 2000);
        assertEquals(Slots.Layout.WIDE, wide.placing().layout());
        assertEquals(20, wide.placing().view().scale());
    }

    @Test
    void aWallTooHighAboveTheTableHasTheSheetToItself() {
        Bay low = only(3000, 2600), high = only(3000, 3800), higher = only(3000, 4500);
        assertEquals(Slots.Layout.BESIDE, low.placing().layout());
        assertEquals(Slots.Layout.ALONE, high.placing().layout());
        assertEquals(20, high.placing().view().scale());
        assertEquals(Slots.Layout.BESIDE, higher.placing().layout(), "where it gains no scale it stays above the table");
        assertEquals(50, higher.placing().view().scale());
        List<Sheet> sheets = Sheets.of(bareWall(3000, 3800), TitleBlock.BLANK);
        assertEquals(2, sheets.size(), "table and legend stand on the next sheet");
        sheets.forEach(s -> assertEquals(List.of(), SheetCheck.of(s)));
    }

    @Test
    void aWallTooLongForOneToFiftyIsCutIntoBaysThatOverlap() {
        double room = Slots.Layout.WIDE.wall().width() * 50;
        assertEquals(1, Bay.of(extents(room - 1, 3000), true, SheetSize.A3).size());
        List<Bay> bays = Bay.of(extents(2.5 * room, 3000), true, SheetSize.A3);
        assertEquals(3, bays.size());
        for (int i = 0; i < bays.size(); i++) {
            assertEquals(50, bays.get(i).placing().view().scale());
            assertEquals(", bay " + (i + 1) + " of 3", bays.get(i).suffix());
            if (i > 0) {
                long overlap = bays.get(i - 1).extents().sheets().maxX() - bays.get(i).extents().sheets().minX();
                assertEquals(300_00, overlap);
                Bay.Match left = bays.get(i).matches().get(0), right = bays.get(i - 1).matches().get(bays.get(i - 1).matches().size() - 1);
                assertEquals(right.x(), left.x(), "both sheets meet at one line");
                assertEquals(List.of(i + 1, i), List.of(right.bay(), left.bay()));
                assertEquals(bays.get(i).extents().sheets().minX() + 150_00, left.x());
            }
        }
        assertEquals(Math.round(2.5 * room * 100), bays.get(2).extents().sheets().maxX());
    }

    @Test
    void aWallThatMustBeCutIsDrawnAtOneToTwentyWhileThatTakesSixBaysAtMost() {
        double room = Slots.Layout.WIDE.wall().width() * 20;
        List<Bay> six = Bay.of(extents(6 * room - 5 * 300 - 20, 2600), true, SheetSize.A3), more = Bay.of(extents(6 * room - 5 * 300 + 20, 2600), true, SheetSize.A3);
        assertEquals(List.of(6, 20), List.of(six.size(), six.get(0).placing().view().scale()));
        assertEquals(50, more.get(0).placing().view().scale());
    }

    @Test
    void eachSheetOfACutWallSaysWhereItGoesOn() throws IOException {
        List<Sheet> sheets = Sheets.of(bareWall(24_000, 2600), TitleBlock.BLANK);
        List<List<String>> told = new ArrayList<>();
        for (Sheet s : sheets) {
            assertEquals(List.of(), SheetCheck.of(s));
            StringWriter out = new StringWriter();
            SvgWriter.write(s, out);
            told.add(Pattern.compile("match line, bay \\d").matcher(out.toString()).results().map(MatchResult::group).distinct().toList());
        }
        assertEquals(List.of(List.of("match line, bay 2"), List.of("match line, bay 1", "match line, bay 3"), List.of("match line, bay 2", "match line, bay 4"),
                List.of("match line, bay 3")), told.subList(0, 4));
    }

    @Test
    void aWallTooHighForOneToAHundredIsRefusedWithItsSize() {
        Sheets.TooLarge e = assertThrows(Sheets.TooLarge.class, () -> Sheets.of(bareWall(4000, 40_000), TitleBlock.BLANK));
        assertTrue(e.getMessage().startsWith("a wall of 4000 x 40000 mm"), e.getMessage());
    }

    @Test
    void dimensionsHangBetweenWallAndGroundWhereThereIsRoom() {
        Box wall = Box.ofMm(0, 0, 3000, 2000);
        Placing between = Placing.of(new Extents(wall, wall, OptionalLong.of(-450_00)), Slots.Layout.BESIDE, 20).orElseThrow();
        assertTrue(between.overall() < between.view().y(-450_00));
        Placing below = Placing.of(new Extents(wall, wall, OptionalLong.of(-100_00)), Slots.Layout.BESIDE, 20).orElseThrow();
        assertTrue(below.chain() > below.view().y(-100_00));
    }

    private static int scale(double width, double height) {
        return Placing.of(extents(width, height), Slots.Layout.BESIDE).orElseThrow().view().scale();
    }

    private static Bay only(double width, double height) {
        List<Bay> bays = Bay.of(extents(width, height), true, SheetSize.A3);
        assertEquals(1, bays.size());
        return bays.get(0);
    }

    private static Extents extents(double width, double height) {
        Box wall = Box.ofMm(0, 0, width, height);
        return new Extents(wall, wall, OptionalLong.empty());
    }

    static CheckResult bareWall(double width, double height) {
        Elevation e = new Elevation("Bare", Optional.empty(), Exposure.UNSTATED, SampleWall.outline(width, height, OptionalLong.empty()),
                List.of(), List.of(), Catalogue.builtIn(), List.of(), List.of());
        return new CheckResult(Evidence.of(e, Stage.WRAP, Practices.common()), List.of(), Map.of(), Map.of(), List.of(), List.of());
    }
}
