package rainlap.rule;

import java.util.List;
import rainlap.geom.Box;
import rainlap.geom.Ends;
import rainlap.geom.Point;
import rainlap.geom.Region;
import rainlap.geom.Segment;
import rainlap.geom.Wkt;
import rainlap.wall.Elevation;
import rainlap.wall.Surface;

/**
 * Where something is, laid flat in wall coordinates: a polyline or an area, on a named surface. Exactly one of the two is not empty.
 */
public record Place(Surface surface, List<Point> line, List<Region> area) {
    public Place {
        line = Ends.copyOf(line);
        area = List.copyOf(area);
        if (line.isEmpty() == area.isEmpty()) {
            throw new IllegalArgumentException("a place is a line or an area");
        }
    }

    /** A polyline given in the surface's own frame. */
    public static Place line(Elevation e, Surface on, List<Point> line) {
        return new Place(on, flat(e, on, line), List.of());
    }

    /** A polyline of a surface's own frame, laid flat. */
    public static List<Point> flat(Elevation e, Surface on, List<Point> line) {
        return on.isWall() ? line : line.stream().map(p -> flat(e, on, p)).toList();
    }

    public static Place line(Elevation e, Surface on, Segment s) {
        return line(e, on, List.of(s.a(), s.b()));
    }

    /** An area given in the surface's own frame. */
    public static Place area(Elevation e, Surface on, List<Region> area) {
        return new Place(on, List.of(), area.stream().map(r -> flat(e, on, r)).toList());
    }

    private static Point flat(Elevation e, Surface on, Point p) {
        return on.isWall() ? p : e.findOpening(on.opening()).orElseThrow().toWall(on.side(), p);
    }

    /** The line in the surface's own frame. */
    public List<Point> inOwnFrame(Elevation e) {
        return surface.isWall() ? line : line.stream().map(p -> e.findOpening(surface.opening()).orElseThrow().toSurface(surface.side(), p)).toList();
    }

    private static Region flat(Elevation e, Surface on, Region r) {
        return on.isWall() ? r : r.mapped(p -> flat(e, on, p));
    }

    public boolean isLine() {
        return !line.isEmpty();
    }

    public Box box() {
        return isLine() ? Box.of(line) : area.stream().map(Region::box).reduce(Box::join).orElseThrow();
    }

    public String wkt() {
        return isLine() ? Wkt.ofLine(line) : Wkt.ofRegions(area);
    }

    /** In words for a table: "+840, x 2250 to 2850"; whole millimetres. */
    public String inWords() {
        Box b = box();
        String y = span(level(b.minY()), level(b.maxY())), x = "x " + span(mm(b.minX()), mm(b.maxX()));
        return (surface.isWall() ? "" : surface.opening() + " " + surface.side().inWords() + ", ")
                + (b.height() <= b.width() ? y + ", " + x : x + ", " + y);
    }

    private static String span(String from, String to) {
        return from.equals(to) ? from : from + " to " + to;
    }

    /** A level above the base with its sign: {@code +840}, {@code ±0}, {@code −450}. */
    public static String level(long y) {
        long v = Math.round(y / 100.0);
        return v > 0 ? "+" + v : v == 0 ? "\u00b10" : mm(y);
    }

    /** Whole millimetres with a true minus. */
    public static String mm(long units) {
        long v = Math.round(units / 100.0);
        return v < 0 ? "\u2212" + -v : Long.toString(v);
    }
}
