package rainlap.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import rainlap.paper.Mark;
import rainlap.paper.Occupied;
import rainlap.paper.PaperBox;
import rainlap.paper.PaperPoint;
import rainlap.paper.Text;
import rainlap.paper.Tone;

/** Words among the circles round places that are drawn apart. */
class RoomTest {
    private static final PaperBox SHEET = new PaperBox(0, 0, 200, 200);
    private static final Occupied CIRCLE = new Occupied();

    static {
        CIRCLE.add(new CloseUp.Circle(new PaperPoint(50, 50), 10).line());
    }

    @Test
    void aWordLeavesACircleWholeWhereItCan() {
        assertEquals(Optional.of(text(80, 50)), room().first(List.of(text(60, 50), text(80, 50))));
        assertEquals(Optional.of(text(50, 50)), room().first(List.of(text(60, 50), text(50, 50))), "inside is off the line as well");
        assertEquals(Optional.of(box(80, 50)), room().firstOver(List.of(box(60, 50), box(80, 50))));
    }

    /** Rather a broken circle than a piece without its name. */
    @Test
    void aWordStandsOverACircleWhereItMust() {
        assertEquals(Optional.of(text(60, 50)), room().first(List.of(text(60, 50), text(40, 50))));
        assertEquals(Optional.of(box(60, 50)), room().firstOver(List.of(box(60, 50), box(40, 50))));
    }

    @Test
    void aWordBesideWhatItNamesKeepsOffTheCircleToo() {
        PaperBox target = box(54, 50);
        PaperBox there = word(new Room(new Occupied(), new Occupied(), SHEET).beside(target, "J4", Looks.STRONG, Tone.WHITE).orElseThrow());
        PaperBox off = word(room().beside(target, "J4", Looks.STRONG, Tone.WHITE).orElseThrow());
        assertFalse(CIRCLE.isFree(there), "the nearest place lies on the line");
        assertTrue(CIRCLE.isFree(off));
    }

    private static PaperBox word(List<Mark> marks) {
        return marks.stream().filter(m -> m instanceof Text).map(Mark::box).findFirst().orElseThrow();
    }

    private static Room room() {
        return new Room(new Occupied(), new Occupied(), SHEET, CIRCLE);
    }

    private static Text text(double x, double y) {
        return Text.centred(new PaperPoint(x, y), "J4", Looks.STRONG);
    }

    private static PaperBox box(double x, double y) {
        return PaperBox.around(new PaperPoint(x, y), 5, 3.7);
    }
}
