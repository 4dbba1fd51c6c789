package rainlap.water;

import rainlap.material.Edge;
import rainlap.water.How.Move;

/** Water on its way sideways under a free side edge: pushed by the wind, or overrunning a lap. */
final class Pushes {
    private final Flow flow;
    private final Coat coat;

    Pushes(Flow flow, Coat coat) {
        this.flow = flow;
        this.coat = coat;
    }

    /**
     * Water that enters a cell sideways.
     *
     * @param low and high: between which heights
     * @param at the x where it enters
     * @param creep how far it gets from there
     * @param behind whether it has got behind what it was on: then it is running
     * @param over the upper sheet of a lap that is overrun, {@code onto} the lower one; -1 for a push
     */
    record Push(Cell cell, int gap, int cost, boolean right, double low, double high, long at, long creep, boolean behind, int over, int onto,
            Wet source, How how) {
        long reach() {
            return right ? at + creep : at - creep;
        }

        boolean isOverrun() {
            return over >= 0;
        }

        boolean covers(Push o) {
            return gap == o.gap && cost <= o.cost && right == o.right && over == o.over && onto == o.onto && (behind || !o.behind)
                    && low <= o.low && high >= o.high && (right ? at <= o.at && reach() >= o.reach() : at >= o.at && reach() <= o.reach());
        }
    }

    void push(Push p) {
        Cell c = p.cell();
        if (p.isOverrun() && !c.pile.holds(p.onto())) {
            runs(p);
            return;
        }
        if (p.high() <= p.low() || !c.isNewPush(p)) {
            return;
        }
        long end = p.right() ? Math.min(c.x1, p.reach()) : Math.max(c.x0, p.reach());
        long from = Math.min(p.at(), end), to = Math.max(p.at(), end);
        Wet here = stripe(p, from, to, p.behind());
        flow.wet(here);
        throughSides(p, here, end);
        throughSlopes(p, here, from, to);
    }

    /** An overrun that has come to the end of its lap. */
    private void runs(Push p) {
        if (p.cell().pile.holds(p.over())) {
            flow.wet(stripe(p, p.right() ? p.at() : p.at() - 1, p.right() ? p.at() + 1 : p.at(), true));
        }
    }

    private static Wet stripe(Push p, long from, long to, boolean running) {
        Cell c = p.cell();
        return new Wet(c, p.gap(), running, p.cost(), from, to, Math.min(p.high(), c.upper.at(from)), Math.min(p.high(), c.upper.at(to)), p.source(), p.how());
    }

    private void throughSides(Push p, Wet here, long end) {
        Cell c = p.cell();
        long left = p.creep() - Math.abs(end - p.at());
        if (left <= 0 || end != (p.right() ? c.x1 : c.x0)) {
            return;
        }
        for (Flank f : c.flanks) {
            double low = Math.max(p.low(), f.from()), high = Math.min(p.high(), f.to());
            if (f.aRight() == p.right() && low < high && !Flow.isCarriedPast(c.pile, p.gap(), f.inFront())) {
                Line where = new Line(f.x(), Math.round(low), f.x(), Math.round(high));
                onto(p, here, f.b(), !f.bRight(), low + f.shift(), high + f.shift(), f.beyondX(), left, where);
            }
        }
    }

    /** Over the sloped lines of its cell that it meets on its way. */
    private void throughSlopes(Push p, Wet here, long from, long to) {
        Cell c = p.cell();
        if (!c.upper.isLevel() && c.upper.slope() < 0 == p.right()) {
            c.up.forEach(s -> slope(p, here, s.upper(), c.upper, Math.max(from, s.from() + s.shift()), Math.min(to, s.to() + s.shift()), -s.shift()));
        }
        if (!c.lower.isLevel() && c.lower.slope() > 0 == p.right()) {
            c.down.stream().filter(s -> !s.ontoSill())
                    .forEach(s -> slope(p, here, s.lower(), c.lower, Math.max(from, s.from()), Math.min(to, s.to()), s.shift()));
        }
    }

    private void slope(Push p, Wet here, Cell beyond, Line line, long from, long to, long shift) {
        if (from >= to) {
            return;
        }
        double low = Math.max(p.low(), Math.min(line.at(from), line.at(to))), high = Math.min(p.high(), Math.max(line.at(from), line.at(to)));
        long at = p.right() ? from : to, left = p.creep() - Math.abs(at - p.at());
        if (low < high && left > 0) {
            onto(p, here, beyond, p.right(), low, high, at + shift, left, line);
        }
    }

    private void onto(Push p, Wet here, Cell beyond, boolean right, double low, double high, long at, long creep, Line where) {
        if (p.isOverrun()) {
            int gap = beyond.pile.find(p.over());
            if (gap >= 0) {
                push(new Push(beyond, gap, p.cost(), right, low, high, at, creep, false, p.over(), p.onto(), here, new How(Move.OVERRUN, p.over(), where)));
            }
            return;
        }
        Crossing x = new Crossing(coat, p.cell().pile, p.gap(), beyond.pile, Flow.edge(beyond.ground, right ? Edge.LEFT : Edge.RIGHT));
        for (int j = x.lo; j <= x.hi; j++) {
            Push next = new Push(beyond, j, p.cost() + x.cost(j), right, low, high, at, creep, x.isFurtherIn(j), -1, -1, here,
                    Flow.how(Move.PUSH, x, j, where));
            flow.later(next.cost(), () -> push(next));
        }
    }
}
