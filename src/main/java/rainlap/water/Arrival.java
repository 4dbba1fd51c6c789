package rainlap.water;

import java.util.List;
import java.util.OptionalDouble;
import rainlap.geom.Ends;
import rainlap.geom.Point;
import rainlap.wall.Surface;

/**
 * A line along which water comes onto the frame from another layer.
 *
 * @param defences how many things had to fail
 * @param first whether the frame there, or some of it, is dry where fewer things have failed; as drawn always, and not told where two must fail
 * @param where a line in the surface's own frame, left or lower end first; round a pipe it bends
 * @param path the way it came, from the rain on; never empty
 * @param litresPerHour how much water meets the first edge it got past; empty where no rain is stated, and where it is
 *     not reckoned: in a reveal, round a pipe, behind other pieces
 */
public record Arrival(int defences, boolean first, Surface surface, List<Point> where, List<Step> path, OptionalDouble litresPerHour) {
    public Arrival {
        where = Ends.copyOf(where);
        path = List.copyOf(path);
    }

    /** Whether the water had been on the frame before: then it is told where it came there first. */
    public boolean comesFromTheFrame() {
        for (int i = 0; i < path.size() - 1; i++) {
            if (path.get(i).layer().equals(Step.FRAME)) {
                return true;
            }
        }
        return false;
    }

    Arrival withLitres(double perHour) {
        return new Arrival(defences, first, surface, where, path, OptionalDouble.of(perHour));
    }
}
