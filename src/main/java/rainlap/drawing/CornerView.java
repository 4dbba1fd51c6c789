package rainlap.drawing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import rainlap.check.WeakPoint;
import rainlap.geom.Box;
import rainlap.geom.Overlay;
import rainlap.geom.Point;
import rainlap.geom.Region;
import rainlap.joint.OpeningCorner;
import rainlap.material.MaterialKind;
import rainlap.paper.Area;
import rainlap.paper.Edge;
import rainlap.paper.Hatch;
import rainlap.paper.Mark;
import rainlap.paper.PaperBox;
import rainlap.paper.PaperPoint;
import rainlap.paper.PaperRegion;
import rainlap.paper.Pen;
import rainlap.paper.Polyline;
import rainlap.paper.Text;
import rainlap.paper.TextMetrics;
import rainlap.paper.TextStyle;
import rainlap.paper.Tone;
import rainlap.rule.Evidence;
import rainlap.rule.Finding;
import rainlap.stack.Face;
import rainlap.wall.Opening;
import rainlap.wall.Side;
import rainlap.wall.Surface;

/** A corner of an opening in oblique view: the wall's face in true shape, both surfaces of the reveal running back. */
final class CornerView {
    /** How much of a depth shows across and up. */
    private static final double BACK = 0.43;
    /** Room for a name above the drawing, printed mm. */
    private static final double NAME = 2;
    /** Rules of what turns up at a corner, and in which order, along a line there. */
    private static final Set<String> TURNS = Set.of("flat-sill", "pan-over-jamb");
    private static final long SIDE = 42_00;
    private static final long ALONG = 105_00;
    /** A corner piece goes on so far past what lies bare, as a rule. */
    private static final long PAST = 25_00;
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
    /** What is stuck onto the wall there. */
    private final List<PaperRegion> stuck = new ArrayList<>();

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

    /** The corner that a weak point on a reveal concerns: one whose bare parts its place holds, or at which nothing turns up as it should. */
    static Optional<OpeningCorner> corner(WeakPoint p, Evidence evidence) {
        Finding f = p.finding();
        Surface s = f.where().surface();
        if (s.isWall() || f.where().isLine() && !TURNS.contains(f.rule())) {
            return Optional.empty();
        }
        Box b = f.where().box();
        Point middle = new Point((b.minX() + b.maxX()) / 2, (b.minY() + b.maxY()) / 2);
        return evidence.openingCorners().stream().filter(c -> c.opening().id().equals(s.opening()) && (f.where().isLine() || c.isBare()))
                .filter(c -> square(c).contains(middle)).findFirst();
    }

    /** The same corner in another state of the wall. */
    static OpeningCorner same(OpeningCorner corner, Evidence evidence) {
        return evidence.openingCorners().stream().filter(c -> c.opening().id().equals(corner.opening().id()) && c.level() == corner.level() && c.jamb() == corner.jamb())
                .findFirst().orElseThrow();
    }

    /** The corner's square, laid flat inside the opening. */
    static Box square(OpeningCorner c) {
        Box r = c.opening().rect();
        long deep = Math.min(c.opening().reveal(), Math.min(r.width(), r.height()) / 2);
        long x = c.jamb() == Side.LEFT ? r.minX() : r.maxX() - deep, y = c.level() == Side.SILL ? r.minY() : r.maxY() - deep;
        return new Box(x, y, x + deep, y + deep);
    }

    /** The scale at which a corner fits a field so high, with what covers its bare parts. */
    static int scale(OpeningCorner corner, double height) {
        long longest = Stream.concat(corner.onLevel().stream().map(r -> reach(corner, corner.level(), r)), corner.onJamb().stream().map(r -> reach(corner, corner.jamb(), r)))
                .max(Comparator.naturalOrder()).orElse(0L);
        return longest + PAST <= ALONG && (SIDE + ALONG + BACK * corner.opening().reveal()) / 500 + NAME <= height ? 5 : 10;
    }

    /** How far from the corner a part of a surface reaches along it. */
    private static long reach(OpeningCorner c, Side side, Region r) {
        boolean fromStart = side.isJamb() ? c.level() == Side.SILL : c.jamb() == Side.LEFT;
        return fromStart ? r.box().maxX() : c.opening().along(side) - r.box().minX();
    }

    /**
     * The corner as it is drawn, or as it should be.
     *
     * @param f the finding it is shown for; the place of a line is drawn too while it is there
     * @param added the id of a piece that is named instead of what is bare; blank for none
     */
    static List<Mark> marks(Finding f, OpeningCorner corner, Evidence evidence, PaperBox field, String added) {
        CornerView view = new CornerView(evidence, corner, Severity.of(f.defences()), field);
        view.draw(f, added);
        return view.out;
    }

