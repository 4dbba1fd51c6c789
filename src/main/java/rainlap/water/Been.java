package rainlap.water;

import java.util.Arrays;

/**
 * Which drives have been in a cell; how far they got there, but not where they came from. A carefully laid wall has twenty a piece, a misfitting one twice as many, so each is
 * but a row of numbers.
 */
final class Been {
    private static final double[] NONE = {};

    private double[] lifts = NONE;
    private double[] overruns = NONE;
    private double[] pushes = NONE;

    /** Whether a lift tells nothing new. */
    boolean covers(Lifts.Lift l) {
        for (int row = 0; row < lifts.length; row += Lifts.Lift.ROW) {
            if (l.isCovered(lifts, row)) {
                return true;
            }
        }
        return false;
    }

    /** Whether a push tells nothing new. */
    boolean covers(Push p) {
        for (int row = 0; row < pushes.length; row += Push.ROW) {
            if (p.isCovered(pushes, row)) {
                return true;
            }
        }
        return false;
    }

    private boolean covers(Lifts.Overrun o) {
        for (int row = 0; row < overruns.length; row += Lifts.Overrun.ROW) {
            if (o.isCovered(overruns, row)) {
                return true;
            }
        }
        return false;
    }

    /** Remembers a lift; whether it tells anything new. */
    boolean isNew(Lifts.Lift l) {
        boolean fresh = !covers(l);
        lifts = fresh ? with(lifts, l.row()) : lifts;
        return fresh;
    }

    boolean isNew(Push p) {
        boolean fresh = !covers(p);
        pushes = fresh ? with(pushes, p.row()) : pushes;
        return fresh;
    }

    boolean isNew(Lifts.Overrun o) {
        boolean fresh = !covers(o);
        overruns = fresh ? with(overruns, o.row()) : overruns;
        return fresh;
    }

    /** Without room to spare: most hold one, and who adds to many has looked at them all. */
    private static double[] with(double[] all, double[] row) {
        if (all.length == 0) {
            return row;
        }
        double[] more = Arrays.copyOf(all, all.length + row.length);
        System.arraycopy(row, 0, more, all.length, row.length);
        return more;
    }
}
