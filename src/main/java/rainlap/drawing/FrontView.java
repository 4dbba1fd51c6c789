package rainlap.drawing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import rainlap.check.WeakPoint;
import rainlap.geom.Box;
import rainlap.geom.Grid;
import rainlap.geom.Overlay;
import rainlap.geom.Point;
import rainlap.geom.Region;
import rainlap.mend.Answer;
import rainlap.mend.Mended;
import rainlap.paper.Area;
import rainlap.paper.Crop;
import rainlap.paper.Mark;
import rainlap.paper.Occupied;
import rainlap.paper.PaperBox;
import rainlap.paper.PaperRegion;
import rainlap.paper.Text;
import rainlap.paper.TextMetrics;
import rainlap.rule.Evidence;
import rainlap.rule.Finding;
import rainlap.wall.Opening;
import rainlap.wall.Stage;
import rainlap.wall.Surface;
import rainlap.water.Arrival;

/** A place of the wall seen from outside, close to: for what is short along the wall or lies over the wrong thing. */
final class FrontView implements CloseUp {
    private static final Set<String> RULES = Set.of("short-flashing", "unstaggered-laps", "end-lap-near-opening", "tape-order");
    private static final int LARGEST = 5;
    private static final int SMALLEST = 50;
    /** Printed mm of wall beside what is shown, at the least. */
    private static final double MARGIN = 8;
    /** Beneath the head of its cell, and room that a view from outside does not need on the right. */
    private static final double TOP = 3;
    private static final double RIGHT = 7.5;
    /** Of the circle round it on an elevation, printed mm. */
    private static final double WIDEST = 12;
    private static final double[] SHARES = {0.5, 0.75, 0.25, 0.9, 0.1};
    private static final String NOT_HERE = "Water gets in beside this view.";
    private final WeakPoint point;
    private final Evidence evidence;
    private final Optional<FrontSpan> span;
    private final Box place;
    private boolean waterShows;

    private FrontView(WeakPoint point, Evidence evidence) {
        this.point = point;
        this.evidence = evidence;
        this.span = FrontSpan.of(point.finding(), evidence);
        this.place = span.map(FrontSpan::box).orElse(point.finding().where().box());
    }

    /** Empty for a rule whose places a cut shows. */
    static Optional<CloseUp> of(WeakPoint p, Evidence evidence) {
        return RULES.contains(p.finding().rule()) ? Optional.of(new FrontView(p, evidence)) : Optional.empty();
    }

    @Override
    public WeakPoint point() {
        return point;
    }

    @Override
    public String title() {
        return SectionCell.title(point.finding());
    }

    @Override
    public String seen() {
        return evidence.stage() == Stage.WRAP ? "seen from outside" : "wrap, from outside";
    }

    @Override
    public int scale(PaperBox field) {
        PaperBox picture = picture(field);
        int scale = LARGEST;
        while (scale < SMALLEST && (length(place.width(), scale) + 2 * MARGIN > picture.width() || span.isEmpty() && length(place.height(), scale) + MARGIN > picture.height())) {
            scale = scale == 20 ? SMALLEST : 2 * scale;
        }
        return scale;
    }

    private static double length(long units, int scale) {
        return (double) units / Grid.MM / scale;
    }

    private PaperBox picture(PaperBox field) {
        return new PaperBox(field.left(), field.top() + TOP, field.right() + RIGHT, field.bottom() - (span.isPresent() ? FrontGauge.ROOM : 0));
    }

    private Point middle() {
        return new Point((place.minX() + place.maxX()) / 2, (place.minY() + place.maxY()) / 2);
    }

    @Override
    public Circle circle(View elevation) {
        double across = Math.max(elevation.length(place.width()), span.isEmpty() ? elevation.length(place.height()) : 0);
        return new Circle(elevation.at(middle()), Math.min(WIDEST, Math.max(4.5, across * 0.6 + 1.5)));
    }

    @Override
    public Object shows() {
        return List.of(point.finding().rule(), place);
    }

    @Override
    public Optional<Answer> answer() {
        return MendedCuts.ofView(point, evidence);
    }

    @Override
    public Optional<String> elsewhere() {
        return waterShows || point.finding().path().isEmpty() ? Optional.empty() : Optional.of(NOT_HERE);
    }

    @Override
    public List<Mark> drawn(PaperBox field) {
        return marks(evidence, field, Optional.of(point), span);
    }

    @Override
    public List<Mark> mended(Mended mended, PaperBox field) {
        return marks(mended.evidence(), field, Optional.empty(), span.map(FrontSpan::asAsked));
    }

