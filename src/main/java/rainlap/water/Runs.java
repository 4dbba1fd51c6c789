package rainlap.water;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import rainlap.material.Edge;
import rainlap.water.How.Move;

/** Running water that goes sideways: along closed edges, along battens, and off the ends of flashings. */
final class Runs {
    private final Flow flow;
    private final Coat coat;
    private final Map<Step, Boolean> walked = new HashMap<>();
    private final Set<End> left = new HashSet<>();
    private final List<Trapped> trapped = new ArrayList<>();

    /** A stretch of a line, walked in one direction at a cost; a cell's own lower line where nothing but a pipe lies below. */
    private record Step(Object stretch, int gap, int cost, boolean right) {}

    private record End(Ground ground, int piece, int cost, boolean right) {}

    Runs(Flow flow, Coat coat) {
        this.flow = flow;
        this.coat = coat;
    }

    List<Trapped> trapped() {
        return trapped;
    }

    /** Whether water runs along this line: because nothing lets it down for nothing, or because a batten begins there. */
    boolean isHeld(Crossing x) {
        if (!x.isFree()) {
            return true;
        }
        for (int j = x.lo; j < x.hi; j++) {
            if (coat.isBatten(x.overAt(j))) {
                return true;
            }
        }
        return false;
    }

    /** Runs along its cell's lower line from a stretch of it, and falls where it first can. */
    void along(Wet w, long from, long to, boolean closed) {
        Line line = w.cell().lower;
        boolean way = line.slope() >= 0 && walk(w, from, false);
        way |= line.slope() <= 0 && walk(w, to, true);
        if (!way && closed) {
            trapped.add(new Trapped(w, from, to));
        }
    }

    /** Whether there is a way out in this direction. */
    private boolean walk(Wet w, long start, boolean right) {
        List<Step> steps = new ArrayList<>();
        Walk at = new Walk(w.cell(), w.gap(), start);
        Boolean out = null;
        while (out == null) {
            Seam s = at.seamBeyond(right);
            Step step = new Step(s == null ? at.cell : s, at.gap, w.cost(), right);
            Boolean known = at.isAtEnd(right) ? null : walked.get(step);
            if (known != null) {
                out = known;
            } else if (at.isAtEnd(right)) {
                out = overSide(w, at, right);
            } else {
                steps.add(step);
                out = onLine(w, at, s, right);
            }
        }
        for (Step s : steps) {
            walked.put(s, out);
        }
        return out;
    }

    /** One stretch further along the line: true if it falls there, null if it goes on. */
    private Boolean onLine(Wet w, Walk at, Seam s, boolean right) {
        if (s == null) {
            if (!at.cell.overPipe) {
                return true;
            }
            at.x = at.nextSeam(right);
            return null;
        }
        if (Flow.isCarriedPast(at.cell.pile, at.gap, s.inFront())) {
            return true;
        }
        Crossing x = new Crossing(coat, at.cell.pile, at.gap, s.lower().pile, Flow.edge(at.cell.ground, Edge.TOP));
        if (isHeld(x)) {
            at.x = right ? s.to() : s.from();
            return null;
        }
        long from = right ? at.x : at.x - 1;
        for (int j = x.lo; j <= x.hi; j++) {
            if (x.cost(j) == 0) {
                How how = new How(Move.ALONG, at.over(), Winds.part(at.cell.lower, Math.min(at.x, from), Math.max(at.x, from + 1)));
                long shift = s.ontoSill() ? s.lower().x0 - from : s.shift();
                flow.fill(s.lower(), j, true, w.cost(), from + shift, from + 1 + shift, w, how);
            }
        }
        return true;
    }

    /** Past the side of a cell: true if it leaves or falls, false if it is held, null if it goes on along the next cell's lower line. */
    private Boolean overSide(Wet w, Walk at, boolean right) {
        double y = at.cell.lower.at(at.x);
        Flank f = at.flank(right, y);
        if (f == null || Flow.isCarriedPast(at.cell.pile, at.gap, f.inFront())) {
            return true;
        }
        Cell q = f.b();
        boolean ahead = !f.bRight();
        Crossing x = new Crossing(coat, at.cell.pile, at.gap, q.pile, Flow.edge(q.ground, ahead ? Edge.LEFT : Edge.RIGHT));
        long border = f.beyondX();
        double level = y + f.shift(), floor = q.lower.at(border);
        boolean onTheLevel = Math.abs(level - floor) < 0.5 && f.shift() == 0 && ahead == right
                && (right ? q.lower.slope() <= 0 : q.lower.slope() >= 0);
        Boolean out = false;
        for (int j = x.lo; j <= x.hi; j++) {
            if (x.cost(j) == 0) {
                long from = ahead ? border : border - 1;
                flow.wet(new Wet(q, j, true, w.cost(), from, from + 1, level, level, w, new How(Move.ALONG, at.over(), Line.level(Math.round(y), at.x, at.x))));
                if (onTheLevel && j == x.lo) {
                    out = null;
                } else if (out != null) {
                    out = true;
                }
            }
        }
        if (out == null) {
            at.go(q, x.lo, border);
        }
        return out;
    }

    /** Off the ends of a flashing whose ledge this water stands over. */
    void overLedge(Wet w) {
        if (w.gap() == 0) {
            return;
        }
        Cell c = w.cell();
        int flashing = c.pile.at(w.gap() - 1);
        OptionalDouble up = coat.upstand(flashing);
        if (up.isEmpty() || !c.ground.surface().isWall()) {
            return;
        }
        double y = coat.ledge(flashing, up.getAsDouble());
        long mid = (w.from() + w.to()) / 2;
        if (c.lower.at(mid) <= y && y < c.upper.at(mid) && w.top(mid) >= y) {
            for (boolean right : new boolean[] {false, true}) {
                if (!coat.isDammed(flashing, right) && left.add(new End(c.ground, flashing, w.cost(), right))) {
                    toEnd(w, flashing, y, right);
                }
            }
        }
    }

    private void toEnd(Wet w, int flashing, double y, boolean right) {
        Cell c = w.cell();
        int gap = w.gap();
        while (true) {
            Flank f = new Walk(c, gap, right ? c.x1 : c.x0).flank(right, y);
            if (f == null || f.b().ground != c.ground) {
                return;
            }
            Cell q = f.b();
            int at = q.pile.find(flashing);
            if (at < 0) {
                off(w, c, gap, f, y, right);
                return;
            }
            c = q;
            gap = at + 1;
        }
    }

    private void off(Wet w, Cell c, int gap, Flank f, double y, boolean right) {
        Cell q = f.b();
        Crossing x = new Crossing(coat, c.pile, gap, q.pile, Flow.edge(q.ground, right ? Edge.LEFT : Edge.RIGHT));
        long from = right ? f.beyondX() : f.beyondX() - 1;
        for (int j = x.lo; j <= x.hi; j++) {
            How how = new How(Move.LEDGE, c.pile.at(gap - 1), Line.level(Math.round(y), f.x(), f.x()));
            flow.wet(new Wet(q, j, true, w.cost() + x.cost(j), from, from + 1, y, y, w, how));
        }
    }
}
