package rainlap.water;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import rainlap.material.Edge;

/** The ways out for water that runs along closed edges, along battens, or to the ends of flashings. */
final class Ways {
    private final Coat coat;
    private final Map<Step, List<Exit>> known = new HashMap<>();

    /** Water comes past a side of a cell, this high, in a gap: what begins there may be driven under. */
    interface Passing {
        void by(Cell cell, int gap, Flank side, double level);
    }

    /** A stretch of a line, walked in one direction; a cell's own lower line where nothing but a pipe lies below. */
    private record Step(Object stretch, int gap, boolean right) {}

    Ways(Coat coat) {
        this.coat = coat;
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

    /** Every way out along a cell's lower line in one direction; none where it is held. Each side passed on the way is told once, when first passed. */
    List<Exit> along(Cell cell, int gap, long start, boolean right, Passing passing) {
        List<Step> steps = new ArrayList<>();
        Walk at = new Walk(cell, gap, start);
        List<Exit> out = null;
        while (out == null) {
            boolean end = at.isAtEnd(right);
            Seam s = end ? null : at.seamBeyond(right);
            Step step = new Step(s == null ? at.cell : s, at.gap, right);
            out = end ? overSide(at, right, passing) : known.get(step);
            if (!end && out == null) {
                steps.add(step);
                out = onLine(at, s, right);
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
                return List.of(Exit.LEAVES);
            }
            at.x = at.nextSeam(right);
            return null;
        }
        if (Flow.isCarriedPast(at.cell.pile, at.gap, s.inFront())) {
            return List.of(Exit.LEAVES);
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
                out.add(new Exit(s.lower(), j, 0, there, Double.NaN, at.over(), Winds.part(at.cell.lower, from, from + 1)));
            }
        }
        return out;
    }

    /** Past the side of a cell: null if it goes on along the next cell's lower line. */
    private List<Exit> overSide(Walk at, boolean right, Passing passing) {
        double y = at.cell.lower.at(at.x);
        Flank f = at.flank(right, y);
        if (f == null || Flow.isCarriedPast(at.cell.pile, at.gap, f.inFront())) {
            return List.of(Exit.LEAVES);
        }
        passing.by(at.cell, at.gap, f, y);
        boolean ahead = !f.bRight();
        Crossing x = new Crossing(coat, at.cell.pile, at.gap, f.b().pile, ahead ? Edge.LEFT : Edge.RIGHT);
        boolean goesOn = isLevelWith(f, y, right) && ahead == right;
        if (goesOn) {
            tellBack(f, x, y, passing);
        }
        if (goesOn && x.lo == x.hi && x.cost(x.lo) == 0) {
            at.go(f.b(), x.lo, f.beyondX());
            return null;
        }
        List<Exit> out = new ArrayList<>(1);
        for (int j = x.lo; j <= x.hi; j++) {
            if (x.cost(j) == 0 && goesOn) {
                out.addAll(along(f.b(), j, f.beyondX(), right, passing));
            } else if (x.cost(j) == 0) {
                out.add(off(at.over(), f, j, 0, y));
            }
        }
        return out;
    }

    /** Just beyond a side that it passed, water is beside what ends there. */
    private static void tellBack(Flank f, Crossing x, double y, Passing passing) {
        Flank back = new Walk(f.b(), x.lo, f.beyondX()).flank(f.bRight(), y);
        for (int j = x.lo; back != null && j <= x.hi; j++) {
            if (x.cost(j) == 0) {
                passing.by(f.b(), j, back, y);
            }
        }
    }

    private static boolean isLevelWith(Flank f, double y, boolean right) {
        Line floor = f.b().lower;
        return f.shift() == 0 && Math.abs(y - floor.at(f.beyondX())) < 0.5 && (right ? floor.slope() <= 0 : floor.slope() >= 0);
    }

    private static Exit off(int over, Flank f, int gap, int cost, double y) {
        long from = f.bRight() ? f.beyondX() - 1 : f.beyondX();
        return new Exit(f.b(), gap, cost, from, y + f.shift(), over, Line.level(Math.round(y), f.x(), f.x()));
    }

    /** Off one end of the flashing that a cell's water lies on, at the level of its ledge; none where it is dammed or goes on out of sight. */
    List<Exit> offEnd(Cell cell, int gap, double y, boolean right) {
        int flashing = cell.pile.at(gap - 1);
        if (coat.isDammed(flashing, right)) {
            return List.of();
        }
        Walk at = new Walk(cell, gap, right ? cell.x1 : cell.x0);
        while (true) {
            Flank f = at.flank(right, y);
            if (f == null || f.b().ground != cell.ground) {
                return List.of();
            }
            int on = f.b().pile.find(flashing);
            if (on < 0) {
                return offEnd(at, f, y, right);
            }
            at.go(f.b(), on + 1, right ? f.b().x1 : f.b().x0);
        }
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
