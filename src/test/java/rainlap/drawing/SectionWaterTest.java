package rainlap.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import org.junit.jupiter.api.Test;
import rainlap.geom.Grid;
import rainlap.material.MaterialKind;
import rainlap.paper.PaperPoint;
import rainlap.practice.Practices;
import rainlap.rule.Evidence;
import rainlap.wall.Elevation;
import rainlap.wall.Piece;
import rainlap.wall.Stage;
import rainlap.water.Arrival;

/** The water's way in sections of the sample wall. */
class SectionWaterTest {
    private static final Evidence EVIDENCE = SampleWall.evidence(Stage.WRAP);

    /** M2 lies outside the foot of M3b: x 3300, from +1740 to +1840. */
    @Test
    void inAReversedLapWaterRunsBehindTheOuterSheetAndDownTheFrame() {
        Section s = new Section(3300, 1690, 1900);
        WaterSigns.Way way = s.way().orElseThrow();
        assertEquals(List.of(), way.failed(), "it leaks as drawn");
        double inner = s.strands.out(0), outer = s.strands.out(1);
        double inLap = s.outAt(way.free(), s.grid.at(Grid.of(1790), 0).y());
        assertTrue(inLap > inner && inLap < outer, "between the two sheets, not " + inLap);
        PaperPoint end = way.free().get(way.free().size() - 1);
        assertTrue(s.out(end) > 0 && s.out(end) < inner, "between the frame and the sheet, not " + s.out(end));
        assertTrue(end.y() > s.grid.at(Grid.of(1740), 0).y(), "below the foot of M3b");
    }

    /** M2 laps M1 by 100 untaped at x 2550: one failure opens it, and the rise is far below the lap. */
    @Test
    void aSoundLapIsOverrunOnlyAfterAFailure() {
        Section s = new Section(2550, 780, 1000);
        WaterSigns.Way way = s.way().orElseThrow();
        assertTrue(way.failed().size() > 1, "dashed from the edge on");
        double edge = s.grid.at(Grid.of(840), 0).y(), top = s.grid.at(Grid.of(940), 0).y();
        assertTrue(way.free().stream().allMatch(p -> p.y() >= edge - 0.7), "nothing that needs no failure gets above the edge");
        assertTrue(way.failed().stream().anyMatch(p -> p.y() < top), "it goes over the top of M1");
        assertEquals(Optional.empty(), s.water.lift(), "overrun, not lifted");
    }

    /** M1 lies outside the foot of M2, both edges rising by one in four: at x 1200 from +1000 to +1200, at x 600 from +850 to +1050. */
    @Test
    void inASlopedReversedLapWaterGetsBehindWhereThePlaneMeetsTheEdges() {
        Evidence sloped = sloped();
        for (double x : new double[] {600, 1200}) {
            double foot = 700 + x / 4, edge = foot + 200;
            Section s = new Section(sloped, x, foot - 100, edge + 100);
            WaterSigns.Way way = s.way().orElseThrow();
            double inner = s.strands.out(0), outer = s.strands.out(1);
            assertTrue(s.outAt(way.free(), s.grid.at(Grid.of(edge + 30), 0).y()) > inner, "above the lap it is on M2");
            double inLap = s.outAt(way.free(), s.grid.at(Grid.of(foot + 100), 0).y());
            assertTrue(inLap > inner && inLap < outer, "between the two sheets, not " + inLap);
            PaperPoint end = way.free().get(way.free().size() - 1);
            assertTrue(s.out(end) > 0 && s.out(end) < inner && end.y() > s.grid.at(Grid.of(foot), 0).y(), "on the frame below the foot of M2");
        }
    }

    private static Evidence sloped() {
        List<Piece> pieces = List.of(
                SampleWall.piece("M2", MaterialKind.MEMBRANE, SampleWall.ring(SampleWall.pt(0, 700), SampleWall.pt(2400, 1300), SampleWall.pt(2400, 2080),
                        SampleWall.pt(0, 2080)), List.of(), List.of()),
                SampleWall.piece("M1", MaterialKind.MEMBRANE, SampleWall.ring(SampleWall.pt(0, -40), SampleWall.pt(2400, -40), SampleWall.pt(2400, 1500),
                        SampleWall.pt(0, 900)), List.of(), List.of()));
        Elevation base = SampleWall.elevation();
        return Evidence.of(new Elevation("sloped", base.practice(), base.exposure(), SampleWall.outline(2400, 2000, OptionalLong.empty()), List.of(), List.of(),
                base.materials(), pieces, List.of()), Stage.WRAP, Practices.find("au-abcb-2022").orElseThrow());
    }

    @Test
    void whereNothingReachesTheFrameNothingIsDrawn() {
        assertEquals(Optional.empty(), new Section(2550, 400, 600).way());
    }

    /** A plumb section at a place of a wall. */
    private static final class Section {
        private final Evidence evidence;
        private final CutStack stack;
        private final SectionGrid grid;
        private final SectionStrands strands;
        private final SectionWater water;

        Section(double x, double from, double to) {
            this(EVIDENCE, x, from, to);
        }

        Section(Evidence evidence, double x, double from, double to) {
            this.evidence = evidence;
            stack = CutStack.of(evidence, new Cut(true, SampleWall.pt(x, (from + to) / 2), Grid.of(from), Grid.of(to)));
            grid = new SectionGrid(true, 5, 100, 100, Grid.of((from + to) / 2));
            strands = new SectionStrands(stack, grid, 8);
            water = new SectionWater(evidence, stack, grid, strands, 8);
        }

        Optional<WaterSigns.Way> way() {
            List<Arrival> all = evidence.trace().arrivals();
            return water.find(all);
        }

        /** Distance from the frame where a line first comes to a height on paper. */
        double outAt(List<PaperPoint> line, double y) {
            for (int i = 0; i + 1 < line.size(); i++) {
                PaperPoint a = line.get(i), b = line.get(i + 1);
                if ((a.y() - y) * (b.y() - y) <= 0 && a.y() != b.y()) {
                    return out(a.towards(b, (y - a.y()) / (b.y() - a.y())));
                }
            }
            throw new AssertionError("the line does not come to " + y);
        }

        double out(PaperPoint p) {
            return grid.face() - p.x();
        }
    }
}
