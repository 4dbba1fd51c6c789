package rainlap.paper;

/**
 * A side of a drawing along which labels stand. Seen from a side, a point has a place along it (x on top, y left and
 * right) and a depth behind it.
 */
public enum BoundarySide {
    TOP, LEFT, RIGHT;

    double along(PaperPoint p) {
        return this == TOP ? p.x() : p.y();
    }

    /** How far the point lies behind this side of the box, inwards positive. */
    double depth(PaperBox box, PaperPoint p) {
        return switch (this) {
            case TOP -> p.y() - box.top();
            case LEFT -> p.x() - box.left();
            case RIGHT -> box.right() - p.x();
        };
    }

    PaperPoint point(PaperBox box, double along, double depth) {
        return switch (this) {
            case TOP -> new PaperPoint(along, box.top() + depth);
            case LEFT -> new PaperPoint(box.left() + depth, along);
            case RIGHT -> new PaperPoint(box.right() - depth, along);
        };
    }

    /** The smallest place along this side that the box reaches. */
    double least(PaperBox box) {
        return this == TOP ? box.left() : box.top();
    }

    /** The largest place along this side that the box reaches. */
    double most(PaperBox box) {
        return this == TOP ? box.right() : box.bottom();
    }
}
