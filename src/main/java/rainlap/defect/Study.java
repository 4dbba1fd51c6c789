package rainlap.defect;

import java.util.ArrayList;
import java.util.List;
import rainlap.building.Unfolded;
import rainlap.geom.Box;
import rainlap.material.MaterialKind;
import rainlap.rule.Evidence;
import rainlap.rule.Place;
import rainlap.stack.Stack;
import rainlap.wall.Elevation;
import rainlap.wall.Surface;

/**
 * All holes of a wall and what comes of each.
 *
 * @param wall the wall that the holes are put into
 * @param followed what their water is followed over: the wall, or the walls of a building laid flat beside it
 * @param clad whether any cladding is looked at
 * @param asDrawn the wall without holes at each of the pressures, in their order
 */
public record Study(Elevation wall, Elevation followed, boolean clad, List<AsDrawn> asDrawn, List<Followed> holes, List<NotPlaced> notPlaced) {
    private static final String STATEMENT = "A desk study on the drawing, not that test: each hole, of 6 mm, goes through the outermost piece"
            + " at its place and no further, and the water that comes in by it is followed, nothing else failing. No time, no amount of water, no movement;"
            + " how far water is pushed sideways has no published formula and is the end lap of the practice at every pressure.";

    private static final String JOINED = " It is followed over the wall and the walls beside it, not over a whole neighbour and round its further corner.";

    private static final String WRAPPED = " No cladding lies on the wall as looked at here, so every hole goes through the wrap itself: that is harder than a hole in the cladding.";

    public Study {
        asDrawn = List.copyOf(asDrawn);
        holes = List.copyOf(holes);
        notPlaced = List.copyOf(notPlaced);
    }

    /**
     * A hole and what comes of it.
     *
     * @param number as printed
     * @param results one for each pressure
     */
    public record Followed(int number, Hole hole, List<Result> results) {
        public Followed {
            results = List.copyOf(results);
        }
    }

    private static boolean isClad(Evidence e) {
        return e.stack().on(Surface.WALL).stream().anyMatch(f -> f.kind() == MaterialKind.CLADDING);
    }

    /** What the results mean and do not mean. */
    public String says() {
        return STATEMENT + (isJoined() ? JOINED : "") + (clad ? "" : WRAPPED);
    }

    /** Whether the water is followed onto the walls beside it. */
    public boolean isJoined() {
        return wall != followed;
    }

    /** Whether a place lies on a wall beside it. */
    public boolean isRound(Place place) {
        Box own = wall.outline().box(), there = place.box();
        return place.surface().isWall() ? there.minX() >= own.maxX() || there.maxX() <= own.minX() : wall.findOpening(place.surface().opening()).isEmpty();
    }

    public static Study of(Evidence evidence) {
        return of(evidence, evidence.stack(), 1);
    }

    /**
     * One wall of a building: holes in that wall, their water followed over it and the walls beside it.
     *
     * @param first the number of its first hole
     */
    public static Study ofWall(Evidence evidence, Unfolded wall, int first) {
        return of(evidence, Stack.of(wall.flat(), evidence.stage()), first);
    }

    private static Study of(Evidence evidence, Stack over, int first) {
        Placing placing = Placing.of(evidence, over.elevation().outline().region());
        List<AsDrawn> asDrawn = Pressure.of(evidence).stream().map(p -> AsDrawn.of(evidence, over, p)).toList();
        List<Followed> out = new ArrayList<>();
        for (Hole h : placing.holes()) {
            HoledWall wall = new HoledWall(over, h);
            out.add(new Followed(first + out.size(), h, asDrawn.stream().map(wall::at).toList()));
        }
        return new Study(evidence.elevation(), over.elevation(), isClad(evidence), asDrawn, out, placing.notPlaced());
    }
}
