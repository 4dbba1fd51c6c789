package rainlap.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import rainlap.Shipped;
import rainlap.check.CheckResult;
import rainlap.check.WeakPoint;
import rainlap.material.Layer;
import rainlap.mend.Answer;
import rainlap.mend.Mended;
import rainlap.paper.PaperPoint;
import rainlap.paper.PaperSegment;
import rainlap.rule.Evidence;
import rainlap.wall.Stage;

/** Pieces of the wrap lie over one another in a cut and never through one another: not where they come down off others, over the shelf of a flashing, or past its end dam. */
class PiecesInCutsTest {
    private static final double DEPTH = 20;

    @Test
    void noPieceIsDrawnThroughAnother() {
        Map<String, Set<String>> through = new TreeMap<>();
        EveryWeakPointHasItsSectionTest.everything((name, result) -> {
            for (WeakPoint p : cut(result)) {
                Evidence e = result.evidence();
                SectionPlan plan = new SectionPlanner(e).plan(p, 0.5);
                add(through, name + " " + p.number() + " " + p.finding().rule() + " as drawn", e, plan);
                MendedCuts.of(p, plan.cut(), e).flatMap(Answer::mended).map(Mended::evidence)
                        .ifPresent(m -> add(through, name + " " + p.number() + " " + p.finding().rule() + " mended", m, plan));
            }
        });
        assertEquals(Map.of(), through, () -> String.join("\n", through.entrySet().stream().map(Object::toString).toList()));
    }

    private static List<WeakPoint> cut(CheckResult r) {
        return r.weakPoints().stream().filter(w -> CloseUp.of(w, r.evidence()).isEmpty()).toList();
    }

    private static void add(Map<String, Set<String>> through, String name, Evidence e, SectionPlan plan) {
        CutStack stack = CutStack.of(e, plan.cut(), e.stage() == Stage.FINISHED);
        SectionStrands strands = new SectionStrands(stack, new SectionGrid(plan.cut().plumb(), plan.scale(), 0, 0, plan.cut().centre()), DEPTH);
        Set<String> found = new TreeSet<>();
        List<CutStack.Strand> all = stack.strands();
        for (int i = 0; i < all.size(); i++) {
            for (int k = i + 1; k < all.size(); k++) {
                if (isWrap(all.get(i)) && isWrap(all.get(k)) && cross(strands.paths(all.get(i)), strands.paths(all.get(k)))) {
                    found.add(all.get(i).piece().id() + "/" + all.get(k).piece().id());
                }
            }
        }
        if (!found.isEmpty()) {
            through.put(name, found);
        }
    }

    /** Cladding and battens that run down into a flashing are drawn as the file has them. */
    private static boolean isWrap(CutStack.Strand s) {
        return s.piece().material().layer() == Layer.WRAP;
    }

    private static boolean cross(List<List<PaperPoint>> a, List<List<PaperPoint>> b) {
        return segments(a).stream().anyMatch(s -> segments(b).stream().anyMatch(s::meets));
    }

    /** Short of both ends: edges may meet. */
    private static List<PaperSegment> segments(List<List<PaperPoint>> paths) {
        return paths.stream().map(PiecesInCutsTest::shortened).flatMap(p -> java.util.stream.IntStream.range(0, p.size() - 1).mapToObj(i -> new PaperSegment(p.get(i), p.get(i + 1)))).toList();
    }

    private static List<PaperPoint> shortened(List<PaperPoint> path) {
        List<PaperPoint> out = new ArrayList<>(path);
        PaperPoint a = path.get(0), b = path.get(path.size() - 1);
        out.set(0, a.towards(path.get(1), Math.min(0.4, 0.1 / Math.max(1e-9, a.distance(path.get(1))))));
        out.set(path.size() - 1, b.towards(path.get(path.size() - 2), Math.min(0.4, 0.1 / Math.max(1e-9, b.distance(path.get(path.size() - 2))))));
        return out;
    }
}
