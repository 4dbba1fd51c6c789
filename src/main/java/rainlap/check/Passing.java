package rainlap.check;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import rainlap.geom.Box;
import rainlap.geom.BoxTree;
import rainlap.geom.Point;
import rainlap.geom.Segment;
import rainlap.rule.Place;
import rainlap.stack.Crew;
import rainlap.wall.Elevation;
import rainlap.wall.Surface;
import rainlap.water.Arrival;
import rainlap.water.Step;

/**
 * Which ways of the water get through at a place: a line by which they come under or behind a piece, or onto the frame, comes within {@link #NEAR} of it.
 * Water that only falls, or runs along, past a place does not get in there; nor does what has been on the frame before: it got in where it came there first. Ways have
 * their beginnings in common, and all that passes by one step of it is judged by the worst that does: so a high wall costs no more a piece than a low one.
 */
final class Passing {
    /** 10 mm. */
    static final long NEAR = 1_000;
    /** As much as a line shares that crosses a place, or ends at it. */
    private static final long TOUCH = 2 * NEAR;

    private final Elevation elevation;
    private final List<Place> places;
    /** Of the places, each as far as what passes it may lie from it. */
    private final BoxTree tree;
    /** For each place the marks whose boxes meet its own. */
    private final List<List<Nearby>> near;

    /** A line on a way, laid flat. */
    record Mark(Surface on, Segment line) {}

    private record Nearby(Mark mark, Passer by) {}

    private record Hit(int place, Nearby by) {}

    /** The worst way that passes a place; whether it gets under or runs over one of the pieces there. */
    record Worst(Arrival way, boolean named) {}

    /** A step, or an arrival's own place, in the frame of its surface, with the worst way that has it: the steps up to there are the first {@code upTo} of that way. */
    private static final class Passer {
        final int number;
        final int upTo;
        final Surface on;
        final List<Point> where;
        Arrival worst;

        Passer(int number, int upTo, Arrival worst, Surface on, List<Point> where) {
            this.number = number;
            this.upTo = upTo;
            this.worst = worst;
            this.on = on;
            this.where = where;
        }

        boolean isNoBetterThan(Arrival a) {
            return WORST.compare(worst, a) <= 0;
        }

        boolean names(List<String> pieces) {
            return worst.path().subList(0, upTo).stream().anyMatch(s -> pieces.contains(s.piece()) || pieces.contains(s.layer()));
        }
    }

    private static final Comparator<Arrival> WORST = Comparator.comparingInt(Arrival::defences).thenComparingInt(a -> a.path().size());

    private Passing(Elevation elevation, List<Arrival> ways, List<Place> places, boolean anyhow, Crew crew) {
        this.elevation = elevation;
        this.places = places;
        this.tree = new BoxTree(places.stream().map(this::round).toList());
        this.near = places.stream().<List<Nearby>>map(p -> new ArrayList<>(0)).toList();
        crew.gather(passers(ways, anyhow), this::hits).forEach(h -> near.get(h.place).add(h.by));
    }

    private static List<Passer> passers(List<Arrival> ways, boolean anyhow) {
        List<Passer> all = new ArrayList<>(2 * ways.size());
        Map<Step, Passer> known = new IdentityHashMap<>(2 * ways.size());
        for (Arrival a : ways) {
            int size = a.path().size();
            all.add(new Passer(all.size(), size, a, a.surface(), a.where()));
            int i = size - 1;
            while (i >= (size > 1 ? 1 : 0) && (!anyhow && !getsIn(a.path(), i) || pass(a, i, known, all))) {
                i--;
            }
        }
        return all;
    }

    /** Ways that get through where they pass. */
    static Passing through(Elevation elevation, List<Arrival> ways, List<Place> places, Crew crew) {
        return new Passing(elevation, ways.stream().filter(a -> !a.comesFromTheFrame()).toList(), places, false, crew);
    }

    /** Ways that pass anyhow, those too that only run by. */
    static Passing by(Elevation elevation, List<Arrival> ways, List<Place> places, Crew crew) {
        return new Passing(elevation, ways, places, true, crew);
    }

    private Box round(Place place) {
        return place.box().grow(near(elevation, place));
    }

    /** Whether a way is the worst so far that has its step i; then it may be so for the steps before. Where rain falls is no mark if anything follows: it falls everywhere. */
    private static boolean pass(Arrival a, int i, Map<Step, Passer> known, List<Passer> all) {
        Step s = a.path().get(i);
        Passer p = known.get(s);
        if (p == null) {
            p = new Passer(all.size(), i + 1, a, s.on(), s.where());
            known.put(s, p);
            all.add(p);
            return true;
        }
        if (p.isNoBetterThan(a)) {
            return false;
        }
        p.worst = a;
        return true;
    }

