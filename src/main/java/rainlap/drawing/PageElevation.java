package rainlap.drawing;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import rainlap.check.CheckResult;
import rainlap.check.WeakPoint;
import rainlap.paper.Area;
import rainlap.paper.Group;
import rainlap.paper.Mark;
import rainlap.paper.Occupied;
import rainlap.paper.PaperBox;
import rainlap.paper.PaperPoint;
import rainlap.paper.SheetSize;
import rainlap.paper.Strokes;
import rainlap.paper.Tone;
import rainlap.rule.Evidence;
import rainlap.stack.Stack;
import rainlap.wall.Opening;

/** The elevation of a page: the same marks, names and labels as on a sheet, in groups. */
final class PageElevation {
    /** Beyond the scales of sheets a page goes on: it can be enlarged. */
    private static final double NO_CENTRING_MARK = Double.NEGATIVE_INFINITY;
    private static final List<Integer> SMALLER = List.of(200, 500, 1000);
    /** With more marks round one elevation its leaders cannot be followed; the others show when they are chosen. */
    private static final int MOST_MARKS = 40;
    private static final double MARGIN = 2;
    /** Where the wall begins at the furthest, and room for labels on its right, printed mm. */
    private static final double LEFT = 76;
    private static final double RIGHT = 34;
    /** Least of the elevation that is shown round a weak point. */
    private static final double LEAST_FOCUS = 44;
    private final CheckResult result;
    private final Evidence evidence;
    private final Stack all;
    private final Extents extents;
    private final Placing placing;
    private final View view;
    private final PageSteps steps;
    private final PageSections sections;
    private final Occupied taken = new Occupied();
    private final List<Mark> wall = new ArrayList<>();
    private final List<Mark> weak = new ArrayList<>();
    private final List<Mark> ways = new ArrayList<>();
    private final List<PageDrawing.Weak> points = new ArrayList<>();

    PageElevation(CheckResult result, Stack all) {
        this.result = result;
        this.evidence = result.evidence();
        this.all = all;
        this.extents = Extents.of(result, all);
        this.placing = place();
        this.view = placing.view();
        this.steps = new PageSteps(evidence);
        this.sections = new PageSections(result);
    }

    private Placing place() {
        Stream<Placing> sheets = Arrays.stream(Slots.Layout.values()).filter(l -> l.size() == SheetSize.A3).flatMap(l -> Placing.of(extents, l).stream());
        Stream<Placing> smaller = SMALLER.stream().flatMap(s -> Placing.of(extents, Slots.Layout.ALONE, s).stream());
        return Stream.concat(sheets, smaller).min(Comparator.comparingInt(p -> p.view().scale())).map(this::moved)
                .orElseThrow(() -> new Sheets.TooLarge(extents, Sheets.Paper.A3));
    }

    /** A sheet has its middle to keep; on a page the wall stands beside its levels, with room for labels between. */
    private Placing moved(Placing p) {
        double shift = Math.max(0, p.view().x(extents.sheets().minX()) - LEFT);
        return new Placing(p.layout(), new View(p.view().scale(), p.view().originX() - shift, p.view().originY()), p.chain(), p.overall());
    }

    PageDrawing drawing() {
        PaperBox drawn = view.box(extents.sheets());
        Visibility visibility = new Visibility(evidence.stack());
        Obstacles obstacles = new Obstacles(evidence, visibility, view);
        List<WeakPlaces.Drawn> places = new WeakPlaces(view, drawn).draw(result.weakPoints(), taken);
        Labels labels = Labels.place(places.subList(0, Math.min(MOST_MARKS, places.size())), drawn, slot(), obstacles, taken);
        wall();
        around(drawn);
        names(visibility, obstacles, drawn);
        for (WeakPlaces.Drawn place : places) {
            weak(place, labels);
        }
        PaperBox box = Stream.of(wall, weak, ways).flatMap(List::stream).map(Mark::box).reduce(drawn, PaperBox::with).grown(MARGIN);
        Group title = title(drawn);
        wall.add(title);
        List<PageLayer> layers = Arrays.stream(PageLayer.values()).filter(this::isThere).toList();
        return new PageDrawing(box, box.with(title.box().grown(MARGIN)), view.scale(), wall, weak, ways, steps.pieces(), layers, layers.stream().filter(this::isIgnored).toList(), points);
    }

