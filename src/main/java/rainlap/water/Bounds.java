package rainlap.water;

import java.util.List;
import rainlap.geom.Box;

/**
 * How far water is followed.
 *
 * @param parts by cost, in which part of the wall, with the reveals there; none for all of it
 * @param most ways that cost more are not followed
 * @param lastWhereAsked whether ways of {@link Flow#MOST} are followed only in cells where somebody asks for them
 */
record Bounds(List<Box> parts, int most, boolean lastWhereAsked) {
    static final Bounds NONE = new Bounds(List.of(), Flow.MOST);
    static final Bounds LAST_WHERE_ASKED = new Bounds(List.of(), Flow.MOST, true);

    Bounds(List<Box> parts, int most) {
        this(parts, most, false);
    }

    Bounds {
        parts = List.copyOf(parts);
    }

    /** Whether water that has cost so much is followed in a cell: whether any of it lies within, as it compares with the wall. */
    boolean hold(Cell c, int cost) {
        return parts.isEmpty() ? !waitsInVain(c, cost) : touches(c, parts.get(cost));
    }

    /** Whether what waited in a cell before these bounds were set is not asked for. */
    boolean waitsInVain(Cell c, int cost) {
        return lastWhereAsked && cost == Flow.MOST && !c.isAsked;
    }

    private static boolean touches(Cell c, Box part) {
        boolean beside = c.ground.isWall() ? c.x1 >= part.minX() && c.x0 <= part.maxX() : part.minX() <= c.ground.left() && c.ground.left() <= part.maxX();
        return beside && c.height >= part.minY() && c.ground.height(Math.min(c.lower.at(c.x0), c.lower.at(c.x1))) <= part.maxY();
    }
}
