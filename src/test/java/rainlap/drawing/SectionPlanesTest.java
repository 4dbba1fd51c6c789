package rainlap.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import rainlap.paper.Group;
import rainlap.paper.Mark;
import rainlap.paper.Occupied;
import rainlap.paper.PaperBox;
import rainlap.paper.PaperPoint;
import rainlap.paper.Text;

class SectionPlanesTest {

    /** The upper and the lower corner of a low window: B stands up right of the lower circle only if that is not beside the upper one. */
    @Test
    void aLetterStandsNearItsOwnCircleAlone() {
        SectionPlanes planes = new SectionPlanes(new View(20, 0, 0), new Occupied(), new PaperBox(0, 0, 400, 290));
        PaperPoint upper = new PaperPoint(100, 100), lower = new PaperPoint(100, 117);
        planes.circle(upper, 8, "A");
        planes.circle(lower, 8, "B");
        List<Text> letters = new ArrayList<>();
        texts(planes.group(), letters);
        Text b = letters.stream().filter(t -> t.text().equals("B")).findFirst().orElseThrow();
        assertEquals(2, letters.size());
        assertTrue(b.box().middle().y() > lower.y(), "below, away from the upper circle");
    }

    /** A figure of the dimensions beneath the wall has no room kept round it, so the circle of a place low down gives way to a leader. */
    @Test
    void aCircleThatWouldRunThroughWordsIsLeftAway() {
        Text figure = Text.of(98, 109, "1200", Looks.PLAIN);
        SectionPlanes planes = new SectionPlanes(new View(20, 0, 0), new Occupied(), new PaperBox(0, 0, 400, 290));
        planes.keepCirclesOff(Occupied.byTexts(List.of(figure)));
        assertTrue(planes.circle(new PaperPoint(100, 100), 8, "A"), "its letter stands there all the same");
        assertTrue(planes.circle(new PaperPoint(200, 100), 8, "B"));
        assertEquals(List.of(PaperBox.around(new PaperPoint(200, 100), 16, 16)), planes.circles().orElseThrow().marks().stream().map(Mark::box).toList());
        List<Text> letters = new ArrayList<>();
        texts(planes.group(), letters);
        assertEquals(List.of("A", "B"), letters.stream().map(Text::text).toList());
    }

    private static void texts(Mark m, List<Text> out) {
        if (m instanceof Group g) {
            g.marks().forEach(x -> texts(x, out));
        } else if (m instanceof Text t) {
            out.add(t);
        }
    }
}
