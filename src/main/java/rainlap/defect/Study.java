package rainlap.defect;

import java.util.ArrayList;
import java.util.List;
import rainlap.material.MaterialKind;
import rainlap.rule.Evidence;
import rainlap.wall.Surface;

/**
 * All holes of a wall and what comes of each.
 *
 * @param clad whether any cladding is looked at
 * @param asDrawn the wall without holes at each of the pressures, in their order
 */
public record Study(boolean clad, List<AsDrawn> asDrawn, List<Followed> holes, List<NotPlaced> notPlaced) {
    private static final String STATEMENT = "A desk study on the drawing, not that test: each hole, of 6 mm, goes through the outermost piece"
            + " at its place and no further, and the water that comes in by it is followed, nothing else failing. No time, no amount of water, no movement;"
            + " how far water is pushed sideways has no published formula and is the end lap of the practice at every pressure.";

    private static final String WRAPPED = " No cladding lies on the wall as looked at here, so every hole goes through the wrap itself: that is harder than a hole in the cladding.";

    public Study {
        asDrawn = List.copyOf(asDrawn);
        holes = List.copyOf(holes);
        notPlaced = List.copyOf(notPlaced);
    }

    /**
     * A hole and what comes of it.
     *
     * @param number from 1, as printed
     * @param results one for each pressure
     */
    public record Followed(int number, Hole hole, List<Result> results) {
        public Followed {
            results = List.copyOf(results);
        }
    }

    private static boolean isClad(Evidence e) {
        return e.stack().on(Surface.WALL).stream().anyMatch(f -> f.piece().material().kind() == MaterialKind.CLADDING);
    }

    /** What the results mean and do not mean. */
    public String says() {
        return STATEMENT + (clad ? "" : WRAPPED);
    }

    public static Study of(Evidence evidence) {
        Placing placing = Placing.of(evidence);
        List<AsDrawn> asDrawn = Pressure.of(evidence).stream().map(p -> AsDrawn.of(evidence, p)).toList();
        List<Followed> out = new ArrayList<>();
        for (Hole h : placing.holes()) {
            HoledWall wall = new HoledWall(evidence, h);
            out.add(new Followed(out.size() + 1, h, asDrawn.stream().map(wall::at).toList()));
        }
        return new Study(isClad(evidence), asDrawn, out, placing.notPlaced());
    }
}
