package rainlap.water;

import java.util.List;
import rainlap.geom.Box;

/**
 * How far water is followed.
 *
 * @param parts by cost, in which part of the wall, with the reveals there; none for all of it
 * @param most ways that cost more are not followed
 * @param last what becomes of ways of {@link Flow#MOST}
 */
record Bounds(List<Box> parts, int most, Last last) {
    static final Bounds NONE = new Bounds(List.of(), Flow.MOST);
    static final Bounds BUT_THE_LAST = new Bounds(List.of(), Flow.MOST, Last.PUT_OFF);
    static final Bounds LAST_WHERE_ASKED = new Bounds(List.of(), Flow.MOST, Last.WHERE_ASKED);

    /** What becomes of ways of {@link Flow#MOST}, which lead nearly everywhere. */
    enum Last {
        /** They are followed as all others are. */
        FOLLOWED,
        /** What falls, spreads or begins to be driven for the last failure waits until somebody asks: nothing is kept of it, for it can be begun again from what has settled. */
        PUT_OFF,
        /** All that costs less has settled; they are begun and followed in cells where somebody asks for them. */
        WHERE_ASKED
    }

    Bounds(List<Box> parts, int most) {
        this(parts, most, Last.FOLLOWED);
    }

    Bounds {
        parts = List.copyOf(parts);
    }

    /** Whether water falls, spreads or begins to be driven now, at a cost. */
    boolean begin(int cost) {
        return switch (last) {
            case FOLLOWED -> cost <= most;
            case PUT_OFF -> cost < Flow.MOST;
            case WHERE_ASKED -> cost == Flow.MOST;
        };
    }

    /** Whether water that has cost so much is followed in a cell: whether any of it lies within, as it compares with the wall. */
    boolean hold(Cell c, int cost) {
        return parts.isEmpty() ? !waitsInVain(c, cost) : touches(c, parts.get(cost));
    }

    /** Whether what waited in a cell before these bounds were set is not asked for. */
    boolean waitsInVain(Cell c, int cost) {
        return last == Last.WHERE_ASKED && cost == Flow.MOST && !c.isAsked;
    }

    /** Whether water that has cost so much may yet get where somebody asks for it: after one failure nobody asks but for ways onto the frame. */
    boolean leads(Cell c, int cost) {
        return last == Last.FOLLOWED || cost == 0 || cost == Flow.MOST || c.leads;
    }

    private static boolean touches(Cell c, Box part) {
        boolean beside = c.ground.isWall() ? c.x1 >= part.minX() && c.x0 <= part.maxX() : part.minX() <= c.ground.left() && c.ground.left() <= part.maxX();
        return beside && c.height >= part.minY() && c.ground.height(Math.min(c.lower.at(c.x0), c.lower.at(c.x1))) <= part.maxY();
    }
}
