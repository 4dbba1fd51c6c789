package rainlap.water;

import rainlap.material.Edge;

/** Water on its way straight up under a free lower edge: lifted by the wind, or overrunning a lap. */
final class Lifts {
    private final Flow flow;
    private final Coat coat;
    private final long rise;

    Lifts(Flow flow, Coat coat, long rise) {
        this.rise = rise;
        this.flow = flow;
        this.coat = coat;
    }

    /**
     * Water that enters a cell by its lower line and still has some way to rise, at either end.
     *
     * @param behind whether it has got behind what it was on: at that line it is running too
     */
    record Lift(Cell cell, int gap, int cost, long from, long to, double leftRise, double rightRise, boolean behind, Wet source, How how, Line line) implements Driven {
        @Override
        public boolean isKnown() {
            return cell.knows(this);
        }

        @Override
        public void go(Winds winds) {
            winds.lifts().lift(this);
        }

        /** Where it gets to, but not where it came from: what is remembered of it. */
        Lift bare() {
            return new Lift(cell, gap, cost, from, to, leftRise, rightRise, behind, null, null, null);
        }

        double rise(double x) {
            return leftRise + (x - from) * (rightRise - leftRise) / (to - from);
        }

        /** What is left of it above the cell's upper line. */
        double left(double x) {
            return rise(x) - (cell.upper.at(x) - cell.lower.at(x));
        }

        Lift between(long a, long b) {
            return a == from && b == to ? this : new Lift(cell, gap, cost, a, b, rise(a), rise(b), behind, source, how, line);
        }

        boolean covers(Lift o) {
            return gap == o.gap && cost <= o.cost && (behind || !o.behind) && from <= o.from && to >= o.to
                    && rise(o.from) >= o.leftRise && rise(o.to) >= o.rightRise;
        }
    }

    /** @param over the upper sheet of the lap, {@code onto} the lower one */
    record Overrun(Cell cell, int over, int onto, int cost, long from, long to, Wet source, How how, Line line) implements Driven {
        @Override
        public boolean isKnown() {
            return false;
        }

        @Override
        public void go(Winds winds) {
            winds.lifts().overrun(this);
        }

        /** Where it gets to, but not where it came from: what is remembered of it. */
        Overrun bare() {
            return new Overrun(cell, over, onto, cost, from, to, null, null, null);
        }

        boolean covers(Overrun o) {
            return over == o.over && onto == o.onto && cost <= o.cost && from <= o.from && to >= o.to;
        }
    }

    void lift(Lift l) {
        double a = l.left(l.from()), b = l.left(l.to());
        if (a > 0 != b > 0 && Math.abs(a - b) > 1) {
            long at = Math.round(l.from() + (l.to() - l.from()) * a / (a - b));
            if (at > l.from() && at < l.to()) {
                risen(l.between(l.from(), at));
                risen(l.between(at, l.to()));
                return;
            }
        }
        risen(l);
    }

    private void risen(Lift l) {
        if (l.cell().knows(l)) {
            return;
        }
        l.cell().remember(l.bare());
        Cell c = l.cell();
        double a = Math.min(c.upper.at(l.from()), c.lower.at(l.from()) + l.leftRise());
        double b = Math.min(c.upper.at(l.to()), c.lower.at(l.to()) + l.rightRise());
        Wet here = new Wet(c, l.gap(), false, l.cost(), l.from(), l.to(), a, b, l.source(), l.how(), l.line());
        flow.wet(here);
        if (l.behind()) {
            flow.wet(new Wet(c, l.gap(), true, l.cost(), l.from(), l.to(), Math.min(a, c.lower.at(l.from()) + 1), Math.min(b, c.lower.at(l.to()) + 1), l.source(), l.how(),
                    l.line()));
        }
        if (Math.max(l.left(l.from()), l.left(l.to())) > 1e-6) {
            goOn(l, here);
        }
    }

    private void goOn(Lift l, Wet here) {
        for (Seam s : l.cell().up) {
            long a = Math.max(s.from() + s.shift(), l.from()), b = Math.min(s.to() + s.shift(), l.to());
            boolean capped = l.cell().ground.isHead() && !s.upper().ground.isHead();
            if (a < b && capped && l.left(a) > rise != l.left(b) > rise) {
                long at = Math.round(a + (b - a) * (rise - l.left(a)) / (l.left(b) - l.left(a)));
                goOn(l, here, s, a, at, true);
                goOn(l, here, s, at, b, true);
            } else {
                goOn(l, here, s, a, b, capped);
            }
        }
    }

    /** @param capped whether it comes from a head to the wall: up that it goes by the rise at most, however far the creep would take it */
    private void goOn(Lift l, Wet here, Seam s, long a, long b, boolean capped) {
        if (a >= b || l.left(a) <= -0.5 || l.left(b) <= -0.5) {
            return;
        }
        Cell p = s.upper();
        double most = capped ? rise : Double.MAX_VALUE, left = Math.min(most, Math.max(0, l.left(a))), right = Math.min(most, Math.max(0, l.left(b)));
        Crossing x = new Crossing(coat, l.cell().pile, l.gap(), p.pile, Edge.BOTTOM);
        for (int j = x.lo; j <= x.hi; j++) {
            int cost = l.cost() + x.cost(j);
            if (flow.follows(p, j, cost)) {
                flow.later(new Lift(p, j, cost, a - s.shift(), b - s.shift(), left, right, x.isFurtherIn(j), here, x.how(How.Move.LIFT, j),
                        l.cell().upper.part(a, b)));
            }
        }
    }

    /** Straight up beneath the upper sheet to where the lower one ends. */
    void overrun(Overrun o) {
        Cell c = o.cell();
        int gap = c.pile.find(o.over());
        if (gap < 0 || !c.isNewOverrun(o)) {
            return;
        }
        if (!c.pile.holds(o.onto())) {
            flow.wet(new Wet(c, gap, true, o.cost(), o.from(), o.to(), c.lower.at(o.from()) + 1, c.lower.at(o.to()) + 1, o.source(), o.how(), o.line()));
            return;
        }
        Wet here = new Wet(c, gap, false, o.cost(), o.from(), o.to(), c.upper.at(o.from()), c.upper.at(o.to()), o.source(), o.how(), o.line());
        flow.wet(here);
        for (Seam s : c.up) {
            long a = Math.max(s.from() + s.shift(), o.from()), b = Math.min(s.to() + s.shift(), o.to());
            if (a < b) {
                flow.further(new Overrun(s.upper(), o.over(), o.onto(), o.cost(), a - s.shift(), b - s.shift(), here, o.how(), c.upper.part(a, b)));
            }
        }
    }
}
