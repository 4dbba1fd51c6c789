package rainlap.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalLong;
import rainlap.check.CheckResult;
import rainlap.check.Unchecked;
import rainlap.check.WeakPoint;
import rainlap.geom.Box;
import rainlap.geom.Grid;
import rainlap.geom.Overlay;
import rainlap.geom.Point;
import rainlap.geom.Region;
import rainlap.geom.Segment;
import rainlap.material.Catalogue;
import rainlap.material.Material;
import rainlap.material.MaterialKind;
import rainlap.practice.Limit;
import rainlap.practice.LimitValue;
import rainlap.practice.Practice;
import rainlap.practice.Practices;
import rainlap.rule.Evidence;
import rainlap.rule.Finding;
import rainlap.rule.Place;
import rainlap.wall.Cut;
import rainlap.wall.CutPattern;
import rainlap.wall.EdgeRole;
import rainlap.wall.Elevation;
import rainlap.wall.Exposure;
import rainlap.wall.Opening;
import rainlap.wall.Outline;
import rainlap.wall.OutlineEdge;
import rainlap.wall.Penetration;
import rainlap.wall.Piece;
import rainlap.wall.Shape;
import rainlap.wall.Side;
import rainlap.wall.Stage;
import rainlap.wall.Surface;

/** A wall with one window and a handful of faults (invented), made in code. */
final class SampleWall {
    static final TitleBlock TITLE = new TitleBlock("Saltmarsh Small Houses", "EH-N-01", "2025-03-14", "A", "R. Ashdown",
            "For correction", "7f3a90c1d2");

    private SampleWall() {}

    static Evidence evidence(Stage stage) {
        return Evidence.of(elevation(), stage, Practices.find("au-abcb-2022").orElseThrow());
    }

    static Elevation elevation() {
        List<Piece> p = new ArrayList<>();
        List<Cut> cut = List.of(new Cut("W1", CutPattern.DIAGONAL, Grid.of(90)));
        p.add(piece("M1", MaterialKind.MEMBRANE, rect(-300, -40, 4200, 980), List.of(), cut));
        p.add(piece("M3b", MaterialKind.MEMBRANE, rect(2520, 1740, 1380, 820), List.of(), List.of()));
        p.add(piece("M2", MaterialKind.MEMBRANE, rect(-300, 840, 4200, 1000), List.of(), cut));
        p.add(piece("M3a", MaterialKind.MEMBRANE, rect(-300, 1740, 2910, 820), List.of(), cut));
        p.add(piece("C1", MaterialKind.COLLAR, rect(2920, 1220, 260, 260), List.of(), List.of()));
        p.add(tape("T1", 840, -300, 2250));
        p.add(tape("T4", 840, 2850, 3900));
        p.add(tape("T2", 1757, -300, 900));
        p.add(tape("T5", 1740, 2100, 2610));
        p.add(tape("T3", 1480, 2895, 3205));
        p.add(piece("K1", MaterialKind.CORNER_PIECE, List.of(new Shape(Surface.WALL, List.of(Region.of(List.of(pt(1990, 950), pt(2100, 950),
                pt(2100, 1060), pt(2175, 1060), pt(2175, 875), pt(1990, 875))))),
                new Shape(new Surface("W1", Side.SILL), List.of(Region.of(Box.ofMm(1090, 0, 110, 90)))),
                new Shape(new Surface("W1", Side.RIGHT), List.of(Region.of(Box.ofMm(0, 0, 110, 90))))), List.of(), List.of()));
        p.add(piece("K2", MaterialKind.CORNER_PIECE, ring(pt(900, 1940), pt(900, 2050), pt(1010, 2050), pt(1010, 2090), pt(825, 2090),
                pt(825, 1940)), List.of(), List.of()));
        p.add(piece("K3", MaterialKind.CORNER_PIECE, ring(pt(2100, 1940), pt(2100, 2050), pt(1990, 2050), pt(1990, 2090), pt(2175, 2090),
                pt(2175, 1940)), List.of(), List.of()));
        p.add(piece("H1", MaterialKind.FLASHING, rect(840, 2030, 1370, 95), List.of(), List.of()));
        for (int i = 0; i < 7; i++) {
            p.add(piece("B" + (i + 1), MaterialKind.BATTEN, rect(20 + i * 590 - (i == 3 ? 0 : 0), 0, 45, i == 2 || i == 3 ? 900 : 2400),
                    List.of(), List.of()));
        }
        for (int i = 0; i < 5; i++) {
            p.add(piece("S" + (i + 1), MaterialKind.CLADDING, rect(-20 + i * 762, -30, 800, i == 2 ? 960 : 2430), List.of(), List.of()));
        }
        p.add(piece("R1", MaterialKind.TRIM, rect(-30, -30, 80, 2430), List.of(), List.of()));
        Outline outline = outline(3600, 2400, OptionalLong.of(Grid.of(-450)));
        Exposure exposure = new Exposure(OptionalDouble.of(20), OptionalDouble.empty(), Optional.empty(), OptionalDouble.of(25),
                OptionalDouble.empty(), Optional.empty(), Optional.empty(), OptionalDouble.empty(), Optional.empty());
        return new Elevation("Estuary hut, north side", Optional.of("au-abcb-2022"), exposure, outline,
                List.of(new Opening("W1", Opening.Kind.WINDOW, Box.ofMm(900, 950, 1200, 1100), Grid.of(90), Optional.empty(),
                        OptionalLong.empty(), OptionalLong.empty())),
                List.of(new Penetration("P1", "duct", Overlay.circle(pt(3050, 1350), Grid.of(62)))), Catalogue.builtIn(), p, List.of());
    }