    /** A place x right of the corner into the opening, y into the opening, v back; printed. */
    private PaperPoint at(double x, double y, double v) {
        double k = BACK * v;
        return origin.plus(right * (x + k) / 100 / scale, -up * (y + k) / 100 / scale);
    }

    private void draw(Finding f, String added) {
        long deep = corner.opening().reveal();
        PaperRegion face = PaperRegion.of(at(-side, along, 0), at(0, along, 0), at(0, 0, 0), at(along, 0, 0), at(along, -side, 0), at(-side, -side, 0));
        out.add(Area.filled(face, Looks.MEMBRANE));
        stuck();
        boolean isShown = added.isEmpty() && !f.where().isLine();
        surface(corner.jamb(), deep, isShown ? corner.onJamb() : List.of());
        surface(corner.level(), deep, isShown ? corner.onLevel() : List.of());
        out.add(new Polyline(List.of(at(0, along, 0), at(0, 0, 0), at(along, 0, 0)), Looks.WIDE));
        out.add(Polyline.of(Looks.NARROW, at(0, 0, 0), at(0, 0, deep)));
        out.add(new Polyline(List.of(at(-side, along, 0), at(-side, -side, 0), at(along, -side, 0)), Looks.FLAT));
        if (added.isEmpty() && f.where().isLine()) {
            line(f);
        }
        names(deep, f, added);
    }

    /** What is stuck onto the wall there: tapes and corner pieces. */
    private void stuck() {
        Opening o = corner.opening();
        long x = corner.jamb() == Side.LEFT ? o.rect().minX() : o.rect().maxX(), y = corner.level() == Side.SILL ? o.rect().minY() : o.rect().maxY();
        Box shown = right > 0 ? new Box(x - side, up > 0 ? y - side : y - along, x + along, up > 0 ? y + along : y + side)
                : new Box(x - along, up > 0 ? y - side : y - along, x + side, up > 0 ? y + along : y + side);
        List<Region> wall = Overlay.difference(List.of(Region.of(shown)), List.of(Region.of(o.rect())));
        for (Face f : evidence.stack().meeting(Surface.WALL, shown)) {
            boolean strip = rainlap.joint.Sheets.isStrip(f);
            for (Region r : strip ? Overlay.intersection(List.of(f.region()), wall) : List.<Region>of()) {
                PaperRegion part = PaperRegion.of(r.shell().points().stream().map(p -> at(right * (p.x() - x), up * (p.y() - y), 0)).toList());
                out.add(Area.of(part, tone(f.kind()), Looks.STRIP_EDGE));
                stuck.add(part);
            }
        }
    }

    private static Tone tone(MaterialKind kind) {
        return kind == MaterialKind.TAPE ? Looks.TAPE : kind == MaterialKind.FLASHING ? Looks.FLASHING : kind == MaterialKind.MEMBRANE ? Looks.LAP : Looks.CORNER;
    }

    /** Where something should turn up, or go down over another thing. */
    private void line(Finding f) {
        Side at = f.where().surface().side();
        List<PaperPoint> line = f.where().line().stream().map(p -> corner.opening().toSurface(at, p)).map(p -> on(at, fromCorner(at, p.x()), p.y())).toList();
        out.add(new Polyline(line, Edge.of(Pen.EXTRA_WIDE, severity.tone())));
    }

    /** How far along a surface something lies from this corner. */
    private long fromCorner(Side side, long u) {
        return isFromStart(side) ? u : corner.opening().along(side) - u;
    }

    private boolean isFromStart(Side side) {
        return side.isJamb() ? corner.level() == Side.SILL : corner.jamb() == Side.LEFT;
    }

    private void surface(Side side, long deep, List<Region> bare) {
        PaperRegion whole = PaperRegion.of(on(side, 0, 0), on(side, along, 0), on(side, along, deep), on(side, 0, deep));
        out.add(Area.of(whole, Tone.WHITE, Looks.MEDIUM));
        Opening o = corner.opening();
        Surface s = new Surface(o.id(), side);
        boolean fromStart = isFromStart(side);
        Box near = fromStart ? new Box(0, 0, Math.min(along, o.along(side)), deep) : new Box(Math.max(0, o.along(side) - along), 0, o.along(side), deep);
        List<Face> over = new ArrayList<>(evidence.stack().on(s).stream().filter(rainlap.joint.Sheets::covers).toList());
        Optional<Face> pan = side.isJamb() ? pan() : Optional.empty();
        over.stream().filter(f -> pan.filter(p -> evidence.stack().isOutside(f, p)).isEmpty()).forEach(f -> part(side, f, near));
        pan.ifPresent(p -> out.add(Area.of(flat(side, Region.of(end(p))), Looks.FLASHING, Looks.NARROW)));
        over.stream().filter(f -> pan.filter(p -> evidence.stack().isOutside(f, p)).isPresent()).forEach(f -> part(side, f, near));
        for (Region r : bare) {
            PaperRegion part = flat(side, r);
            out.add(Area.filled(part, Tone.WHITE));
            out.add(Hatch.of(part, 135, 1.4, Edge.of(Pen.THIN, severity.tone())));
            out.add(Area.edged(part, Edge.of(Pen.WIDE, severity.tone())));
        }
    }

