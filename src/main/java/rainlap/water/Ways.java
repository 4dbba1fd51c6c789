package rainlap.water;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import rainlap.material.Edge;

/** The ways out for water that runs along closed edges, along battens, or to the ends of flashings. */
final class Ways {
    private final Coat coat;
    private final Bounds bounds;
    private final Map<Step, List<Exit>> known = new HashMap<>();

    /** Is told along which stretch of a cell's lower line, and in which gap water runs. */
    interface Running {
        Running UNTOLD = (cell, gap, from, to) -> {};

        void along(Cell cell, int gap, long from, long to);

        /** Who is to be told once water leaves a cell: what runs on from another strip of the wall is told there. */
        default Running beyond(Cell cell) {
            return this;
        }
    }

    /** A stretch of a line, walked in one direction; a cell's own lower line where nothing but a pipe lies below. */
    private record Step(Object stretch, int gap, boolean right) {
        /** There is one of each stretch: which of them it is says all. */
        @Override
        public boolean equals(Object o) {
            return o instanceof Step s && s.stretch == stretch && s.gap == gap && s.right == right;
        }

        @Override
        public int hashCode() {
            int where = stretch instanceof Seam s ? s.upper().number * 31 + Long.hashCode(s.from()) : ((Cell) stretch).number;
            return (where * 31 + gap) * 2 + (right ? 1 : 0);
        }
    }

