package rainlap.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import rainlap.check.WeakPoint;
import rainlap.geom.Region;
import rainlap.paper.Area;
import rainlap.paper.Clip;
import rainlap.paper.Group;
import rainlap.paper.Mark;
import rainlap.paper.Occupied;
import rainlap.paper.PaperBox;
import rainlap.paper.PaperPoint;
import rainlap.paper.PaperRegion;
import rainlap.paper.Polyline;
import rainlap.rule.Evidence;

/** The elevation in its slot: layers from the sheets outwards, then what is written on and round it. */
final class ElevationView {
    private final Evidence evidence;
    private final WetPlaces wet;
    private final Bay bay;
    private final View view;
    private final PaperBox drawn;
    private final Visibility visibility;
    private final Obstacles obstacles;
    private final Occupied taken = new Occupied();
    private final List<WeakPlaces.Drawn> places;
    private final Labels labels;
    private final List<String> unnamed = new ArrayList<>();
    private final Set<String> named = new TreeSet<>();
    private final SectionPlanes planes;
    private final MatchLines matches;

    /** Places the marks of some weak points round a bay of the wall. */
    ElevationView(Evidence evidence, WetPlaces wet, Bay bay, List<WeakPoint> shown) {
        this.evidence = evidence;
        this.wet = wet;
        this.bay = bay;
        this.view = bay.placing().view();
        this.drawn = view.box(bay.extents().sheets());
        this.visibility = new Visibility(evidence.stack());
        this.obstacles = new Obstacles(evidence, visibility, view);
        this.places = new WeakPlaces(view, drawn).draw(shown, taken);
        this.labels = Labels.place(places, drawn, bay.placing().layout().elevation(), obstacles, taken);
        this.planes = new SectionPlanes(view, taken, shown());
        this.matches = new MatchLines(bay, view, drawn);
        matches.take(taken);
    }

    /** Whether planes of sections stand on it; known once {@link #marks} has been asked. */
    boolean hasPlanes() {
        return !planes.isEmpty();
    }

    /** Numbers of the weak points whose marks found no room. */
    Set<Integer> left() {
        return labels.left();
    }

    /** Pieces whose names found no room; known once {@link #marks} has been asked. */
    List<String> unnamed() {
        return List.copyOf(unnamed);
    }

    Set<String> named() {
        return named;
    }

    /** The elevation; the sections of its worst weak points go into a slot and put their planes on it. */
    Group marks(Sections sections) {
        List<Mark> out = new ArrayList<>(clipped(layers()));
        bay.extents().ground().ifPresent(g -> {
            out.add(ViewTitle.ground(drawn.left() - 4, drawn.right() + 4, view.y(g)));
            taken.add(new PaperBox(drawn.left() - 4, view.y(g) - 0.4, drawn.right() + 4, view.y(g) + 1.9));
        });
        AbutmentMarks abutting = new AbutmentMarks(evidence.elevation().outline().abutting(), view);
        if (!abutting.isEmpty()) {
            out.addAll(clipped(List.of(abutting.lines(taken))));
        }
        boolean onSheet = bay.placing().layout() != Slots.Layout.PICTURE;
        if (onSheet) {
            out.add(new Levels(view, bay.placing().layout().elevation(), bay.placing().layout().size().height() / 2, taken).marks(evidence));
        }
        out.add(new Dimensions(bay.placing(), taken).marks(evidence.elevation(), bay));
        if (!bay.isWhole()) {
            out.add(matches.marks(new Room(taken, obstacles.toText(false), bay.placing().layout().elevation())));
        }
        if (onSheet) {
            out.add(ViewTitle.marks(evidence.elevation().name(), bay.suffix(), evidence.stage().word() + " stage, scale 1:" + view.scale(),
                    view.scale(), title(), bay.placing().layout().isNarrow()));
        }
        planes.keepCirclesOff(Occupied.byTexts(Stream.concat(out.stream(), Stream.of(labels.group())).toList()));
        sections.fill(places.stream().map(WeakPlaces.Drawn::point).toList(), planes, bay.placing(), reached());
        List<Mark> written = new ArrayList<>(out);
        written.addAll(List.of(planes.group(), labels.group()));
        ElevationWays ways = new ElevationWays(evidence, view, drawn, written);
        Group water = Group.of("water", clipped(ways.draw(places.stream().map(WeakPlaces.Drawn::point).toList(), taken))).withClass("layer");
        if (!onSheet && sections.room().isBeside()) {
            taken.add(sections.room().takeBeside().box());
        }
        Occupied lines = planes.lines();
        Room room = new Room(taken, obstacles.toText(false), shown(), lines);
        Names names = new Names(evidence, visibility, view, room, bay.extents().sheets());
        planes.circles().ifPresent(out::add);
        out.add(names.marks());
        Room notes = new Room(taken, obstacles.toText(true), drawn.grown(-0.8), lines);
        out.add(new LapFigures(view, notes, LapFigures.dashes(out)).marks(evidence));
        out.add(new FoldNotes(view, notes).marks(evidence));
        if (!abutting.isEmpty()) {
            out.add(abutting.words(room));
        }
        unnamed.addAll(names.unnamed());
        named.addAll(names.named());
        out.addAll(clipped(List.of(WeakPlaces.areas(places))));
        out.add(water);
        out.add(planes.group());
        out.addAll(clipped(List.of(WeakPlaces.stretches(places))));
        out.add(labels.group());
        return Group.of("elevation", out);
    }