    private void part(Side side, Face f, Box near) {
        for (Region r : Overlay.intersection(List.of(f.region()), List.of(Region.of(near)))) {
            out.add(Area.of(flat(side, r), tone(f.kind()), rainlap.joint.Sheets.isStrip(f) ? Looks.STRIP_EDGE : Looks.MEDIUM));
        }
    }

    /** A pan on the sill whose end is said to be turned up at this jamb. */
    private Optional<Face> pan() {
        return corner.level() != Side.SILL ? Optional.empty() : evidence.stack().on(new Surface(corner.opening().id(), Side.SILL)).stream()
                .filter(f -> f.kind() == MaterialKind.FLASHING && f.piece().material().profile().endDamMm().orElse(0) > 0)
                .filter(f -> f.piece().material().profile().endDams().filter(d -> corner.jamb() == Side.LEFT ? d.atLeft() : d.atRight()).isPresent()).findFirst();
    }

    /** Its end, on the jamb. */
    private static Box end(Face pan) {
        return new Box(0, pan.box().minY(), Math.round(pan.piece().material().profile().endDamMm().orElse(0) * 100), pan.box().maxY());
    }

    private PaperRegion flat(Side side, Region r) {
        return PaperRegion.of(r.shell().points().stream().map(p -> on(side, fromCorner(side, p.x()), p.y())).toList());
    }

    /** A place of a surface: u away from the corner, v back. */
    private PaperPoint on(Side side, double u, double v) {
        return side.isJamb() ? at(0, u, v) : at(u, 0, v);
    }

    private void names(long deep, Finding f, String added) {
        PaperPoint jamb = at(0, along, deep), level = at(along, 0, deep);
        out.add(Text.of(jamb.x() + right * 1.2, jamb.y() + 1.2, "jamb", right > 0 ? Looks.STRONG : Looks.STRONG.end()));
        out.add(Text.of(level.x() - right * 1, level.y() - up * 1.6 + (up > 0 ? 0 : 2.5), corner.level().word(), right > 0 ? Looks.STRONG.end() : Looks.STRONG));
        if (!added.isEmpty()) {
            label(added, Looks.STRONG.middle(), List.of(strip(corner.jamb(), added), strip(corner.level(), added)));
        } else if (!f.where().isLine()) {
            label("bare", Looks.STRONG.with(severity.tone()).middle(), List.of(first(corner.jamb(), corner.onJamb()), first(corner.level(), corner.onLevel())));
        }
        PaperBox strip = PaperBox.of(List.of(at(-side, 0, 0), at(along, -side, 0)));
        onFace().flatMap(id -> FaceName.in(strip, id, stuck)).ifPresent(t -> out.addAll(Symbols.haloed(t, Looks.MEMBRANE)));
    }

    /** A word in the middle, with a line to what it names on the jamb and to what on sill or head. */
    private void label(String word, TextStyle style, List<Optional<PaperPoint>> places) {
        Text text = Text.centred(at(0.46 * along, 0.57 * along, corner.opening().reveal()), TextMetrics.shorten(word, 20, style), style);
        out.add(text);
        PaperBox room = text.box().grown(0.6);
        places.get(0).ifPresent(p -> out.add(Polyline.of(Looks.THIN, new PaperPoint(right > 0 ? room.left() : room.right(), text.box().middle().y()), p)));
        places.get(1).ifPresent(p -> out.add(Polyline.of(Looks.THIN, new PaperPoint(text.box().middle().x(), up > 0 ? room.bottom() : room.top()), p)));
    }

    private Optional<PaperPoint> first(Side side, List<Region> regions) {
        return regions.stream().findFirst().map(r -> WeakPlaces.inside(flat(side, r)));
    }

    /** Inside what shows of a piece on a surface; there is none where it lies further off. */
    private Optional<PaperPoint> strip(Side side, String id) {
        Surface s = new Surface(corner.opening().id(), side);
        long all = corner.opening().along(side);
        Box near = isFromStart(side) ? new Box(0, 0, Math.min(along, all), corner.opening().reveal()) : new Box(Math.max(0, all - along), 0, all, corner.opening().reveal());
        return first(side, evidence.stack().on(s).stream().filter(x -> x.piece().id().equals(id))
                .flatMap(x -> Overlay.intersection(List.of(x.region()), List.of(Region.of(near))).stream()).toList());
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
