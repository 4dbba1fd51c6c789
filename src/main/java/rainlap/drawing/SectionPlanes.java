package rainlap.drawing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import rainlap.check.WeakPoint;
import rainlap.paper.Area;
import rainlap.paper.Group;
import rainlap.paper.Halo;
import rainlap.paper.Mark;
import rainlap.paper.Occupied;
import rainlap.paper.PaperBox;
import rainlap.paper.PaperPoint;
import rainlap.paper.PaperSegment;
import rainlap.paper.Polyline;
import rainlap.paper.SheetCheck;
import rainlap.paper.Text;
import rainlap.paper.TextStyle;
import rainlap.paper.Tone;

/** Planes of sections on the elevation: heavy ends, arrows in the viewing direction, letters; a circle round a corner shown apart. */
final class SectionPlanes {
    static final double[] SHARES = {0.5, 0.35, 0.65, 0.25, 0.75, 0.15, 0.85, 0.42, 0.58, 0.08, 0.92, 0.02, 0.98};
    /** Half lengths of a plane, printed mm: the first that finds room. */
    private static final double[] LEAST_HALVES = {6.5, 4.5};
    /** Of what fails safe a plane that stands clear of others is worth more than one that meets the water, printed mm. */
    private static final double[] ROOMY_FIRST = {3, 0};
    private static final double LONGEST_HALF = 9;
    private static final double ARM = 3.6;
    private static final double APART = 5;
    /** How far off its place the leader of a letter alone may end, so that it stops short of what is drawn there, and how much further the letter stands, printed mm. */
    private static final double[] CLEAR = {1.2, 2.4, 3.6, 4.8, 7, 9};
    private static final double[] AWAY = {5, 7, 10, 14};
    private static final int ANGLES = 16;
    private static final double GAP = 0.7;
    /** The room kept round a weak stretch, which is drawn later, reaches so far past the ends of its bars. */
    private static final double HALO = 0.4;
    private static final TextStyle LETTER = TextStyle.of(3.5).bold().middle();
    private final View view;
    private final Occupied taken;
    private final PaperBox drawing;
    private final List<Mark> out = new ArrayList<>();
    private final List<CloseUp.Circle> circles = new ArrayList<>();
    private Occupied words = new Occupied();

    SectionPlanes(View view, Occupied taken, PaperBox drawing) {
        this.view = view;
        this.taken = taken;
        this.drawing = drawing;
    }

    /** @param written before; later words find their places among the circles and are painted over them */
    void keepCirclesOff(Occupied written) {
        words = written;
    }

    /** Chooses where along its weak stretch a section cuts, so that it meets the water and its plane stands clear, and draws the plane; empty without room. */
    Optional<SectionPlan> place(WeakPoint p, SectionPlanner planner, String letter) {
        List<SectionPlan> plans = planner.plans(p, SHARES);
        plans.sort(Comparator.comparingLong(SectionPlanes::shortest));
        double[] clearances = p.finding().defences() > 1 ? ROOMY_FIRST : new double[] {0};
        for (double clear : clearances) {
            for (double half : LEAST_HALVES) {
                Optional<SectionPlan> drawn = plans.stream().filter(plan -> draw(plan, letter, half, clear)).findFirst();
                if (drawn.isPresent()) {
                    return drawn.map(plan -> plan.marked(letter));
                }
            }
        }
        return MendedCuts.isAsked(p) ? plans.stream().filter(plan -> lettered(view.at(plan.cut().at()), letter)).findFirst().map(plan -> plan.marked(letter)) : Optional.empty();
    }

    /** A letter near a place with a leader to it, where the plane itself finds no room: the nearest that is free, and its leader's end as near as can be. */
    private boolean lettered(PaperPoint at, String letter) {
        for (double away : AWAY) {
            for (double clear : CLEAR) {
                for (int i = 0; i < ANGLES; i++) {
                    double a = 2 * Math.PI * (i + 0.5) / ANGLES;
                    if (lettered(at, Math.cos(a), Math.sin(a), clear, clear + away, letter)) {
                        return true;
                    }
                }
            }
        }
        return false;
    }

    private boolean lettered(PaperPoint at, double ux, double uy, double clear, double away, String letter) {
        Text text = Text.centred(at.plus(away * ux, away * uy), letter, LETTER);
        PaperPoint tip = at.plus(clear * ux, clear * uy);
        PaperSegment leader = new PaperSegment(nearest(text.box().grown(GAP), tip), tip);
        Area head = Symbols.arrowHead(tip, -ux, -uy);
        if (!drawing.holds(text.box()) || !Stream.of(text.box().grown(HALO), head.box()).allMatch(taken::isFree) || !taken.isFree(leader)) {
            return false;
        }
        Polyline line = Polyline.of(Looks.NARROW, leader.from(), leader.to());
        taken.add(text.box());
        taken.add(head.box());
        taken.add(line);
        out.add(new Halo(line, Tone.WHITE, 0.9));
        out.add(Group.of(List.of(line)).withClass(SheetCheck.LEADER));
        out.add(head);
        out.addAll(Symbols.haloed(text, Tone.WHITE));
        return true;
    }