    private PaperBox slot() {
        PaperBox whole = placing.layout().elevation();
        double right = Math.max(view.x(extents.sheets().maxX()) + RIGHT, whole.left() + ViewTitle.WIDTH);
        return new PaperBox(whole.left(), whole.top(), Math.min(whole.right(), right), whole.bottom());
    }

    private void add(PageLayer layer, int step, List<? extends Mark> marks) {
        if (!marks.isEmpty()) {
            wall.add(LaidMarks.item(layer.id(), step, marks));
        }
    }

    private void wall() {
        LaidMarks laid = new LaidMarks(evidence, all, view, steps);
        OpeningMarks openings = new OpeningMarks(evidence, new Visibility(all), new LapBands(evidence, new Visibility(all), view), view);
        wall.add(Area.filled(view.region(evidence.elevation().outline().region()), Tone.WHITE));
        wall.addAll(laid.onWall());
        for (Opening o : evidence.elevation().openings()) {
            add(PageLayer.OPENINGS, 0, List.of(Area.filled(view.region(rainlap.geom.Region.of(o.rect())), Tone.WHITE)));
        }
        wall.addAll(laid.onReveals());
        for (Opening o : evidence.elevation().openings()) {
            add(PageLayer.OPENINGS, 0, List.of(new Strokes(openings.diagonals(o), Looks.DIAGONAL)));
        }
        WetFrame wet = new WetFrame(evidence, WetPlaces.of(result), view);
        add(PageLayer.WET, steps.last(), wet.onWall());
        add(PageLayer.WET, steps.last(), wet.onReveals());
        add(PageLayer.OPENINGS, 0, openings.edges());
        add(PageLayer.PENETRATIONS, 0, PenetrationMarks.of(evidence.elevation(), view));
        wall.add(Area.edged(view.region(evidence.elevation().outline().region()), Looks.OUTLINE));
    }

    /** Ground, levels, dimensions. */
    private void around(PaperBox drawn) {
        extents.ground().ifPresent(g -> {
            wall.add(ViewTitle.ground(drawn.left() - 4, drawn.right() + 4, view.y(g)));
            taken.add(new PaperBox(drawn.left() - 4, view.y(g) - 0.4, drawn.right() + 4, view.y(g) + 1.9));
        });
        AbutmentMarks abutting = new AbutmentMarks(evidence.elevation().outline().abutting(), view);
        if (!abutting.isEmpty()) {
            wall.add(abutting.lines(taken));
            wall.add(abutting.words(new Room(taken, new Occupied(), slot())));
        }
        add(PageLayer.DIMENSIONS, 0, List.of(new Levels(view, slot(), NO_CENTRING_MARK, taken).marks(evidence)));
        add(PageLayer.DIMENSIONS, 0, List.of(new Dimensions(placing, taken).marks(evidence.elevation(), Bay.whole(extents, placing))));
    }

    /** The name of the view and the scale bar: only for paper, where they are true. */
    private Group title(PaperBox drawn) {
        PaperPoint title = new PaperPoint(Math.min(slot().right() - ViewTitle.WIDTH, drawn.left() - 4), placing.title(extents));
        return ViewTitle.marks(evidence.elevation().name(), "", evidence.stage().word() + " stage, scale 1:" + view.scale(), view.scale(), title, false)
                .withClass("paper-only");
    }

