package rainlap.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import rainlap.Shipped;
import rainlap.check.WeakPoint;
import rainlap.mend.Answer;
import rainlap.paper.Area;
import rainlap.paper.Mark;
import rainlap.paper.PaperBox;
import rainlap.paper.PaperPoint;
import rainlap.paper.PaperRegion;
import rainlap.paper.PaperSegment;
import rainlap.paper.Text;

/** In the oblique view of a corner the name of the sheet on the face stands over no border of what is stuck onto it, as drawn and as it should be. */
class FaceNameTest {
    private static final String NAME = "M\\d.*";
    private static final double[] WIDTHS = {82.5, 92.5};

    @ParameterizedTest
    @MethodSource("rainlap.drawing.SectionWordsTest#walls")
    void standsOverNoBorder(Shipped wall) {
        List<String> wrong = new ArrayList<>();
        for (WeakPoint p : wall.result().weakPoints()) {
            CloseUp.of(p, wall.result().evidence()).ifPresent(view -> {
                for (double width : WIDTHS) {
                    PaperBox field = new CloseUpCell(view, "A", Optional.empty()).fields(PaperBox.ofSize(0, 0, width, 100)).get(0);
                    crossed(view.drawn(field)).forEach(t -> wrong.add(p.number() + ", " + width + " wide: " + t));
                    view.answer().flatMap(Answer::mended).ifPresent(m -> crossed(view.mended(m, field)).forEach(t -> wrong.add(p.number() + " mended, " + width + " wide: " + t)));
                }
            });
        }
        assertEquals(List.of(), wrong);
    }

    /** Between two tapes there is room for the sheet's name, though not for more. */
    @Test
    void aShortNameFindsRoomWhereALongOneDoesNot() {
        Shipped rear = Shipped.all().stream().filter(w -> w.file().equals("bakery-trailer-rear")).findFirst().orElseThrow();
        CloseUp view = CloseUp.of(rear.result().weakPoints().get(0), rear.result().evidence()).orElseThrow();
        PaperBox field = new CloseUpCell(view, "A", Optional.empty()).fields(PaperBox.ofSize(0, 0, WIDTHS[1], 100)).get(0);
        assertEquals(1, view.drawn(field).stream().filter(m -> m instanceof Text t && t.text().equals("M3")).count());
        PaperBox strip = PaperBox.ofSize(0, 0, 40, 8);
        assertEquals(Optional.of("M3 on the face"), FaceName.in(strip, "M3", List.of()).map(Text::text));
        assertEquals(Optional.empty(), FaceName.in(strip, "M3", List.of(PaperRegion.of(strip))));
    }

    private static List<String> crossed(List<Mark> marks) {
        List<PaperSegment> borders = marks.stream().filter(m -> m instanceof Area a && a.edge().equals(Optional.of(Looks.STRIP_EDGE)))
                .flatMap(m -> ((Area) m).region().rings().stream()).flatMap(r -> IntStream.range(0, r.size()).mapToObj(i -> side(r, i))).toList();
        return marks.stream().filter(m -> m instanceof Text).map(m -> (Text) m).filter(t -> t.text().matches(NAME)).filter(t -> borders.stream().anyMatch(t.box()::meets)).map(Text::text).toList();
    }

    private static PaperSegment side(List<PaperPoint> ring, int i) {
        return new PaperSegment(ring.get(i), ring.get((i + 1) % ring.size()));
    }
}
