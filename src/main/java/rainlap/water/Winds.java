package rainlap.water;

import rainlap.material.Edge;
import rainlap.water.How.Move;

/** Water driven by wind or travel: lifted under lower edges, pushed under side edges, and laps overrun. */
final class Winds {
    private final Flow flow;
    private final Coat coat;
    private final Drive drive;
    private final Lifts lifts;
    private final Pushes pushes;

    Winds(Flow flow, Coat coat, Drive drive) {
        this.flow = flow;
        this.coat = coat;
        this.drive = drive;
        this.lifts = new Lifts(flow, drive.rise());
        this.pushes = new Pushes(flow, coat, drive.rise());
    }

    Lifts lifts() {
        return lifts;
    }

    Pushes pushes() {
        return pushes;
    }

    /** Every drive that running water starts. */
    void startFrom(Wet w) {
        Cell c = w.cell();
        for (Seam s : c.up) {
            long a = Math.max(s.from, w.from()), b = Math.min(s.to, w.to());
            if (a < b && s.begins(0) && reaches(w, a, b)) {
                underLower(w, s, a, b);
            }
        }
        for (Seam s : c.feet) {
            underLower(w, s, s.from, s.to);
        }
        for (Seam s : c.down) {
            long a = Math.max(s.from, w.from()), b = Math.min(s.to, w.to());
            if (a < b && s.begins(0) && !s.ontoSill && !s.line().isLevel()) {
                aslant(w, s, s.line(), a, b, s.line().slope() > 0);
            }
        }
        for (Flank f : c.flanks) {
            boolean touches = f.right ? w.to() == c.x1 : w.from() == c.x0;
            double to = Math.min(f.to, w.top(f.x()));
            if (touches && f.begins(0) && f.from < to) {
                aside(w, f, f.from, to);
            }
        }
    }

    private static boolean reaches(Wet w, long a, long b) {
        return w.top(a) >= w.cell().upper.at(a) - 0.5 && w.top(b) >= w.cell().upper.at(b) - 0.5;
    }

    /** Whether an edge is a side rather than a foot: then a lap that ends there is overrun sideways. */
    private static boolean isSteep(Line line) {
        return Math.abs(line.slope()) > 1;
    }

    private void underLower(Wet w, Seam s, long a, long b) {
        Line line = s.line();
        if (!line.isLevel() && !s.ontoSill) {
            aslant(w, s, line, a, b, line.slope() < 0);
        }
        for (int i = 0; s.begins(i); i++) {
            Cell c = s.to(i);
            int cost = w.cost() + s.cost(i);
            if (flow.begins(c, cost)) {
                double rise = riseUnder(s, i);
                flow.later(new Lifts.Lift(c, cost, a + s.shift(), b + s.shift(), rise, rise, s.isFurtherIn(i), w, coat.how(Move.LIFT, c.over), line.part(a, b)));
            }
            int partner = isSteep(line) || !flow.overruns(c, cost + 1) ? -1 : s.lapped(i);
            if (partner >= 0) {
                flow.later(new Lifts.Overrun(c, partner, cost + 1, a + s.shift(), b + s.shift(), w, coat.how(Move.OVERRUN, c.over), line.part(a, b)));
            }
        }
    }

    private double riseUnder(Seam s, int i) {
        if (s.to(i).ground.isHead()) {
            return Math.max(drive.rise(), drive.creep());
        }
        return s.isSheltered(i) ? drive.shelteredRise() : drive.rise();
    }

    private void aside(Wet w, Flank f, double from, double to) {
        if (!f.carriesPast) {
            Line where = new Line(f.x(), Math.round(from), f.x(), Math.round(to));
            push(w, f, !f.beyondRight, from + f.shift(), to + f.shift(), f.beyondX(), f.beyondX(), where);
        }
    }

    /** A push over a sloped line. */
    private void aslant(Wet w, Seam s, Line line, long a, long b, boolean right) {
        long low = line.slope() > 0 ? a : b, high = line.slope() > 0 ? b : a;
        push(w, s, right, line.at(low), line.at(high), low + s.shift(), high + s.shift(), line);
    }

    private void push(Wet w, Crossing x, boolean right, double low, double high, double lowAt, double highAt, Line where) {
        double sign = right ? 1 : -1, creep = sign * drive.creep(), far = sign * Push.WITHOUT_END;
        boolean side = where.ax() == where.bx() || isSteep(where);
        for (int i = 0; x.begins(i); i++) {
            Cell c = x.to(i);
            int cost = w.cost() + x.cost(i, right ? Edge.LEFT : Edge.RIGHT);
            if (flow.begins(c, cost)) {
                flow.later(new Push(c, cost, right, low, high, lowAt, highAt, lowAt + creep, highAt + creep, x.isFurtherIn(i), -1, w, coat.how(Move.PUSH, c.over), where));
            }
            int partner = side && flow.overruns(c, cost + 1) ? x.lapped(i) : -1;
            if (partner >= 0) {
                flow.later(new Push(c, cost + 1, right, low, high, lowAt, highAt, lowAt + far, highAt + far, false, partner, w, coat.how(Move.OVERRUN, c.over), where));
            }
        }
    }
}
