package rainlap.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import rainlap.Shipped;
import rainlap.check.CheckResult;
import rainlap.check.Checker;
import rainlap.check.WeakPoint;
import rainlap.file.ElevationFile;
import rainlap.paper.Clip;
import rainlap.paper.Group;
import rainlap.paper.Mark;
import rainlap.paper.PaperBox;
import rainlap.paper.PaperPoint;
import rainlap.paper.Text;
import rainlap.practice.Practices;
import rainlap.wall.Elevation;
import rainlap.wall.Stage;

/** Places that no cut square to them shows: from outside, at a threshold, at an internal corner. */
class CloseUpTest {
    private static final PaperBox FIELD = PaperBox.ofSize(40, 20, 46, 42);

    private static CheckResult result(String example) {
        Elevation e = ElevationFile.read(Path.of("src/main/resources/rules", example + ".json")).elevation().orElseThrow();
        return Checker.check(e, Stage.WRAP, Practices.find(e.practice().orElse("common")).orElseThrow());
    }

    private static CloseUp view(CheckResult r) {
        return CloseUp.of(r.weakPoints().get(0), r.evidence()).orElseThrow();
    }

    private static List<String> words(List<Mark> marks) {
        List<String> out = new ArrayList<>();
        for (Mark m : marks) {
            if (m instanceof Group g) {
                out.addAll(words(g.marks()));
            } else if (m instanceof Text t) {
                out.add(t.text());
            }
            assertFalse(m instanceof Clip, "several views on one page would share a clip's name");
        }
        return out;
    }

    @Test
    void aShortFlashingIsMeasuredFromTheJambAndSoIsTheLongerOne() {
        CheckResult r = result("short-flashing/bad-1-one-end");
        List<String> drawn = words(view(r).drawn(FIELD)), mended = words(view(r).mended(MendedCuts.ofView(r.weakPoints().get(0), r.evidence()).orElseThrow().mended().orElseThrow(), FIELD));
        assertTrue(drawn.containsAll(List.of("109", "110 asked", "W1", "H1 beneath")), drawn.toString());
        assertTrue(mended.contains("110") && !mended.contains("110 asked"), mended.toString());
    }

    @Test
    void aFlashingShortOfTheJambSaysSo() {
        List<String> drawn = words(view(result("short-flashing/bad-3-short-of-the-jamb")).drawn(FIELD));
        assertTrue(drawn.stream().anyMatch(w -> w.endsWith(" short")), drawn.toString());
    }

    @Test
    void endLapsAreMeasuredLevelAndToACornerStraight() {
        assertTrue(words(view(result("end-lap-near-opening/bad-1-50-away")).drawn(FIELD)).containsAll(List.of("50", "150 asked")));
        assertTrue(words(view(result("end-lap-near-opening/bad-3-towards-a-corner")).drawn(FIELD)).contains("120, 150 asked, both straight"));
        assertTrue(words(view(result("unstaggered-laps/bad-2-just-outside-149")).drawn(FIELD)).containsAll(List.of("149", "150 asked")));
    }

    /** The scale that the head gives is that of both pictures, and what mends a bare corner is drawn whole. */
    @Test
    void aPlaceAsDrawnAndAsItShouldBeHaveOneScale() {
        PaperBox cell = PaperBox.ofSize(0, 0, Slots.SECTIONS.width(), 2 * CloseUpCell.HEIGHT);
        Set<Integer> scales = new TreeSet<>();
        Shipped.all().forEach(w -> w.result().weakPoints().forEach(p -> CloseUp.of(p, w.result().evidence()).ifPresent(v -> {
            scales.add(CloseUpCell.scale(v, cell));
            new CloseUpCell(v, "A", Optional.empty()).fields(cell).forEach(f -> assertEquals(CloseUpCell.scale(v, cell), v.scale(f), w.file() + " " + p.number()));
        })));
        assertTrue(scales.containsAll(List.of(5, 10)), scales.toString());
    }

    /** Nothing of the wall beyond the view is left, on a page either. */
    @Test
    void aViewIsNoLargerThanItsField() {
        for (String example : List.of("short-flashing/bad-1-one-end", "tape-order/bad-1-sill-last", "unstaggered-laps/bad-1-one-above-the-other", "end-lap-near-opening/bad-3-towards-a-corner")) {
            PaperBox box = Group.of(view(result(example)).drawn(FIELD)).box();
            assertTrue(new PaperBox(FIELD.left() - 2, FIELD.top(), FIELD.right() + 9, FIELD.bottom() + 1).holds(box), example + " " + box);
        }
    }

    @Test
    void beneathAThresholdNoWallIsDrawn() {
        CheckResult r = result("bare-threshold/bad-1-nothing-laid");
        CutStack stack = CutStack.of(r.evidence(), new SectionPlanner(r.evidence()).plan(r.weakPoints().get(0), 0.5).cut());
        assertTrue(stack.isThreshold());
        assertEquals(0, stack.frameTo(), 1e-9, "the frame ends at the sill");
        assertTrue(stack.frameFrom() > -5000, "and little of it is drawn, where nothing is known");
        assertTrue(stack.strands().stream().allMatch(s -> s.steps().isEmpty()), "nothing lies on a wall beneath");
        assertTrue(stack.strands().stream().anyMatch(s -> !s.lowLeg().isEmpty()), "the sheet is folded under the base");
    }

    @Test
    void atAnInternalCornerTheOtherWallComesTowardsTheEye() {
        CheckResult r = result("short-corner-wrap/bad-3-internal-corner");
        WeakPoint p = r.weakPoints().get(0);
        Cut cut = new SectionPlanner(r.evidence()).plan(p, 0.5).cut();
        CutStack stack = CutStack.of(r.evidence(), cut);
        assertTrue(stack.turnsOutwards());
        SectionGrid grid = new SectionGrid(false, 20, 10, 50, cut.centre());
        SectionStrands strands = new SectionStrands(stack, grid, 5);
        CutStack.Strand sheet = stack.strands().stream().filter(s -> s.piece().id().equals("M1")).findFirst().orElseThrow();
        List<PaperPoint> path = strands.paths(sheet).get(0);
        PaperPoint end = path.get(path.size() - 1);
        assertEquals(10 + 200 / 20.0, end.y(), 0.01, "200 out along the other wall, where outside is below");
        assertTrue(end.x() < grid.at(stack.frameTo(), 0).x(), "on this side of its face");
        assertEquals(1, strands.otherWalls().size());
    }
}
