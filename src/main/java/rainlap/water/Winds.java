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
        this.lifts = new Lifts(flow, coat, drive.rise());
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
            long a = Math.max(s.from() + s.shift(), w.from()), b = Math.min(s.to() + s.shift(), w.to());
            if (a < b && c.pile != s.upper().pile && reaches(w, a, b)) {
                underLower(w, s, a, b);
            }
        }
        for (Seam s : c.feet) {
            underLower(w, s, s.from(), s.to());
        }
        for (Seam s : c.down) {
            long a = Math.max(s.from(), w.from()), b = Math.min(s.to(), w.to());
            if (a < b && c.pile != s.lower().pile && !s.ontoSill() && !s.line().isLevel()) {
                aslant(w, s, s.lower(), s.line(), a, b, s.line().slope() > 0);
            }
        }
        for (Flank f : c.flanks) {
            boolean touches = f.aRight() ? w.to() == c.x1 : w.from() == c.x0;
            double to = Math.min(f.to(), w.top(f.x()));
            if (touches && c.pile != f.b().pile && f.from() < to) {
                aside(w, f, f.from(), to);
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
        Line line = s.ontoSill() ? s.upper().lower : w.cell().upper;
        if (!line.isLevel() && !s.ontoSill()) {
            aslant(w, s, s.upper(), line, a, b, line.slope() < 0);
        }
        Cell p = s.upper();
        Crossing x = new Crossing(coat, w.cell().pile, w.gap(), p.pile, Edge.BOTTOM);
        for (int j = x.lo; j < x.hi; j++) {
            int under = p.pile.at(j);
            int cost = w.cost() + x.cost(j);
            if (flow.follows(p, j, cost)) {
                double rise = riseUnder(p, j);
                flow.later(new Lifts.Lift(p, j, cost, a - s.shift(), b - s.shift(), rise, rise, x.isFurtherIn(j), w, coat.how(Move.LIFT, under), line.part(a, b)));
            }
            int partner = isSteep(line) || !flow.follows(p, j, cost + 1) ? -1 : lapped(p.pile, j, w.cell().pile);
            if (partner >= 0) {
                flow.later(new Lifts.Overrun(p, under, partner, cost + 1, a - s.shift(), b - s.shift(), w, coat.how(Move.OVERRUN, under), line.part(a, b)));
            }
        }
    }

    private double riseUnder(Cell p, int gap) {
        if (p.ground.isHead()) {
            return Math.max(drive.rise(), drive.creep());
        }
        return coat.isSheltered(p.pile, gap) ? drive.shelteredRise() : drive.rise();
    }

    /** The sheet that the piece over gap j laps, if the two make a lap that can be overrun from {@code before}; or -1. */
    private int lapped(Pile pile, int j, Pile before) {
        if (coat.isStrip(pile.at(j))) {
            return -1;
        }
        int k = j - 1;
        while (k >= 0 && coat.isStrip(pile.at(k))) {
            k--;
        }
        return k >= 0 && before.holds(pile.at(k)) ? pile.at(k) : -1;
    }

    private void aside(Wet w, Flank f, double from, double to) {
        if (!Flow.isCarriedPast(w.cell().pile, w.gap(), f.inFront())) {
            Line where = new Line(f.x(), Math.round(from), f.x(), Math.round(to));
            push(w, f.b(), !f.bRight(), from + f.shift(), to + f.shift(), f.beyondX(), f.beyondX(), where);
        }
    }

    /** A push over a sloped line. */
    private void aslant(Wet w, Seam s, Cell p, Line line, long a, long b, boolean right) {
        long shift = p == s.upper() ? -s.shift() : s.shift();
        long low = line.slope() > 0 ? a : b, high = line.slope() > 0 ? b : a;
        push(w, p, right, line.at(low), line.at(high), low + shift, high + shift, line);
    }

    private void push(Wet w, Cell p, boolean right, double low, double high, double lowAt, double highAt, Line where) {
        Crossing x = new Crossing(coat, w.cell().pile, w.gap(), p.pile, right ? Edge.LEFT : Edge.RIGHT);
        double sign = right ? 1 : -1, creep = sign * drive.creep(), far = sign * Push.WITHOUT_END;
        for (int j = x.lo; j < x.hi; j++) {
            int under = p.pile.at(j), cost = w.cost() + x.cost(j);
            if (flow.follows(p, j, cost)) {
                flow.later(new Push(p, j, cost, right, low, high, lowAt, highAt, lowAt + creep, highAt + creep, x.isFurtherIn(j), -1, -1, w,
                        coat.how(Move.PUSH, under), where));
            }
            boolean side = where.ax() == where.bx() || isSteep(where);
            int partner = side && flow.follows(p, j, cost + 1) ? lapped(p.pile, j, w.cell().pile) : -1;
            if (partner >= 0) {
                flow.later(new Push(p, j, cost + 1, right, low, high, lowAt, highAt, lowAt + far, highAt + far, false, under, partner, w,
                        coat.how(Move.OVERRUN, under), where));
            }
        }
    }
}
