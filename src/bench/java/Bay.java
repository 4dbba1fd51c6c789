import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.Random;
import rainlap.geom.Box;
import rainlap.geom.Grid;
import rainlap.geom.Point;
import rainlap.geom.Region;
import rainlap.material.Catalogue;
import rainlap.material.Material;
import rainlap.wall.Cut;
import rainlap.wall.CutPattern;
import rainlap.wall.Opening;
import rainlap.wall.Piece;
import rainlap.wall.Shape;
import rainlap.wall.Side;
import rainlap.wall.Surface;

/**
 * Three metres of one storey of the benchmark's wall, with a window, laid as a careful crew would: laps of 155, end laps staggered by 500, every
 * lap taped, the window with sill, jambs, corner pieces, and a head flashing under the sheet above. Invented.
 */
final class Bay {
    private static final Map<String, Material> MATERIALS = Map.of("sheet", Catalogue.builtIn().find("foil-membrane").orElseThrow(),
            "tape", Catalogue.builtIn().find("foil-tape-60").orElseThrow(), "wide", Catalogue.builtIn().find("wide-flashing-tape-150").orElseThrow(),
            "corner", Catalogue.builtIn().find("corner-piece").orElseThrow(), "head", Catalogue.builtIn().find("head-flashing").orElseThrow(),
            "batten", Catalogue.builtIn().find("batten-45x20").orElseThrow(), "board", Catalogue.builtIn().find("weatherboard").orElseThrow());
    private static final double SIDE = 1200;
    private static final double DEEP = 90;

    /** What may be done wrong in a bay. */
    enum Fault {
        NONE, SHORT_LAP, NO_TAPE, BARE_CORNER, SHORT_FLASHING, NO_SILL_TAPE
    }

    private final String id;
    private final double x;
    private final double y;
    private final Fault fault;
    private final Random random;
    private final double jitter;
    private final List<Piece> pieces = new ArrayList<>();

    /** @param jitter how far every corner is moved at random, at most, mm */
    Bay(String id, double x, double y, Fault fault, Random random, double jitter) {
        this.id = id;
        this.x = x;
        this.y = y;
        this.fault = fault;
        this.random = random;
        this.jitter = jitter;
    }

    Opening opening() {
        return new Opening(id + "w", Opening.Kind.WINDOW, Box.ofMm(x + 900, y + 900, SIDE, SIDE), Grid.of(DEEP), Optional.empty(), OptionalLong.empty(),
                OptionalLong.empty());
    }

    /**
     * The sheet of a course and the tape over its end lap; course -1 is what the wall begins with at its foot.
     *
     * @param isBack whether its end laps stand 500 further left, as in every second course
     * @param isFirst whether the wall's left end is here, and isLast its right one: there sheets go 300 round the corner
     */
    List<Piece> sheet(int course, boolean isBack, boolean isFirst, boolean isLast) {
        pieces.clear();
        double shift = isBack ? 0 : 500, foot = course < 0 ? -40 : foot(course) + (course == 1 && fault == Fault.SHORT_LAP ? 60 : 0);
        double from = x + (isFirst ? -300 : shift - 300), to = x + (isLast ? 3300 : shift + 2855), top = foot(course) + 1155;
        List<Cut> cuts = course == 0 || course == 1 ? List.of(new Cut(id + "w", CutPattern.INVERTED_Y, Grid.of(DEEP))) : List.of();
        add("m" + course, "sheet", List.of(), cuts, wall(from, foot, to - from, top - foot));
        if (!isFirst) {
            add("e" + course, "tape", wall(from - 30, foot, 60, top - foot));
        }
        return List.copyOf(pieces);
    }

    /** The tape over the lap of a course on the one below; none at the wall's foot. */
    List<Piece> tape(int course) {
        pieces.clear();
        if (course < 0 || fault == Fault.NO_TAPE && course == 2) {
            return List.of();
        }
        if (course == 1) {
            add("t1", "tape", wall(x + 2010, foot(1) - 30, 1980, 60));
        } else {
            add("t" + course, "tape", wall(x - 60, foot(course) - 30, 3060, 60));
        }
        return List.copyOf(pieces);
    }

    static List<Piece> atLeftEnd(String id, double y, Random random, double jitter) {
        Bay b = new Bay(id, 0, y, Fault.NONE, random, jitter);
        b.add("t", "tape", b.wall(-300, b.foot(1) - 30, 1290, 60));
        return b.pieces;
    }

    private double foot(int course) {
        return y + 250 + course * 1000;
    }

