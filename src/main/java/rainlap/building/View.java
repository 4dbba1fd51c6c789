package rainlap.building;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import java.util.function.UnaryOperator;
import rainlap.building.Building.Wall;
import rainlap.geom.Box;

/**
 * A wall and the walls beside it, laid flat: in its own coordinates, neighbours moved to where they go on past the corners.
 *
 * @param flats from left to right, at most three
 * @param own which of them is the wall itself
 */
record View(List<Flat> flats, int own) {

    /**
     * One wall of them.
     *
     * @param moved to where it stands here
     * @param leftJoined whether a corner is joined at its left end, be it to a wall that is not looked at
     * @param rightJoined the same at its right end
     */
    record Flat(Wall wall, Moved moved, boolean leftJoined, boolean rightJoined) {
        /** Whether a box lies wholly beyond a joined corner. */
        boolean isBeyond(Box box) {
            Box own = wall.elevation().outline().box();
            return leftJoined && box.maxX() <= own.minX() + moved.dx() || rightJoined && box.minX() >= own.maxX() + moved.dx();
        }
    }

    static View of(Building building, int wall) {
        List<Flat> flats = new ArrayList<>();
        OptionalInt left = building.leftOf(wall), right = building.rightOf(wall);
        if (left.isPresent()) {
            flats.add(flat(building, left.getAsInt(), -building.cornerRightOf(left.getAsInt()).orElseThrow().shift(), building.walls().get(left.getAsInt())::name));
        }
        int own = flats.size();
        flats.add(flat(building, wall, 0, id -> id));
        if (right.isPresent()) {
            flats.add(flat(building, right.getAsInt(), building.cornerRightOf(wall).orElseThrow().shift(), building.walls().get(right.getAsInt())::name));
        }
        return new View(List.copyOf(flats), own);
    }

    private static Flat flat(Building building, int wall, long dx, UnaryOperator<String> name) {
        return new Flat(building.walls().get(wall), new Moved(dx, name), building.leftOf(wall).isPresent(), building.rightOf(wall).isPresent());
    }

    Wall wall() {
        return flats.get(own).wall();
    }

    /** The corners between them, from left to right, where they stand here. */
    List<Corner> corners() {
        List<Corner> out = new ArrayList<>();
        for (int i = 0; i + 1 < flats.size(); i++) {
            Corner c = Corner.between(flats.get(i).wall().elevation().outline(), flats.get(i + 1).wall().elevation().outline()).orElseThrow();
            long x = c.left() + flats.get(i).moved().dx();
            out.add(new Corner(c.role(), x, x, c.from(), c.to()));
        }
        return out;
    }
}
