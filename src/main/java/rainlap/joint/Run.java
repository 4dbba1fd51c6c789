package rainlap.joint;

import java.util.List;
import rainlap.geom.EdgeFrame;
import rainlap.geom.Intervals;
import rainlap.geom.Point;
import rainlap.geom.Profile;
import rainlap.geom.Region;
import rainlap.geom.Ring;
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

    /** Of a butt or gap: the strip of nothing between the facing edges, at its widest, and so much more all round it. */
    public Region strip(long margin) {
        EdgeFrame e = EdgeFrame.of(line);
        double to = e.length() + margin, far = -lap.greatest() - margin;
        return new Region(Ring.of(List.of(e.at(-margin, margin), e.at(-margin, far), e.at(to, far), e.at(to, margin))), List.of());
    }

    /** Where neither tape nor a further sheet covers it. */
    public Intervals uncovered() {
        return Intervals.of(0, length()).minus(cover.taped()).minus(hidden);
    }
}
