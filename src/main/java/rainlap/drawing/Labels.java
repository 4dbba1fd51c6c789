package rainlap.drawing;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import rainlap.check.WeakPoint;
import rainlap.paper.BoundaryLabels;
import rainlap.paper.BoundarySide;
import rainlap.paper.Disc;
import rainlap.paper.Edge;
import rainlap.paper.Group;
import rainlap.paper.Halo;
import rainlap.paper.Mark;
import rainlap.paper.Occupied;
import rainlap.paper.PaperBox;
import rainlap.paper.PaperPoint;
import rainlap.paper.Pen;
import rainlap.paper.Polyline;
import rainlap.paper.SheetCheck;
import rainlap.paper.Tone;

/** Marks round the drawing, with words while they are few, each joined to its place by a leader. */
final class Labels {
    /** With more labels than this, marks stand alone and the words are in the table. */
    static final int WITH_WORDS = 12;
    private static final double GAP = 2;
    /** Least width of a strip at the side, with words and for marks alone; most that words may take. */
    private static final double LEAST_WITH_WORDS = 17;
    private static final double LEAST = 8.5;
    private static final double MOST_BESIDE = 24;

    private final List<Mark> leaders = new ArrayList<>();
    private final List<Mark> marks = new ArrayList<>();
    private final List<Part> parts = new ArrayList<>();
    private final Set<Integer> left = new HashSet<>();
    private final Occupied taken;

    /** One label: its leader, and its mark with words. */
    record Part(WeakPoint point, List<Mark> leader, List<Mark> mark) {}

    private Labels(Occupied taken) {
        this.taken = taken;
    }

    /**
     * @param drawing box of the wall with its folds, on paper
     * @param elevation box that the labels stay in
     * @param obstacles lines along which no leader should run, openings it should go round
     */
    static Labels place(List<WeakPlaces.Drawn> places, PaperBox drawing, PaperBox elevation, Obstacles obstacles, Occupied taken) {
        boolean words = places.size() <= WITH_WORDS;
        BoundaryLabels.Room room = room(drawing, elevation, obstacles, words ? LEAST_WITH_WORDS : LEAST);
        List<LabelText> texts = texts(places, words, room);
        BoundaryLabels.Result result = BoundaryLabels.place(sites(places, texts, drawing), room);
        if (words && !result.unplaced().isEmpty()) {
            room = room(drawing, elevation, obstacles, LEAST);
            texts = texts(places, false, room);
            result = BoundaryLabels.place(sites(places, texts, drawing), room);
        }
        Labels labels = new Labels(taken);
        for (BoundaryLabels.Placed p : result.placed()) {
            labels.add(places.get(p.site()).point(), texts.get(p.site()), p);
        }
        result.unplaced().forEach(i -> labels.left.add(places.get(i).point().number()));
        return labels;
    }

    /** Strips on top, and at the sides where they are wide enough for the labels. */
    private static BoundaryLabels.Room room(PaperBox d, PaperBox elevation, Obstacles obstacles, double least) {
        double foot = Math.max(d.bottom(), d.top() + 20);
        PaperBox top = new PaperBox(Slots.LABELS_LEFT, elevation.top() + 2, elevation.right(), d.top() - GAP);
        Optional<PaperBox> left = d.left() - GAP - Slots.LABELS_LEFT < least ? Optional.empty()
                : Optional.of(new PaperBox(Slots.LABELS_LEFT, d.top() - GAP, d.left() - GAP, foot));
        Optional<PaperBox> right = elevation.right() - d.right() - GAP < least ? Optional.empty()
                : Optional.of(new PaperBox(d.right() + GAP, d.top() - GAP, elevation.right(), foot));
        return new BoundaryLabels.Room(d, Optional.of(top), left, right, obstacles.edges(), obstacles.openings());
    }

    private static List<LabelText> texts(List<WeakPlaces.Drawn> places, boolean words, BoundaryLabels.Room room) {
        double beside = Math.min(MOST_BESIDE, Math.min(room.left().map(PaperBox::width).orElse(MOST_BESIDE),
                room.right().map(PaperBox::width).orElse(MOST_BESIDE)));
        return places.stream().map(p -> words ? LabelText.of(p.point().finding(), beside) : LabelText.NONE).toList();
    }

    private static List<BoundaryLabels.Site> sites(List<WeakPlaces.Drawn> places, List<LabelText> texts, PaperBox drawing) {
        List<BoundaryLabels.Site> out = new ArrayList<>();
        for (int i = 0; i < places.size(); i++) {
            List<PaperPoint> points = places.get(i).sites().stream().map(p -> into(p, drawing)).toList();
            LabelText t = texts.get(i);
            out.add(new BoundaryLabels.Site(points, t.topWidth(), t.topHeight(), Severity.HALF, t.sideWidth(), t.sideHeight()));
        }
        return out;
    }

    private static PaperPoint into(PaperPoint p, PaperBox b) {
        return new PaperPoint(Math.max(b.left(), Math.min(b.right(), p.x())), Math.max(b.top(), Math.min(b.bottom(), p.y())));
    }

    private void add(WeakPoint point, LabelText text, BoundaryLabels.Placed p) {
        List<PaperPoint> path = new ArrayList<>(p.leader());
        PaperBox b = p.box();
        PaperPoint mark = switch (p.side()) {
            case TOP -> new PaperPoint(b.left() + Severity.HALF, b.bottom() - Severity.HALF);
            case LEFT -> new PaperPoint(b.right() - Severity.HALF, b.middle().y());
            case RIGHT -> new PaperPoint(b.left() + Severity.HALF, b.middle().y());
        };
        Polyline line = new Polyline(path, Looks.NARROW);
        PaperPoint site = path.get(path.size() - 1);
        int from = leaders.size();
        leaders.add(Halo.of(line));
        leaders.add(Group.of(List.of(line)).withClass(SheetCheck.LEADER));
        leaders.add(Disc.of(site, 0.75, Tone.INK, Edge.of(Pen.NARROW, Tone.WHITE)));
        taken.add(line);
        taken.add(PaperBox.around(site, 1.5, 1.5));
        List<Mark> out = new ArrayList<>(Severity.of(point.finding().defences()).mark(mark, point.number()));
        out.addAll(text.marks(mark, p.side() == BoundarySide.TOP, p.side() == BoundarySide.LEFT));
        out.forEach(m -> taken.add(m.box()));
        parts.add(new Part(point, List.copyOf(leaders.subList(from, leaders.size())), out));
        marks.add(Group.of("label-" + point.number(), out).withClass(SheetCheck.LABEL).withData("weak", Integer.toString(point.number())));
    }

    /** Numbers of the weak points whose labels found no room. */
    Set<Integer> left() {
        return left;
    }

    List<Part> parts() {
        return List.copyOf(parts);
    }

    Group group() {
        List<Mark> out = new ArrayList<>(leaders);
        out.addAll(marks);
        return Group.of("labels", out);
    }
}
