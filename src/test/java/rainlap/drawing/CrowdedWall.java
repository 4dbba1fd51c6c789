package rainlap.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalLong;
import java.util.Random;
import rainlap.check.CheckResult;
import rainlap.check.Crash;
import rainlap.check.Unchecked;
import rainlap.check.WeakPoint;
import rainlap.geom.Box;
import rainlap.geom.Grid;
import rainlap.geom.Overlay;
import rainlap.geom.Point;
import rainlap.geom.Region;
import rainlap.joint.Joint;
import rainlap.joint.OpeningCorner;
import rainlap.material.Catalogue;
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
import rainlap.wall.Elevation;
import rainlap.wall.Exposure;
import rainlap.wall.Opening;
import rainlap.wall.Penetration;
import rainlap.wall.Piece;
import rainlap.wall.Shape;
import rainlap.wall.Side;
import rainlap.wall.Stage;
import rainlap.wall.Surface;

/** Random walls with many pieces, odd names and many findings at random places: what a sheet must bear. */
final class CrowdedWall {
    private static final List<String> ODD = List.of("漢字の名前がとても長い部材", "<b>&\"M\"</b>", "x".repeat(90), "M 1 \u0001\t2", "Ünïcode ß €", "-", "𝔐𝔞𝔱");
    private static final List<String> RULES = List.of("reverse-lap", "short-end-lap", "tape-missed", "bare-corner", "short-return", "no-such-rule",
            "short-corner-wrap", "bare-wall", "short-flashing", "tape-order", "unstaggered-laps", "end-lap-near-opening", "bare-threshold");
    private static final MaterialKind[] KINDS = {MaterialKind.TAPE, MaterialKind.CORNER_PIECE, MaterialKind.FLASHING, MaterialKind.BATTEN,
        MaterialKind.CLADDING, MaterialKind.TRIM, MaterialKind.COLLAR, MaterialKind.SEALANT, MaterialKind.FRAME};
    private final Random random;
    private final double width;
    private final double height;

    private CrowdedWall(Random random) {
        this.random = random;
        this.width = 800 + random.nextInt(random.nextInt(4) == 0 ? 45_000 : 7_000);
        this.height = 600 + random.nextInt(5_000);
    }

    /** From so many findings to so many. */
    static CheckResult of(long seed, int least, int most) {
        CrowdedWall wall = new CrowdedWall(new Random(seed * 0x9E3779B97F4A7C15L)); // neighbouring seeds begin alike
        Stage stage = wall.random.nextBoolean() ? Stage.WRAP : Stage.FINISHED;
        List<Practice> practices = Practices.all();
        Evidence e = Evidence.of(wall.elevation(), stage, practices.get(wall.random.nextInt(practices.size())));
        List<WeakPoint> points = new ArrayList<>();
        int count = least + wall.random.nextInt(most - least + 1);
        for (int i = 0; i < count; i++) {
            points.add(new WeakPoint(i + 1, wall.finding(e)));
        }
        List<Unchecked> unchecked = new ArrayList<>();
        for (int i = wall.random.nextInt(5); i > 0; i--) {
            unchecked.add(new Unchecked("tape-service", List.of(wall.name(i)), "the material of this piece states nothing at all of it"));
        }
        return new CheckResult(e, points, Map.of("reverse-lap", 3), Map.of(), unchecked,
                wall.random.nextInt(6) == 0 ? List.of(new Crash("bare-wall", "IllegalStateException: <odd>")) : List.of());
    }

    private String name(int i) {
        return random.nextInt(4) == 0 ? ODD.get(random.nextInt(ODD.size())) + i : "P" + i;
    }

    private Elevation elevation() {
        List<Opening> openings = new ArrayList<>();
        List<Cut> cuts = new ArrayList<>();
        for (double x = 150 + random.nextInt(900); openings.size() < 6; ) {
            double w = 150 + random.nextInt(1500), h = 150 + random.nextInt((int) Math.max(1, height - 400));
            if (x + w > width - 100) {
                break;
            }
            String id = random.nextInt(3) == 0 ? name(openings.size()) + "o" : "W" + openings.size();
            openings.add(new Opening(id, Opening.Kind.values()[random.nextInt(4)], Box.ofMm(x, random.nextInt(200), w, h),
                    Grid.of(random.nextInt(120)), Optional.empty(), OptionalLong.empty(), OptionalLong.empty()));
            cuts.add(new Cut(id, CutPattern.values()[random.nextInt(4)], Grid.of(90)));
            x += w + 60 + random.nextInt(1500);
        }
        List<Penetration> holes = new ArrayList<>();
        for (int i = random.nextInt(4); i > 0; i--) {
            holes.add(new Penetration("H" + i, random.nextBoolean() ? "flue" : "cable & pipe",
                    Overlay.circle(Point.ofMm(random.nextInt((int) width), random.nextInt((int) height)), Grid.of(10 + random.nextInt(90)))));
        }
        OptionalDouble wind = random.nextBoolean() ? OptionalDouble.of(26) : OptionalDouble.empty();
        OptionalDouble tow = random.nextBoolean() ? OptionalDouble.of(90) : OptionalDouble.empty();
        Exposure exposure = new Exposure(wind, OptionalDouble.empty(), Optional.empty(), OptionalDouble.of(75), tow, Optional.empty(),
                Optional.empty(), OptionalDouble.empty(), Optional.empty());
        OptionalLong ground = random.nextBoolean() ? OptionalLong.of(Grid.of(-random.nextInt(900))) : OptionalLong.empty();
        return new Elevation(random.nextInt(3) == 0 ? ODD.get(random.nextInt(ODD.size())) + " and a long name for a wall" : "North", Optional.empty(),
                exposure, SampleWall.outline(width, height, ground), openings, holes, Catalogue.builtIn(), pieces(cuts), List.of());
    }

