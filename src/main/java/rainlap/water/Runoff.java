package rainlap.water;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.PriorityQueue;
import java.util.stream.Collectors;
import rainlap.wall.Opening;
import rainlap.wall.Side;

/**
 * How much water runs where, as drawn. Rain gathers down the outermost layers; where a line leaves several ways that cost nothing, each takes an equal
 * share, and so do the ends of a ledge without dams. What a drip lets go is thrown clear. On a window the rain runs down to the sill, evenly. Water that
 * has come onto the frame is counted and followed no further. Driven water is not taken from what runs: nobody can say how much it is.
 */
final class Runoff {
    private static final double SQUARE_METRES = 1e-10;

    private final Coat coat;
    private final Sides edges;
    private final Ways ways;
    private final double rain;
    private final Met met = new Met();
    private final PriorityQueue<Due> due = new PriorityQueue<>(Comparator.comparingDouble(Due::height).reversed().thenComparingLong(Due::number));
    private final Tally tally = new Tally();
    private long count;

    private record Due(double height, long number, Cell cell) {}

    Runoff(Coat coat, long creep, double litresPerM2Hour) {
        this.coat = coat;
        this.ways = new Ways(coat, Bounds.NONE, new HashMap<>());
        this.rain = litresPerM2Hour * SQUARE_METRES;
        this.edges = new Sides(rain, creep);
    }

    void run(List<Ground> grounds, List<Opening> all) {
        grounds.get(0).cells.stream().filter(Cell::isOpen).forEach(this::await);
        Map<String, Ground> sills = grounds.stream().filter(Ground::isSill).collect(Collectors.toMap(g -> g.surface().opening(), g -> g));
        for (Opening o : all) {
            double litres = rain * o.rect().width() * o.rect().height();
            tally.fallen += litres;
            if (o.reveal() == 0) {
                tally.onOpenings += litres;
            } else {
                ontoSill(o, litres, sills.get(o.id()));
            }
        }
        while (!due.isEmpty()) {
            drain(due.poll().cell());
        }
        edges.tell(grounds.get(0).cells, met);
    }

    Met met() {
        return met;
    }

    Balance balance() {
        return tally.balance();
    }

    private void ontoSill(Opening o, double litres, Ground sill) {
        for (Cell c : sill.cells) {
            if (c.isOpen() && c.upper.isLevel() && c.upper.ay() == o.reveal()) {
                ontoSill(c, litres * (c.x1 - c.x0) / o.along(Side.SILL));
            }
        }
    }

    /** Where its window drains to: what comes onto a bare sill has run nowhere. */
    private void ontoSill(Cell c, double litres) {
        if (c.isOnFrame()) {
            tally.onOpenings += litres;
        } else {
            pour(c, new Stream(c.x0, c.x1, litres));
        }
    }

    private void await(Cell c) {
        due.add(new Due(c.ground.height(Math.max(c.upper.at(c.x0), c.upper.at(c.x1))), count++, c));
    }

    private void pour(Cell c, Stream s) {
        if (s.litres() <= 0) {
            return;
        }
        if (c.flows.isEmpty()) {
            c.flows = new ArrayList<>(1);
            if (!awaitsRain(c)) {
                await(c);
            }
        }
        c.flows.add(s);
    }

    /** Whether it is on the list already because of its own rain. */
    private static boolean awaitsRain(Cell c) {
        return c.isOpen() && c.isDry && c.ground.isWall();
    }

    private void drain(Cell c) {
        List<Stream> streams = new ArrayList<>(Stream.merged(c.flows));
        c.flows = List.of();
        if (c.isOpen() && c.ground.isWall()) {
            edges.note(c, streams);
        }
        if (awaitsRain(c)) {
            rainOn(c, streams);
        }
        c.isDry = false;
        if (c.isOnFrame()) {
            tally.frame += streams.stream().mapToDouble(Stream::litres).sum();
            return;
        }
        streams.forEach(s -> down(c, overLedge(c, s)));
    }

    /** Its own rain, by the stretches of its lower line. */
    private void rainOn(Cell c, List<Stream> streams) {
        long at = c.x0;
        List<Seam> seams = Arrays.stream(c.down).sorted(Comparator.comparingLong(x -> x.from)).toList();
        for (Seam s : seams) {
            streams.add(rain(c, at, s.from));
            streams.add(rain(c, Math.max(at, s.from), s.to));
            at = Math.max(at, s.to);
        }
        streams.add(rain(c, at, c.x1));
    }

    private Stream rain(Cell c, long a, long b) {
        if (a >= b) {
            return new Stream(a, a, 0);
        }
        double height = (c.upper.at(a) - c.lower.at(a) + c.upper.at(b) - c.lower.at(b)) / 2, litres = rain * height * (b - a);
        tally.fallen += litres;
        return new Stream(a, b, litres);
    }

