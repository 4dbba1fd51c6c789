package rainlap.water;

import rainlap.wall.Side;

/** Water driven sideways along a sill that comes to its end: up the jamb there, by the rise at most, however far the creep would take it. */
final class UpJambs {
    private final Flow flow;
    private final long rise;

    UpJambs(Flow flow, long rise) {
        this.flow = flow;
        this.rise = rise;
    }

    void goOn(Push p, Wet here) {
        for (Seam foot : p.cell().feet) {
            if (foot.to(0).ground.surface().side() == (p.right() ? Side.RIGHT : Side.LEFT)) {
                goOn(p, here, foot);
            }
        }
    }

    private void goOn(Push p, Wet here, Seam foot) {
        long end = p.right() ? p.cell().x1 : p.cell().x0;
        double low = Math.max(p.low(), foot.from), high = Math.min(p.high(), foot.to);
        double[] part = low < high ? Pushes.getsTo(p, low, high, end, end) : new double[0];
        if (part.length == 0) {
            return;
        }
        long from = Math.round(part[0]), to = Math.round(part[1]);
        if (p.isOverrun()) {
            overrun(p, here, foot.under(p.cell().over), from, to);
            return;
        }
        double a = p.beyond(end, from), b = p.beyond(end, to);
        long capped = a > rise != b > rise ? Math.round(from + (to - from) * (rise - a) / (b - a)) : from;
        lift(p, here, foot, from, capped, end);
        lift(p, here, foot, capped, to, end);
    }

    private void overrun(Push p, Wet here, Cell jamb, long from, long to) {
        if (jamb != null && from < to) {
            flow.further(new Lifts.Overrun(jamb, p.onto(), p.cost(), from, to, here, p.how(), Line.level(jamb.lower.ay(), from, to)));
        }
    }

    private void lift(Push p, Wet here, Seam foot, long from, long to, long end) {
        for (int i = 0; i < foot.count() && from < to; i++) {
            Cell jamb = foot.to(i);
            int cost = p.cost() + foot.cost(i);
            if (flow.follows(jamb, cost)) {
                flow.later(new Lifts.Lift(jamb, cost, from, to, up(p, end, from), up(p, end, to), foot.isFurtherIn(i), here, foot.how(How.Move.LIFT, i),
                        Line.level(jamb.lower.ay(), from, to)));
            }
        }
    }

    private double up(Push p, long end, long v) {
        return Math.max(0, Math.min(rise, p.beyond(end, v)));
    }
}
