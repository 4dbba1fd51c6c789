package rainlap.rule.lap;

import java.util.List;
import java.util.Optional;
import rainlap.geom.Box;
import rainlap.geom.Overlay;
import rainlap.geom.Region;
import rainlap.joint.Joint;
import rainlap.measure.LengthText;
import rainlap.rule.Place;

/**
 * A sheet laid on another that goes on below it, over a tear or a hole. Its top is tucked in through a cut in that sheet, and its foot laps what lies below cut and hole.
 *
 * @param box of the patch, upwards as y
 * @param hole in the sheet beneath, all that lies inside the patch's sides; empty where that is whole there
 * @param lap how far it laps up and down
 */
record Patch(Joint joint, Box box, List<Box> hole, long lap) {
    static Patch of(Joint j, long lap) {
        Box box = upright(j, j.outer().box());
        Optional<Box> hole = Overlay.difference(List.of(j.outer().region()), List.of(j.inner().region())).stream().map(r -> upright(j, r.box()))
                .filter(b -> box.minX() < b.minX() && b.maxX() < box.maxX()).reduce(Box::join);
        return new Patch(j, box, hole.stream().toList(), lap);
    }

    /** On a jamb u runs upwards. */
    private static Box upright(Joint j, Box b) {
        return j.surface().side().isJamb() ? new Box(b.minY(), b.minX(), b.maxY(), b.maxX()) : b;
    }

    /** Where the sheet is cut: a lap below its top, and no lower than the top of the hole. */
    long cut() {
        return Math.max(box.maxY() - lap, hole.stream().mapToLong(Box::maxY).max().orElse(Long.MIN_VALUE));
    }

    /** Its own upper edge where that is high enough. */
    private long top() {
        return Math.max(box.maxY(), cut() + lap);
    }

    private long foot() {
        return Math.min(box.minY(), Math.min(cut(), hole.stream().mapToLong(Box::minY).min().orElse(Long.MAX_VALUE)) - lap);
    }

    /** A larger one where it is too small; else empty. */
    String larger() {
        boolean small = top() > box.maxY() || foot() < box.minY();
        return !small ? "" : "Use a patch at least " + LengthText.mmUp(top() - foot()) + " high"
                + (joint.surface().isWall() ? ", from " + Place.level(foot()) + " to " + Place.level(top()) : "") + ". ";
    }
}
