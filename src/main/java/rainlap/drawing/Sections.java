package rainlap.drawing;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import rainlap.check.WeakPoint;
import rainlap.geom.Point;
import rainlap.mend.Answer;
import rainlap.mend.Mended;
import rainlap.mend.Mending;
import rainlap.paper.Mark;
import rainlap.paper.PaperBox;
import rainlap.rule.Evidence;
import rainlap.rule.Finding;

/**
 * Chooses the weak points to be cut, worst first: as many as fit beside the elevation, further ones on sheets of their own. Each of no or one defence is
 * shown; where neither the plane nor a letter finds room on the elevation, the section says in words where it is. Of those that fail safe as many are shown
 * as there are letters, and none without a plane.
 */
final class Sections {
    /** Beyond so many sections nobody leafs on, and mending each takes its time: the table has the others, and names them. */
    static final int MOST = 120;
    private static final String NO_ROOM = "No mended cut is drawn: there is no room for it on this sheet.";
    /** Two cuts nearer than this and in one direction show the same. */
    private static final long SAME = 60_00;
    private final Evidence evidence;
    private final SectionPlanner planner;
    private final SectionRoom room;
    private final SectionLetters letters = new SectionLetters();
    private final List<Done> done = new ArrayList<>();
    private final Set<Object> closeUps = new HashSet<>();
    /** Numbers of the weak points that some section shows. */
    private final Set<Integer> shown = new TreeSet<>();

    /** A section drawn, and what it was drawn for. */
    private record Done(Finding of, Cut cut) {}

    private Sections(Evidence evidence, SectionRoom room) {
        this.evidence = evidence;
        this.room = room;
        this.planner = new SectionPlanner(evidence);
    }

    /** With room on a further sheet for those that do not fit beside the elevation. */
    static Sections onSheets(Evidence evidence, Slots slots) {
        return new Sections(evidence, new SectionRoom(Optional.of(slots)));
    }

    /** Those that fit beside the elevation, and no others. */
    static Sections besideOnly(Evidence evidence) {
        return new Sections(evidence, new SectionRoom(Optional.empty()));
    }

    SectionRoom room() {
        return room;
    }

    /**
     * Draws sections of an elevation's weak points, and each one's plane on it.
     *
     * @param reached how far to the right the elevation and its labels reach
     */
    void fill(List<WeakPoint> points, SectionPlanes planes, Placing placing, double reached) {
        room.begin(placing.layout().sections(reached));
        points.forEach(p -> add(p, Optional.of(planes), points));
    }

    /** Those of no or one defence that stand on no elevation, on further sheets. */
    void rest(List<WeakPoint> points) {
        room.begin(Optional.empty());
        points.stream().filter(MendedCuts::isAsked).filter(p -> !shown.contains(p.number())).forEach(p -> add(p, Optional.empty(), points));
    }

    private void add(WeakPoint p, Optional<SectionPlanes> planes, List<WeakPoint> points) {
        if (letters.count() == MOST || letters.count() >= SectionLetters.SINGLE && !MendedCuts.isAsked(p)) {
            return;
        }
        Optional<CloseUp> closeUp = CloseUp.of(p, evidence);
        if (closeUp.isPresent()) {
            closeUp(p, closeUp.get(), planes);
        } else {
            cut(p, planner.plan(p, 0.5), planes, points);
        }
    }

    private void cut(WeakPoint p, SectionPlan plan, Optional<SectionPlanes> planes, List<WeakPoint> points) {
        boolean same = done.stream().anyMatch(d -> isSame(d, p, plan.cut()));
        if (!same || MendedCuts.isAsked(p) && !shown.contains(p.number())) {
            section(p, plan, planes, points);
        }
    }

    /** Numbers of those of no or one defence that no section shows. */
    List<Integer> notShown(List<WeakPoint> points) {
        return points.stream().filter(MendedCuts::isAsked).map(WeakPoint::number).filter(n -> !shown.contains(n)).toList();
    }

    /** The same wrong with the same pieces along the same line, or another at the same place, would show the same once more. */
    private static boolean isSame(Done d, WeakPoint p, Cut b) {
        Cut a = d.cut();
        boolean sameLine = a.plumb() == b.plumb() && Math.abs(a.centre() - b.centre()) < SAME;
        return sameLine && (Mending.key(d.of()).equals(Mending.key(p.finding())) || Math.abs(a.across() - b.across()) < SAME);
    }

    /** Others that a section shows too, though its plane does not cross them; it tells their numbers. */
    private List<WeakPoint> alike(Done d, List<WeakPoint> crossed, List<WeakPoint> all) {
        return all.stream().filter(o -> MendedCuts.isAsked(o) && !crossed.contains(o) && !shown.contains(o.number()) && CloseUp.of(o, evidence).isEmpty())
                .filter(o -> isSame(d, o, planner.plan(o, 0.5).cut())).toList();
    }

