package rainlap.water;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import rainlap.geom.Point;
import rainlap.water.How.Move;

/** Running water that goes sideways: along closed edges, along battens, and off the ends of flashings. */
final class Runs {
    private final Flow flow;
    private final Coat coat;
    private final Ways ways;
    private final Set<End> left = new HashSet<>();
    private final List<Trapped> trapped = new ArrayList<>();
    private final Set<OnBatten> onBattens = new LinkedHashSet<>();

    private record End(Ground ground, int piece, int cost, boolean right) {}

    Runs(Flow flow, Coat coat, Ways ways) {
        this.flow = flow;
        this.coat = coat;
        this.ways = ways;
    }

    List<Trapped> trapped() {
        return trapped;
    }

    List<OnBatten> onBattens() {
        return List.copyOf(onBattens);
    }

    /** Forgets which ends of ledges water has left by; who comes there again leaves again. */
    void forget() {
        left.clear();
    }

    /** Notes the battens that begin at a stretch of a cell's lower line, on whose tops its water comes to lie as drawn. */
    private void rest(Wet w, Seam x, long from, long to, boolean held) {
        for (int i = 0; x.begins(i) && w.cost() == 0; i++) {
            int over = x.to(i).over;
            if (coat.isBatten(over)) {
                Ground g = w.cell().ground;
                Line l = w.cell().lower;
                onBattens.add(new OnBatten(coat.piece(over).id(), g.surface(),
                        List.of(g.turned(new Point(from, Math.round(l.at(from)))), g.turned(new Point(to, Math.round(l.at(to))))), isLevel(l), held));
            }
        }
    }

    /** Ends of lines are on the grid, so their fall is known to within a grid unit. */
    private static boolean isLevel(Line l) {
        return Math.abs(l.by() - l.ay()) * 1000L <= (long) OnBatten.LEVEL_MM_PER_M * (l.bx() - l.ax()) + 1000;
    }

    /** Along each stretch of its cell's lower line that holds it, however many layers end beneath; and over a pipe. */
    void alongHeld(Wet w) {
        Seam[] down = w.cell().down;
        for (int i = 0; i < down.length; i++) {
            int first = i;
            while (i < down.length && isHeldOver(w, down[i]) && (i == first || down[i].from == down[i - 1].to)) {
                i++;
            }
            if (i > first) {
                along(w, down, first, i);
                i--;
            }
        }
        if (w.cell().overPipe && !getsAway(w, w.from(), w.to())) {
            stays(w, w.from(), w.to());
        }
    }

    private static boolean isHeldOver(Wet w, Seam s) {
        return s.from < w.to() && w.from() < s.to && !s.carriesPast && s.isHeld();
    }

    private void along(Wet w, Seam[] down, int first, int end) {
        boolean away = getsAway(w, Math.max(down[first].from, w.from()), Math.min(down[end - 1].to, w.to()));
        for (int i = first; i < end; i++) {
            long from = Math.max(down[i].from, w.from()), to = Math.min(down[i].to, w.to());
            if (!away && !down[i].isFree()) {
                stays(w, from, to);
            }
            rest(w, down[i], from, to, !away);
        }
    }

    /** Runs along its cell's lower line from a stretch of it, and falls where it first can; returns whether it gets away by either end. */
    private boolean getsAway(Wet w, long from, long to) {
        Line line = w.cell().lower;
        boolean out = line.slope() >= 0 && goesOut(w, from, false);
        return out | (line.slope() <= 0 && goesOut(w, to, true));
    }

    private void stays(Wet w, long from, long to) {
        if (!isOnItsWay(w)) {
            trapped.add(new Trapped(w, from, to));
        }
    }

    private boolean goesOut(Wet w, long start, boolean right) {
        OnItsWay way = new OnItsWay(w);
        List<Exit> exits = ways.along(w.cell(), start, right, way);
        way.tell();
        for (Exit e : exits) {
            if (!e.leaves()) {
                flow.wet(e.wet(w, coat.how(Move.ALONG, e.over())));
            }
        }
        return !exits.isEmpty();
    }

    /** Whether it is part of what runs along the line it stands over. */
    private static boolean isOnItsWay(Wet w) {
        return w.how().move() == Move.ALONG && w.leftTop() - w.cell().lower.at(w.from()) <= 1.5;
    }

    /** Water on its way along a line is running water too, one grid unit high: it is driven under what it passes, and falls where something fails. */
    private final class OnItsWay implements Ways.Running {
        private final Wet source;
        private Cell cell;
        private long from;
        private long to;

        OnItsWay(Wet source) {
            this.source = source;
        }

        @Override
        public void along(Cell c, long a, long b) {
            if (c == cell && a <= to && b >= from) {
                from = Math.min(from, a);
                to = Math.max(to, b);
            } else {
                tell();
                cell = c;
                from = a;
                to = b;
            }
        }

        @Override
        public Ways.Running beyond(Cell c) {
            return c.strip == source.cell().strip ? this : UNTOLD;
        }

        void tell() {
            if (cell != null && from < to) {
                Line line = cell.lower;
                How how = coat.how(Move.ALONG, cell.over);
                flow.wet(new Wet(cell, true, source.cost(), from, to, line.at(from) + 1, line.at(to) + 1, source, how, line.part(from, to)));
            }
        }
    }

    /** Off the ends of a flashing whose ledge this water stands over. */
    void overLedge(Wet w) {
        OptionalDouble y = coat.ledge(w.cell());
        if (y.isEmpty() || w.top((w.from() + w.to()) / 2.0) < y.getAsDouble()) {
            return;
        }
        for (boolean right : new boolean[] {false, true}) {
            if (left.add(new End(w.cell().ground, w.cell().on, w.cost(), right))) {
                List<Exit> exits = ways.offEnd(w.cell(), y.getAsDouble(), right ? w.to() : w.from(), right);
                exits.forEach(e -> flow.wet(e.wet(w, coat.how(Move.LEDGE, e.over()))));
            }
        }
    }
}