    /** Where the length that is short varies, the shortest comes first; whole millimetres. */
    private static long shortest(SectionPlan plan) {
        return plan.gauge().map(g -> g.measured() / 100).orElse(0L);
    }

    private boolean draw(SectionPlan plan, String letter, double least, double clear) {
        Cut cut = plan.cut();
        PaperPoint at = view.at(cut.at());
        double half = Math.max(least, Math.min(LONGEST_HALF, view.length(cut.length()) / 2));
        PaperPoint a = cut.plumb() ? at.plus(0, -half) : at.plus(-half, 0), b = cut.plumb() ? at.plus(0, half) : at.plus(half, 0);
        Text first = letter(a, cut.plumb(), true, letter), second = letter(b, cut.plumb(), false, letter);
        PaperBox ends = PaperBox.of(List.of(a, b)).grown(0.2);
        List<PaperBox> boxes = List.of(first.box().grown(HALO), second.box().grown(HALO), arm(a, cut.plumb()), arm(b, cut.plumb()));
        if (!drawing.holds(ends) || !boxes.stream().allMatch(x -> drawing.holds(x) && taken.isFree(x.grown(clear)))) {
            return false;
        }
        boxes.forEach(taken::add);
        taken.add(Polyline.of(Looks.CENTRE, a, b));
        end(a, b, cut.plumb());
        end(b, a, cut.plumb());
        out.add(0, Polyline.of(Looks.CENTRE, a, b));
        out.addAll(Symbols.haloed(first, Tone.WHITE));
        out.addAll(Symbols.haloed(second, Tone.WHITE));
        return true;
    }

    private static PaperBox arm(PaperPoint p, boolean plumb) {
        PaperPoint tip = plumb ? p.plus(-ARM - 0.6, 0) : p.plus(0, ARM + 0.6);
        return PaperBox.of(List.of(p, tip)).grown(0.6);
    }

    private static Text letter(PaperPoint end, boolean plumb, boolean first, String letter) {
        PaperPoint at = plumb ? end.plus(-2.4, first ? -3.2 : 3.2) : end.plus(first ? -2.6 : 2.6, 2.6);
        return Text.centred(at, letter, LETTER);
    }

    private void end(PaperPoint end, PaperPoint other, boolean plumb) {
        double l = end.distance(other);
        out.add(Polyline.of(Looks.WIDE, end, end.towards(other, 3.2 / l)));
        PaperPoint tip = plumb ? end.plus(-ARM - 0.6, 0) : end.plus(0, ARM + 0.6);
        out.add(Polyline.of(Looks.NARROW, end, plumb ? end.plus(-ARM, 0) : end.plus(0, ARM)));
        out.add(Symbols.arrowHead(tip, plumb ? -1 : 0, plumb ? 0 : 1));
    }

    private static PaperPoint nearest(PaperBox b, PaperPoint p) {
        return new PaperPoint(Math.max(b.left(), Math.min(b.right(), p.x())), Math.max(b.top(), Math.min(b.bottom(), p.y())));
    }

    /** A circle with its letter round a place that is drawn apart; false where the letter finds no room. A circle that would run through words is left away for a leader. */
    boolean circle(CloseUp place, String letter) {
        CloseUp.Circle c = place.circle(view);
        return circle(c.middle(), c.radius(), letter);
    }

    /** The letter nearer to no other circle, where there is room. */
    boolean circle(PaperPoint middle, double radius, String letter) {
        List<Text> free = new ArrayList<>();
        for (double angle : new double[] {-45, 45, -135, 135, 0, 180, -90, 90}) {
            double a = Math.toRadians(angle), away = radius + 2.6;
            Text t = Text.centred(middle.plus(away * Math.cos(a), away * Math.sin(a)), letter, LETTER);
            if (drawing.holds(t.box()) && taken.isFree(t.box())) {
                free.add(t);
            }
        }
        Optional<Text> best = free.stream().filter(t -> circles.stream().noneMatch(c -> t.box().middle().distance(c.middle()) < c.radius() + APART)).findFirst()
                .or(() -> free.stream().findFirst());
        CloseUp.Circle circle = new CloseUp.Circle(middle, radius);
        if (best.isEmpty() || !drawing.holds(PaperBox.around(middle, 2 * radius, 2 * radius)) || !circle.line().segments().stream().allMatch(words::isFree)) {
            return lettered(middle, letter);
        }
        taken.add(best.get().box());
        out.addAll(Symbols.haloed(best.get(), Tone.WHITE));
        circles.add(circle);
        return true;
    }

    boolean isEmpty() {
        return out.isEmpty();
    }

    /** Planes, and the letters of circles too. */
    Group group() {
        return Group.of("section-planes", out);
    }

    /** For words that are to leave the circles whole. */
    Occupied lines() {
        Occupied out = new Occupied();
        circles.forEach(c -> out.add(c.line()));
        return out;
    }

    /** The circles alone, if there are any: beneath all words, so that they run through none, for a broken circle can still be told and a word struck out cannot. */
    Optional<Group> circles() {
        return Optional.of(Group.of("circles", circles.stream().map(CloseUp.Circle::ring).toList())).filter(g -> !g.marks().isEmpty());
    }
}
