package rainlap.drawing;

import rainlap.geom.Point;
import rainlap.geom.Segment;

/**
 * Where a section cuts the wall: plumb, seen from the right, or level, seen from above.
 *
 * @param at the place of interest, in wall coordinates
 * @param from where the cut begins along its axis (x of a level cut, y of a plumb one), grid units
 * @param to where it ends
 */
record Cut(boolean plumb, Point at, long from, long to) {

    /** The cut as a line, from its lower or left end. */
    Segment line() {
        return plumb ? new Segment(new Point(at.x(), from), new Point(at.x(), to)) : new Segment(new Point(from, at.y()), new Point(to, at.y()));
    }

    long length() {
        return to - from;
    }

    /** The place of interest along the cut's axis. */
    long centre() {
        return plumb ? at.y() : at.x();
    }

    /** The place across the axis. */
    long across() {
        return plumb ? at.x() : at.y();
    }

    /** The same cut at another place along the weak stretch. */
    Cut movedTo(Point place) {
        long by = (plumb ? place.y() : place.x()) - centre();
        return new Cut(plumb, place, from + by, to + by);
    }
}