    private List<Piece> pieces(List<Cut> cuts) {
        List<Piece> out = new ArrayList<>();
        for (double y = -50; y < height; y += 500 + random.nextInt(900)) {
            for (double x = -random.nextInt(300); x < width; x += 700 + random.nextInt(2500)) {
                out.add(SampleWall.piece(name(out.size()) + "m", MaterialKind.MEMBRANE,
                        SampleWall.rect(x, y, 600 + random.nextInt(3000), 500 + random.nextInt(1100)), List.of(), cuts));
            }
        }
        for (int i = random.nextInt(80); i > 0; i--) {
            double x = random.nextInt((int) width), y = random.nextInt((int) height);
            boolean upright = random.nextBoolean();
            double a = 20 + random.nextInt(90), b = 60 + random.nextInt(1500);
            List<Shape> shapes = SampleWall.rect(x, y, upright ? a : b, upright ? b : a);
            List<String> under = random.nextInt(5) == 0 ? List.of(out.get(random.nextInt(out.size())).id()) : List.of();
            out.add(SampleWall.piece(name(out.size()) + "t", KINDS[random.nextInt(KINDS.length)], shapes, under, List.of()));
        }
        return out;
    }

    private Finding finding(Evidence e) {
        List<Joint> joints = e.joints().all();
        Optional<Joint> joint = joints.isEmpty() || random.nextInt(3) > 0 ? Optional.empty() : Optional.of(joints.get(random.nextInt(joints.size())));
        Place where = joint.map(j -> Place.line(e.elevation(), j.surface(), j.line())).orElseGet(() -> place(e));
        Limit limit = Limit.values()[random.nextInt(Limit.values().length)];
        LimitValue asked = e.practice().get(limit);
        OptionalDouble required = asked.isNever() || !limit.isLength() ? OptionalDouble.empty() : OptionalDouble.of(asked.value());
        OptionalDouble measured = random.nextBoolean() ? OptionalDouble.of(random.nextInt(14900) / 100.0) : OptionalDouble.empty();
        String odd = random.nextInt(4) == 0 ? " " + ODD.get(random.nextInt(ODD.size())) : "";
        return new Finding(RULES.get(random.nextInt(RULES.size())), List.of(name(1), name(2)), where, measured, required, "mm", "drawn as it is" + odd,
                "asked for more", asked.source(), Optional.of(asked.spokenBy()), "This is what is there and what it does." + odd + " It goes on, and on, and on. "
                        .repeat(random.nextInt(4)), "Do this, then do that, with 150 to each side." + odd + " Then look.".repeat(random.nextInt(9)),
                random.nextInt(4), joint.map(Joint::id), List.of(), OptionalDouble.empty());
    }

    private Place place(Evidence e) {
        double x = random.nextInt((int) width), y = random.nextInt((int) height), l = random.nextInt(1500);
        List<OpeningCorner> corners = e.openingCorners().stream().filter(OpeningCorner::isBare).toList();
        if (!corners.isEmpty() && random.nextInt(4) == 0) {
            OpeningCorner c = corners.get(random.nextInt(corners.size()));
            boolean onLevel = !c.onLevel().isEmpty();
            return Place.area(e.elevation(), new Surface(c.opening().id(), onLevel ? c.level() : c.jamb()), onLevel ? c.onLevel() : c.onJamb());
        }
        List<Opening> openings = e.elevation().openings();
        if (!openings.isEmpty() && random.nextInt(5) == 0) {
            Opening o = openings.get(random.nextInt(openings.size()));
            Side side = Side.values()[1 + random.nextInt(4)];
            return Place.line(e.elevation(), new Surface(o.id(), side), List.of(new Point(0, 0), new Point(o.along(side), 0)));
        }
        return switch (random.nextInt(4)) {
            case 0 -> Place.line(e.elevation(), Surface.WALL, List.of(Point.ofMm(x, y), Point.ofMm(x + l, y)));
            case 1 -> Place.line(e.elevation(), Surface.WALL, List.of(Point.ofMm(x, y), Point.ofMm(x, y + l), Point.ofMm(x + 300, y + l)));
            case 2 -> Place.line(e.elevation(), Surface.WALL, List.of(Point.ofMm(x, y), Point.ofMm(x + 200, y + l)));
            default -> Place.area(e.elevation(), Surface.WALL, List.of(Region.of(Box.ofMm(x, y, 5 + random.nextInt(400), 5 + random.nextInt(400)))));
        };
    }
}
