package rainlap.drawing;

import rainlap.geom.Grid;
import rainlap.paper.PaperPoint;

/**
 * From a cut to paper: along the wall true to scale, outwards in printed mm.
 *
 * @param plumb outside is on the left, up is up; else outside is below and right is right
 * @param scale of lengths along the wall
 * @param face where the frame's face stands: x of a plumb cut, y of a level one
 * @param middle where {@code centre} stands along the axis: y of a plumb cut, x of a level one
 * @param centre place along the cut's axis, grid units
 */
record SectionGrid(boolean plumb, int scale, double face, double middle, double centre) {

    /** @param out distance from the frame's face outwards, printed mm; negative inwards */
    PaperPoint at(double place, double out) {
        double along = (place - centre) / Grid.MM / scale;
        return plumb ? new PaperPoint(face - out, middle - along) : new PaperPoint(middle + along, face + out);
    }

    double units(double printedMm) {
        return printedMm * scale * Grid.MM;
    }

    double length(double units) {
        return units / Grid.MM / scale;
    }
}
