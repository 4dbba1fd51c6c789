package rainlap.drawing;

import java.util.List;
import rainlap.paper.Mark;

/**
 * A row of the table of weak points, laid out for a width.
 *
 * @param height printed mm
 */
record TableRow(double height, Drawer drawer) {

    /** Draws a row with its upper edge at y. */
    @FunctionalInterface
    interface Drawer {
        List<Mark> at(double y);
    }
}