    Ways(Coat coat, Bounds bounds) {
        this.coat = coat;
        this.bounds = bounds;
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

    /** Every way out along a cell's lower line in one direction; none where it is held. Of what was walked before, the first stretch is told again. */
    List<Exit> along(Cell cell, int gap, long start, boolean right, Running first) {
        Running running = first;
        List<Step> steps = new ArrayList<>();
        Walk at = new Walk(cell, gap, start);
        List<Exit> out = null;
        while (out == null) {
            if (!bounds.hold(at.cell, 0)) {
                return List.of(Exit.leaving(Exit.Out.SIDE));
            }
            if (at.isAtEnd(right)) {
                running = running.beyond(at.cell);
                out = overSide(at, right, running);
                continue;
            }
            Seam s = at.seamBeyond(right);
            Step step = new Step(s == null ? at.cell : s, at.gap, right);
            out = known.get(step);
            long from = at.x;
            List<Exit> here = onLine(at, s, right);
            running.along(at.cell, at.gap, Math.min(from, at.x), Math.max(from, at.x));
            if (out == null) {
                steps.add(step);
                out = here;
            }
        }
        for (Step s : steps) {
            known.put(s, out);
        }
        return out;
    }

    /** One stretch further along the line: null if it goes on. */
    private List<Exit> onLine(Walk at, Seam s, boolean right) {
        if (s == null) {
            if (!at.cell.overPipe) {
                return List.of(Exit.leaving(below(at, right)));
            }
            at.x = at.nextSeam(right);
            return null;
        }
        if (Flow.isCarriedPast(at.cell.pile, at.gap, s.inFront())) {
            return List.of(Exit.leaving(Exit.Out.CLEAR));
        }
        Crossing x = new Crossing(coat, at.cell.pile, at.gap, s.lower().pile, Edge.TOP);
        if (isHeld(x)) {
            at.x = right ? s.to() : s.from();
            return null;
        }
        long from = right ? at.x : at.x - 1;
        long there = s.ontoSill() ? s.lower().x0 : from + s.shift();
        List<Exit> out = new ArrayList<>(1);
        for (int j = x.lo; j <= x.hi; j++) {
            if (x.cost(j) == 0) {
                out.add(Exit.into(s.lower(), j, 0, there, Double.NaN, at.over(), at.cell.lower.part(from, from + 1)));
            }
        }
        return out;
    }

    /** What nothing of the elevation lies below: the base, or an opening. */
    private Exit.Out below(Walk at, boolean right) {
        Cell c = at.cell;
        boolean opening = c.ground.isHead() || c.ground.isWall() && !coat.flush().under(c.lower, right ? at.x : at.x - 1, right ? at.x + 1 : at.x).isEmpty();
        return opening ? Exit.Out.OPENING : Exit.Out.FOOT;
    }

    /** Past the side of a cell: null if it goes on along the next cell's lower line. */
    private List<Exit> overSide(Walk at, boolean right, Running running) {
        double y = at.cell.lower.at(at.x);
        Flank f = at.flank(right, y);
        if (f == null) {
            return List.of(Exit.leaving(!at.cell.ground.isWall() || coat.flush().isSide(at.x, y) ? Exit.Out.OPENING : Exit.Out.SIDE));
        }
        if (Flow.isCarriedPast(at.cell.pile, at.gap, f.inFront())) {
            return List.of(Exit.leaving(Exit.Out.CLEAR));
        }
        boolean ahead = !f.bRight();
        Crossing x = new Crossing(coat, at.cell.pile, at.gap, f.b().pile, ahead ? Edge.LEFT : Edge.RIGHT);
        boolean goesOn = isLevelWith(f, y, right) && ahead == right;
        if (goesOn && x.lo == x.hi && x.cost(x.lo) == 0) {
            at.go(f.b(), x.lo, f.beyondX());
            return null;
        }
        List<Exit> out = new ArrayList<>(1);
        for (int j = x.lo; j <= x.hi; j++) {
            if (x.cost(j) == 0 && goesOn) {
                out.addAll(along(f.b(), j, f.beyondX(), right, running));
            } else if (x.cost(j) == 0 && !risesAway(f, j, y, ahead)) {
                out.add(off(at.over(), f, j, 0, y));
            }
        }
        return out;
    }

    /** Whether the line goes on upwards, and lets no water down there either: the foot of a V. */
    private boolean risesAway(Flank f, int gap, double y, boolean right) {
        Cell beyond = f.b();
        boolean rises = right ? beyond.lower.slope() > 0 : beyond.lower.slope() < 0;
        if (!rises || f.shift() != 0 || Math.abs(y - beyond.lower.at(f.beyondX())) >= 0.5) {
            return false;
        }
        Seam s = new Walk(beyond, gap, f.beyondX()).seamBeyond(right);
        return s == null ? beyond.overPipe : !Flow.isCarriedPast(beyond.pile, gap, s.inFront())
                && isHeld(new Crossing(coat, beyond.pile, gap, s.lower().pile, Edge.TOP));
    }

    private static boolean isLevelWith(Flank f, double y, boolean right) {
        Line floor = f.b().lower;
        return f.shift() == 0 && Math.abs(y - floor.at(f.beyondX())) < 0.5 && (right ? floor.slope() <= 0 : floor.slope() >= 0);
    }

    private static Exit off(int over, Flank f, int gap, int cost, double y) {
        long from = f.bRight() ? f.beyondX() - 1 : f.beyondX();
        return Exit.into(f.b(), gap, cost, from, y + f.shift(), over, Line.level(Math.round(y), f.x(), f.x()));
    }

    /**
     * Off one end of the flashing that a cell's water lies on, at the level of its ledge; none where it is dammed or goes on out of sight.
     *
     * @param start where on the ledge it begins
     */
    List<Exit> offEnd(Cell cell, int gap, double y, long start, boolean right) {
        int flashing = cell.pile.at(gap - 1);
        Walk at = new Walk(cell, gap, start);
        while (true) {
            Cell beyond = onLedge(at, y, right);
            Flank f = beyond != null ? null : at.flank(right, y);
            if (beyond == null && (f == null || f.b().ground != cell.ground)) {
                return List.of();
            }
            Cell next = beyond != null ? beyond : f.b();
            int on = next.pile.find(flashing);
            if (on < 0) {
                return f == null || coat.isDammed(flashing, right) ? List.of() : offEnd(at, f, y, right);
            }
            at.go(next, on + 1, f == null ? at.x : f.beyondX());
        }
    }

    /** To where a ledge leaves its cell: the cell beyond a sloped edge that it comes to first, or null at the cell's side. */
    private static Cell onLedge(Walk at, double y, boolean right) {
        Cell c = at.cell;
        long end = right ? c.x1 : c.x0;
        boolean below = c.lower.at(end) > y + 0.5, above = c.upper.at(end) < y + 0.5;
        Line line = below ? c.lower : c.upper;
        at.x = below || above ? Math.round(line.ax() + (y - line.ay()) / line.slope()) : end;
        for (Seam s : below ? c.down : above ? c.up : Neighbours.NO_SEAMS) {
            Cell beyond = below ? s.lower() : s.upper();
            if (beyond.ground == c.ground && s.from() <= at.x && at.x <= s.to() && (at.x == end || (right ? beyond.x1 > at.x : beyond.x0 < at.x))) {
                return beyond;
            }
        }
        return null;
    }

    private List<Exit> offEnd(Walk at, Flank f, double y, boolean right) {
        Crossing x = new Crossing(coat, at.cell.pile, at.gap, f.b().pile, right ? Edge.LEFT : Edge.RIGHT);
        List<Exit> out = new ArrayList<>(1);
        for (int j = x.lo; j <= x.hi; j++) {
            out.add(off(at.cell.pile.at(at.gap - 1), f, j, x.cost(j), y));
        }
        return out;
    }
}
