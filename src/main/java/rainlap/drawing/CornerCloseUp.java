package rainlap.drawing;

import java.util.List;
import java.util.Optional;
import rainlap.check.WeakPoint;
import rainlap.joint.OpeningCorner;
import rainlap.mend.Answer;
import rainlap.mend.Mended;
import rainlap.paper.Mark;
import rainlap.paper.PaperBox;
import rainlap.paper.TextMetrics;
import rainlap.rule.Evidence;

/** The corner of an opening, seen aslant. */
record CornerCloseUp(WeakPoint point, Evidence evidence, OpeningCorner corner) implements CloseUp {

    @Override
    public String title() {
        return SectionCell.title(point.finding()) + " of " + TextMetrics.shorten(corner.opening().id(), 14, Looks.STRONG);
    }

    @Override
    public String seen() {
        return "oblique view";
    }

    @Override
    public int scale(PaperBox field) {
        return CornerView.scale(corner, field.height());
    }

    @Override
    public Circle circle(View elevation) {
        PaperBox square = elevation.box(CornerView.square(corner));
        return new Circle(square.middle(), Math.max(square.width(), square.height()) * 0.8 + 3);
    }

    @Override
    public Object shows() {
        return corner;
    }

    @Override
    public Optional<Answer> answer() {
        return MendedCuts.ofCorner(point, evidence);
    }

    @Override
    public List<Mark> drawn(PaperBox field) {
        return CornerView.marks(point.finding(), corner, evidence, field, "");
    }

    @Override
    public List<Mark> mended(Mended mended, PaperBox field) {
        String named = mended.added().stream().findFirst().orElse(point.finding().pieces().get(point.finding().pieces().size() - 1));
        return CornerView.marks(point.finding(), CornerView.same(corner, mended.evidence()), mended.evidence(), field, named);
    }
}
