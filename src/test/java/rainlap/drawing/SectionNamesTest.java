package rainlap.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import rainlap.Shipped;
import rainlap.check.WeakPoint;
import rainlap.mend.Answer;
import rainlap.paper.Group;
import rainlap.paper.Mark;
import rainlap.paper.PaperBox;
import rainlap.paper.Polyline;
import rainlap.paper.SheetCheck;
import rainlap.paper.Text;
import rainlap.rule.Evidence;

/** Every piece that a section cuts has its name beside it, as drawn and as it should be, in the columns of A3 and of A4. */
class SectionNamesTest {
    private static final double[] HALVES = {44.75, 39.75};
    private static final double[] WHOLE = {92.5, 91.5, 82.5};

    @ParameterizedTest
    @MethodSource("rainlap.drawing.SectionWordsTest#walls")
    void noneIsMissing(Shipped wall) {
        List<String> missing = new ArrayList<>();
        Evidence e = wall.result().evidence();
        for (WeakPoint p : wall.result().weakPoints()) {
            if (CloseUp.of(p, e).isEmpty()) {
                SectionPlan plan = new SectionPlanner(e).plans(p, SectionPlanes.SHARES).get(0);
                for (double width : plan.cut().plumb() ? HALVES : WHOLE) {
                    PaperBox cell = PaperBox.ofSize(0, 0, width, plan.cut().plumb() ? SectionView.PLUMB_HEIGHT : SectionView.LEVEL_HEIGHT);
                    SectionView drawn = new SectionView(plan, e, cell, SectionCell.HEAD);
                    drawn.drawCut(e);
                    crossed(drawn.marks()).forEach(t -> missing.add(p.number() + ", " + width + " wide: leader through " + t));
                    drawn.unnamed().forEach(id -> missing.add(p.number() + " " + p.finding().rule() + ", " + width + " wide: " + id));
                    MendedCuts.of(p, plan.cut(), e).flatMap(Answer::mended).ifPresent(m -> {
                        PaperBox second = PaperBox.ofSize(0, 0, width, plan.cut().plumb() ? SectionView.PLUMB_HEIGHT : SectionView.LEVEL_HEIGHT - SectionCell.HEAD);
                        SectionView should = new SectionView(MendedGauge.in(plan, m), m.evidence(), second, plan.cut().plumb() ? SectionCell.HEAD : 0);
                        should.drawMended();
                        crossed(should.marks()).forEach(t -> missing.add(p.number() + " mended, " + width + " wide: leader through " + t));
                        should.unnamed().forEach(id -> missing.add(p.number() + " " + p.finding().rule() + " mended, " + width + " wide: " + id));
                    });
                }
            }
        }
        assertEquals(List.of(), missing);
    }

    /** Words that a leader runs through or along, its own among them. */
    private static List<String> crossed(List<Mark> marks) {
        List<Polyline> leaders = marks.stream().filter(m -> m instanceof Group g && g.classes().contains(SheetCheck.LEADER)).map(m -> (Polyline) ((Group) m).marks().get(0)).toList();
        return marks.stream().filter(m -> m instanceof Text).map(m -> (Text) m)
                .filter(t -> leaders.stream().flatMap(l -> l.segments().stream()).anyMatch(t.box().grown(0.3)::meets)).map(Text::text).toList();
    }
}
