package rainlap.file;

import rainlap.geom.Grid;

/**
 * What a number may be.
 *
 * @param above whether the lower end itself is left out
 * @param words how messages put it: {@code above 0 and at most 100}
 */
record Range(double lo, double hi, boolean above, String words) {
    static final Range PLACE = new Range(-Grid.LIMIT_MM, Grid.LIMIT_MM, false, "within 10000000 mm (10 km) of the origin");
    static final Range SIZE = new Range(0, 2 * Grid.LIMIT_MM, true, "above 0 and at most 20000000 mm (20 km)");
    static final Range WIDTH = above(0, 100_000);
    static final Range DEPTH = between(0, 10_000);
    static final Range ANGLE = between(-89, 89);

    static Range between(double lo, double hi) {
        return new Range(lo, hi, false, "from " + Quoted.number(lo) + " to " + Quoted.number(hi));
    }

    static Range above(double lo, double hi) {
        return new Range(lo, hi, true, "above " + Quoted.number(lo) + " and at most " + Quoted.number(hi));
    }

    boolean holds(double d) {
        return (above ? d > lo : d >= lo) && d <= hi;
    }
}
