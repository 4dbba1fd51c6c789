package rainlap.stack;

import rainlap.wall.Opening;
import rainlap.wall.Side;
import rainlap.wall.Surface;

/** The hinges between the wall and the sides of one opening's reveal. */
final class Hinges {
    private static final int SIDES = Side.values().length;

    /** By the side here, then by the side there; null where two share no line. */
    private final Hinge[] between = new Hinge[SIDES * SIDES];

    Hinges(Opening o) {
        for (Side here : Side.values()) {
            for (Side there : Side.values()) {
                if (share(here, there)) {
                    between[number(here, there)] = Hinge.between(o, here, there);
                }
            }
        }
    }

    private static int number(Side here, Side there) {
        return SIDES * here.ordinal() + there.ordinal();
    }

    /** The one between two that share a line, seen from the first of them. */
    Hinge between(Side here, Side there) {
        return between[number(here, there)];
    }

    /** Whether two surfaces share a line. */
    static boolean share(Surface here, Surface there) {
        return share(here.side(), there.side()) && (here.isWall() || there.isWall() || here.opening().equals(there.opening()));
    }

    private static boolean share(Side here, Side there) {
        return here == Side.WALL ? there != Side.WALL : there == Side.WALL || here.isJamb() != there.isJamb();
    }
}
