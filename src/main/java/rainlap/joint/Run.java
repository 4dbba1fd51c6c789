package rainlap.joint;

import rainlap.geom.EdgeFrame;
import rainlap.geom.Intervals;
import rainlap.geom.Point;
import rainlap.geom.Profile;
import rainlap.geom.Segment;

/**
 * One straight part of a joint. Places along it are grid units from its first end; the outer piece lies to its left.
 *
 * @param line the exposed edge
 * @param lap how far the inner piece runs on beneath the outer one; the width of the strip between them for a butt or gap
 * @param cover tape over it
 * @param hidden where it lies beneath a further sheet
 * @param faces which way the outer piece's edge faces
 */
public record Run(Segment line, Profile lap, Cover cover, Intervals hidden, Direction faces) {

    public double length() {
        return EdgeFrame.of(line).length();
    }

    public Point at(double s) {
        return EdgeFrame.of(line).at(s);
    }

    /** Where neither tape nor a further sheet covers it. */
    public Intervals uncovered() {
        return Intervals.of(0, length()).minus(cover.taped()).minus(hidden);
    }
}
