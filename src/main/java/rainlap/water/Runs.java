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
    private final Winds winds;
    private final Set<End> left = new HashSet<>();
    private final List<Trapped> trapped = new ArrayList<>();
    private final Set<OnBatten> onBattens = new LinkedHashSet<>();

    private record End(Ground ground, int piece, int cost, boolean right) {}

    Runs(Flow flow, Coat coat, Ways ways, Winds winds) {
        this.flow = flow;
        this.coat = coat;
        this.ways = ways;
        this.winds = winds;
    }

    List<Trapped> trapped() {
        return trapped;
    }

    List<OnBatten> onBattens() {
        return List.copyOf(onBattens);
    }

    /** Notes the battens that begin at a stretch of a cell's lower line, on whose tops its water comes to lie as drawn. */
    void rest(Wet w, Crossing x, long from, long to) {
        for (int j = x.lo; j < x.hi && w.cost() == 0; j++) {
            if (coat.isBatten(x.overAt(j))) {
                Ground g = w.cell().ground;
                Line l = w.cell().lower;
                onBattens.add(new OnBatten(coat.piece(x.overAt(j)).id(), g.surface(),
                        List.of(g.turned(new Point(from, Math.round(l.at(from)))), g.turned(new Point(to, Math.round(l.at(to)))))));
            }
        }
    }

    /** Runs along its cell's lower line from a stretch of it, and falls where it first can. */
    void along(Wet w, long from, long to, boolean closed) {
        Line line = w.cell().lower;
        boolean out = line.slope() >= 0 && goesOut(w, from, false);
        out |= line.slope() <= 0 && goesOut(w, to, true);
        if (!out && closed) {
            trapped.add(new Trapped(w, from, to));
        }
    }

    private boolean goesOut(Wet w, long start, boolean right) {
        List<Exit> exits = ways.along(w.cell(), w.gap(), start, right, (cell, gap, side, level) -> winds.startBeside(w, cell, gap, side, level));
        exits.stream().filter(e -> !e.leaves()).forEach(e -> flow.wet(e.wet(w, Move.ALONG)));
        return !exits.isEmpty();
    }

    /** Off the ends of a flashing whose ledge this water stands over. */
    void overLedge(Wet w) {
        OptionalDouble y = coat.ledge(w.cell(), w.gap());
        if (y.isEmpty() || w.top((w.from() + w.to()) / 2.0) < y.getAsDouble()) {
            return;
        }
        for (boolean right : new boolean[] {false, true}) {
            if (left.add(new End(w.cell().ground, w.cell().pile.at(w.gap() - 1), w.cost(), right))) {
                ways.offEnd(w.cell(), w.gap(), y.getAsDouble(), right).forEach(e -> flow.wet(e.wet(w, Move.LEDGE)));
            }
        }
    }
}