    /** The places that some of them pass. */
    private List<Hit> hits(List<Passer> some) {
        List<Hit> out = new ArrayList<>();
        for (Passer p : some) {
            List<Point> line = Place.flat(elevation, p.on, p.where);
            for (int i = 0; i + 1 < line.size(); i++) {
                Segment s = new Segment(line.get(i), line.get(i + 1));
                tree.query(s.box(), place -> out.add(new Hit(place, new Nearby(new Mark(p.on, s), p))));
            }
        }
        return out;
    }

    /**
     * The worst way that passes a place. Ways that get under or run over one of the pieces, there or before, go before ways that only come by; of equal
     * defences that which shares most of the place; then the shortest.
     *
     * <p>In a reveal all that lies within its depth is one place, and so only ways that name one of the pieces count.
     *
     * @param number of the place among those it was made for
     * @param joint whether the place is that of a joint: what only touches an end of it, or crosses it, gets in at what lies there
     */
    Optional<Worst> worst(int number, List<String> pieces, boolean joint) {
        Place place = places.get(number);
        Map<Passer, Long> shared = shared(place, near.get(number), joint);
        Map<Passer, Long> named = new TreeMap<>(BY_NUMBER);
        shared.forEach((p, s) -> {
            if (p.names(pieces)) {
                named.put(p, s);
            }
        });
        boolean isNamed = !named.isEmpty();
        return (!isNamed && place.surface().isWall() ? shared : named).entrySet().stream()
                .min(Comparator.comparingInt((Map.Entry<Passer, Long> e) -> e.getKey().worst.defences())
                        .thenComparing(Map.Entry::getValue, Comparator.reverseOrder()).thenComparing(e -> e.getKey().worst.path().size()))
                .map(e -> new Worst(e.getKey().worst, isNamed));
    }

    private static final Comparator<Passer> BY_NUMBER = Comparator.comparingInt(p -> p.number);

    /** What passes a place, and how much of it shares each, grid units. */
    private Map<Passer, Long> shared(Place place, List<Nearby> near, boolean joint) {
        Map<Passer, Long> found = new TreeMap<>(BY_NUMBER);
        Box box = round(place);
        for (Nearby p : near) {
            Box line = p.mark.line.box();
            if (!(joint && touches(line, place.box())) && isNear(elevation, p.mark, place, NEAR)) {
                found.merge(p.by, shared(line, box), Math::max);
            }
        }
        return found;
    }

    /** Whether a line only crosses a longer place, or lies beside an end of it. */
    private static boolean touches(Box line, Box place) {
        boolean level = place.width() >= place.height();
        if (Math.max(place.width(), place.height()) <= 2 * TOUCH) {
            return false;
        }
        long from = level ? place.minX() : place.minY(), to = level ? place.maxX() : place.maxY();
        return level ? line.height() > line.width() || line.maxX() < from + NEAR || line.minX() > to - NEAR
                : line.width() > line.height() || line.maxY() < from + NEAR || line.minY() > to - NEAR;
    }

    private static long shared(Box a, Box b) {
        long x = Math.min(a.maxX(), b.maxX()) - Math.max(a.minX(), b.minX()), y = Math.min(a.maxY(), b.maxY()) - Math.max(a.minY(), b.minY());
        return x < 0 || y < 0 ? 0 : Math.max(x, y);
    }

    /** Whether a step of a way gets further in, or is the one by which it comes where it leads. Where rain falls is none: it falls everywhere. */
    private static boolean getsIn(List<Step> path, int i) {
        return i == path.size() - 1 || path.get(i).entersBehind();
    }

    /** Where a way leads, and where it got in. */
    static List<Mark> marks(Elevation e, Place arrival, List<Step> path) {
        List<Mark> out = new ArrayList<>();
        add(arrival.surface(), arrival.line(), out);
        for (int i = path.size() > 1 ? 1 : 0; i < path.size(); i++) {
            if (getsIn(path, i)) {
                add(path.get(i).on(), Place.flat(e, path.get(i).on(), path.get(i).where()), out);
            }
        }
        return out;
    }

    private static void add(Surface on, List<Point> line, List<Mark> out) {
        for (int i = 0; i + 1 < line.size(); i++) {
            out.add(new Mark(on, new Segment(line.get(i), line.get(i + 1))));
        }
    }

    static boolean isNear(Elevation e, Mark m, Place place, long near) {
        boolean sameOpening = !m.on.isWall() && m.on.opening().equals(place.surface().opening());
        boolean folded = m.on.isWall() != place.surface().isWall();
        return (m.on.equals(place.surface()) || sameOpening || folded)
                && Distance.isWithin(sameOpening ? near(e, place) : near, m.line, place);
    }

    /** In a reveal all that lies within its depth is one place. */
    static long near(Elevation e, Place place) {
        return place.surface().isWall() ? NEAR : Math.max(NEAR, e.findOpening(place.surface().opening()).orElseThrow().reveal());
    }
}
