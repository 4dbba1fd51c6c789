package rainlap.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rainlap.check.WeakPoint;
import rainlap.joint.OpeningCorner;
import rainlap.mend.Mended;
import rainlap.paper.Group;
import rainlap.paper.Mark;
import rainlap.paper.PaperBox;
import rainlap.paper.Text;
import rainlap.paper.TextMetrics;
import rainlap.rule.Evidence;

/** A corner of an opening in its cell: as drawn, and as it should be beneath it or in a cell of its own. */
final class CornerCell {
    static final double HEIGHT = 48;
    /** Of the corner as it should be, which has no head of its own. */
    private static final double SECOND = 44;
    /** Room for the sentence beside it. */
    private static final double BESIDE = 33;
    private static final int MOST_LINES = 8;
    private final WeakPoint point;
    private final String letter;
    private final Evidence evidence;
    private final OpeningCorner corner;

    CornerCell(WeakPoint point, String letter, Evidence evidence, OpeningCorner corner) {
        this.point = point;
        this.letter = letter;
        this.evidence = evidence;
        this.corner = corner;
    }

    static double pairHeight() {
        return HEIGHT + SECOND;
    }

    static int scale(OpeningCorner corner, PaperBox cell) {
        return CornerView.scale(corner, field(cell).height());
    }

    private static PaperBox field(PaperBox cell) {
        return new PaperBox(cell.left() + BESIDE + 4, cell.top() + 6, cell.right() - 9, cell.bottom() - 0.5);
    }

    private Group group(List<Mark> marks) {
        return Group.of("section-" + letter, marks).withData("weak", Integer.toString(point.number()));
    }

    private List<Mark> head(PaperBox cell, String after) {
        return SectionCell.head(cell, letter, SectionCell.title(point.finding()) + " of " + TextMetrics.shorten(corner.opening().id(), 14, Looks.STRONG) + after,
                "1:" + scale(corner, cell) + ", oblique view", List.of(point));
    }

    /** As drawn, and why there is nothing beside it. */
    Group drawn(PaperBox cell, Optional<String> because) {
        List<Mark> out = new ArrayList<>(head(cell, ""));
        out.addAll(CornerView.marks(point.finding(), corner, evidence, field(cell), ""));
        List<String> note = because.map(s -> TextMetrics.wrap(s, BESIDE, Looks.PLAIN)).orElse(List.of());
        List<String> words = new ArrayList<>(SectionCell.sentence(point.finding(), BESIDE, Math.max(2, MOST_LINES - note.size())));
        words.addAll(note);
        out.addAll(SectionCell.text(words, cell.left(), cell.top() + 17.4));
        return group(out);
    }

    /** As drawn, and as it should be beneath it. */
    Group pair(PaperBox cell, Mended mended) {
        PaperBox first = new PaperBox(cell.left(), cell.top(), cell.right(), cell.top() + HEIGHT), second = new PaperBox(cell.left(), first.bottom(), cell.right(), cell.bottom());
        List<Mark> out = new ArrayList<>(head(first, ""));
        out.addAll(CornerView.marks(point.finding(), corner, evidence, field(first), ""));
        out.add(Text.of(cell.left(), cell.top() + 17.4, SectionPair.DRAWN, Looks.STRONG));
        out.addAll(SectionCell.text(SectionCell.sentence(point.finding(), BESIDE, MOST_LINES - 1), cell.left(), cell.top() + 17.4 + Looks.LINE));
        out.add(Group.of("mended-" + letter, should(mended, new PaperBox(second.left(), second.top() - 5, second.right(), second.bottom()), second.top() + 4)));
        return group(out);
    }

    /** As it should be alone, where both do not find room together. */
    Group mended(PaperBox cell, Mended mended) {
        List<Mark> out = new ArrayList<>(head(cell, ""));
        out.addAll(should(mended, cell, cell.top() + 17.4));
        return Group.of("mended-" + letter, out).withData("weak", Integer.toString(point.number()));
    }

    private List<Mark> should(Mended mended, PaperBox cell, double top) {
        List<Mark> out = new ArrayList<>(picture(mended, field(cell)));
        out.add(Text.of(cell.left(), top, SectionPair.SHOULD, Looks.STRONG));
        out.addAll(SectionCell.text(TextMetrics.wrap(String.join(" ", mended.what()), BESIDE, Looks.PLAIN), cell.left(), top + Looks.LINE));
        return out;
    }

    private List<Mark> picture(Mended mended, PaperBox field) {
        String named = mended.added().stream().findFirst().orElse(point.finding().pieces().get(point.finding().pieces().size() - 1));
        return CornerView.marks(point.finding(), CornerView.same(corner, mended.evidence()), mended.evidence(), field, named);
    }

    /** The view alone, for where head and words are set beside it. */
    SectionPicture picture() {
        PaperBox cell = PaperBox.ofSize(0, 0, Slots.SECTIONS.width(), HEIGHT);
        return new SectionPicture(CornerView.marks(point.finding(), corner, evidence, field(cell), ""), "1:" + scale(corner, cell) + ", oblique view");
    }

    /** The same as it should be. */
    SectionPicture picture(Mended mended) {
        PaperBox cell = PaperBox.ofSize(0, 0, Slots.SECTIONS.width(), HEIGHT);
        return new SectionPicture(picture(mended, field(cell)), "1:" + scale(corner, cell) + ", oblique view");
    }
}
