package rainlap.file;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalLong;
import java.util.regex.Pattern;
import rainlap.geom.Box;
import rainlap.geom.BoxTree;
import rainlap.geom.Grid;
import rainlap.geom.Overlay;
import rainlap.geom.Point;
import rainlap.geom.Region;

/** Reads the one shape an object has: {@code rect}, {@code line}, {@code ring}, {@code wkt} or {@code circle}. */
final class ShapeReader {
    static final List<String> SHAPES = List.of("rect", "line", "ring", "wkt", "circle");
    static final List<String> KEYS = List.of("rect", "line", "width", "ring", "holes", "wkt", "circle");
    /** Only polygons of plain numbers: the general reader would follow any nesting. */
    private static final Pattern POLYGONS = Pattern.compile("\\s*(?i:MULTIPOLYGON|POLYGON)\\s*\\([-+0-9eE.,()\\s]*\\)\\s*");

    private static final Pattern NUMBER = Pattern.compile("[-+]?([0-9]+\\.?[0-9]*|\\.[0-9]+)([eE][-+]?[0-9]+)?");

    private final Fields f;
    private final OptionalDouble usualWidth;

    private ShapeReader(Fields f, OptionalDouble usualWidth) {
        this.f = f;
        this.usualWidth = usualWidth;
    }

    /**
     * What was drawn.
     *
     * @param at the byte of the shape's value
     */
    record Drawn(int at, List<Region> regions, List<Point> run) {}

    /**
     * The shape of an object; empty and noted when there is none, more than one, or it is wrong.
     *
     * @param allowed which shapes the object may have
     * @param usualWidth of a line that gives none, mm
     */
    static Optional<Drawn> read(Fields f, List<String> allowed, OptionalDouble usualWidth) {
        List<String> given = SHAPES.stream().filter(f::has).toList();
        if (given.isEmpty() && !f.means(SHAPES)) {
            f.wrong(f.at(), "there is no shape", "add one of " + String.join(", ", allowed));
        }
        if (given.size() > 1) {
            f.wrong(f.keyAt(given.get(1)), "\"" + given.get(0) + "\" and \"" + given.get(1) + "\" are two shapes",
                    "keep one");
        }
        if (given.size() != 1 || !allowed.contains(given.get(0))) {
            return Optional.empty(); // a shape that is not allowed here is an unknown key, and noted as such
        }
        ShapeReader reader = new ShapeReader(f, usualWidth);
        reader.refuseStray("width", "line", given.get(0));
        reader.refuseStray("holes", "ring", given.get(0));
        Value v = f.find(given.get(0)).orElseThrow();
        return reader.shape(given.get(0), v);
    }

    private void refuseStray(String key, String shape, String given) {
        if (f.has(key) && !given.equals(shape)) {
            f.wrong(f.keyAt(key), "\"" + key + "\" goes with \"" + shape + "\", not with \"" + given + "\"", "take it out");
        }
    }

    private Optional<Drawn> shape(String key, Value v) {
        return switch (key) {
            case "rect" -> rect(v).map(b -> new Drawn(v.at(), List.of(Region.of(b)), List.of()));
            case "line" -> line(v);
            case "ring" -> ring(v).map(r -> new Drawn(v.at(), List.of(r), List.of()));
            case "wkt" -> wkt(v).map(r -> new Drawn(v.at(), r, List.of()));
            default -> circle(v).map(r -> new Drawn(v.at(), List.of(r), List.of()));
        };
    }

    private Optional<Box> rect(Value v) {
        return rect(f, v);
    }

    /** {@code [x, y, width, height]} as a box with an area. */
    static Optional<Box> rect(Fields f, Value v) {
        Optional<double[]> n = f.numbers(v, "rect", "[x, y, width, height]", Range.PLACE, Range.PLACE, Range.SIZE, Range.SIZE);
        if (n.isEmpty()) {
            return Optional.empty();
        }
        double[] d = n.get();
        if (!Grid.holds(d[0] + d[2]) || !Grid.holds(d[1] + d[3])) {
            f.wrong(v.at(), "\"rect\" reaches further than 10 km from the origin", "");
            return Optional.empty();
        }
        Box box = Box.ofMm(d[0], d[1], d[2], d[3]);
        if (box.width() == 0 || box.height() == 0) {
            f.wrong(v.at(), "\"rect\" has no area", "the drawing's grid is 0.01 mm");
            return Optional.empty();
        }
        return Optional.of(box);
    }

