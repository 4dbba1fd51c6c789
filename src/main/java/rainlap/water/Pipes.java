package rainlap.water;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import rainlap.geom.Point;
import rainlap.geom.Region;
import rainlap.geom.Segment;
import rainlap.wall.Penetration;
import rainlap.water.How.Move;

/** Water at the edge of a pipe: there every layer has a cut, and it gets into each gap further in that nothing seals to the pipe. */
final class Pipes {
    private static final double TOUCHES = 0.5;

    private final Flow flow;
    private final Coat coat;

    Pipes(Flow flow, Coat coat) {
        this.flow = flow;
        this.coat = coat;
    }

    /** Tells cells which stretches of their sides are plumb sides of pipes. */
    static void findSides(List<Penetration> pipes, List<Cell> cells) {
        Map<Long, List<Side>> sides = new HashMap<>();
        for (int i = 0; i < pipes.size(); i++) {
            Region r = pipes.get(i).region();
            for (int k = 0; k < r.edgeCount(); k++) {
                if (r.ax(k) == r.bx(k)) {
                    sides.computeIfAbsent(r.ax(k), x -> new ArrayList<>(1)).add(new Side(i, Math.min(r.ay(k), r.by(k)), Math.max(r.ay(k), r.by(k))));
                }
            }
        }
        if (!sides.isEmpty()) {
            for (Cell c : cells) {
                sides.getOrDefault(c.x0, List.of()).forEach(s -> s.beside(c, c.x0));
                sides.getOrDefault(c.x1, List.of()).forEach(s -> s.beside(c, c.x1));
            }
        }
    }

    private record Side(int pipe, long low, long high) {
        void beside(Cell c, long x) {
            long from = Math.round(Math.max(low, c.lower.at(x))), to = Math.round(Math.min(high, c.upper.at(x)));
            if (from < to) {
                c.pipe = Math.max(c.pipe, pipe);
                c.besidePipe = c.besidePipe.isEmpty() ? new ArrayList<>(1) : c.besidePipe;
                c.besidePipe.add(new Segment(new Point(x, from), new Point(x, to)));
            }
        }
    }

    /** Into every gap further in, for one failure at most: the seal to the pipe is one, however many layers it goes through. */
    void in(Wet w) {
        Pile pile = w.cell().pile;
        int seal = -1;
        for (int gap = w.gap() - 1; gap >= 0; gap--) {
            seal = seal < 0 && coat.isHeldToPipe(pile.at(gap)) ? pile.at(gap) : seal;
            wetAlong(w, gap, w.cost() + (seal < 0 ? 0 : 1), seal < 0 ? pile.at(gap) : seal);
        }
    }

    private void wetAlong(Wet w, int gap, int cost, int behind) {
        Cell c = w.cell();
        if (c.overPipe) {
            flow.wet(new Wet(c, gap, true, cost, w.from(), w.to(), c.lower.at(w.from()) + 1, c.lower.at(w.to()) + 1, w, coat.how(Move.PIPE, behind),
                    c.lower.part(w.from(), w.to())));
        }
        if (c.underPipe) {
            double left = w.leftTop() - c.upper.at(w.from()) + TOUCHES, right = w.rightTop() - c.upper.at(w.to()) + TOUCHES;
            double meets = w.from() + (w.to() - w.from()) * left / (left - right);
            long from = left >= 0 ? w.from() : right < 0 ? w.to() : (long) Math.ceil(meets);
            long to = right >= 0 ? w.to() : left < 0 ? w.from() : (long) Math.floor(meets);
            flow.wet(new Wet(c, gap, true, cost, from, to, c.upper.at(from), c.upper.at(to), w, coat.how(Move.PIPE, behind), c.upper.part(from, to)));
        }
        c.besidePipe.forEach(s -> wetBeside(w, s, gap, cost, behind));
    }

    private void wetBeside(Wet w, Segment side, int gap, int cost, int behind) {
        long x = side.a().x(), from = x == w.cell().x1 ? x - 1 : x;
        double top = Math.min(w.top(x), side.b().y());
        if (w.from() <= from && from < w.to() && top > side.a().y()) {
            flow.wet(new Wet(w.cell(), gap, true, cost, from, from + 1, top, top, w, coat.how(Move.PIPE, behind), new Line(x, side.a().y(), x, Math.round(top))));
        }
    }
}