    static Outline outline(double width, double height, OptionalLong ground) {
        Point a = pt(0, 0), b = pt(width, 0), c = pt(width, height), d = pt(0, height);
        return new Outline(Region.of(List.of(a, b, c, d)), List.of(new OutlineEdge(new Segment(a, b), EdgeRole.BASE, Optional.empty()),
                new OutlineEdge(new Segment(b, c), EdgeRole.EXTERNAL_CORNER, Optional.empty()),
                new OutlineEdge(new Segment(c, d), EdgeRole.EAVE, Optional.empty()),
                new OutlineEdge(new Segment(d, a), EdgeRole.EXTERNAL_CORNER, Optional.empty())), ground);
    }

    static Point pt(double x, double y) {
        return Point.ofMm(x, y);
    }

    static List<Shape> rect(double x, double y, double w, double h) {
        return List.of(new Shape(Surface.WALL, List.of(Region.of(Box.ofMm(x, y, w, h)))));
    }

    static List<Shape> ring(Point... points) {
        return List.of(new Shape(Surface.WALL, List.of(Region.of(List.of(points)))));
    }

    static Piece tape(String id, double y, double from, double to) {
        List<Point> run = List.of(pt(from, y), pt(to, y));
        return piece(id, MaterialKind.TAPE, List.of(new Shape(Surface.WALL, Overlay.run(run, Grid.of(75)), run)), List.of(), List.of());
    }

    static Piece piece(String id, MaterialKind kind, List<Shape> shapes, List<String> under, List<Cut> cuts) {
        Material m = Material.of(kind.word(), kind);
        return new Piece(id, m, shapes, under, kind == MaterialKind.COLLAR ? rainlap.material.Bond.FULL : m.bond(), cuts);
    }

