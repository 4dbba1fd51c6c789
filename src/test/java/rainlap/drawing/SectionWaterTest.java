package rainlap.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import rainlap.geom.Grid;
import rainlap.paper.PaperPoint;
import rainlap.rule.Evidence;
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

    @Test
    void whereNothingReachesTheFrameNothingIsDrawn() {
        assertEquals(Optional.empty(), new Section(2550, 400, 600).way());
    }

    /** A plumb section at a place of the sample wall. */
    private static final class Section {
        private final CutStack stack;
        private final SectionGrid grid;
        private final SectionStrands strands;
        private final SectionWater water;

        Section(double x, double from, double to) {
            stack = CutStack.of(EVIDENCE, new Cut(true, SampleWall.pt(x, (from + to) / 2), Grid.of(from), Grid.of(to)));
            grid = new SectionGrid(true, 5, 100, 100, Grid.of((from + to) / 2));
            strands = new SectionStrands(stack, grid, 8);
            water = new SectionWater(EVIDENCE, stack, grid, strands, 8);
        }

        Optional<WaterSigns.Way> way() {
            List<Arrival> all = EVIDENCE.trace().arrivals();
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
