package rainlap.water;

/** Water on its way straight up under a free lower edge: lifted by the wind, or overrunning a lap. */
final class Lifts {
    private final Flow flow;
    private final long rise;

    Lifts(Flow flow, long rise) {
        this.rise = rise;
        this.flow = flow;
    }

    /**
     * Water that enters a cell by its lower line and still has some way to rise, at either end.
     *
     * @param behind whether it has got behind what it was on: at that line it is running too
     */
    record Lift(Cell cell, int cost, long from, long to, double leftRise, double rightRise, boolean behind, Wet source, How how, Line line) implements Driven {
        /** How many numbers are remembered of one. */
        static final int ROW = 6;

        @Override
        public boolean isKnown() {
            Been been = cell.beenOrNull();
            return been != null && been.covers(this);
        }

        @Override
        public boolean isOverrun() {
            return false;
        }

        @Override
        public void go(Winds winds) {
            winds.lifts().lift(this);
        }

        /** Where it gets to, but not where it came from: what is remembered of it. */
        double[] row() {
            return new double[] {cost, behind ? 0 : 1, from, to, leftRise, rightRise};
        }

        double rise(double x) {
            return rise(x, from, to, leftRise, rightRise);
        }

        private static double rise(double x, double from, double to, double leftRise, double rightRise) {
            return leftRise + (x - from) * (rightRise - leftRise) / (to - from);
        }

        /** What is left of it above the cell's upper line. */
        double left(double x) {
            return rise(x) - (cell.upper.at(x) - cell.lower.at(x));
        }

        Lift between(long a, long b) {
            return a == from && b == to ? this : new Lift(cell, cost, a, b, rise(a), rise(b), behind, source, how, line);
        }

        /** Whether it tells nothing new beside what is remembered of another one in the same cell. */
        boolean isCovered(double[] rows, int at) {
            double a = rows[at + 2], b = rows[at + 3], left = rows[at + 4], right = rows[at + 5];
            return rows[at] <= cost && rows[at + 1] <= (behind ? 0 : 1) && a <= from && b >= to && rise(from, a, b, left, right) >= leftRise
                    && rise(to, a, b, left, right) >= rightRise;
        }
    }

    /** @param onto the lower sheet of the lap; the upper one lies over the cell */
    record Overrun(Cell cell, int onto, int cost, long from, long to, Wet source, How how, Line line) implements Driven {
        static final int ROW = 4;

        @Override
        public boolean isKnown() {
            return false;
        }

        @Override
        public boolean isOverrun() {
            return true;
        }

        @Override
        public void go(Winds winds) {
            winds.lifts().overrun(this);
        }

        /** Where it gets to, but not where it came from: what is remembered of it. */
        double[] row() {
            return new double[] {onto, cost, from, to};
        }

        Overrun between(long a, long b) {
            return new Overrun(cell, onto, cost, a, b, source, how, line);
        }

        /** Whether it tells nothing new beside what is remembered of another one in the same cell. */
        boolean isCovered(double[] rows, int at) {
            return rows[at] == onto && rows[at + 1] <= cost && rows[at + 2] <= from && rows[at + 3] >= to;
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
        if (!flow.been(l.cell()).isNew(l)) {
            return;
        }
        Cell c = l.cell();
        double a = Math.min(c.upper.at(l.from()), c.lower.at(l.from()) + l.leftRise());
        double b = Math.min(c.upper.at(l.to()), c.lower.at(l.to()) + l.rightRise());
        Wet here = new Wet(c, false, l.cost(), l.from(), l.to(), a, b, l.source(), l.how(), l.line());
        flow.wet(here);
        if (l.behind()) {
            flow.wet(new Wet(c, true, l.cost(), l.from(), l.to(), Math.min(a, c.lower.at(l.from()) + 1), Math.min(b, c.lower.at(l.to()) + 1), l.source(), l.how(),
                    l.line()));
        }
        if (Math.max(l.left(l.from()), l.left(l.to())) > 1e-6) {
            goOn(l, here);
        }
    }

    private void goOn(Lift l, Wet here) {
        for (Seam s : l.cell().up) {
            long a = Math.max(s.from, l.from()), b = Math.min(s.to, l.to());
            boolean capped = l.cell().ground.isHead() && !s.to(0).ground.isHead();
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
        double most = capped ? rise : Double.MAX_VALUE, left = Math.min(most, Math.max(0, l.left(a))), right = Math.min(most, Math.max(0, l.left(b)));
        for (int i = 0; i < s.count(); i++) {
            int cost = l.cost() + s.cost(i);
            if (flow.follows(s.to(i), cost)) {
                flow.later(new Lift(s.to(i), cost, a + s.shift(), b + s.shift(), left, right, s.isFurtherIn(i), here, s.how(How.Move.LIFT, i), l.cell().upper.part(a, b)));
            }
        }
    }

    /** Straight up beneath the upper sheet to where the lower one ends. */
    void overrun(Overrun o) {
        if (flow.been(o.cell()).isNew(o)) {
            Underlay.above(o).forEach(part -> overrun(o.between(Math.round(part.from()), Math.round(part.to())), part));
        }
    }

    private void overrun(Overrun o, Underlay.Part part) {
        Cell c = o.cell();
        if (!part.isHeld()) {
            running(o, o.source(), c.lower.at(o.from()), c.lower.at(o.to()), o.line());
            return;
        }
        double left = part.goesOn() ? c.upper.at(o.from()) : part.atFrom(), right = part.goesOn() ? c.upper.at(o.to()) : part.atTo();
        Wet here = new Wet(c, false, o.cost(), o.from(), o.to(), left, right, o.source(), o.how(), o.line());
        flow.wet(here);
        if (!part.goesOn()) {
            running(o, here, left, right, part.line().part(o.from(), o.to()));
            return;
        }
        for (Seam s : c.up) {
            long a = Math.max(s.from, o.from()), b = Math.min(s.to, o.to());
            Cell next = a < b ? s.under(c.over) : null;
            if (next != null) {
                flow.further(new Overrun(next, o.onto(), o.cost(), a + s.shift(), b + s.shift(), here, o.how(), c.upper.part(a, b)));
            }
        }
    }

    private void running(Overrun o, Wet source, double left, double right, Line line) {
        flow.wet(new Wet(o.cell(), true, o.cost(), o.from(), o.to(), left + 1, right + 1, source, o.how(), line));
    }
}