    /** The findings of the sample, by hand. */
    static CheckResult result() {
        Evidence e = evidence(Stage.WRAP);
        List<Finding> f = new ArrayList<>();
        Elevation el = e.elevation();
        Practice practice = e.practice();
        Place reverse = Place.line(el, Surface.WALL, List.of(pt(2610, 1840), pt(3900, 1840)));
        f.add(finding("reverse-lap", List.of("M2", "M3b"), reverse, practice.get(Limit.COURSE_LAP), 0, "100 reversed", "upper sheet outside",
                "Water on M3b meets the top edge of M2, runs down behind it and lies on the frame.",
                "Draw the foot of M3b out over M2, lap 100, and tape its edge along +1740."));
        f.add(finding("flashing-in-front", List.of("H1", "M3a"), Place.line(el, Surface.WALL, List.of(pt(840, 2125), pt(2210, 2125))),
                practice.get(Limit.HEAD_UPSTAND), 0, "0 behind", "50 behind",
                "Water on M3a goes behind H1, follows the return inwards and wets the frame over W1.",
                "Slit M3a at 45° from both ends of H1, lay the flap over the upstand, tape the slits."));
        f.add(finding("short-end-lap", List.of("M3a", "M3b"), Place.line(el, Surface.WALL, List.of(pt(2610, 1840), pt(2610, 2560))),
                practice.get(Limit.END_LAP), 0, "90, no tape", "150, or tape",
                "Wind drives rain under the free edge of M3a. It creeps past the end of M3b, 90 away, to the frame.",
                "Tape the edge at x 2610 from +1740 to the top, 75 wide, centred on the edge."));
        f.add(finding("bare-corner", List.of("M2"), Place.area(el, new Surface("W1", Side.SILL),
                List.of(Region.of(List.of(pt(0, 0), pt(90, 90), pt(0, 90))))), practice.get(Limit.RETURN_SILL), 0, "2 bare 90 × 90", "none bare",
                "Folding the diagonal cut leaves one bare triangle on the sill and one on the jamb, 90 by 90 each.",
                "Add a corner piece over both triangles, 75 on to the face, as K1 at the other corner."));
        f.add(finding("tape-missed", List.of("M2", "M1"), Place.line(el, Surface.WALL, List.of(pt(2250, 840), pt(2850, 840))),
                practice.get(Limit.COURSE_LAP), 1, "lap 100, no tape", "150, or tape",
                "The edge of M2 stands open over 600.", "Tape 700 long, 75 wide, running 50 on to T1 at both ends."));
        f.add(finding("short-flashing", List.of("H1"), Place.area(el, Surface.WALL, List.of(Region.of(Box.ofMm(790, 2030, 50, 95)))),
                practice.get(Limit.FLASHING_PAST_OPENING), 1, "60", "110", "H1 ends 60 past the jamb.",
                "Replace H1 by one 1420 long: 110 past both jambs, end dams 25 high."));
        f.add(finding("tape-cover", List.of("T2", "M3a", "M2"), Place.line(el, Surface.WALL, List.of(pt(-300, 1719.5), pt(900, 1719.5))),
                practice.get(Limit.TAPE_COVER), 2, "20 below edge", "25 each side", "T2 covers the edge of M3a by 20 below it.",
                "Add a 50 strip below T2, or lay T2 again centred on the edge."));
        List<WeakPoint> points = new ArrayList<>();
        f.forEach(x -> points.add(new WeakPoint(points.size() + 1, x)));
        return new CheckResult(e, points, Map.of(), Map.of(),
                List.of(new Unchecked("tape-service", List.of("T1", "T2", "T3"), "the material states no service temperature")), List.of());
    }

    private static Finding finding(String rule, List<String> pieces, Place where, LimitValue limit, int defences, String drawn,
            String asked, String says, String remedy) {
        OptionalDouble required = limit.isNever() ? OptionalDouble.empty() : OptionalDouble.of(limit.value());
        return new Finding(rule, pieces, where, OptionalDouble.empty(), required, "mm", drawn, asked, limit.source(), Optional.of(limit.spokenBy()), says,
                remedy, defences, Optional.empty(), List.of(), OptionalDouble.empty());
    }
}
