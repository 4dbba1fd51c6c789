package rainlap.water;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Function;
import java.util.function.IntPredicate;
import java.util.function.Supplier;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import rainlap.stack.Crew;

/**
 * Follows all water at once, cheapest ways first: moves that cost nothing before those that cost one, and so on. Each strip of the wall is followed for itself, and what
 * crosses into another waits there for the next round.
 */
final class Flows {
    private final Strips strips;
    private final Coat coat;
    private final Drive drive;
    private final Bounds bounds;
    private final Map<Ways.Step, List<Exit>> beyond = new ConcurrentHashMap<>();
    /** By strip; null where no water has come. */
    private final Flow[] flows;

    Flows(Strips strips, Coat coat, Drive drive, Bounds bounds) {
        this.strips = strips;
        this.coat = coat;
        this.drive = drive;
        this.bounds = bounds;
        this.flows = new Flow[strips.count()];
    }

    private Flow strip(int i) {
        if (flows[i] == null) {
            flows[i] = new Flow(i, strips, coat, drive, bounds, beyond);
        }
        return flows[i];
    }

    /** Of the strips to which water has come. */
    Stream<Flow> wet() {
        return Stream.of(flows).filter(Objects::nonNull);
    }

    /** Rain on all of the wall, followed through so many failures. */
    void run(Crew crew, Rain rain, int most) {
        for (int i = 0; i < flows.length; i++) {
            strip(i);
        }
        crew.all(wet().<Supplier<Boolean>>map(s -> () -> s.rain(rain)).toList());
        for (int cost = 0; cost <= most; cost++) {
            settle(cost, crew);
        }
        crew.all(wet().<Supplier<Flow>>map(s -> s::settled).toList());
        beyond.clear();
    }

    /** After all that costs less: what costs most, in cells where somebody asks for it. */
    void finish(Crew crew) {
        List<List<Cell>> again = again();
        for (boolean frame : new boolean[] {false, true}) {
            eachStrip(crew, i -> flows[i].goOn(again.get(i).stream().filter(c -> c.isOnFrame() == frame).toList()));
            settle(Flow.MOST - 1, crew);
        }
        eachStrip(crew, i -> flows[i].beginLast(strips.asked(i)));
        settle(Flow.MOST, crew);
    }

    private void eachStrip(Crew crew, IntPredicate what) {
        crew.all(IntStream.range(0, flows.length).<Supplier<Boolean>>mapToObj(i -> () -> what.test(i)).toList());
    }

    /** Where somebody asks though it did not lead on before, and all from which water may get there, by strips and from the top down. */
    private List<List<Cell>> again() {
        List<List<Cell>> all = IntStream.range(0, flows.length).<List<Cell>>mapToObj(i -> new ArrayList<>()).toList();
        for (int i = 0; i < flows.length; i++) {
            strips.asked(i).stream().filter(c -> !c.leads && !c.isOpen()).forEach(c -> {
                c.leads = true;
                beginAgain(c, all);
                c.eachCrossing(x -> x.eachBeyond(b -> beginAgain(b, all)));
            });
        }
        all.forEach(some -> some.sort(Strips.FROM_ABOVE));
        return all;
    }

    private static void beginAgain(Cell c, List<List<Cell>> all) {
        if (!c.beginsAgain) {
            c.beginsAgain = true;
            all.get(c.strip).add(c);
        }
    }

    /** Rain on a few cells, higher ones first; it goes no further until it is settled. */
    void rain(List<Wet> rain) {
        rain.forEach(w -> strip(w.cell().strip).rain(w));
    }

    /** Follows what costs just so much; all that costs less has settled. */
    void settle(int cost, Crew crew) {
        exchange();
        while (crew.all(wet().<Supplier<Boolean>>map(s -> () -> s.settle(cost)).toList()).contains(true)) {
            exchange();
        }
    }

    private void exchange() {
        for (Flow s : wet().toList()) {
            List<Coming> sent = List.copyOf(s.sent());
            s.sent().clear();
            sent.forEach(d -> strip(d.cell().strip).expect(d));
        }
    }

    /** How often water came onto the frame. */
    int entryCount() {
        return wet().mapToInt(f -> f.entries().size()).sum();
    }

    List<Trapped> trapped() {
        return all(Flow::trapped);
    }

    /** Water that, as drawn, comes to the top of a batten. */
    List<OnBatten> onBattens() {
        return all(Flow::onBattens);
    }

    private <T> List<T> all(Function<Flow, List<T>> what) {
        return wet().map(what).flatMap(List::stream).toList();
    }
}
