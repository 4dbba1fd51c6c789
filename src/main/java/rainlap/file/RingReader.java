package rainlap.file;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import rainlap.geom.Overlay;
import rainlap.geom.Point;
import rainlap.geom.Region;
import rainlap.geom.Ring;
import rainlap.geom.Wkt;

/** Reads lists of points, and makes sound regions of rings. */
final class RingReader {
    private RingReader() {}

    /** The points of a list, a repeated first point at the end dropped; empty and noted when anything is wrong. */
    static List<Point> ring(Fields f, Value v, String label) {
        List<Point> points = points(f, v, label, f.limits().points());
        int n = points.size();
        return n > 1 && points.get(0).equals(points.get(n - 1)) ? points.subList(0, n - 1) : points;
    }

    static List<Point> points(Fields f, Value v, String label, int most) {
        List<Value> items = f.list(v, label, most);
        Optional<Value> odd = items.stream().filter(p -> !(p instanceof Value.Items pair && pair.items().size() == 2)).findFirst();
        if (odd.isPresent()) {
            String found = odd.get() instanceof Value.Items l ? "a list of " + l.items().size() : odd.get().what();
            f.wrong(odd.get().at(), "\"" + label + "\" is a list of points [x, y], and this is " + found,
                    "write [[0, 0], [100, 0], …]");
            return List.of();
        }
        List<Point> points = Fields.each(items, p -> point(f, p, label));
        return points.size() == items.size() ? points : List.of();
    }

    private static Optional<Point> point(Fields f, Value v, String label) {
        return f.numbers(v, label, "[x, y]", Range.PLACE, Range.PLACE).map(d -> Point.ofMm(d[0], d[1]));
    }

    /** A region of a shell and holes as listed; empty and noted when they enclose no area or are not sound. */
    static Optional<Region> region(Fields f, int at, String label, List<Point> shell, List<List<Point>> holes) {
        List<List<Point>> rings = new ArrayList<>(holes);
        rings.add(0, shell);
        Limits limits = f.limits();
        if (holes.size() > limits.holes() || rings.stream().anyMatch(r -> r.size() > limits.points() + 1)) {
            f.wrong(at, "\"" + label + "\" is too detailed", "at most " + limits.points() + " points a ring and " + limits.holes() + " holes");
            return Optional.empty();
        }
        for (List<Point> ring : rings) {
            if (!enclosesSomething(ring)) {
                f.wrong(at, "\"" + label + "\" encloses no area", "a ring needs three points or more that are not in one line");
                return Optional.empty();
            }
        }
        Optional<Overlay.Flaw> flaw = Overlay.flaw(shell, holes);
        if (flaw.isPresent()) {
            f.wrong(at, "\"" + label + "\" " + inWords(flaw.get(), !holes.isEmpty()), "");
            return Optional.empty();
        }
        return Optional.of(new Region(Ring.of(shell), holes.stream().map(Ring::of).toList()));
    }

    private static boolean enclosesSomething(List<Point> ring) {
        if (new HashSet<>(ring).size() < 3) {
            return false;
        }
        Point a = ring.get(0);
        Point b = ring.stream().filter(p -> !p.equals(a)).findFirst().orElse(a);
        return ring.stream().anyMatch(p -> p.side(a, b) != 0);
    }

    private static String inWords(Overlay.Flaw flaw, boolean hasHoles) {
        String near = " at " + place(flaw.where());
        return switch (flaw.what()) {
            case "Self-intersection" -> (hasHoles ? "crosses or overlaps itself or one of its holes" : "crosses or overlaps itself") + near;
            case "Ring Self-intersection" -> "touches itself" + near;
            case "Hole lies outside shell" -> "has a hole that leaves its outer ring" + near;
            case "Holes are nested" -> "has a hole inside a hole" + near;
            case "Interior is disconnected" -> "is cut in two by its holes" + near;
            case "Duplicate Rings" -> "has the same ring twice" + near;
            default -> "is not a sound shape" + near;
        };
    }

    /** Two numbers for a person: {@code (1200, 62.5)}. */
    static String place(Point p) {
        String wkt = Wkt.of(p);
        return wkt.substring(wkt.indexOf('(')).replace(" ", ", ");
    }
}
