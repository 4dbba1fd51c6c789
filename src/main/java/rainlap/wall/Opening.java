package rainlap.wall;

import java.util.Optional;
import java.util.OptionalLong;
import rainlap.geom.Box;
import rainlap.geom.Point;
import rainlap.geom.Segment;

/**
 * A window, door, vent or other opening; upright and rectangular.
 *
 * @param reveal depth of the reveal from the wall's face to the frame, grid units
 * @param noHeadFlashing the stated reason why there is none, if so
 */
public record Opening(String id, Kind kind, Box rect, long reveal, Optional<String> noHeadFlashing,
        OptionalLong eaveOverhang, OptionalLong eaveAbove) {

    /** What the opening is for. */
    public enum Kind {
        WINDOW("window"), DOOR("door"), VENT("vent"), OTHER("other");

        private final String word;

        Kind(String word) {
            this.word = word;
        }

        public String word() {
            return word;
        }

        public static Optional<Kind> find(String word) {
            return java.util.Arrays.stream(values()).filter(k -> k.word.equals(word)).findFirst();
        }
    }

    /** How far a surface of the reveal runs along its edge, grid units. */
    public long along(Side side) {
        return side.isJamb() ? rect.height() : rect.width();
    }

    /** The surface as a box in its own frame: u by v. */
    public Box surface(Side side) {
        return new Box(0, 0, along(side), reveal);
    }

    /** A place of the wall's plane, unfolded about an edge of the opening, in that surface's frame. */
    public Point toSurface(Side side, Point p) {
        return switch (side) {
            case SILL -> new Point(p.x() - rect.minX(), p.y() - rect.minY());
            case HEAD -> new Point(p.x() - rect.minX(), rect.maxY() - p.y());
            case LEFT -> new Point(p.y() - rect.minY(), p.x() - rect.minX());
            case RIGHT -> new Point(p.y() - rect.minY(), rect.maxX() - p.x());
            case WALL -> p;
        };
    }

    /** The reverse of {@link #toSurface}: the place laid flat into the opening, as drawings show it. */
    public Point toWall(Side side, Point p) {
        return switch (side) {
            case SILL -> new Point(rect.minX() + p.x(), rect.minY() + p.y());
            case HEAD -> new Point(rect.minX() + p.x(), rect.maxY() - p.y());
            case LEFT -> new Point(rect.minX() + p.y(), rect.minY() + p.x());
            case RIGHT -> new Point(rect.maxX() - p.y(), rect.minY() + p.x());
            case WALL -> p;
        };
    }

    /** The edge of the opening that a surface folds about, in wall coordinates. */
    public Segment edge(Side side) {
        long x0 = side == Side.RIGHT ? rect.maxX() : rect.minX(), x1 = side == Side.LEFT ? rect.minX() : rect.maxX();
        long y0 = side == Side.HEAD ? rect.maxY() : rect.minY(), y1 = side == Side.SILL ? rect.minY() : rect.maxY();
        if (side == Side.WALL) {
            throw new IllegalArgumentException("the wall is no side of an opening");
        }
        return new Segment(new Point(x0, y0), new Point(x1, y1));
    }
}
