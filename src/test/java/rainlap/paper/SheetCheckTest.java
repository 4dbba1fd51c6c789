package rainlap.paper;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;

class SheetCheckTest {

    private static final TextStyle STYLE = TextStyle.of(2.5);

    @Test
    void theFrameItselfIsSoundOnBothSizes() {
        for (SheetSize size : SheetSize.values()) {
            assertEquals(List.of(), SheetCheck.of(new Sheet(size, "t", "en", List.of(Frame.of(size)))));
        }
    }

    @Test
    void textsThatTouchAreSoundTextsThatMeetAreNot() {
        Text first = Text.of(50, 50, "reversed", STYLE);
        assertEquals(List.of(), kinds(first, Text.of(50 + first.width(), 50, "lap", STYLE)));
        assertEquals(List.of(SheetCheck.Kind.TEXTS_MEET), kinds(first, Text.of(49.9 + first.width(), 50, "lap", STYLE)));
    }

    @Test
    void textUnderTwoAndAHalfIsTooSmall() {
        assertEquals(List.of(), kinds(Text.of(50, 50, "a", TextStyle.of(2.5))));
        assertEquals(List.of(SheetCheck.Kind.TEXT_TOO_SMALL), kinds(Text.of(50, 50, "a", TextStyle.of(2.49))));
    }

    @Test
    void marksStayInsideTheFrame() {
        Edge edge = Edge.of(Pen.THIN);
        assertEquals(List.of(), kinds(Polyline.line(20, 10, 410, 287, edge)));
        assertEquals(List.of(SheetCheck.Kind.OUTSIDE_FRAME), kinds(Polyline.line(19.9, 20, 40, 20, edge)));
        assertEquals(List.of(SheetCheck.Kind.OUTSIDE_SHEET), kinds(Polyline.line(30, 20, 421, 20, edge)));
        assertEquals(List.of(), kinds(new Clip(PaperRegion.of(new PaperBox(30, 15, 60, 30)),
                List.of(Polyline.line(-30, 20, 421, 20, edge)))));
    }

    @Test
    void anIdNamesOneGroup() {
        assertEquals(List.of(SheetCheck.Kind.ID_TWICE), kinds(Group.of("a", List.of()), Group.of("b", List.of()), Group.of("a", List.of())));
    }

    @Test
    void leadersCrossNeitherEachOtherNorText() {
        Group first = leader(50, 50, 100, 50);
        assertEquals(List.of(), kinds(first, leader(50, 60, 100, 60), leader(60, 40, 100, 50)));
        assertEquals(List.of(SheetCheck.Kind.LEADERS_CROSS), kinds(first, leader(60, 40, 60, 60)));
        assertEquals(List.of(SheetCheck.Kind.LEADERS_CROSS), kinds(first, leader(60, 50, 100, 50)));
        assertEquals(List.of(SheetCheck.Kind.LEADER_OVER_TEXT), kinds(first, Text.of(60, 51, "over", STYLE)));
        assertEquals(List.of(), kinds(first, Text.of(60, 53, "under", STYLE)));
    }

    @Test
    void labelsMeetNeitherEachOtherNorLeaders() {
        Group first = label(50, 50);
        assertEquals(List.of(), kinds(first, label(50, 57.1), leader(57, 53.5, 80, 53.5)));
        assertEquals(List.of(SheetCheck.Kind.LABELS_MEET), kinds(first, label(56.9, 50)));
        assertEquals(List.of(SheetCheck.Kind.LEADER_OVER_LABEL), kinds(first, leader(40, 53, 80, 54)));
    }

    @Test
    void textStandsOutFromWhatLiesBeneath() {
        Text text = Text.of(50, 50, "lap", STYLE);
        Area dark = Area.filled(PaperRegion.of(new PaperBox(51, 40, 60, 60)), Tone.of("#777777"));
        assertEquals(List.of(SheetCheck.Kind.TEXT_FAINT), kinds(dark, text));
        assertEquals(List.of(), kinds(dark, new Halo(text, Tone.WHITE, 1.1), text));
        assertEquals(List.of(), kinds(new Area(dark.region(), java.util.Optional.of(new Fill(Tone.of("#777777"), 0.2)), java.util.Optional.empty()), text));
        assertEquals(List.of(), kinds(new Clip(PaperRegion.of(new PaperBox(80, 40, 90, 60)), List.of(dark)), text), "what is clipped away lies beneath nothing");
    }

    /** Red on green differs in colour only. */
    @Test
    void textStandsOutInGreyToo() {
        Area ground = Area.filled(PaperRegion.of(new PaperBox(40, 40, 70, 60)), Tone.of("#00ffff"));
        assertEquals(List.of(SheetCheck.Kind.TEXT_FAINT), kinds(ground, Text.of(50, 50, "lap", STYLE.with(Tone.of("#ff2200")))));
        assertEquals(List.of(), kinds(ground, Text.of(50, 50, "lap", STYLE)));
    }

    @Test
    void nothingCoversAText() {
        Text text = Text.of(50, 50, "lap", STYLE);
        assertEquals(List.of(SheetCheck.Kind.TEXT_COVERED), kinds(text, Disc.filled(new PaperPoint(51, 49), 1, Tone.WHITE)));
        assertEquals(List.of(), kinds(text, Disc.filled(new PaperPoint(48, 49), 1, Tone.WHITE)));
    }

    /** Room kept round the text, or a box painted beneath it, takes the circle's line away; what is painted beneath the circle does not. */
    @Test
    void noCircleRunsThroughAText() {
        Disc circle = Disc.ring(new PaperPoint(45, 49), 6, Edge.of(Pen.THIN_DASH_DOT));
        Text text = Text.of(50, 50, "J4", STYLE), beside = Text.of(54, 50, "J4", STYLE);
        Halo halo = new Halo(text, Tone.WHITE, 0.9);
        Area box = Area.of(PaperRegion.of(text.box().grown(0.5)), Tone.WHITE, Edge.of(Pen.THIN));
        List<SheetCheck.Kind> through = List.of(SheetCheck.Kind.CIRCLE_OVER_TEXT);
        assertEquals(through, kinds(box, text, circle));
        assertEquals(through, kinds(circle, text));
        assertEquals(through, kinds(halo, circle, text));
        assertEquals(List.of(), kinds(circle, halo, text));
        assertEquals(List.of(), kinds(circle, box, text));
        assertEquals(List.of(), kinds(beside, circle));
        assertEquals(List.of(), kinds(text, new Clip(PaperRegion.of(new PaperBox(40, 40, 50, 60)), List.of(circle))), "what is clipped away runs through nothing");
    }

    private static Group label(double x, double y) {
        return Group.of(List.of(Area.filled(PaperRegion.of(new PaperBox(x, y, x + 7, y + 7)), Tone.WHITE))).withClass(SheetCheck.LABEL);
    }

    private static Group leader(double x1, double y1, double x2, double y2) {
        return Group.of(List.of(Polyline.line(x1, y1, x2, y2, Edge.of(Pen.NARROW)))).withClass(SheetCheck.LEADER);
    }

    private static List<SheetCheck.Kind> kinds(Mark... marks) {
        return SheetCheck.of(new Sheet(SheetSize.A3, "t", "en", List.of(marks))).stream().map(SheetCheck.Violation::kind).toList();
    }
}
