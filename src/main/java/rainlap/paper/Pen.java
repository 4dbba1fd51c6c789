package rainlap.paper;

import java.util.List;

/** The only lines drawn on a sheet: the widths of ISO 128-2 from 0.18 to 0.7 mm and the dashes in use, in millimetres. */
public enum Pen {
    /** 0.7 continuous. */
    EXTRA_WIDE(0.7),
    /** 0.5 continuous. */
    WIDE(0.5),
    /** 0.5 dashed 1.6/0.8. */
    WIDE_DASHED(0.5, 1.6, 0.8),
    /** 0.5 long dash, two dots. */
    WIDE_DASH_TWO_DOTS(0.5, 6.0, 0.8, 0.5, 0.8, 0.5, 0.8),
    /** 0.35 continuous. */
    MEDIUM(0.35),
    /** 0.25 continuous. */
    NARROW(0.25),
    /** 0.25 dashed 1.6/0.8. */
    NARROW_DASHED(0.25, 1.6, 0.8),
    /** 0.18 continuous. */
    THIN(0.18),
    /** 0.18 long dash, dot. */
    THIN_DASH_DOT(0.18, 3.2, 0.6, 0.25, 0.6),
    /** 0.18 long dash, two dots. */
    THIN_DASH_TWO_DOTS(0.18, 3.2, 0.6, 0.25, 0.6, 0.25, 0.6);

    private final double width;
    private final List<Double> dashes;

    Pen(double width, Double... dashes) {
        this.width = width;
        this.dashes = List.of(dashes);
    }

    /** Width in millimetres. */
    public double width() {
        return width;
    }

    /** Lengths of dash and gap in turn, in millimetres; empty for a continuous line. */
    public List<Double> dashes() {
        return dashes;
    }
}