    /** Under the left end of the ground, as far as there is room to the right of it. */
    private PaperPoint title() {
        PaperBox elevation = bay.placing().layout().elevation();
        double right = Math.max(elevation.left() + 2, elevation.right() - ViewTitle.WIDTH);
        return new PaperPoint(Math.min(right, drawn.left() - 4), bay.placing().title(bay.extents()));
    }

    private double reached() {
        Group beside = labels.group();
        return beside.marks().isEmpty() ? drawn.right() : Math.max(drawn.right(), beside.box().right());
    }

    /** Where names may stand. */
    private PaperBox shown() {
        return bay.isWhole() ? bay.placing().layout().elevation() : drawn;
    }

    private List<Mark> layers() {
        Region outline = evidence.elevation().outline().region();
        PieceMarks pieces = new PieceMarks(visibility, view, outline);
        LapBands laps = new LapBands(evidence, visibility, view);
        List<Mark> strips = new ArrayList<>(pieces.ofRank(1));
        strips.addAll(pieces.edgesUnderTape());
        OpeningMarks openings = new OpeningMarks(evidence, visibility, laps, view);
        strips.addAll(openings.edges());
        WetFrame frame = new WetFrame(evidence, wet, view);
        return List.of(layer("sheets", pieces.ofRank(0)), layer("wet-wall", frame.onWall()), layer("laps", laps.onWall()),
                layer("openings", openings.all()), layer("wet-reveals", frame.onReveals()), layer("tapes", strips),
                layer("flashings", pieces.ofRank(2)), layer("battens", pieces.ofRank(3)), layer("cladding", pieces.ofRank(4)),
                layer("trims", pieces.ofRank(5)), layer("penetrations", PenetrationMarks.of(evidence.elevation(), view)),
                layer("wall", List.of(Area.edged(view.region(outline), Looks.OUTLINE))));
    }

    private static Group layer(String id, List<Mark> marks) {
        return Group.of(id, marks).withClass("layer");
    }

    /** A bay shows what lies between its cuts, which are drawn as lines of cut-off parts. */
    private List<Mark> clipped(List<Mark> marks) {
        if (bay.isWhole()) {
            return marks;
        }
        PaperBox window = new PaperBox(drawn.left(), drawn.top() - 3, drawn.right(), drawn.bottom() + 3);
        return List.of(new Clip(PaperRegion.of(window), Within.window(marks, window)),
                Polyline.line(drawn.left(), drawn.top(), drawn.left(), drawn.bottom(), Looks.FLAT),
                Polyline.line(drawn.right(), drawn.top(), drawn.right(), drawn.bottom(), Looks.FLAT));
    }
}