    /** Everything round the window: before the course above it. */
    List<Piece> window() {
        pieces.clear();
        double l = x + 900, r = l + SIDE, b = y + 900, t = b + SIDE;
        List<String> above = List.of(id + "m1");
        add("k1", "corner", List.of(), List.of(), ring(l - 75, b - 75, l + 115, b - 75, l + 115, b, l, b, l, b + 115, l - 75, b + 115), on(Side.SILL, 0, 115),
                on(Side.LEFT, 0, 115));
        if (fault != Fault.BARE_CORNER) {
            add("k2", "corner", List.of(), List.of(), ring(r - 115, b - 75, r + 75, b - 75, r + 75, b + 115, r, b + 115, r, b, r - 115, b),
                    on(Side.SILL, SIDE - 115, 115), on(Side.RIGHT, 0, 115));
        }
        if (fault != Fault.NO_SILL_TAPE) {
            add("s", "wide", List.of(), List.of(), wall(l - 60, b - 60, SIDE + 120, 60), on(Side.SILL, 0, SIDE), on(Side.LEFT, 0, 100), on(Side.RIGHT, 0, 100));
        }
        add("j1", "wide", List.of(), List.of(), wall(l - 60, b - 30, 60, SIDE + 30), on(Side.LEFT, 40, SIDE - 40));
        add("j2", "wide", List.of(), List.of(), wall(r, b - 30, 60, SIDE + 30), on(Side.RIGHT, 40, SIDE - 40));
        add("k3", "corner", above, List.of(), wall(l - 75, t, 190, 75), on(Side.HEAD, 0, 115), on(Side.LEFT, SIDE - 115, 115));
        add("k4", "corner", above, List.of(), wall(r - 115, t, 190, 75), on(Side.HEAD, SIDE - 115, 115), on(Side.RIGHT, SIDE - 115, 115));
        add("j3", "wide", above, List.of(), wall(l - 60, t, SIDE + 120, 60), on(Side.HEAD, 0, SIDE));
        double past = fault == Fault.SHORT_FLASHING ? 20 : 155;
        add("h", "head", above, List.of(), wall(l - past, t, SIDE + 2 * past, 75));
        add("l1", "tape", List.of(), List.of(), slit(l - 10, t + 10, -160));
        add("l2", "tape", List.of(), List.of(), slit(r + 10, t + 10, 160));
        return List.copyOf(pieces);
    }

    List<Piece> cladding() {
        pieces.clear();
        for (int k = 0; k < 5; k++) {
            add("v" + k, "batten", wall(x + k * 600 + 30, y, 45, 3000));
        }
        for (int k = 0; k < 6; k++) {
            add("c" + k, "board", wall(x, y + k * 500 - 20, 3000, 540));
        }
        return List.copyOf(pieces);
    }

    private void add(String name, String material, Shape shape) {
        add(name, material, List.of(), List.of(), shape);
    }

    private void add(String name, String material, List<String> under, List<Cut> cuts, Shape... shapes) {
        Material m = MATERIALS.get(material);
        pieces.add(new Piece(id + name, m, List.of(shapes), under, m.bond(), cuts));
    }

    private Shape wall(double left, double foot, double w, double h) {
        Point a = at(left, foot), b = at(left + w, foot + h);
        return new Shape(Surface.WALL, List.of(Region.of(new Box(a.x(), a.y(), b.x(), b.y()))));
    }

    private Shape ring(double... xy) {
        List<Point> out = new ArrayList<>();
        for (int i = 0; i < xy.length; i += 2) {
            out.add(at(xy[i], xy[i + 1]));
        }
        return new Shape(Surface.WALL, List.of(Region.of(out)));
    }

    /** A strip 60 wide up along the slit of the head flap. */
    private Shape slit(double fromX, double fromY, double aside) {
        double half = 30 * Math.sqrt(0.5), s = Math.signum(aside);
        return ring(fromX + s * half, fromY - half, fromX + aside + s * half, fromY + 160 - half, fromX + aside - s * half, fromY + 160 + half,
                fromX - s * half, fromY + half);
    }

    private Shape on(Side side, double from, double length) {
        return new Shape(new Surface(id + "w", side), List.of(Region.of(Box.ofMm(from, 0, length, DEEP))));
    }

    private Point at(double px, double py) {
        return Point.ofMm(moved(px), moved(py));
    }

    private double moved(double v) {
        return jitter == 0 ? v : v + (random.nextDouble() * 2 - 1) * jitter;
    }
}
