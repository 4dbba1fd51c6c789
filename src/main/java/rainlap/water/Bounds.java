package rainlap.water;

import rainlap.geom.Box;

/**
 * How far water is followed.
 *
 * @param within the part of the wall, with the reveals there; null for all of it
 * @param near the part in which what has cost the most is followed: it gets nearly everywhere
 * @param most ways that cost more are not followed
 */
record Bounds(Box within, Box near, int most) {
    static final Bounds NONE = new Bounds(null, null, Flow.MOST);

    /** Whether water that has cost so much is followed in a cell: whether any of it lies within, as it compares with the wall. */
    boolean hold(Cell c, int cost) {
        return within == null || touches(c, cost < Flow.MOST ? within : near);
    }

    private static boolean touches(Cell c, Box part) {
        boolean beside = c.ground.isWall() ? c.x1 >= part.minX() && c.x0 <= part.maxX() : part.minX() <= c.ground.left() && c.ground.left() <= part.maxX();
        return beside && c.height >= part.minY() && c.ground.height(Math.min(c.lower.at(c.x0), c.lower.at(c.x1))) <= part.maxY();
    }
}
