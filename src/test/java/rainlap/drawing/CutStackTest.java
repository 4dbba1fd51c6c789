package rainlap.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import rainlap.geom.Grid;
import rainlap.rule.Evidence;
import rainlap.wall.Side;
import rainlap.wall.Stage;

/** What a section finds along its cut, on the sample wall. */
class CutStackTest {
    private static final Evidence EVIDENCE = SampleWall.evidence(Stage.WRAP);

    @Test
    void aCourseLapLiesOneLevelOutWhereTheOtherSheetIsBeneath() {
        CutStack stack = plumb(2550, 700, 1000);
        assertEquals(List.of("M1", "M2"), ids(stack));
        assertEquals(List.of(step(700, 940, 0)), stack.strands().get(0).steps());
        assertEquals(List.of(step(840, 940, 1), step(940, 1000, 0)), stack.strands().get(1).steps());
        assertTrue(stack.low().isEmpty() && stack.high().isEmpty());
    }

    @Test
    void aTapeLiesOverBothSheetsOfTheLapItCovers() {
        CutStack stack = plumb(300, 700, 900);
        assertEquals(List.of("M1", "M2", "T1"), ids(stack));
        assertEquals(List.of(step(802.5, 840, 1), step(840, 877.5, 2)), stack.strands().get(2).steps());
    }

    @Test
    void underASillTheFrameTurnsInwardsAndTheSheetGoesWithIt() {
        CutStack stack = plumb(1500, 870, 1100);
        assertEquals(Grid.of(950), stack.frameTo());
        assertEquals(Side.SILL, stack.high().orElseThrow().side());
        CutStack.Strand sheet = stack.strands().stream().filter(s -> s.piece().id().equals("M2")).findFirst().orElseThrow();
        assertEquals(List.of(step(0, 90, 0)), sheet.highLeg());
    }

    @Test
    void pastTheEndOfTheWallTheSheetGoesRoundTheCorner() {
        CutStack stack = CutStack.of(EVIDENCE, new Cut(false, SampleWall.pt(3600, 500), Grid.of(3500), Grid.of(3800)));
        assertEquals(Grid.of(3600), stack.frameTo());
        assertEquals(List.of(step(3500, 3600, 0)), stack.strands().get(0).steps());
        assertEquals(List.of(step(0, 200, 0)), stack.strands().get(0).highLeg());
    }

    @Test
    void aReversedLapHasTheLowerSheetOutside() {
        CutStack stack = plumb(3300, 1700, 1900);
        assertEquals(List.of("M3b", "M2"), ids(stack));
        assertEquals(List.of(step(1740, 1900, 0)), stack.strands().get(0).steps());
        assertEquals(List.of(step(1700, 1740, 0), step(1740, 1840, 1)), stack.strands().get(1).steps());
    }

    private static CutStack plumb(double x, double from, double to) {
        return CutStack.of(EVIDENCE, new Cut(true, SampleWall.pt(x, (from + to) / 2), Grid.of(from), Grid.of(to)));
    }

    private static List<String> ids(CutStack stack) {
        return stack.strands().stream().map(s -> s.piece().id()).toList();
    }

    private static CutStack.Step step(double from, double to, int level) {
        return new CutStack.Step(from * 100, to * 100, level);
    }
}
