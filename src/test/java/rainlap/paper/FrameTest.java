package rainlap.paper;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

class FrameTest {

    @Test
    void marginsAreTwentyForFilingAndTenElsewhere() {
        assertEquals(new PaperBox(20, 10, 410, 287), SheetSize.A3.frame());
        assertEquals(new PaperBox(20, 10, 200, 287), SheetSize.A4.frame());
    }

    @Test
    void fieldsCountAcrossInFiguresAndDownInLettersWithoutIAndO() {
        assertEquals("1 2 3 4 5 6 7 8", names(SheetSize.A3, true));
        assertEquals("A B C D E F", names(SheetSize.A3, false));
        assertEquals("1 2 3 4", names(SheetSize.A4, true));
    }

    @Test
    void fieldsAreFiftyWideFromTheAxes() {
        Strokes ticks = Frame.of(SheetSize.A3).marks().stream().filter(Strokes.class::isInstance).map(Strokes.class::cast)
                .findFirst().orElseThrow();
        for (PaperSegment tick : ticks.segments()) {
            boolean upright = tick.from().x() == tick.to().x();
            double fromAxis = upright ? tick.from().x() - 215 : tick.from().y() - 148.5;
            assertEquals(0, fromAxis % 50, 1e-9, tick.toString());
            assertEquals(5, tick.length(), 1e-9);
        }
    }

    @Test
    void centringMarksRunFiveInsideTheFrameAndEndAtTheTrimmedEdge() {
        List<Polyline> marks = Frame.of(SheetSize.A3).marks().stream().filter(Polyline.class::isInstance)
                .map(Polyline.class::cast).toList();
        assertEquals(4, marks.size());
        for (Polyline mark : marks) {
            PaperPoint edge = mark.points().get(0);
            PaperPoint end = mark.points().get(1);
            assertTrue(edge.x() == 0 || edge.x() == 420 || edge.y() == 0 || edge.y() == 297, mark.toString());
            assertTrue(SheetSize.A3.frame().grown(-5).holds(end), mark.toString());
            assertEquals(Pen.EXTRA_WIDE, mark.edge().pen());
        }
    }

    private static String names(SheetSize size, boolean figures) {
        return Frame.of(size).marks().stream().filter(Text.class::isInstance).map(m -> ((Text) m).text())
                .filter(t -> Character.isDigit(t.charAt(0)) == figures).distinct().collect(Collectors.joining(" "));
    }
}
