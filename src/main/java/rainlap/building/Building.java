package rainlap.building;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import rainlap.wall.Elevation;

/**
 * Elevations joined at their corners, in order round the plan as one walks round the building with it on the left: each stands round the right-hand
 * corner of the one before, seen from outside.
 *
 * @param closed whether the first stands round the right-hand corner of the last
 */
public record Building(String name, List<Wall> walls, boolean closed) {
    /** With fewer walls nothing closes: 3. */
    public static final int LEAST_CLOSED = 3;

    /**
     * One of its walls.
     *
     * @param id the short name that goes before the ids of its pieces where they come round onto another wall
     */
    public record Wall(String id, Elevation elevation) {
        /** What another wall calls a piece, an opening or a penetration of this one. */
        public String name(String thing) {
            return id + " " + thing;
        }
    }

    public Building {
        walls = List.copyOf(walls);
        if (walls.isEmpty() || closed && walls.size() < LEAST_CLOSED) {
            throw new IllegalArgumentException("a building has walls, a closed one at least " + LEAST_CLOSED);
        }
    }

    /** The number of the wall round the right-hand corner of a wall. */
    public OptionalInt rightOf(int wall) {
        return wall + 1 < walls.size() ? OptionalInt.of(wall + 1) : closed ? OptionalInt.of(0) : OptionalInt.empty();
    }

    /** The number of the wall round the left-hand corner of a wall. */
    public OptionalInt leftOf(int wall) {
        return wall > 0 ? OptionalInt.of(wall - 1) : closed ? OptionalInt.of(walls.size() - 1) : OptionalInt.empty();
    }

    /** The corner between a wall and the one to its right; empty where none is joined. */
    public Optional<Corner> cornerRightOf(int wall) {
        OptionalInt next = rightOf(wall);
        return next.isEmpty() ? Optional.empty()
                : Corner.between(walls.get(wall).elevation().outline(), walls.get(next.getAsInt()).elevation().outline());
    }
}
