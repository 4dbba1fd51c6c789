package rainlap.drawing;

import java.util.List;
import java.util.Optional;

/**
 * Where the wall stands in its slot, and what hangs beneath it.
 *
 * @param layout of the sheet
 * @param view from the wall to paper
 * @param chain height of the line of the dimension chain
 * @param overall height of the line of the overall dimension
 */
record Placing(Slots.Layout layout, View view, double chain, double overall) {
    /** The scales of ISO 5455 in use (read in secondary text). */
    static final List<Integer> SCALES = List.of(5, 10, 20, 50, 100);
    private static final double FIRST = 7.4;
    private static final double NEXT = 7;
    private static final double AFTER = 1.8;
    private static final double GROUND = 2.4;
    private static final double TITLE = 10;
    /** What is left of the slot's height goes beneath the drawing, where the table may want it; this share of it above. */
    private static final double ABOVE = 0.1;

    /** At the largest scale at which everything fits; empty when none does. */
    static Optional<Placing> of(Extents extents, Slots.Layout layout) {
        return SCALES.stream().flatMap(s -> of(extents, layout, s).stream()).findFirst();
    }

    static Optional<Placing> of(Extents extents, Slots.Layout layout, int scale) {
        View at = new View(scale, 0, 0);
        double width = at.length(extents.sheets().width());
        Placing hung = hang(extents, layout, at);
        double top = at.y(extents.sheets().maxY()), height = hung.bottom(extents) - top;
        if (width > layout.wall().width() || height > layout.wall().height()) {
            return Optional.empty();
        }
        double dx = layout.wall().middle().x() - (at.x(extents.sheets().minX()) + width / 2);
        double dy = layout.wall().top() + (layout.wall().height() - height) * ABOVE - top;
        return Optional.of(hang(extents, layout, new View(scale, dx, dy)));
    }

    /** Dimensions hang between wall and ground where there is room, else beneath the ground. */
    private static Placing hang(Extents extents, Slots.Layout layout, View view) {
        double foot = view.y(extents.sheets().minY());
        if (extents.ground().isPresent()) {
            double ground = view.y(extents.ground().getAsLong());
            boolean between = ground - foot >= FIRST + NEXT + AFTER + 1;
            foot = between ? foot : Math.max(foot, ground + GROUND);
        }
        return new Placing(layout, view, foot + FIRST, foot + FIRST + NEXT);
    }

    /** Where the name of the view stands: close beneath the drawing. */
    double title(Extents extents) {
        return Math.min(layout.title(), bottom(extents) + TITLE);
    }

    private double bottom(Extents extents) {
        double ground = extents.ground().isPresent() ? view.y(extents.ground().getAsLong()) + GROUND : Double.NEGATIVE_INFINITY;
        return Math.max(overall + AFTER, ground);
    }
}
