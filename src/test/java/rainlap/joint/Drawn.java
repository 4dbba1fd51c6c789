package rainlap.joint;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.stream.Collectors;
import rainlap.geom.Box;
import rainlap.geom.Overlay;
import rainlap.geom.Point;
import rainlap.geom.Region;
import rainlap.geom.Segment;
import rainlap.material.Bond;
import rainlap.material.Catalogue;
import rainlap.material.Material;
import rainlap.material.MaterialKind;
import rainlap.stack.Stack;
import rainlap.wall.Cut;
import rainlap.wall.CutPattern;
import rainlap.wall.EdgeRole;
import rainlap.wall.Elevation;
import rainlap.wall.Exposure;
import rainlap.wall.Opening;
import rainlap.wall.Outline;
import rainlap.wall.OutlineEdge;
import rainlap.wall.Piece;
import rainlap.wall.Shape;
import rainlap.wall.Stage;
import rainlap.wall.Surface;

/** A small wall written down in a few words, for tests. Millimetres. */
public final class Drawn {
    private static final Material SHEET = Material.of("sheet", MaterialKind.MEMBRANE);
    private static final Material TAPE = Material.of("tape", MaterialKind.TAPE);
    private final List<Piece> pieces = new ArrayList<>();
    private final List<Opening> openings = new ArrayList<>();
    private Region outline = Region.of(Box.ofMm(-5000, -5000, 10000, 10000));
    private EdgeRole role = EdgeRole.FREE;

    public static Drawn wall() {
        return new Drawn();
    }

    public Drawn outline(double x, double y, double w, double h, EdgeRole sides) {
        outline = Region.of(Box.ofMm(x, y, w, h));
        role = sides;
        return this;
    }

    public Drawn sheet(String id, double x, double y, double w, double h, String... under) {
        return add(id, SHEET, List.of(new Shape(Surface.WALL, List.of(Region.of(Box.ofMm(x, y, w, h))))), List.of(), under);
    }

    /** A sheet cut at an opening, returned so deep. */
    public Drawn cutSheet(String id, double x, double y, double w, double h, String opening, CutPattern pattern, double deep) {
        return add(id, SHEET, List.of(new Shape(Surface.WALL, List.of(Region.of(Box.ofMm(x, y, w, h))))),
                List.of(new Cut(opening, pattern, Math.round(deep * 100))));
    }

    /** A sheet as a ring of x, y pairs. */
    public Drawn ring(String id, double... xy) {
        return add(id, SHEET, List.of(new Shape(Surface.WALL, List.of(region(xy)))), List.of());
    }

    public Drawn tape(String id, double x, double y, double w, double h, String... under) {
        return add(id, TAPE, List.of(new Shape(Surface.WALL, List.of(Region.of(Box.ofMm(x, y, w, h))))), List.of(), under);
    }

    public Drawn piece(String id, MaterialKind kind, Shape... shapes) {
        return add(id, Material.of(id, kind), List.of(shapes), List.of());
    }

    public Drawn add(String id, Material m, List<Shape> shapes, List<Cut> cuts, String... under) {
        pieces.add(new Piece(id, m, shapes, List.of(under), m.bond(), cuts));
        return this;
    }

    public Drawn bond(Bond bond) {
        Piece p = pieces.remove(pieces.size() - 1);
        pieces.add(new Piece(p.id(), p.material(), p.shapes(), p.under(), bond, p.cuts()));
        return this;
    }

    public Drawn window(String id, double x, double y, double w, double h, double reveal) {
        openings.add(new Opening(id, Opening.Kind.WINDOW, Box.ofMm(x, y, w, h), Math.round(reveal * 100), Optional.empty(),
                OptionalLong.empty(), OptionalLong.empty()));
        return this;
    }

    public static Region region(double... xy) {
        List<Point> points = new ArrayList<>();
        for (int i = 0; i < xy.length; i += 2) {
            points.add(Point.ofMm(xy[i], xy[i + 1]));
        }
        return Region.of(points);
    }

    public static Shape on(String opening, rainlap.wall.Side side, double... xy) {
        return new Shape(new Surface(opening, side), List.of(region(xy)));
    }

    public Elevation elevation() {
        List<OutlineEdge> edges = outline.edges().stream()
                .map(s -> new OutlineEdge(s, s.isPlumb() ? role : EdgeRole.FREE, Optional.empty())).toList();
        return new Elevation("drawn", Optional.empty(), Exposure.UNSTATED, new Outline(outline, edges, OptionalLong.empty()),
                openings, List.of(), Catalogue.builtIn(), pieces, List.of());
    }

    public Stack stack() {
        return Stack.of(elevation(), Stage.WRAP);
    }

    /** Each joint as one line: kind, outer/inner, from-to, lap, cover; sorted as joints are. */
    public String joints() {
        return Joints.of(stack()).all().stream().map(Drawn::text).collect(Collectors.joining("\n"));
    }

    static String text(Joint j) {
        String where = j.line().stream().map(p -> mm(p.x()) + " " + mm(p.y())).collect(Collectors.joining(", "));
        String on = j.surface().isWall() ? "" : " on " + j.surface().name();
        String tape = j.isTaped() ? " tape " + mm(j.coverOnOuter()) + "/" + mm(j.coverOnInner()) : "";
        String size = j.kind().isLap() ? " lap " + mm(j.lap()) : " wide " + mm(j.gap());
        return j.kind().word() + " " + j.outer().piece().id() + "/" + j.inner().piece().id() + on + " (" + where + ")" + size + tape;
    }

    private static String mm(long units) {
        return java.math.BigDecimal.valueOf(units, 2).stripTrailingZeros().toPlainString();
    }

    static String lines(String... lines) {
        return Arrays.stream(lines).collect(Collectors.joining("\n"));
    }

    static Segment segment(double x0, double y0, double x1, double y1) {
        return new Segment(Point.ofMm(x0, y0), Point.ofMm(x1, y1));
    }

    static List<Region> union(List<Region> r) {
        return Overlay.union(r);
    }
}
