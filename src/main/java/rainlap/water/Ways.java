package rainlap.water;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** The ways out for water that runs along closed edges, along battens, or to the ends of flashings. */
final class Ways {
    private final Coat coat;
    private final Bounds bounds;
    private final Map<Step, List<Exit>> known = new HashMap<>();
    private final Map<Step, List<Exit>> shared;

    /** Is told along which stretch of a cell's lower line water runs. */
    interface Running {
        Running UNTOLD = (cell, from, to) -> {};

        void along(Cell cell, long from, long to);

        /** Who is to be told once water leaves a cell: what runs on from another strip of the wall is told there. */
        default Running beyond(Cell cell) {
            return this;
        }
    }

    /** A stretch of a line, walked in one direction; a cell's own lower line where nothing but a pipe lies below. */
    record Step(Object stretch, boolean right) {
        /** Odd, and so large that places a few millimetres apart in cells beside one another do not fall together. */
        private static final int SPREAD = 0x9E3779B1;

        /** There is one of each stretch: which of them it is says all. */
        @Override
        public boolean equals(Object o) {
            return o instanceof Step s && s.stretch == stretch && s.right == right;
        }

        @Override
        public int hashCode() {
            int where = stretch instanceof Seam s ? s.cell.number * SPREAD + s.from : ((Cell) stretch).number * SPREAD;
            return where * SPREAD + (right ? 1 : 0);
        }
    }

    /** @param shared what is found beyond its strip, where others walk too: else a long line would be walked to its end from every strip that it lies in */
    Ways(Coat coat, Bounds bounds, Map<Step, List<Exit>> shared) {
        this.coat = coat;
        this.bounds = bounds;
        this.shared = shared;
    }

    /** Gives back the room of what was walked; who walks there again finds the same. */
    void forget() {
        known.clear();
    }

    /** Every way out along a cell's lower line in one direction; none where it is held. Of what was walked before, the first stretch is told again. */
    List<Exit> along(Cell cell, long start, boolean right, Running first) {
        Running running = first;
        List<Step> steps = new ArrayList<>(), further = new ArrayList<>();
        Walk at = new Walk(cell, start);
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
            Step step = new Step(s == null ? at.cell : s, right);
            boolean told = running != Running.UNTOLD;
            out = (told ? known : shared).get(step);
            long from = at.x;
            List<Exit> here = onLine(at, s, right);
            running.along(at.cell, Math.min(from, at.x), Math.max(from, at.x));
            if (out == null) {
                (told ? steps : further).add(step);
                out = here;
            }
        }
        List<Exit> exits = out;
        steps.forEach(s -> known.put(s, exits));
        further.forEach(s -> shared.put(s, exits));
        return exits;
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
        if (s.carriesPast) {
            return List.of(Exit.leaving(Exit.Out.CLEAR));
        }
        if (s.isHeld()) {
            at.x = right ? s.to : s.from;
            return null;
        }
        long from = right ? at.x : at.x - 1;
        List<Exit> out = new ArrayList<>(1);
        for (int i = 0; i < s.count(); i++) {
            if (s.cost(i) == 0) {
                long there = s.ontoSill ? s.to(i).x0 : from + s.shift();
                out.add(Exit.into(s.to(i), 0, there, Double.NaN, at.cell.over, at.cell.lower.part(from, from + 1)));
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
        if (f.carriesPast) {
            return List.of(Exit.leaving(Exit.Out.CLEAR));
        }
        boolean ahead = !f.beyondRight;
        boolean goesOn = isLevelWith(f.to(0), f, y, right) && ahead == right;
        if (goesOn && f.count() == 1 && f.cost(0) == 0) {
            at.go(f.to(0), f.beyondX());
            return null;
        }
        List<Exit> out = new ArrayList<>(1);
        for (int i = 0; i < f.count(); i++) {
            if (f.cost(i) == 0 && isLevelWith(f.to(i), f, y, right) && ahead == right) {
                out.addAll(along(f.to(i), f.beyondX(), right, running));
            } else if (f.cost(i) == 0 && !risesAway(f, f.to(i), y, ahead)) {
                out.add(off(at.cell.over, f, i, 0, y));
            }
        }
        return out;
    }

    /** Whether the line goes on upwards, and lets no water down there either: the foot of a V. */
    private static boolean risesAway(Flank f, Cell beyond, double y, boolean right) {
        boolean rises = right ? beyond.lower.slope() > 0 : beyond.lower.slope() < 0;
        if (!rises || f.shift() != 0 || Math.abs(y - beyond.lower.at(f.beyondX())) >= 0.5) {
            return false;
        }
        Seam s = new Walk(beyond, f.beyondX()).seamBeyond(right);
        return s == null ? beyond.overPipe : !s.carriesPast && s.isHeld();
    }

    private static boolean isLevelWith(Cell beyond, Flank f, double y, boolean right) {
        Line floor = beyond.lower;
        return f.shift() == 0 && Math.abs(y - floor.at(f.beyondX())) < 0.5 && (right ? floor.slope() <= 0 : floor.slope() >= 0);
    }

    private static Exit off(int over, Flank f, int i, int cost, double y) {
        long from = f.beyondRight ? f.beyondX() - 1 : f.beyondX();
        return Exit.into(f.to(i), cost, from, y + f.shift(), over, Line.level(Math.round(y), f.x(), f.x()));
    }

    /**
     * Off one end of the flashing that a cell's water lies on, at the level of its ledge; none where it is dammed or goes on out of sight.
     *
     * @param start where on the ledge it begins
     */
    List<Exit> offEnd(Cell cell, double y, long start, boolean right) {
        int flashing = cell.on;
        Walk at = new Walk(cell, start);
        while (true) {
            Seam s = onLedge(at, y, right);
            Flank f = s != null ? null : at.flank(right, y);
            if (s == null && (f == null || f.to(0).ground != cell.ground)) {
                return List.of();
            }
            Crossing next = s != null ? s : f;
            if (next.to(0).on != flashing) {
                return s != null || coat.isDammed(flashing, right) ? List.of() : offEnd(flashing, f, y);
            }
            at.go(next.to(0), f == null ? at.x : f.beyondX());
        }
    }

    /** To where a ledge leaves its cell: over a sloped edge that it comes to first, or null at the cell's side. */
    private static Seam onLedge(Walk at, double y, boolean right) {
        Cell c = at.cell;
        long end = right ? c.x1 : c.x0;
        boolean below = c.lower.at(end) > y + 0.5, above = c.upper.at(end) < y + 0.5;
        Line line = below ? c.lower : c.upper;
        at.x = below || above ? Math.round(line.ax() + (y - line.ay()) / line.slope()) : end;
        for (Seam s : below ? c.down : above ? c.up : Neighbours.NO_SEAMS) {
            Cell beyond = s.to(0);
            if (beyond.ground == c.ground && s.from <= at.x && at.x <= s.to && (at.x == end || (right ? beyond.x1 > at.x : beyond.x0 < at.x))) {
                return s;
            }
        }
        return null;
    }

    private static List<Exit> offEnd(int flashing, Flank f, double y) {
        List<Exit> out = new ArrayList<>(1);
        for (int i = 0; i < f.count(); i++) {
            out.add(off(flashing, f, i, f.cost(i), y));
        }
        return out;
    }
}