    private void names(Visibility visibility, Obstacles obstacles, PaperBox drawn) {
        Names names = new Names(evidence, visibility, view, new Room(taken, obstacles.toText(false), slot()), extents.sheets());
        names.marks();
        names.byId().forEach((id, marks) -> name(layer(id), isPiece(id) ? steps.of(id) : 0, marks));
        Room notes = new Room(taken, obstacles.toText(true), drawn.grown(-0.8));
        LapFigures laps = new LapFigures(view, notes, new Occupied());
        laps.marks(evidence);
        laps.byJoint().forEach((j, marks) -> name(PageLayer.LAPS,
                Math.max(steps.of(j.outer().piece().id()), steps.of(j.inner().piece().id())), marks));
        add(PageLayer.NAMES, steps.last(), List.of(new FoldNotes(view, notes).marks(evidence)));
    }

    /** A name goes with what it names, and with all names. */
    private void name(PageLayer with, int step, List<Mark> marks) {
        if (!marks.isEmpty()) {
            wall.add(LaidMarks.item(PageLayer.NAMES.id() + " " + with.id(), step, marks));
        }
    }

    private PageLayer layer(String id) {
        return steps.pieces().stream().filter(p -> p.id().equals(id)).findFirst().map(p -> PageLayer.of(p.material().kind()))
                .orElse(evidence.elevation().findOpening(id).isPresent() ? PageLayer.OPENINGS : PageLayer.PENETRATIONS);
    }

    private boolean isPiece(String id) {
        return evidence.elevation().pieces().stream().anyMatch(p -> p.id().equals(id));
    }

    private void weak(WeakPlaces.Drawn place, Labels labels) {
        WeakPoint p = place.point();
        Severity severity = Severity.of(p.finding().defences());
        List<Mark> marks = new ArrayList<>(List.of(Group.of(place.marks()).withClass("place")));
        Optional<Labels.Part> label = labels.parts().stream().filter(l -> l.point() == p).findFirst();
        label.ifPresent(l -> marks.add(Group.of(l.leader()).withClass("lead")));
        label.ifPresent(l -> marks.add(Group.of(l.mark()).withClass("mark")));
        PaperPoint site = place.sites().get(0);
        if (label.isEmpty()) {
            marks.add(Group.of(severity.mark(site.plus(0, -Severity.HALF - 1), p.number())).withClass("mark").withClass("when-chosen"));
        }
        weak.add(Group.of(marks).withClass("wp").withData("weak", Integer.toString(p.number())));
        List<Mark> way = new PageWay(evidence, view).marks(p.finding());
        if (!way.isEmpty()) {
            ways.add(Group.of(way).withClass("way").withData("way", Integer.toString(p.number())));
        }
        PaperBox focus = Stream.concat(marks.stream(), way.stream()).map(Mark::box).reduce(PaperBox::with).orElseThrow();
        points.add(new PageDrawing.Weak(p, wide(focus), severity.smallMark(new PaperPoint(0, 0), p.number()), sections.drawn(p), PageSections.isMended(p)));
    }

    private static PaperBox wide(PaperBox b) {
        double dx = Math.max(6, (LEAST_FOCUS - b.width()) / 2), dy = Math.max(6, (LEAST_FOCUS * 0.7 - b.height()) / 2);
        return new PaperBox(b.left() - dx, b.top() - dy, b.right() + dx, b.bottom() + dy);
    }

    private boolean isThere(PageLayer layer) {
        String id = layer.id();
        return layer == PageLayer.WEAK ? !weak.isEmpty()
                : wall.stream().anyMatch(m -> m instanceof Group g && g.data().stream().anyMatch(d -> d.key().equals("layer") && List.of(d.value().split(" ")).contains(id)));
    }

    private boolean isIgnored(PageLayer layer) {
        return evidence.elevation().pieces().stream().anyMatch(p -> PageLayer.of(p.material().kind()) == layer)
                && steps.pieces().stream().noneMatch(p -> PageLayer.of(p.material().kind()) == layer);
    }
}
