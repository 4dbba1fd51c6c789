package rainlap.paper;

import java.util.List;

/** An upright box on the sheet: left, top, right, bottom in printed millimetres, y down. */
public record PaperBox(double left, double top, double right, double bottom) {

    public PaperBox {
        if (!(left <= right && top <= bottom) || !Double.isFinite(right - left) || !Double.isFinite(bottom - top)) {
            throw new IllegalArgumentException("a box needs left <= right and top <= bottom, not "
                    + left + ", " + top + ", " + right + ", " + bottom);
        }
    }

    /** The box with this upper left corner and size. */
    public static PaperBox ofSize(double left, double top, double width, double height) {
        return new PaperBox(left, top, left + width, top + height);
    }

    /** The box of this size round a middle. */
    public static PaperBox around(PaperPoint middle, double width, double height) {
        return ofSize(middle.x() - width / 2, middle.y() - height / 2, width, height);
    }

    /** The smallest box that holds all the points; there must be one. */
    public static PaperBox of(List<PaperPoint> points) {
        double left = Double.POSITIVE_INFINITY;
        double top = Double.POSITIVE_INFINITY;
        double right = Double.NEGATIVE_INFINITY;
        double bottom = Double.NEGATIVE_INFINITY;
        for (PaperPoint p : points) {
            left = Math.min(left, p.x());
            top = Math.min(top, p.y());
            right = Math.max(right, p.x());
            bottom = Math.max(bottom, p.y());
        }
        return new PaperBox(left, top, right, bottom);
    }

    public double width() {
        return right - left;
    }

    public double height() {
        return bottom - top;
    }

    public PaperPoint middle() {
        return new PaperPoint((left + right) / 2, (top + bottom) / 2);
    }

    /** Larger by {@code by} millimetres on every side; negative shrinks, at most to the middle. */
    public PaperBox grown(double by) {
        double dx = Math.max(by, -width() / 2);
        double dy = Math.max(by, -height() / 2);
        return new PaperBox(left - dx, top - dy, right + dx, bottom + dy);
    }

    public PaperBox moved(double dx, double dy) {
        return new PaperBox(left + dx, top + dy, right + dx, bottom + dy);
    }

    public PaperBox with(PaperBox other) {
        return new PaperBox(Math.min(left, other.left), Math.min(top, other.top),
                Math.max(right, other.right), Math.max(bottom, other.bottom));
    }

    /** True when the insides meet; boxes that only touch do not. */
    public boolean meets(PaperBox other) {
        return left < other.right && other.left < right && top < other.bottom && other.top < bottom;
    }

    public boolean holds(PaperBox other) {
        return left <= other.left && other.right <= right && top <= other.top && other.bottom <= bottom;
    }

    public boolean holds(PaperPoint p) {
        return left <= p.x() && p.x() <= right && top <= p.y() && p.y() <= bottom;
    }

    /** True when some of the segment lies inside; running along an edge does not count. */
    public boolean meets(PaperSegment s) {
        double from = 0;
        double to = 1;
        double[] steps = {s.from().x() - s.to().x(), s.to().x() - s.from().x(),
            s.from().y() - s.to().y(), s.to().y() - s.from().y()};
        double[] rooms = {s.from().x() - left, right - s.from().x(), s.from().y() - top, bottom - s.from().y()};
        for (int i = 0; i < 4; i++) {
            if (steps[i] == 0) {
                if (rooms[i] <= 0) {
                    return false;
                }
            } else if (steps[i] < 0) {
                from = Math.max(from, rooms[i] / steps[i]);
            } else {
                to = Math.min(to, rooms[i] / steps[i]);
            }
        }
        return from < to;
    }

    /** The four corners, clockwise on paper from the upper left. */
    /** How much of the straight line from one point to another lies in the box, in millimetres. */
    public double within(PaperPoint from, PaperPoint to) {
        double[] part = {0, 1};
        clip(left - from.x(), right - from.x(), to.x() - from.x(), part);
        clip(top - from.y(), bottom - from.y(), to.y() - from.y(), part);
        return Math.max(0, part[1] - part[0]) * from.distance(to);
    }

    private static void clip(double least, double most, double step, double[] part) {
        if (step == 0) {
            part[1] = least <= 0 && most >= 0 ? part[1] : -1;
        } else {
            part[0] = Math.max(part[0], Math.min(least / step, most / step));
            part[1] = Math.min(part[1], Math.max(least / step, most / step));
        }
    }

    public List<PaperPoint> corners() {
        return List.of(new PaperPoint(left, top), new PaperPoint(right, top),
                new PaperPoint(right, bottom), new PaperPoint(left, bottom));
    }
}
