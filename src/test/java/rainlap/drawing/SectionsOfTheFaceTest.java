package rainlap.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import rainlap.check.CheckResult;
import rainlap.check.Checker;
import rainlap.check.WeakPoint;
import rainlap.file.ElevationFile;
import rainlap.geom.Grid;
import rainlap.practice.Practices;
import rainlap.rule.Finding;
import rainlap.wall.Elevation;
import rainlap.wall.Stage;

/** What a finished wall is cut for: battens, cladding and trims where they are what is wrong. */
class SectionsOfTheFaceTest {
    private static final CheckResult KIOSK = kiosk();

    @Test void aCutForTheFaceGoesThroughCladdingAndBattens() {
        Cut throughX2 = new Cut(true, SampleWall.pt(200, 1720), Grid.of(1600), Grid.of(1840));
        assertEquals(List.of("M2", "X2", "A1"), pieces(CutStack.of(KIOSK.evidence(), throughX2, true)));
        assertEquals(List.of("M2"), pieces(CutStack.of(KIOSK.evidence(), throughX2)));
    }

    @Test void theLapOfTwoSheetsShowsOneOutsideTheOther() {
        CutStack stack = CutStack.of(KIOSK.evidence(), new Cut(true, SampleWall.pt(600, 1200), Grid.of(1100), Grid.of(1300)), true);
        int inner = level(stack, "A0", 1200), outer = level(stack, "A1", 1200);
        assertTrue(inner >= 0 && outer > inner, inner + " " + outer);
    }

    @Test void onlyTheCutForTheWrapIsCalledSo() {
        List<String> ofTheWrap = KIOSK.weakPoints().stream().map(w -> w.finding().rule())
                .filter(r -> !SectionPlanner.isBeyondTheWrap(finding(r), KIOSK.evidence())).distinct().toList();
        assertEquals(List.of("bead-off-tape", "reversed-tape-lap", "too-long-in-sun"), ofTheWrap);
    }

    private static Finding finding(String rule) {
        return KIOSK.weakPoints().stream().map(WeakPoint::finding).filter(f -> f.rule().equals(rule)).findFirst().orElseThrow();
    }

    private static int level(CutStack stack, String piece, double at) {
        return stack.strands().stream().filter(s -> s.piece().id().equals(piece)).flatMap(s -> s.steps().stream())
                .filter(s -> s.from() <= Grid.of(at) && Grid.of(at) <= s.to()).mapToInt(CutStack.Step::level).findFirst().orElse(-1);
    }

    private static List<String> pieces(CutStack stack) {
        return stack.strands().stream().map(s -> s.piece().id()).toList();
    }

    private static CheckResult kiosk() {
        Elevation e = ElevationFile.read(Path.of("elevations/ferry-kiosk-front.json")).elevation().orElseThrow();
        return Checker.check(e, Stage.FINISHED, Practices.find(e.practice().orElseThrow()).orElseThrow());
    }
}
