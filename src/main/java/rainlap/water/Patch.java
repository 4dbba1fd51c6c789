package rainlap.water;

/**
 * A wet trapezoid of a cell: between two x, from the cell's lower line up to a top.
 *
 * <p>Where two sloped lines meet between two places of the grid, the lower one may pass the upper one by a little: the patch ends at the upper.
 *
 * @param upper the line its top lies on, or null where the water ends within the cell
 */
record Patch(Line lower, Line upper, long from, long to, long leftTop, long rightTop) {
    long leftFoot() {
        return Math.min(leftTop, Math.round(lower.at(from)));
    }

    long rightFoot() {
        return Math.min(rightTop, Math.round(lower.at(to)));
    }

    boolean hasArea() {
        return leftTop > leftFoot() || rightTop > rightFoot();
    }
}
