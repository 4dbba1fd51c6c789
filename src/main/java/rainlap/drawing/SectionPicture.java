package rainlap.drawing;

import java.util.List;
import rainlap.paper.Mark;
import rainlap.paper.PaperBox;

/**
 * A section or the view of a corner by itself.
 *
 * @param scale in words: {@code 1:5, thickness × 10}
 */
public record SectionPicture(List<Mark> marks, String scale) {
    private static final double MARGIN = 1;

    public SectionPicture {
        marks = List.copyOf(marks);
    }

    /** All of it, with a little room round it, printed mm. */
    public PaperBox box() {
        return marks.stream().map(Mark::box).reduce(PaperBox::with).orElseThrow().grown(MARGIN);
    }
}
