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
        this.upJambs = new UpJambs(flow, rise);
    }

    void push(Push p) {
        Cell c = p.cell();
        if (p.high() - p.low() < LEAST) {
            return;
        }
        if (!flow.been(c).isNew(p)) {
            return;
        }
        if (p.isOverrun()) {
            Underlay.beside(p).forEach(part -> overrun(p.between(part.from(), part.to()), part));
        } else {
            go(p);
        }
    }

    private Wet go(Push p) {
        Wet here = wets(p);
        throughSides(p, here);
        throughSlopes(p, here);
        upJambs.goOn(p, here);
        return here;
    }

    /** Where the lower sheet of a lap ends, it is running. */
    private void overrun(Push p, Underlay.Part part) {
        if (!part.isHeld()) {
            stream(p);
        } else if (part.goesOn()) {
            go(p);
        } else {
            Push upTo = p.upTo(part.atFrom(), part.atTo());
            Wet here = go(upTo);
            stream(upTo.into(p.cell(), p.cost(), p.right(), p.low(), p.high(), 0, 0, part.atFrom(), part.atTo(), false, here, p.how(), part.line()));
        }
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
        double a = leftTop + slope * (from - left), b = leftTop + slope * (to - left), overA = a - c.upper.at(from), overB = b - c.upper.at(to);
        if (overA > LEAST && overB < -LEAST || overA < -LEAST && overB > LEAST) {
            long meets = Math.round(from + (to - from) * overA / (overA - overB));
            Wet one = stretch(p, from, meets, a, leftTop + slope * (meets - left), running), other = stretch(p, meets, to, leftTop + slope * (meets - left), b, running);
            return p.right() ? other : one;
        }
        return stretch(p, from, to, a, b, running);
    }

    private Wet stretch(Push p, long from, long to, double leftTop, double rightTop, boolean running) {
        Cell c = p.cell();
        Wet w = new Wet(c, running, p.cost(), from, to, Math.min(c.upper.at(from), leftTop), Math.min(c.upper.at(to), rightTop), p.source(), p.how(), p.line()).overFloor();
        flow.wet(w);
        return w;
    }

    private void throughSides(Push p, Wet here) {
        Cell c = p.cell();
        double end = p.right() ? c.x1 : c.x0;
        for (Flank f : c.flanks) {
            double low = Math.max(p.low(), f.from), high = Math.min(p.high(), f.to);
            if (f.right == p.right() && low < high && !f.carriesPast) {
                double[] part = getsTo(p, low, high, end, end);
                if (part.length > 0) {
                    Line where = new Line(f.x(), Math.round(part[0]), f.x(), Math.round(part[1]));
                    onto(p, here, f, !f.beyondRight, part, new double[] {end, end}, new double[] {f.beyondX() - f.x(), f.shift()}, where);
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
                slope(p, here, s);
            }
        }
        if (!c.lower.isLevel() && c.lower.slope() > 0 == p.right()) {
            for (Seam s : c.down) {
                if (!s.ontoSill) {
                    slope(p, here, s);
                }
            }
        }
    }

    private void slope(Push p, Wet here, Seam s) {
        Line line = s.line();
        boolean up = line.slope() > 0;
        double low = Math.max(p.low(), line.at(up ? s.from : s.to)), high = Math.min(p.high(), line.at(up ? s.to : s.from));
        if (low < high) {
            double lowX = line.ax() + (low - line.ay()) / line.slope(), highX = line.ax() + (high - line.ay()) / line.slope();
            double[] part = getsTo(p, low, high, lowX, highX);
            if (part.length > 0) {
                double[] x = {line.ax() + (part[0] - line.ay()) / line.slope(), line.ax() + (part[1] - line.ay()) / line.slope()};
                if (p.right() ? x[0] >= p.at(part[0]) - 1 : x[0] <= p.at(part[0]) + 1) {
                    onto(p, here, s, p.right(), part, x, new double[] {s.shift(), 0}, line);
                }
            }
        }
    }

    /** Into the next cell, between two heights, along a line from one x to another; x and y there are shifted. */
    private void onto(Push p, Wet here, Crossing over, boolean right, double[] y, double[] x, double[] shift, Line where) {
        if (p.isOverrun()) {
            Cell next = over.under(p.cell().over);
            if (next != null) {
                flow.further(p.into(next, p.cost(), right, y[0], y[1], shift[0], shift[1], x[0], x[1], false, here, p.how(), where));
            }
            return;
        }
        Edge facing = right ? Edge.LEFT : Edge.RIGHT;
        for (int i = 0; i < over.count(); i++) {
            int cost = p.cost() + over.cost(i, facing);
            Cell next = over.to(i);
            if (flow.follows(next, cost)) {
                How how = coat.how(Move.PUSH, over.begins(i) || cost > p.cost() ? next.over : -1);
                flow.later(p.into(next, cost, right, y[0], y[1], shift[0], shift[1], x[0], x[1], over.isFurtherIn(i), here, how, where));
            }
        }
    }
}
