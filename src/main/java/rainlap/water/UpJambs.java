package rainlap.water;

import rainlap.material.Edge;
import rainlap.wall.Side;

/** Water driven sideways along a sill that comes to its end: up the jamb there, by the rise at most, however far the creep would take it. */
final class UpJambs {
    private final Flow flow;
    private final Coat coat;
    private final long rise;

    UpJambs(Flow flow, Coat coat, long rise) {
        this.flow = flow;
        this.coat = coat;
        this.rise = rise;
    }

    void goOn(Push p, Wet here) {
        for (Seam foot : p.cell().feet) {
            if (foot.upper().ground.surface().side() == (p.right() ? Side.RIGHT : Side.LEFT)) {
                goOn(p, here, foot);
            }
        }
    }

    private void goOn(Push p, Wet here, Seam foot) {
        long end = p.right() ? p.cell().x1 : p.cell().x0;
        double low = Math.max(p.low(), foot.from()), high = Math.min(p.high(), foot.to());
        double[] part = low < high ? Pushes.getsTo(p, low, high, end, end) : new double[0];
        if (part.length == 0) {
            return;
        }
        long from = Math.round(part[0]), to = Math.round(part[1]);
        if (p.isOverrun()) {
            overrun(p, here, foot.upper(), from, to);
            return;
        }
        double a = p.beyond(end, from), b = p.beyond(end, to);
        long capped = a > rise != b > rise ? Math.round(from + (to - from) * (rise - a) / (b - a)) : from;
        lift(p, here, foot.upper(), from, capped, end);
        lift(p, here, foot.upper(), capped, to, end);
    }

    private void overrun(Push p, Wet here, Cell jamb, long from, long to) {
        if (from < to) {
            flow.further(new Lifts.Overrun(jamb, p.over(), p.onto(), p.cost(), from, to, here, p.how(), Line.level(jamb.lower.ay(), from, to)));
        }
    }

    private void lift(Push p, Wet here, Cell jamb, long from, long to, long end) {
        if (from >= to) {
            return;
        }
        Crossing x = new Crossing(coat, p.cell().pile, p.gap(), jamb.pile, Edge.BOTTOM);
        for (int j = x.lo; j <= x.hi; j++) {
            int cost = p.cost() + x.cost(j);
            if (flow.follows(jamb, j, cost)) {
                flow.later(new Lifts.Lift(jamb, j, cost, from, to, up(p, end, from), up(p, end, to), x.isFurtherIn(j), here, x.how(How.Move.LIFT, j),
                        Line.level(jamb.lower.ay(), from, to)));
            }
        }
    }

    private double up(Push p, long end, long v) {
        return Math.max(0, Math.min(rise, p.beyond(end, v)));
    }
}
