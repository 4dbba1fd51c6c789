package rainlap.geom;

import java.util.List;
import java.util.stream.Collectors;

/** Well-known text in millimetres with at most two decimals, as findings carry it. */
public final class Wkt {
    private Wkt() {}

    public static String of(Region r) {
        return "POLYGON " + rings(r);
    }

    public static String ofRegions(List<Region> regions) {
        return regions.size() == 1 ? of(regions.get(0))
                : "MULTIPOLYGON (" + regions.stream().map(Wkt::rings).collect(Collectors.joining(", ")) + ")";
    }

    public static String ofLine(List<Point> line) {
        return "LINESTRING " + list(line);
    }

    public static String of(Point p) {
        return "POINT (" + pair(p) + ")";
    }

    private static String rings(Region r) {
        StringBuilder out = new StringBuilder("(").append(ring(r.shell()));
        r.holes().forEach(h -> out.append(", ").append(ring(h)));
        return out.append(')').toString();
    }

    private static String ring(Ring r) {
        List<Point> closed = new java.util.ArrayList<>(r.points());
        closed.add(r.point(0));
        return list(closed);
    }

    private static String list(List<Point> points) {
        return points.stream().map(Wkt::pair).collect(Collectors.joining(", ", "(", ")"));
    }

    private static String pair(Point p) {
        return number(p.x()) + " " + number(p.y());
    }

    /** Grid units as millimetres without trailing zeros: 1234 is {@code 12.34}, 100 is {@code 1}. */
    static String number(long units) {
        return java.math.BigDecimal.valueOf(units, 2).stripTrailingZeros().toPlainString();
    }
}
