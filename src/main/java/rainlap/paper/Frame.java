package rainlap.paper;

import java.util.ArrayList;
import java.util.List;

/**
 * The frame of a sheet after ISO 5457 (read in secondary text; trimming marks from memory): frame 0.7 wide, centring
 * marks running 5 mm inside it, a grid of 50 mm fields from the axes of symmetry with letters down and figures across,
 * trimming marks in the corners.
 */
public final class Frame {

    /** Id of the frame's group. */
    public static final String ID = "sheet-frame";

    private static final double FIELD = 50;
    private static final double STRIP = 5;
    private static final double CENTRING_INSIDE = 5;
    private static final String LETTERS = "ABCDEFGHJKLMNPQRSTUVWXYZ";
    private static final Edge THIN = Edge.of(Pen.THIN);
    private static final Edge FRAME = Edge.of(Pen.EXTRA_WIDE);

    private Frame() {
    }

    /** Everything of the frame as one group with the id {@link #ID}. */
    public static Group of(SheetSize size) {
        List<Mark> marks = new ArrayList<>();
        PaperBox frame = size.frame();
        marks.add(Area.edged(PaperRegion.of(frame), FRAME));
        marks.add(Area.edged(PaperRegion.of(frame.grown(STRIP)), THIN));
        addTrimming(size, marks);
        addCentring(size, marks);
        addGrid(size, marks);
        return Group.of(ID, marks);
    }

    private static void addTrimming(SheetSize size, List<Mark> marks) {
        double w = size.width();
        double h = size.height();
        for (double[] corner : new double[][] {{0, 0, 1, 1}, {w, 0, -1, 1}, {w, h, -1, -1}, {0, h, 1, -1}}) {
            PaperPoint at = new PaperPoint(corner[0], corner[1]);
            double x = corner[2];
            double y = corner[3];
            marks.add(Area.filled(PaperRegion.of(at, at.plus(10 * x, 0), at.plus(10 * x, 2.5 * y),
                    at.plus(2.5 * x, 2.5 * y), at.plus(2.5 * x, 10 * y), at.plus(0, 10 * y)), Tone.of("#222222")));
        }
    }

    private static void addCentring(SheetSize size, List<Mark> marks) {
        PaperBox frame = size.frame();
        PaperBox sheet = size.sheet();
        double x = axisAcross(size);
        double y = sheet.middle().y();
        marks.add(Polyline.line(x, 0, x, frame.top() + CENTRING_INSIDE, FRAME));
        marks.add(Polyline.line(x, sheet.bottom(), x, frame.bottom() - CENTRING_INSIDE, FRAME));
        marks.add(Polyline.line(0, y, frame.left() + CENTRING_INSIDE, y, FRAME));
        marks.add(Polyline.line(sheet.right(), y, frame.right() - CENTRING_INSIDE, y, FRAME));
    }

    private static void addGrid(SheetSize size, List<Mark> marks) {
        PaperBox frame = size.frame();
        PaperBox outer = frame.grown(STRIP);
        TextStyle style = TextStyle.of(2.5).grey();
        List<PaperSegment> ticks = new ArrayList<>();
        List<Double> across = borders(frame.left(), frame.right(), axisAcross(size));
        for (int i = 1; i < across.size(); i++) {
            double x = across.get(i);
            if (i < across.size() - 1) {
                ticks.add(PaperSegment.of(x, outer.top(), x, frame.top()));
                ticks.add(PaperSegment.of(x, frame.bottom(), x, outer.bottom()));
            }
            addName(Integer.toString(i), (across.get(i - 1) + x) / 2, true, frame, style, marks);
        }
        List<Double> down = borders(frame.top(), frame.bottom(), size.height() / 2);
        for (int i = 1; i < down.size(); i++) {
            double y = down.get(i);
            if (i < down.size() - 1) {
                ticks.add(PaperSegment.of(outer.left(), y, frame.left(), y));
                ticks.add(PaperSegment.of(frame.right(), y, outer.right(), y));
            }
            addName(LETTERS.substring(i - 1, i), (down.get(i - 1) + y) / 2, false, frame, style, marks);
        }
        marks.add(new Strokes(ticks, THIN));
    }

    private static void addName(String name, double at, boolean across, PaperBox frame, TextStyle style,
            List<Mark> marks) {
        double half = STRIP / 2;
        if (across) {
            marks.add(Text.centred(new PaperPoint(at, frame.top() - half), name, style));
            marks.add(Text.centred(new PaperPoint(at, frame.bottom() + half), name, style));
        } else {
            marks.add(Text.centred(new PaperPoint(frame.left() - half, at), name, style));
            marks.add(Text.centred(new PaperPoint(frame.right() + half, at), name, style));
        }
    }

    /** The axis of the drawing space, on which the centring marks and the grid stand. */
    private static double axisAcross(SheetSize size) {
        return size.frame().middle().x();
    }

    /** The borders of the fields: multiples of 50 from the axis; no field is narrower than 20, it joins its neighbour. */
    private static List<Double> borders(double from, double to, double axis) {
        List<Double> borders = new ArrayList<>();
        borders.add(from);
        double first = axis - FIELD * Math.floor((axis - from) / FIELD);
        for (double at = first; at < to; at += FIELD) {
            if (at - from >= 20 && to - at >= 20) {
                borders.add(at);
            }
        }
        borders.add(to);
        return borders;
    }
}
