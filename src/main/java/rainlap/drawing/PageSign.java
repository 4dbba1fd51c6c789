package rainlap.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import rainlap.check.CheckResult;
import rainlap.paper.Mark;
import rainlap.paper.PaperBox;
import rainlap.paper.PaperPoint;

/**
 * A sign of a page's elevation and what it stands for.
 *
 * @param marks in {@link #BOX}
 */
public record PageSign(String words, List<Mark> marks) {
    public static final PaperBox BOX = PaperBox.ofSize(-0.5, 0, 12, 7.2);
    private static final PaperBox SIGN = PaperBox.ofSize(0, 1.7, 11, 3.8);

    public PageSign {
        marks = List.copyOf(marks);
    }

    /** Those that stand on the elevation, and no other: hatches and lines first, then the marks of weak points. Ways of water are told beside it. */
    public static List<PageSign> of(CheckResult result) {
        List<PageSign> out = new ArrayList<>();
        Legend.signs(result.evidence(), new Legend.Ways(false, false, WetPlaces.of(result).any(), false)).forEach((words, sign) -> out.add(new PageSign(words, sign.apply(SIGN))));
        result.weakPoints().stream().map(p -> Severity.of(p.finding().defences())).distinct().sorted().flatMap(PageSign::defences).forEach(out::add);
        return out;
    }

    private static Stream<PageSign> defences(Severity s) {
        PaperPoint middle = BOX.middle();
        return Stream.of(new PageSign("defences left, " + s.inWords(), s.smallMark(new PaperPoint(middle.x(), middle.y()), s.ordinal())));
    }
}