    private void closeUp(WeakPoint p, CloseUp view, Optional<SectionPlanes> planes) {
        if (closeUps.contains(view.shows())) {
            shown.add(p.number());
            return;
        }
        Optional<String> unmarked = Optional.of(SectionPlan.noRoom(p.finding().where().inWords()));
        if (room.isRoom(false, new CloseUpCell(view, "", unmarked).height(atMost(p)))) {
            shown.add(p.number());
            closeUps.add(view.shows());
            String letter = letters.next();
            boolean marked = planes.filter(on -> on.circle(view, letter)).isPresent();
            CloseUpCell cell = new CloseUpCell(view, letter, marked ? Optional.empty() : unmarked);
            pair(new Pair(view.answer(), false, cell::height, CloseUpCell::height, cell::pairHeight), b -> CloseUpCell.scale(view, b), cell::drawn, cell::pair, cell::mended);
        }
    }

    /** A note that most sections without a mended one have, for what room is looked for before it is known. */
    private static Optional<String> atMost(WeakPoint p) {
        return Optional.of(NO_ROOM).filter(n -> MendedCuts.isAsked(p));
    }

    /**
     * What stands beside or above one another.
     *
     * @param answer empty where nothing is to be mended
     * @param half whether one alone takes half the width, and both stand side by side
     * @param drawn how high the one as drawn stands with its words and a note
     * @param should how high the mended one
     * @param both how high they stand together
     */
    private record Pair(Optional<Answer> answer, boolean half, ToDoubleFunction<Optional<String>> drawn, ToDoubleFunction<Mended> should, ToDoubleFunction<Mended> both) {
        Optional<Mended> mended() {
            return answer.flatMap(Answer::mended);
        }

        Optional<String> note(boolean room) {
            return mended().isPresent() ? room ? Optional.empty() : Optional.of(NO_ROOM) : answer.flatMap(Answer::sentence);
        }
    }

    /** Both together where they fit, else each for itself; without a mended one, or without room for it, the one as drawn says so. */
    private void pair(Pair p, Function<PaperBox, Integer> scale, BiFunction<PaperBox, Optional<String>, Mark> drawn, BiFunction<PaperBox, Mended, Mark> pair,
            BiFunction<PaperBox, Mended, Mark> alone) {
        Optional<Mended> mended = p.mended();
        if (mended.filter(m -> room.isRoom(false, p.both().applyAsDouble(m))).isPresent()) {
            room.add(false, p.both().applyAsDouble(mended.get()), scale, box -> pair.apply(box, mended.get()));
            return;
        }
        boolean onTwo = mended.filter(m -> room.hasFurther(p.half(), p.should().applyAsDouble(m))).isPresent();
        Optional<String> note = p.note(onTwo);
        room.add(p.half() && note.isEmpty(), p.drawn().applyAsDouble(note), scale, box -> drawn.apply(box, note));
        if (onTwo) {
            room.add(p.half(), p.should().applyAsDouble(mended.get()), scale, box -> alone.apply(box, mended.get()));
        }
    }

    private void section(WeakPoint p, SectionPlan middle, Optional<SectionPlanes> planes, List<WeakPoint> all) {
        boolean plumb = middle.cut().plumb();
        if (!room.isRoom(plumb && !MendedCuts.isAsked(p), SectionPair.height(middle.unmarked(""), evidence, atMost(p)))) {
            return;
        }
        Optional<SectionPlan> marked = planes.flatMap(on -> on.place(p, planner, letters.peek()));
        if (marked.isEmpty() && !MendedCuts.isAsked(p)) {
            return;
        }
        String letter = letters.next();
        SectionPlan plan = marked.orElseGet(() -> planner.plans(p, SectionPlanes.SHARES).get(0).unmarked(letter));
        Done now = new Done(p.finding(), plan.cut());
        done.add(now);
        List<WeakPoint> crossed = shown(p, plan.cut(), all), alike = alike(now, crossed, all);
        SectionPlan whole = plan.of(crossed).telling(alike);
        Stream.concat(crossed.stream(), alike.stream()).forEach(o -> shown.add(o.number()));
        Optional<Answer> answer = MendedCuts.of(p, plan.cut(), evidence);
        Pair both = new Pair(answer, plumb, note -> SectionPair.height(whole, evidence, note), m -> SectionPair.height(whole, m), m -> SectionPair.height(whole, evidence, m));
        pair(both, b -> whole.scale(), (box, note) -> SectionView.of(whole, evidence, box, note),
                (box, mended) -> SectionPair.of(whole, evidence, mended, box), (box, mended) -> SectionPair.mended(whole, evidence, mended, box));
    }

    /** The weak point itself and others whose stretch the same plane crosses at the same place. */
    private static List<WeakPoint> shown(WeakPoint p, Cut cut, List<WeakPoint> all) {
        List<WeakPoint> out = new ArrayList<>(List.of(p));
        all.stream().filter(o -> o != p && o.finding().where().surface().isWall() && o.finding().where().isLine())
                .filter(o -> o.finding().where().box().grow(1).contains(cut.at()) && isAcross(o, cut.plumb())).forEach(out::add);
        return out;
    }

    private static boolean isAcross(WeakPoint o, boolean plumb) {
        List<Point> line = o.finding().where().line();
        Point a = line.get(0), b = line.get(line.size() - 1);
        return Math.abs(b.x() - a.x()) >= Math.abs(b.y() - a.y()) == plumb;
    }
}
