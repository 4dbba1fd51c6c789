package rainlap.water;

import java.util.ArrayList;
import java.util.List;

/**
 * A trapezoid between two plumb lines and two edges, all of whose places have the same pile. Its own frame is the one of its {@link Ground}: down is
 * to lower y. Gap i of it lies inside the pile's piece i; the last is open to the air.
 */
final class Cell {
    final Ground ground;
    final long x0;
    long x1;
    final Line lower;
    final Line upper;
    final Pile pile;
    /** The opening this part of the wall's plane lies in, or -1: then there is a frame behind it. */
    final int opening;
    /** The number of the pipe it lies beneath, or -1. */
    int pipe = -1;
    boolean overPipe;
    final List<Seam> up = new ArrayList<>(2);
    final List<Seam> down = new ArrayList<>(2);
    /** Where a jamb stands on it. */
    final List<Seam> feet = new ArrayList<>(0);
    final List<Flank> flanks = new ArrayList<>(2);
    final List<Wet>[] wet;
    List<Lifts.Lift> lifts;
    private List<Lifts.Overrun> overruns;
    private List<Push> pushes;
    private Wet rain;
    private List<Runoff.Stream>[] flows;
    /** Whether its own rain has not run off yet. */
    boolean isDry = true;

    @SuppressWarnings("unchecked")
    Cell(Ground ground, long x0, long x1, Line lower, Line upper, Pile pile, int opening) {
        this.ground = ground;
        this.x0 = x0;
        this.x1 = x1;
        this.lower = lower;
        this.upper = upper;
        this.pile = pile;
        this.opening = opening;
        this.wet = opening < 0 ? new List[pile.depth() + 1] : null;
    }

    boolean isFramed() {
        return opening < 0;
    }

    int openGap() {
        return pile.depth();
    }

    /** The rain on the outermost layer. */
    Wet rain() {
        if (rain == null) {
            rain = Wet.rain(this);
        }
        return rain;
    }

    /** Remembers an overrun; whether it tells anything new. */
    boolean isNewOverrun(Lifts.Overrun o) {
        overruns = overruns == null ? new ArrayList<>(1) : overruns;
        boolean known = overruns.stream().anyMatch(k -> k.over() == o.over() && k.onto() == o.onto() && k.cost() <= o.cost()
                && k.from() <= o.from() && k.to() >= o.to());
        return !known && overruns.add(o);
    }

    /** Remembers a push; whether it tells anything new. */
    boolean isNewPush(Push p) {
        pushes = pushes == null ? new ArrayList<>(1) : pushes;
        return pushes.stream().noneMatch(k -> k.covers(p)) && pushes.add(p);
    }

    /** What runs in each gap and has not run on yet. */
    @SuppressWarnings("unchecked")
    List<Runoff.Stream>[] flows() {
        if (flows == null) {
            flows = new List[pile.depth() + 1];
        }
        return flows;
    }
}
