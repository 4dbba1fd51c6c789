package rainlap.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import rainlap.Shipped;
import rainlap.check.WeakPoint;
import rainlap.geom.Box;
import rainlap.geom.Point;
import rainlap.rule.Evidence;

/** The frame in a section is where the wall is: not above a raked top, nor up through an opening. */
class FrameInSectionTest {

    @ParameterizedTest
    @MethodSource("rainlap.drawing.SectionWordsTest#walls")
    void isDrawnWhereThereIsOne(Shipped wall) {
        List<String> wrong = new ArrayList<>();
        Evidence e = wall.result().evidence();
        SectionPlanner planner = new SectionPlanner(e);
        for (WeakPoint p : wall.result().weakPoints()) {
            if (CloseUp.of(p, e).isEmpty()) {
                for (SectionPlan plan : planner.plans(p, SectionPlanes.SHARES)) {
                    CutStack stack = CutStack.of(e, plan.cut());
                    if (plan.cut().plumb() && isOnThisWall(e, plan.cut().across()) && !stack.isThreshold() && !isWall(e, plan.cut(), (stack.frameFrom() + stack.frameTo()) / 2)) {
                        wrong.add(p.number() + " " + p.finding().rule() + " " + plan.cut());
                    }
                }
            }
        }
        assertEquals(List.of(), wrong);
    }

    /** Beyond its ends the sheets lie on the frame of the next wall. */
    private static boolean isOnThisWall(Evidence e, long x) {
        Box wall = e.elevation().outline().box();
        return wall.minX() <= x && x <= wall.maxX();
    }

    private static boolean isWall(Evidence e, Cut cut, double y) {
        Point p = new Point(cut.across(), Math.round(y));
        boolean onEdge = e.elevation().outline().edges().stream().anyMatch(o -> (o.line().isLevel() || o.line().isPlumb()) && o.line().box().grow(1).contains(p));
        return (onEdge || e.elevation().outline().region().covers(p.x(), y)) && e.elevation().openings().stream().map(o -> o.rect().grow(-1)).noneMatch(o -> o.contains(p));
    }
}