    private Optional<Region> ring(Value v) {
        List<Point> shell = RingReader.ring(f, v, "ring");
        List<List<Point>> holes = new ArrayList<>();
        boolean sound = true;
        for (Value hole : f.list("holes", f.limits().holes())) {
            List<Point> points = RingReader.ring(f, hole, "holes");
            sound &= !points.isEmpty();
            holes.add(points);
        }
        boolean empty = v instanceof Value.Items list && list.items().isEmpty();
        return sound && (empty || !shell.isEmpty()) ? RingReader.region(f, v.at(), "ring", shell, holes) : Optional.empty();
    }

    private Optional<List<Region>> wkt(Value v) {
        Optional<Value.Text> text = f.text(v, "wkt", f.limits().wktLength());
        if (text.isEmpty()) {
            return Optional.empty();
        }
        List<List<List<Point>>> polygons = polygons(v, text.get().text());
        if (polygons.size() > f.limits().holes()) {
            f.wrong(v.at(), "\"wkt\" has " + polygons.size() + " polygons", "at most " + f.limits().holes());
            return Optional.empty();
        }
        List<Region> regions = new ArrayList<>();
        for (List<List<Point>> rings : polygons) {
            RingReader.region(f, v.at(), "wkt", rings.get(0), rings.subList(1, rings.size())).ifPresent(regions::add);
        }
        return !polygons.isEmpty() && regions.size() == polygons.size() && !overlap(v, regions) ? Optional.of(regions) : Optional.empty();
    }

    private List<List<List<Point>>> polygons(Value v, String text) {
        if (!POLYGONS.matcher(text).matches()) {
            f.wrong(v.at(), "\"wkt\" is no POLYGON or MULTIPOLYGON", "write POLYGON ((0 0, 100 0, 100 50, 0 0))");
            return List.of();
        }
        if (NUMBER.matcher(text).results().anyMatch(n -> !Grid.holds(Double.parseDouble(n.group())))) {
            f.wrong(v.at(), "\"wkt\" reaches further than 10 km from the origin", "it is in mm");
            return List.of();
        }
        try {
            return Overlay.parseWkt(text);
        } catch (IllegalArgumentException e) {
            f.wrong(v.at(), "\"wkt\" is not a sound " + text.strip().replaceAll("[\\s(].*", "").toUpperCase(Locale.ROOT),
                    "write POLYGON ((0 0, 100 0, 100 50, 0 0)); every ring ends at its first point");
            return List.of();
        }
    }

    private boolean overlap(Value v, List<Region> regions) {
        BoxTree tree = new BoxTree(regions.stream().map(Region::box).toList());
        for (int i = 0; i < regions.size(); i++) {
            List<Integer> near = new ArrayList<>();
            tree.query(regions.get(i).box(), near::add);
            for (int j : near) {
                if (j > i && !Overlay.intersection(List.of(regions.get(i)), List.of(regions.get(j))).isEmpty()) {
                    f.wrong(v.at(), "polygons " + (i + 1) + " and " + (j + 1) + " of \"wkt\" overlap", "join them into one");
                    return true;
                }
            }
        }
        return false;
    }

    private Optional<Region> circle(Value v) {
        Optional<double[]> n = f.numbers(v, "circle", "[x, y, radius]", Range.PLACE, Range.PLACE, Range.SIZE);
        if (n.isEmpty()) {
            return Optional.empty();
        }
        double[] d = n.get();
        if (Grid.of(d[2]) < 2 || !Grid.holds(Math.abs(d[0]) + d[2]) || !Grid.holds(Math.abs(d[1]) + d[2])) {
            f.wrong(v.at(), Grid.of(d[2]) < 2 ? "\"circle\" has no area" : "\"circle\" reaches further than 10 km from the origin", "");
            return Optional.empty();
        }
        return Optional.of(Overlay.circle(Point.ofMm(d[0], d[1]), Grid.of(d[2])));
    }

