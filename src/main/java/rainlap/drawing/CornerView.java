package rainlap.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rainlap.check.WeakPoint;
import rainlap.geom.Box;
import rainlap.geom.Overlay;
import rainlap.geom.Point;
import rainlap.geom.Region;
import rainlap.joint.OpeningCorner;
import rainlap.paper.Area;
import rainlap.paper.Edge;
import rainlap.paper.Group;
import rainlap.paper.Hatch;
import rainlap.paper.Mark;
import rainlap.paper.PaperBox;
import rainlap.paper.PaperPoint;
import rainlap.paper.PaperRegion;
import rainlap.paper.Pen;
import rainlap.paper.Polyline;
import rainlap.paper.Text;
import rainlap.paper.TextMetrics;
import rainlap.paper.Tone;
import rainlap.rule.Evidence;
import rainlap.stack.Face;
import rainlap.wall.Opening;
import rainlap.wall.Side;
import rainlap.wall.Surface;

/** A corner of an opening in oblique view: the wall's face in true shape, both surfaces of the reveal running back. */
final class CornerView {
    static final double HEIGHT = 48;
    /** How much of a depth shows across and up. */
    private static final double BACK = 0.43;
    /** Room for a name above the drawing, printed mm. */
    private static final double NAME = 2;
    /** Room for the sentence beside it. */
    private static final double BESIDE = 33;
    private static final long SIDE = 42_00;
    private static final long ALONG = 105_00;
    private final Evidence evidence;
    private final OpeningCorner corner;
    private final Severity severity;
    private final PaperPoint origin;
    private final int scale;
    private final long side;
    private final long along;
    private final int right;
    private final int up;
    private final List<Mark> out = new ArrayList<>();

    private CornerView(Evidence evidence, OpeningCorner corner, Severity severity, PaperBox field) {
        this.evidence = evidence;
        this.corner = corner;
        this.severity = severity;
        this.right = corner.jamb() == Side.LEFT ? 1 : -1;
        this.up = corner.level() == Side.SILL ? 1 : -1;
        double deep = BACK * corner.opening().reveal();
        this.scale = scale(corner, field.height());
        this.side = SIDE * scale / 5;
        this.along = ALONG * scale / 5;
        double shift = (along + deep - side) / 200 / scale;
        this.origin = new PaperPoint(field.middle().x() - right * shift, field.middle().y() + up * shift);
    }

    /** The corner that a weak point on a reveal concerns: one whose bare parts its place holds. */
    static Optional<OpeningCorner> corner(WeakPoint p, Evidence evidence) {
        Surface s = p.finding().where().surface();
        if (s.isWall() || p.finding().where().isLine()) {
            return Optional.empty();
        }
        Box b = p.finding().where().box();
        return evidence.openingCorners().stream().filter(c -> c.opening().id().equals(s.opening()) && c.isBare())
                .filter(c -> square(c).contains(new Point((b.minX() + b.maxX()) / 2, (b.minY() + b.maxY()) / 2))).findFirst();
    }

    /** The corner's square, laid flat inside the opening. */
    static Box square(OpeningCorner c) {
        Box r = c.opening().rect();
        long deep = Math.min(c.opening().reveal(), Math.min(r.width(), r.height()) / 2);
        long x = c.jamb() == Side.LEFT ? r.minX() : r.maxX() - deep, y = c.level() == Side.SILL ? r.minY() : r.maxY() - deep;
        return new Box(x, y, x + deep, y + deep);
    }

    /** The scale at which a corner fits a cell. */
    static int scale(OpeningCorner corner, PaperBox cell) {
        return scale(corner, field(cell).height());
    }

    private static int scale(OpeningCorner corner, double height) {
        return (SIDE + ALONG + BACK * corner.opening().reveal()) / 500 + NAME <= height ? 5 : 10;
    }

    private static PaperBox field(PaperBox cell) {
        return new PaperBox(cell.left() + BESIDE + 4, cell.top() + 6, cell.right() - 9, cell.bottom() - 0.5);
    }

    static Group of(WeakPoint p, String letter, Evidence evidence, PaperBox cell) {
        OpeningCorner corner = corner(p, evidence).orElseThrow();
        CornerView view = new CornerView(evidence, corner, Severity.of(p.finding().defences()), field(cell));
        view.out.addAll(SectionCell.head(cell, letter, SectionCell.title(p.finding()) + " of " + TextMetrics.shorten(corner.opening().id(), 14, Looks.STRONG),
                "1:" + view.scale + ", oblique view", List.of(p)));
        view.draw();
        List<String> words = SectionCell.sentence(p.finding(), BESIDE, 8);
        view.out.addAll(SectionCell.text(words, cell.left(), cell.top() + 17.4));
        return Group.of("section-" + letter, view.out).withData("weak", Integer.toString(p.number()));
    }

    /** The view alone, for where head and words are set beside it. */
    static SectionPicture picture(WeakPoint p, OpeningCorner corner, Evidence evidence) {
        CornerView view = new CornerView(evidence, corner, Severity.of(p.finding().defences()),
                field(PaperBox.ofSize(0, 0, Slots.SECTIONS.width(), HEIGHT)));
        view.draw();
        return new SectionPicture(view.out, "1:" + view.scale + ", oblique view");
    }

    /** A place x right of the corner into the opening, y into the opening, v back; printed. */
    private PaperPoint at(double x, double y, double v) {
        double k = BACK * v;
        return origin.plus(right * (x + k) / 100 / scale, -up * (y + k) / 100 / scale);
    }

