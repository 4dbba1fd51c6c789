package rainlap.drawing;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import rainlap.Shipped;
import rainlap.check.CheckResult;
import rainlap.check.WeakPoint;
import rainlap.mend.Answer;
import rainlap.mend.Mended;
import rainlap.paper.PaperPoint;
import rainlap.paper.PaperSegment;

/** A loose tape that hangs a little over the ends of a new one beneath it: drawn down to them the two would look like a ring. */
class LooseTapeTest {
    /** Of a strip as drawn, printed mm. */
    private static final double WIDTH = 0.7;

    @Test
    void aLooseTapeAndTheNewOneBeneathItAreTwo() {
        CheckResult trailer = Shipped.all().stream().filter(w -> w.file().equals("bakery-trailer-right")).findFirst().orElseThrow().result();
        WeakPoint p = trailer.weakPoints().stream().filter(w -> w.finding().rule().equals("untaped-joint")).findFirst().orElseThrow();
        SectionPlan plan = new SectionPlanner(trailer.evidence()).plan(p, 0.5);
        Mended mended = MendedCuts.of(p, plan.cut(), trailer.evidence()).flatMap(Answer::mended).orElseThrow();
        CutStack stack = CutStack.of(mended.evidence(), plan.cut());
        SectionStrands strands = new SectionStrands(stack, new SectionGrid(plan.cut().plumb(), plan.scale(), 0, 0, plan.cut().centre()), 8);
        List<PaperSegment> loose = segments(stack, strands, "T3"), fresh = segments(stack, strands, "tape 50");
        assertTrue(loose.size() > 1 && fresh.size() > 1, "both are cut");
        for (PaperSegment a : loose) {
            for (PaperSegment b : fresh) {
                double apart = Math.min(Math.min(a.distance(b.from()), a.distance(b.to())), Math.min(b.distance(a.from()), b.distance(a.to())));
                assertTrue(apart > WIDTH, a + " touches " + b);
            }
        }
    }

    private static List<PaperSegment> segments(CutStack stack, SectionStrands strands, String id) {
        return stack.strands().stream().filter(s -> s.piece().id().equals(id)).flatMap(s -> strands.paths(s).stream()).flatMap(LooseTapeTest::segments).toList();
    }

    private static Stream<PaperSegment> segments(List<PaperPoint> path) {
        return IntStream.range(0, path.size() - 1).mapToObj(i -> new PaperSegment(path.get(i), path.get(i + 1)));
    }
}
