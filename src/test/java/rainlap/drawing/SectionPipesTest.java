package rainlap.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import rainlap.check.CheckResult;
import rainlap.check.Checker;
import rainlap.check.WeakPoint;
import rainlap.file.ElevationFile;
import rainlap.geom.Box;
import rainlap.geom.Grid;
import rainlap.geom.Region;
import rainlap.paper.PaperPoint;
import rainlap.practice.Practices;
import rainlap.rule.Evidence;
import rainlap.wall.Elevation;
import rainlap.wall.Penetration;
import rainlap.wall.Stage;

/** Water that gets in along a pipe, and water that gets in and stands. */
class SectionPipesTest {
    private static CheckResult result(String file) {
        Elevation e = ElevationFile.read(Path.of("elevations", file)).elevation().orElseThrow();
        return Checker.check(e, Stage.WRAP, e.practice().flatMap(Practices::find).orElseThrow());
    }

    private static WeakPoint point(CheckResult r, String rule) {
        return r.weakPoints().stream().filter(p -> p.finding().rule().equals(rule)).findFirst().orElseThrow();
    }

    private static final class Section {
        private final CutStack stack;
        private final SectionGrid grid;
        private final SectionStrands strands;

        Section(Evidence e, Cut cut) {
            stack = CutStack.of(e, cut);
            grid = new SectionGrid(true, 5, 100, 100, (cut.from() + cut.to()) / 2.0);
            strands = new SectionStrands(stack, grid, 8);
        }

        double level(double mm) {
            return grid.at(Grid.of(mm), 0).y();
        }
    }

    /** A cable of 16 at x 2100, +600, sealed to nothing, through M1. */
    @Test
    void waterRunsInBeneathThePipeAndDownTheFrame() {
        CheckResult r = result("bakery-trailer-rear.json");
        WeakPoint p = point(r, "leaks-as-drawn");
        Section s = new Section(r.evidence(), new SectionPlanner(r.evidence()).plan(p, 0.5).cut());
        SectionPipes pipes = new SectionPipes(r.evidence(), s.stack, s.grid, s.strands.furthest(), 8);
        WaterSigns.Way way = pipes.way(p.finding()).orElseThrow();
        assertEquals(List.of(), way.failed());
        PaperPoint first = way.free().get(0), last = way.free().get(way.free().size() - 1);
        assertTrue(s.grid.face() - first.x() > s.strands.furthest(), "from outside all that lies on the wall");
        assertTrue(first.y() > s.level(592) && first.y() < s.level(592) + 1.3, "close beneath the pipe");
        assertTrue(s.grid.face() - last.x() < s.strands.out(0) - 0.5 && last.y() > first.y() + 5, "down between frame and sheet");
        assertTrue(pipes.hide(s.grid.at(Grid.of(600), 1)));
        assertEquals(false, pipes.hide(s.grid.at(Grid.of(640), 1)));
    }

    @Test
    void noPipeIsDrawnWhereNoneIsCut() {
        CheckResult r = result("bakery-trailer-rear.json");
        WeakPoint p = point(r, "narrow-tape-cover");
        Section s = new Section(r.evidence(), new SectionPlanner(r.evidence()).plan(p, 0.5).cut());
        SectionPipes pipes = new SectionPipes(r.evidence(), s.stack, s.grid, s.strands.furthest(), 8);
        assertEquals(List.of(), pipes.marks());
        assertEquals(Optional.empty(), pipes.way(p.finding()));
    }

    /** A duct from x 600 to 1800, +700 to +1300: a cut at its side shows it as well as one through it. */
    @Test
    void aCutAlongTheSideOfADuctShowsIt() {
        Elevation base = SampleWall.elevation();
        Penetration duct = new Penetration("P9", "duct", Region.of(Box.ofMm(600, 700, 1200, 600)));
        Evidence e = Evidence.of(new Elevation("duct", base.practice(), base.exposure(), base.outline(), List.of(), List.of(duct), base.materials(),
                base.pieces().stream().filter(x -> x.id().equals("M1")).toList(), List.of()), Stage.WRAP, Practices.find("au-abcb-2022").orElseThrow());
        for (double x : new double[] {600, 1200, 1800}) {
            assertEquals(4, marks(e, x), "x " + x);
        }
        assertEquals(0, marks(e, 1801));
    }

    private static int marks(Evidence e, double x) {
        Section s = new Section(e, new Cut(true, SampleWall.pt(x, 1250), Grid.of(1150), Grid.of(1350)));
        return new SectionPipes(e, s.stack, s.grid, s.strands.furthest(), 8).marks().size();
    }

    /** D1 is sealed to S1 at its foot, +1012, and open at its top, +1047. */
    @Test
    void trappedWaterEndsWhereItStands() {
        CheckResult r = result("estuary-hut-west.json");
        WeakPoint p = r.weakPoints().stream().filter(w -> w.finding().rule().equals("trapped-water") && w.finding().pieces().contains("D1")).findFirst().orElseThrow();
        Section s = new Section(r.evidence(), new SectionPlanner(r.evidence()).plan(p, 0.5).cut());
        WaterSigns.Way way = new SectionWater(r.evidence(), s.stack, s.grid, s.strands, 8).standing(p.finding()).orElseThrow();
        PaperPoint last = way.points().get(way.points().size() - 1);
        assertEquals(s.level(1012), last.y(), 0.01, "at the closed edge");
        assertTrue(way.points().stream().allMatch(x -> x.y() <= s.level(1012) + 0.01), "and nowhere below it");
        assertTrue(s.grid.face() - last.x() > s.strands.out(0), "outside S1, not on the frame");
    }
}
