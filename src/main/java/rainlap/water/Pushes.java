package rainlap.water;

import rainlap.material.Edge;
import rainlap.water.How.Move;

/** Water on its way sideways under a free side edge: pushed by the wind, or overrunning a lap. */
final class Pushes {
    private static final double LEAST = 1e-6;

    private final Flow flow;
    private final Coat coat;
    private final UpJambs upJambs;

    Pushes(Flow flow, Coat coat, long rise) {
        this.flow = flow;
        this.coat = coat;
        this.upJambs = new UpJambs(flow, coat, rise);
    }

    void push(Push p) {
        Cell c = p.cell();
        if (p.high() - p.low() < LEAST) {
            return;
        }
        if (p.isOverrun() && !c.pile.holds(p.onto())) {
            if (c.pile.holds(p.over())) {
                stream(p);
            }
            return;
        }
        if (c.knows(p)) {
            return;
        }
        c.remember(p.bare());
        Wet here = wets(p);
        throughSides(p, here);
        throughSlopes(p, here);
        upJambs.goOn(p, here);
    }

    /** Running water just beyond the end it has got behind. */
    private void stream(Push p) {
        wet(p, p.lowAt(), p.highAt(), p.low(), p.high(), true);
        wet(p, p.highAt(), p.right() ? p.highAt() + 1 : p.highAt() - 1, p.high(), p.high(), true);
    }

    /** The places it gets to in its cell: before, at and beyond what its highest part covers. */
    private Wet wets(Push p) {
        double sign = p.right() ? 1 : -1;
        if (p.behind()) {
            stream(p);
        }
        if (sign * (p.highAt() - p.lowAt()) > 0) {
            wet(p, p.lowAt(), p.highAt(), p.low(), p.high(), false);
        }
        if (sign * (p.lowReach() - p.highReach()) > 0) {
            wet(p, p.highReach(), p.lowReach(), p.high(), p.low(), false);
        }
        return wet(p, p.highAt(), p.highReach(), p.high(), p.high(), false);
    }

    /** Water from one x to another, so high at either; no higher than its cell, and no wider. Ends off the grid are rounded outwards. */
    private Wet wet(Push p, double x, double y, double topAtX, double topAtY, boolean running) {
        Cell c = p.cell();
        double left = Math.min(x, y), right = Math.max(x, y), leftTop = x < y ? topAtX : topAtY, rightTop = x < y ? topAtY : topAtX;
        long from = c.within((long) Math.floor(left + LEAST)), to = c.within((long) Math.ceil(right - LEAST));
        double slope = right - left < LEAST ? 0 : (rightTop - leftTop) / (right - left);
        Wet w = new Wet(c, p.gap(), running, p.cost(), from, to, Math.min(c.upper.at(from), leftTop + slope * (from - left)),
                Math.min(c.upper.at(to), leftTop + slope * (to - left)), p.source(), p.how(), p.line()).overFloor();
        flow.wet(w);
        return w;
    }

    private void throughSides(Push p, Wet here) {
        Cell c = p.cell();
        double end = p.right() ? c.x1 : c.x0;
        for (Flank f : c.flanks) {
            double low = Math.max(p.low(), f.from()), high = Math.min(p.high(), f.to());
            if (f.aRight() == p.right() && low < high && !Flow.isCarriedPast(c.pile, p.gap(), f.inFront())) {
                double[] part = getsTo(p, low, high, end, end);
                if (part.length > 0) {
                    Line where = new Line(f.x(), Math.round(part[0]), f.x(), Math.round(part[1]));
                    onto(p, here, f.b(), !f.bRight(), part, new double[] {end, end}, new double[] {f.beyondX() - f.x(), f.shift()}, where);
                }
            }
        }
    }

    /** The heights between low and high at which it gets beyond a line that runs from one x to another; none if it nowhere does. */
    static double[] getsTo(Push p, double low, double high, double lowX, double highX) {
        double atLow = p.beyond(lowX, low), atHigh = p.beyond(highX, high);
        if (atLow <= LEAST && atHigh <= LEAST) {
            return new double[0];
        }
        double cross = atLow > LEAST && atHigh > LEAST ? 0 : low + (high - low) * atLow / (atLow - atHigh);
        return new double[] {atLow > LEAST ? low : cross, atHigh > LEAST ? high : cross};
    }

    /** Over the sloped lines of its cell that it meets on its way. */
    private void throughSlopes(Push p, Wet here) {
        Cell c = p.cell();
        if (!c.upper.isLevel() && c.upper.slope() < 0 == p.right()) {
            for (Seam s : c.up) {
                slope(p, here, s.upper(), c.upper, s.from() + s.shift(), s.to() + s.shift(), -s.shift());
            }
        }
        if (!c.lower.isLevel() && c.lower.slope() > 0 == p.right()) {
            for (Seam s : c.down) {
                if (!s.ontoSill()) {
                    slope(p, here, s.lower(), c.lower, s.from(), s.to(), s.shift());
                }
            }
        }
    }

    private void slope(Push p, Wet here, Cell beyond, Line line, long from, long to, long shift) {
        boolean up = line.slope() > 0;
        double low = Math.max(p.low(), line.at(up ? from : to)), high = Math.min(p.high(), line.at(up ? to : from));
        if (low < high) {
            double lowX = line.ax() + (low - line.ay()) / line.slope(), highX = line.ax() + (high - line.ay()) / line.slope();
            double[] part = getsTo(p, low, high, lowX, highX);
            if (part.length > 0) {
                double[] x = {line.ax() + (part[0] - line.ay()) / line.slope(), line.ax() + (part[1] - line.ay()) / line.slope()};
                if (p.right() ? x[0] >= p.at(part[0]) - 1 : x[0] <= p.at(part[0]) + 1) {
                    onto(p, here, beyond, p.right(), part, x, new double[] {shift, 0}, line);
                }
            }
        }
    }

    /** Into the next cell, between two heights, along a line from one x to another; x and y there are shifted. */
    private void onto(Push p, Wet here, Cell beyond, boolean right, double[] y, double[] x, double[] shift, Line where) {
        if (p.isOverrun()) {
            int gap = beyond.pile.find(p.over());
            if (gap >= 0) {
                flow.further(p.into(beyond, gap, p.cost(), right, y[0], y[1], shift[0], shift[1], x[0], x[1], false, here, p.how(), where));
            }
            return;
        }
        Crossing crossing = new Crossing(coat, p.cell().pile, p.gap(), beyond.pile, right ? Edge.LEFT : Edge.RIGHT);
        for (int j = crossing.lo; j <= crossing.hi; j++) {
            int cost = p.cost() + crossing.cost(j);
            if (flow.follows(beyond, j, cost)) {
                flow.later(p.into(beyond, j, cost, right, y[0], y[1], shift[0], shift[1], x[0], x[1], crossing.isFurtherIn(j), here,
                        crossing.how(Move.PUSH, j), where));
            }
        }
    }
}
