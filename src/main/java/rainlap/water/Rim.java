package rainlap.water;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import rainlap.wall.Side;

/**
 * A stretch of the border of what was cut, or of an opening in it, with the column that ends there.
 *
 * @param inFront what goes on in front of the opening there; null where nothing does
 * @param from between which x, or which heights along a plumb border
 */
record Rim(Column column, Pile inFront, double from, double to) {
    /** Adds it to a list; one that goes on where the last one ends is that. */
    static void append(List<Rim> all, Rim next) {
        Rim last = all.isEmpty() ? null : all.get(all.size() - 1);
        if (last != null && last.to == next.from && last.inFront == next.inFront && last.column.isLike(next.column)) {
            all.set(all.size() - 1, new Rim(last.column, last.inFront, last.from, next.to));
        } else {
            all.add(next);
        }
    }

    /**
     * What a band was cut into, or all of a surface.
     *
     * @param cells in no order that means anything but always the same
     * @param bottom what ends at its lower border, from the left, and so on
     * @param openings what borders on openings, by their numbers and sides
     */
    record Cut(List<Cell> cells, List<Rim> bottom, List<Rim> top, List<Rim> left, List<Rim> right, Map<Integer, Map<Side, List<Rim>>> openings) {
        Cut() {
            this(new ArrayList<>(), new ArrayList<>(), new ArrayList<>(), new ArrayList<>(), new ArrayList<>(), new HashMap<>());
        }

        void add(int opening, Side side, Rim rim) {
            append(openings.computeIfAbsent(opening, k -> new EnumMap<>(Side.class)).computeIfAbsent(side, k -> new ArrayList<>()), rim);
        }

        /** Puts another one on top, whose cells are joined to these already. */
        void add(Cut above) {
            cells.addAll(above.cells);
            above.openings.forEach((o, sides) -> sides.forEach((side, rims) -> rims.forEach(r -> add(o, side, r))));
        }
    }
}
