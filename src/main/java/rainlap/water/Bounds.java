package rainlap.water;

import rainlap.geom.Box;

/**
 * How far water is followed.
 *
 * @param within the part of the wall, with the reveals there; null for all of it
 * @param most ways that cost more are not followed
 */
record Bounds(Box within, int most) {
    static final Bounds NONE = new Bounds(null, Flow.MOST);

    /** Whether any of a cell lies within, as it compares with the wall. */
    boolean hold(Cell c) {
        if (within == null) {
            return true;
        }
        boolean beside = c.ground.isWall() ? c.x1 >= within.minX() && c.x0 <= within.maxX() : within.minX() <= c.ground.left() && c.ground.left() <= within.maxX();
        return beside && c.height >= within.minY() && c.ground.height(Math.min(c.lower.at(c.x0), c.lower.at(c.x1))) <= within.maxY();
    }
}
