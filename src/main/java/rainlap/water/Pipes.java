package rainlap.water;

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

    /** Into every gap further in, for one failure at most: the seal to the pipe is one, however many layers it goes through. */
    void in(Wet w) {
        for (PipeEdge e : w.cell().atPipe) {
            int seal = -1;
            for (int gap = e.gap() - 1; gap >= 0; gap--) {
                int over = e.column().pile.at(gap);
                seal = seal < 0 && coat.isHeldToPipe(over) ? over : seal;
                wetAlong(w, e, e.column().cells()[gap], w.cost() + (seal < 0 ? 0 : 1), coat.how(Move.PIPE, seal < 0 ? over : seal));
            }
        }
    }

    private void wetAlong(Wet w, PipeEdge e, Cell c, int cost, How how) {
        switch (e.where()) {
            case OVER -> over(w, c, cost, how, Math.max(w.from(), e.from()), Math.min(w.to(), e.to()));
            case UNDER -> under(w, c, cost, how, Math.max(w.from(), e.from()), Math.min(w.to(), e.to()));
            case BESIDE -> beside(w, e, c, cost, how);
        }
    }

    private void over(Wet w, Cell c, int cost, How how, long a, long b) {
        if (a < b) {
            flow.wet(new Wet(c, true, cost, a, b, c.lower.at(a) + 1, c.lower.at(b) + 1, w, how, c.lower.part(a, b)));
        }
    }

    private void under(Wet w, Cell c, int cost, How how, long a, long b) {
        if (a >= b) {
            return;
        }
        double left = w.top(a) - c.upper.at(a) + TOUCHES, right = w.top(b) - c.upper.at(b) + TOUCHES;
        double meets = a + (b - a) * left / (left - right);
        long from = left >= 0 ? a : right < 0 ? b : (long) Math.ceil(meets);
        long to = right >= 0 ? b : left < 0 ? a : (long) Math.floor(meets);
        flow.wet(new Wet(c, true, cost, from, to, c.upper.at(from), c.upper.at(to), w, how, c.upper.part(from, to)));
    }

    private void beside(Wet w, PipeEdge e, Cell c, int cost, How how) {
        long x = e.x(), from = x == c.x1 ? x - 1 : x;
        double top = Math.min(w.top(x), e.to());
        if (w.from() <= from && from < w.to() && top > e.from()) {
            flow.wet(new Wet(c, true, cost, from, from + 1, top, top, w, how, new Line(x, e.from(), x, Math.round(top))));
        }
    }
}