    private void draw() {
        long deep = corner.opening().reveal();
        PaperRegion face = PaperRegion.of(at(-side, along, 0), at(0, along, 0), at(0, 0, 0), at(along, 0, 0), at(along, -side, 0), at(-side, -side, 0));
        out.add(Area.filled(face, Looks.MEMBRANE));
        surface(corner.jamb(), deep, corner.onJamb());
        surface(corner.level(), deep, corner.onLevel());
        out.add(new Polyline(List.of(at(0, along, 0), at(0, 0, 0), at(along, 0, 0)), Looks.WIDE));
        out.add(Polyline.of(Looks.NARROW, at(0, 0, 0), at(0, 0, deep)));
        out.add(new Polyline(List.of(at(-side, along, 0), at(-side, -side, 0), at(along, -side, 0)), Looks.FLAT));
        names(deep);
    }

    private void surface(Side side, long deep, List<Region> bare) {
        PaperRegion whole = PaperRegion.of(on(side, 0, 0), on(side, along, 0), on(side, along, deep), on(side, 0, deep));
        out.add(Area.of(whole, Tone.WHITE, Looks.MEDIUM));
        Opening o = corner.opening();
        Surface s = new Surface(o.id(), side);
        boolean fromStart = side.isJamb() ? corner.level() == Side.SILL : corner.jamb() == Side.LEFT;
        Box near = fromStart ? new Box(0, 0, Math.min(along, o.along(side)), deep) : new Box(Math.max(0, o.along(side) - along), 0, o.along(side), deep);
        for (Face f : evidence.stack().on(s)) {
            if (rainlap.joint.Sheets.covers(f)) {
                boolean strip = rainlap.joint.Sheets.isStrip(f);
                for (Region r : Overlay.intersection(List.of(f.region()), List.of(Region.of(near)))) {
                    PaperRegion part = flat(side, r, fromStart);
                    out.add(Area.of(part, strip ? Looks.TAPE : Looks.LAP, strip ? Looks.STRIP_EDGE : Looks.MEDIUM));
                }
            }
        }
        for (Region r : bare) {
            PaperRegion part = flat(side, r, fromStart);
            out.add(Area.filled(part, Tone.WHITE));
            out.add(Hatch.of(part, 135, 1.4, Edge.of(Pen.THIN, severity.tone())));
            out.add(Area.edged(part, Edge.of(Pen.WIDE, severity.tone())));
        }
    }

    private PaperRegion flat(Side side, Region r, boolean fromStart) {
        List<PaperPoint> ring = new ArrayList<>();
        for (Point p : r.shell().points()) {
            ring.add(on(side, fromStart ? p.x() : corner.opening().along(side) - p.x(), p.y()));
        }
        return PaperRegion.of(ring);
    }

    /** A place of a surface: u away from the corner, v back. */
    private PaperPoint on(Side side, double u, double v) {
        return side.isJamb() ? at(0, u, v) : at(u, 0, v);
    }

    private void names(long deep) {
        PaperPoint jamb = at(0, along, deep), level = at(along, 0, deep);
        out.add(Text.of(jamb.x() + right * 1.2, jamb.y() + 1.2, "jamb", right > 0 ? Looks.STRONG : Looks.STRONG.end()));
        out.add(Text.of(level.x() - right * 1, level.y() - up * 1.6 + (up > 0 ? 0 : 2.5), corner.level().word(), right > 0 ? Looks.STRONG.end() : Looks.STRONG));
        Text bare = Text.centred(at(0.46 * along, 0.57 * along, deep), "bare", Looks.STRONG.with(severity.tone()).middle());
        out.add(bare);
        PaperBox room = bare.box().grown(0.6);
        bareMiddle(corner.jamb(), corner.onJamb()).ifPresent(p -> out.add(Polyline.of(Looks.THIN,
                new PaperPoint(right > 0 ? room.left() : room.right(), bare.box().middle().y()), p)));
        bareMiddle(corner.level(), corner.onLevel()).ifPresent(p -> out.add(Polyline.of(Looks.THIN,
                new PaperPoint(bare.box().middle().x(), up > 0 ? room.bottom() : room.top()), p)));
        onFace().ifPresent(id -> out.add(Text.of(at(right > 0 ? -side : along, 0, 0).x() + 1.2, at(0, -side / 2, 0).y() + 1.25,
                TextMetrics.shorten(id, 18, Looks.STRONG) + " on the face", Looks.STRONG)));
    }

    private Optional<PaperPoint> bareMiddle(Side side, List<Region> bare) {
        boolean fromStart = side.isJamb() ? corner.level() == Side.SILL : corner.jamb() == Side.LEFT;
        return bare.stream().findFirst().map(r -> WeakPlaces.inside(flat(side, r, fromStart)));
    }

    /** The outermost membrane on the wall beside the corner. */
    private Optional<String> onFace() {
        Box r = corner.opening().rect();
        double x = right > 0 ? r.minX() - 1000 : r.maxX() + 1000, y = up > 0 ? r.minY() - 1000 : r.maxY() + 1000;
        Optional<Face> best = Optional.empty();
        for (Face f : evidence.stack().on(Surface.WALL)) {
            if (Visibility.isMembrane(f) && f.region().covers(x, y) && (best.isEmpty() || evidence.stack().isOutside(f, best.get()))) {
                best = Optional.of(f);
            }
        }
        return best.map(f -> f.piece().id());
    }
}