    /** Leaves their share to the open ends of a ledge; returns what goes on over its front. */
    private Stream overLedge(Cell c, Stream s) {
        OptionalDouble y = coat.ledge(c);
        if (y.isEmpty()) {
            return s;
        }
        List<List<Exit>> ends = new ArrayList<>();
        for (boolean right : new boolean[] {false, true}) {
            List<Exit> end = ways.offEnd(c, y.getAsDouble(), s.from(), right).stream().filter(e -> e.cost() == 0).toList();
            if (!end.isEmpty()) {
                ends.add(end);
            }
        }
        double share = s.litres() / (1 + ends.size());
        ends.forEach(end -> offEnd(c, end, share));
        return new Stream(s.from(), s.to(), share);
    }

    private void offEnd(Cell c, List<Exit> end, double litres) {
        if (c.ground.isWall()) {
            met.addEnd(end.get(0).over(), end.get(0).line(), litres);
        }
        leave(end, litres);
    }

    private void leave(List<Exit> ways, double litres) {
        double each = litres / ways.size();
        for (Exit e : ways) {
            if (e.leaves()) {
                tally.leave(e.out(), each);
            } else {
                pour(e.cell(), new Stream(e.from(), e.from() + 1, each));
            }
        }
    }

    private void down(Cell c, Stream s) {
        double over = s.litres();
        for (Seam seam : c.down) {
            long a = Math.max(s.from(), seam.from), b = Math.min(s.to(), seam.to);
            if (a < b) {
                double part = s.between(a, b);
                over -= part;
                over(seam, a, b, part);
            }
        }
        if (over > s.litres() * 1e-12) {
            offTheWall(c, s, over);
        }
    }

    private void offTheWall(Cell c, Stream s, double litres) {
        if (c.overPipe) {
            along(c, s.from(), s.to(), litres);
        } else if (c.ground.isHead()) {
            tally.leave(Exit.Out.OPENING, litres);
        } else {
            double into = c.ground.isWall() ? intoOpenings(c, s) : 0;
            tally.leave(Exit.Out.OPENING, into);
            tally.leave(Exit.Out.FOOT, litres - into);
        }
    }

    /** Over the heads of openings without reveal. */
    private double intoOpenings(Cell c, Stream s) {
        double sum = 0;
        for (Opening o : coat.flush().under(c.lower, s.from(), s.to())) {
            long a = Math.max(s.from(), o.rect().minX()), b = Math.min(s.to(), o.rect().maxX());
            sum += s.between(a, b);
            if (c.isOpen()) {
                met.addAtOpening(a, b, c.lower, s.between(a, b));
            }
        }
        return sum;
    }

    private void over(Seam seam, long a, long b, double litres) {
        meet(seam, a, b, litres);
        if (seam.carriesPast || seam.cell.isOpen() && isThrownClear(seam)) {
            tally.leave(Exit.Out.CLEAR, litres);
            return;
        }
        List<Integer> free = new ArrayList<>();
        for (int i = 0; i < seam.count(); i++) {
            if (seam.cost(i) == 0) {
                free.add(i);
            }
        }
        List<List<Exit>> ends = seam.isHeld() ? ends(seam.cell, a, b) : List.of();
        double share = litres / (free.size() + ends.size());
        for (int i : free) {
            Cell c = seam.to(i);
            pour(c, seam.ontoSill ? new Stream(c.x0, c.x1, share) : new Stream(a + seam.shift(), b + seam.shift(), share));
        }
        ends.forEach(end -> leave(end, share));
        tally.trapped += free.isEmpty() && ends.isEmpty() ? litres : 0;
    }

    /** A flashing or trim with a drip, whose lower edge this is, lets go of the water. */
    private boolean isThrownClear(Seam seam) {
        int on = seam.cell.on;
        return on >= 0 && coat.hasDrip(on) && !seam.there().holds(on);
    }

    private void meet(Seam seam, long a, long b, double litres) {
        if (!seam.cell.isOpen() || !seam.cell.ground.isWall()) {
            return;
        }
        if (seam.to(0).ground.isHead()) {
            met.addRoundOpening(seam.here(), seam.there(), a, b, seam.line(), litres);
        } else if (seam.there() != seam.here()) {
            met.add(seam.here(), seam.there(), a, b, seam.line(), litres);
        }
    }

    private void along(Cell c, long from, long to, double litres) {
        List<List<Exit>> ends = ends(c, from, to);
        tally.trapped += ends.isEmpty() ? litres : 0;
        ends.forEach(end -> leave(end, litres / ends.size()));
    }

    /** The ways out at either end of a line, as far as it goes down to it. */
    private List<List<Exit>> ends(Cell c, long from, long to) {
        List<List<Exit>> out = new ArrayList<>(2);
        if (c.lower.slope() >= 0) {
            out.add(ways.along(c, from, false, Ways.Running.UNTOLD));
        }
        if (c.lower.slope() <= 0) {
            out.add(ways.along(c, to, true, Ways.Running.UNTOLD));
        }
        out.removeIf(List::isEmpty);
        return out;
    }
}