    /** @param weak whose place and water are drawn, on the wall as it is */
    private List<Mark> marks(Evidence on, PaperBox field, Optional<WeakPoint> weak, Optional<FrontSpan> gauge) {
        PaperBox picture = picture(field);
        int scale = scale(field);
        Point m = middle();
        View view = new View(scale, picture.middle().x() - length(m.x(), scale), picture.middle().y() + length(m.y(), scale));
        Evidence wrap = on.stage() == Stage.WRAP ? on : Evidence.of(on.elevation(), Stage.WRAP, on.practice());
        Occupied taken = new Occupied();
        List<Mark> layers = new ArrayList<>(FrontLayers.of(wrap, view, picture)), out = new ArrayList<>(), words = new ArrayList<>();
        FrontGauge gauges = new FrontGauge(view, picture, field, taken);
        weak.ifPresent(p -> layers.addAll(new WeakPlaces(view, picture, true).draw(List.of(p), taken).get(0).marks()));
        gauge.ifPresent(g -> gauges.draw(g, words));
        weak.flatMap(p -> way(p, view, picture)).ifPresent(way -> {
            waterShows = true;
            new FrontWay(way, picture).draw(taken, layers);
        });
        names(wrap, point.finding().pieces(), view, picture, taken, words);
        out.addAll(Crop.to(picture, layers));
        out.add(Area.edged(PaperRegion.of(picture), Looks.FLAT));
        out.addAll(words);
        return out;
    }

    private static void names(Evidence wrap, List<String> pieces, View view, PaperBox picture, Occupied taken, List<Mark> out) {
        Visibility visibility = new Visibility(wrap.stack());
        PaperBox room = picture.grown(-0.8);
        for (Opening o : wrap.elevation().openings()) {
            PaperBox box = view.box(o.rect());
            if (box.meets(room)) {
                PaperBox seen = new PaperBox(Math.max(box.left(), room.left()), Math.max(box.top(), room.top()), Math.min(box.right(), room.right()), Math.min(box.bottom(), room.bottom()));
                Text id = Text.centred(seen.middle(), TextMetrics.shorten(o.id(), Math.max(6, seen.width() - 1), Looks.NAME), Looks.NAME);
                if (room.holds(id.box()) && taken.isFree(id.box())) {
                    taken.add(id.box());
                    out.addAll(Symbols.haloed(id, rainlap.paper.Tone.WHITE));
                }
            }
        }
        Box window = Box.of(List.of(view.onWall(new rainlap.paper.PaperPoint(picture.left(), picture.bottom())), view.onWall(new rainlap.paper.PaperPoint(picture.right(), picture.top()))));
        Room free = new Room(taken, new Obstacles(wrap, visibility, view).toText(false), room);
        Names names = new Names(wrap, visibility, view, free, window);
        out.addAll(names.rest());
        pieces.stream().filter(names.unnamed()::contains).forEach(id -> beneath(wrap, id, window, view, free, out));
    }

    /** Tells where a piece lies that does not show. */
    private static void beneath(Evidence wrap, String id, Box window, View view, Room free, List<Mark> out) {
        List<PaperRegion> hidden = wrap.stack().on(Surface.WALL).stream().filter(f -> f.piece().id().equals(id))
                .flatMap(f -> Overlay.intersection(List.of(f.region()), List.of(Region.of(window))).stream()).map(view::region).toList();
        free.inside(hidden, TextMetrics.shorten(id, 14, Looks.STRONG) + " beneath", Looks.STRONG.middle()).ifPresent(t -> out.addAll(Symbols.haloed(t, Looks.LAP)));
    }

    /** The way in that the most of is to be seen; empty where none passes here. */
    private Optional<WaterSigns.Way> way(WeakPoint p, View view, PaperBox picture) {
        WayPoints points = new WayPoints(evidence.elevation(), view);
        Finding f = p.finding();
        Optional<Arrival> first = new WaysIn(evidence).through(p).stream().findFirst();
        return first.stream().flatMap(a -> java.util.Arrays.stream(SHARES).mapToObj(share -> ElevationWays.way(points, a, near(f.where().box()), share)))
                .filter(w -> new FrontWay(w, picture).seen() > 1).max(Comparator.comparingDouble(w -> new FrontWay(w, picture).seen()));
    }

    private Box near(Box where) {
        return where.overlaps(place) ? new Box(Math.max(where.minX(), place.minX()), Math.max(where.minY(), place.minY()), Math.min(where.maxX(), place.maxX()), Math.min(where.maxY(), place.maxY())) : place;
    }
}
