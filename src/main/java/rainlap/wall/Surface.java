package rainlap.wall;

/**
 * A flat surface pieces lie on: the wall itself, or one side of an opening's reveal.
 *
 * @param opening the opening's id, empty for the wall
 */
public record Surface(String opening, Side side) implements Comparable<Surface> {
    public static final Surface WALL = new Surface("", Side.WALL);

    public Surface {
        if ((side == Side.WALL) != opening.isEmpty()) {
            throw new IllegalArgumentException("the wall has no opening, a reveal has one");
        }
    }

    public boolean isWall() {
        return side == Side.WALL;
    }

    /** As files write it: {@code wall}, {@code W1.sill}. */
    public String name() {
        return isWall() ? side.word() : opening + "." + side.word();
    }

    @Override
    public boolean equals(Object o) {
        return o instanceof Surface s && side == s.side && opening.equals(s.opening);
    }

    /** Spread: the ids of openings are often alike but for a number, and surfaces are looked up at every turn. */
    @Override
    public int hashCode() {
        return (5 * opening.hashCode() + side.ordinal()) * 0x9E3779B9;
    }

    @Override
    public int compareTo(Surface o) {
        int byOpening = opening.compareTo(o.opening);
        return byOpening != 0 ? byOpening : side.compareTo(o.side);
    }
}
