package rainlap.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import rainlap.check.CheckResult;
import rainlap.check.Checker;
import rainlap.check.WeakPoint;
import rainlap.file.ElevationFile;
import rainlap.geom.Grid;
import rainlap.geom.Point;
import rainlap.practice.Practices;
import rainlap.wall.Elevation;
import rainlap.wall.Stage;
import rainlap.water.Arrival;
import rainlap.water.Step;

/** Behind cladding only narrow streams reach the wrap of the hut's north side: a cut half way along a weak stretch meets none of them. */
class WetPlanesTest {
    private static final CheckResult RESULT = result();

    private static CheckResult result() {
        Elevation e = ElevationFile.read(Path.of("elevations/estuary-hut-north.json")).elevation().orElseThrow();
        return Checker.check(e, Stage.FINISHED, Practices.find("au-abcb-2022").orElseThrow());
    }

    private static WeakPoint point(String rule) {
        return RESULT.weakPoints().stream().filter(p -> p.finding().rule().equals(rule)).findFirst().orElseThrow();
    }

    /** Water comes round the joint of two cladding sheets, on x 2973 to 3048, or just beyond. */
    @Test
    void aCutIsLaidThroughTheStream() {
        WeakPoint p = point("reverse-lap");
        SectionPlanner planner = new SectionPlanner(RESULT.evidence());
        WetPlanes water = new WetPlanes(RESULT.evidence(), p);
        assertFalse(water.isWet(planner.plan(p, 0.5).cut()), "half way it is dry");
        Cut cut = planner.plans(p, new double[] {0.5}).get(0).cut();
        assertTrue(water.isWet(cut));
        assertTrue(cut.across() >= Grid.of(2973) && cut.across() <= Grid.of(3048) + 1, () -> "x " + cut.across());
    }

    /** From the sill it runs along under M2 above the tape to the tape's end at x 2250, so nothing of the way before is in that plane. */
    @Test
    void waterThatRanAlongToThePlaneBeginsThere() {
        Arrival way = RESULT.evidence().trace().arrivals().stream().filter(a -> a.path().stream()
                .anyMatch(s -> s.kind() == Step.Kind.RUN_ALONG && s.where().get(0).equals(Point.ofMm(2250, 535)))).findFirst().orElseThrow();
        Cut cut = new Cut(true, Point.ofMm(2250, 535), Grid.of(475), Grid.of(690));
        List<WayInPlane.Moment> m = new WayInPlane(RESULT.evidence(), CutStack.of(RESULT.evidence(), cut)).moments(way);
        assertEquals(List.of(Grid.of(535), Grid.of(635)), m.stream().map(x -> Math.round(x.place())).distinct().toList());
    }

    @Test
    void withoutWaterTheCutsStayAsTheyAre() {
        WeakPoint p = point("short-end-lap");
        WetPlanes water = new WetPlanes(RESULT.evidence(), p);
        List<SectionPlan> plans = new SectionPlanner(RESULT.evidence()).plans(p, new double[] {0.5, 0.25});
        assertFalse(water.isWet(plans.get(0).cut()));
        assertEquals(Grid.of((1885 + 2510) / 2.0), plans.get(0).cut().across(), 1);
    }
}
