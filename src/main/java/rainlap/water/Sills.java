package rainlap.water;

import rainlap.wall.Side;
import rainlap.water.How.Move;

/** On a sill running water spreads; what only falls back onto it from a jamb keeps to the corner. */
final class Sills {
    private final Flow flow;

    Sills(Flow flow) {
        this.flow = flow;
    }

    /** What wind drove and what falls back from a jamb onto the sill spreads no further than the corner. */
    void intoCorner(Wet w, Seam s, int i, long upTo) {
        Cell c = s.to(i);
        long from = w.cell().ground.surface().side() == Side.LEFT ? c.x0 : c.x1 - 1;
        flow.wet(new Wet(c, false, w.cost() + s.cost(i), from, from + 1, upTo, upTo, w, s.how(Move.FALL, i), s.line().part(w.from(), upTo)));
    }

    /** On a sill: over every line and border, to all sides. */
    void spreads(Wet w) {
        Cell c = w.cell();
        for (Seam s : c.up) {
            spread(w, s, s.line());
        }
        for (Seam s : c.down) {
            spread(w, s, s.line());
        }
        for (Flank f : c.flanks) {
            spread(w, f, null);
        }
    }

    private void spread(Wet w, Crossing x, Line line) {
        for (int i = 0; i < x.count() && x.to(i).ground == w.cell().ground; i++) {
            flow.fill(x, i, x.to(i).x0, x.to(i).x1, w, Move.SPREAD, line);
        }
    }
}