    private Optional<Drawn> line(Value v) {
        List<Point> run = RingReader.points(f, v, "line", f.limits().linePoints());
        OptionalLong width = width();
        boolean empty = v instanceof Value.Items list && list.items().isEmpty();
        if (width.isEmpty() || run.isEmpty() && !empty || !isSoundRun(v, run)) {
            return Optional.empty();
        }
        List<Region> regions = strip(run, width.getAsLong());
        if (!covers(regions, run)) {
            f.wrong(v.at(), "\"line\" bends too tightly for its width", "draw it as a \"ring\"");
            return Optional.empty();
        }
        return Optional.of(new Drawn(v.at(), regions, run));
    }

    /** Whether a strip covers the middle of each part of its run: offset curves of tight bends may turn inside out. */
    private static boolean covers(List<Region> strip, List<Point> run) {
        for (int i = 1; i < run.size(); i++) {
            double x = (run.get(i - 1).x() + run.get(i).x()) / 2.0, y = (run.get(i - 1).y() + run.get(i).y()) / 2.0;
            if (strip.stream().noneMatch(r -> r.covers(x, y))) {
                return false;
            }
        }
        return true;
    }

    private OptionalLong width() {
        if (f.has("width") || usualWidth.isEmpty()) {
            if (!f.has("width")) {
                f.wrong(f.keyAt("line"), "the line has no width, and neither has its material", "add \"width\": 60");
            }
            OptionalLong width = f.length("width", Range.WIDTH);
            if (width.isPresent() && width.getAsLong() == 0) {
                f.wrong(f.keyAt("width"), "\"width\" is nothing on the drawing's grid of 0.01 mm", "");
                return OptionalLong.empty();
            }
            return width;
        }
        return OptionalLong.of(Grid.of(usualWidth.getAsDouble()));
    }

    private boolean isSoundRun(Value v, List<Point> run) {
        if (run.size() < 2) {
            f.wrong(v.at(), "\"line\" needs two points or more", "");
            return false;
        }
        for (int i = 1; i < run.size(); i++) {
            if (run.get(i).equals(run.get(i - 1))) {
                f.wrong(pointAt(v, i), "points " + i + " and " + (i + 1) + " of \"line\" are the same", "take one out");
                return false;
            }
            if (i > 1 && doublesBack(run.get(i - 2), run.get(i - 1), run.get(i))) {
                f.wrong(pointAt(v, i), "\"line\" doubles back on itself after point " + i, "end it there, or draw a second piece");
                return false;
            }
        }
        return true;
    }

    private static int pointAt(Value v, int i) {
        return v instanceof Value.Items list ? list.items().get(i).at() : v.at();
    }

    private static boolean doublesBack(Point a, Point b, Point c) {
        double along = (double) (b.x() - a.x()) * (c.x() - b.x()) + (double) (b.y() - a.y()) * (c.y() - b.y());
        return c.side(a, b) == 0 && along < 0;
    }

    /** Straight level and plumb runs, the great majority, are exact boxes and need no offset curve. */
    private static List<Region> strip(List<Point> run, long width) {
        Point a = run.get(0), b = run.get(1);
        long half = width / 2, rest = width - half;
        if (run.size() == 2 && a.y() == b.y()) {
            return List.of(Region.of(new Box(Math.min(a.x(), b.x()), a.y() - half, Math.max(a.x(), b.x()), a.y() + rest)));
        }
        if (run.size() == 2 && a.x() == b.x()) {
            return List.of(Region.of(new Box(a.x() - half, Math.min(a.y(), b.y()), a.x() + rest, Math.max(a.y(), b.y()))));
        }
        return Overlay.run(run, width);
    }
}
