package rainlap.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rainlap.paper.Mark;
import rainlap.paper.PaperBox;
import rainlap.paper.Polyline;

/** A column of sections, filled from the top: two plumb ones share a row, others take the whole width. */
final class SectionColumn {
    private static final double GAP = 3;
    private static final double GAP_BELOW = 1;
    private final PaperBox slot;
    private final List<Mark> marks = new ArrayList<>();
    private double top;
    private Optional<PaperBox> half = Optional.empty();

    SectionColumn(PaperBox slot) {
        this.slot = slot;
        this.top = slot.top();
    }

    /** Whether there is room for one more. */
    boolean fits(boolean halfWidth, double height) {
        return isBeside(halfWidth, height) || top + height <= slot.bottom() + 0.01;
    }

    /** Whether it would share the last row, which may grow. */
    boolean isBeside(boolean halfWidth, double height) {
        return halfWidth && half.filter(h -> h.top() + height <= slot.bottom() + 0.01).isPresent();
    }

    /** Takes the room that {@link #fits} found. */
    PaperBox take(boolean halfWidth, double height) {
        if (isBeside(halfWidth, height)) {
            PaperBox free = half.get();
            half = Optional.empty();
            top = Math.max(top, free.top() + height + GAP_BELOW);
            return new PaperBox(free.left(), free.top(), free.right(), Math.max(free.bottom(), free.top() + height));
        }
        if (top > slot.top()) {
            marks.add(Polyline.line(slot.left(), top - 0.6, slot.right(), top - 0.6, Looks.RULE));
        }
        half = Optional.empty();
        PaperBox row = new PaperBox(slot.left(), top, slot.right(), top + height);
        top += height + GAP_BELOW;
        if (!halfWidth) {
            return row;
        }
        double width = (slot.width() - GAP) / 2;
        half = Optional.of(new PaperBox(row.right() - width, row.top(), row.right(), row.bottom()));
        return new PaperBox(row.left(), row.top(), row.left() + width, row.bottom());
    }

    /** The second half of the last row stays free. */
    void endRow() {
        half = Optional.empty();
    }

    void add(Mark mark) {
        marks.add(mark);
    }

    /** What is left beneath. */
    PaperBox rest() {
        return new PaperBox(slot.left(), Math.min(top, slot.bottom()), slot.right(), slot.bottom());
    }

    List<Mark> marks() {
        return marks;
    }

    boolean isEmpty() {
        return marks.isEmpty();
    }
}
