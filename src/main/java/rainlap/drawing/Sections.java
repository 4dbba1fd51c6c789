package rainlap.drawing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.function.ToIntFunction;
import java.util.stream.Collectors;
import rainlap.check.WeakPoint;
import rainlap.geom.Point;
import rainlap.joint.OpeningCorner;
import rainlap.mend.Answer;
import rainlap.mend.Mended;
import rainlap.paper.Group;
import rainlap.paper.Mark;
import rainlap.paper.PaperBox;
import rainlap.paper.Text;
import rainlap.rule.Evidence;

/**
 * Chooses the weak points to be cut, worst first: as many as fit beside the elevation, further ones on a sheet of their own. A section whose
 * plane finds no room on the elevation is left out; the table has the weak point all the same.
 */
final class Sections {
    private static final String LETTERS = "ABCDEFGHJKLMNPQRSTUVWXYZ";
    private static final int MOST_BESIDE = 4;
    private static final double HEADING = 10;
    private static final String NO_ROOM = "No mended cut is drawn: there is no room for it on this sheet.";
    /** Two cuts nearer than this and in one direction show the same. */
    private static final long SAME = 60_00;
    private final Evidence evidence;
    private final SectionPlanner planner;
    /** How further sheets are laid out; empty where there are none. */
    private final Optional<Slots> sheets;
    /** Columns of each further sheet. */
    private final List<List<SectionColumn>> further = new ArrayList<>();
    private final List<Done> done = new ArrayList<>();
    private final List<OpeningCorner> corners = new ArrayList<>();
    /** Numbers of the weak points that some section shows. */
    private final Set<Integer> shown = new TreeSet<>();
    private Optional<SectionColumn> beside = Optional.empty();

    /** A section drawn, and the rule it was drawn for. */
    private record Done(String rule, Cut cut) {}

    private final TreeSet<Integer> scalesBeside = new TreeSet<>();
    private final TreeSet<Integer> scalesFurther = new TreeSet<>();
    private int count;
    private int countBeside;

    private Sections(Evidence evidence, Optional<Slots> sheets) {
        this.evidence = evidence;
        this.sheets = sheets;
        this.planner = new SectionPlanner(evidence);
    }

    /** With room on a further sheet for those that do not fit beside the elevation. */
    static Sections onSheets(Evidence evidence, Slots slots) {
        return new Sections(evidence, Optional.of(slots));
    }

    /** Those that fit beside the elevation, and no others. */
    static Sections besideOnly(Evidence evidence) {
        return new Sections(evidence, Optional.empty());
    }

    /**
     * Draws sections of an elevation's weak points, and each one's plane on it.
     *
     * @param reached how far to the right the elevation and its labels reach
     */
    void fill(List<WeakPoint> points, SectionPlanes planes, Placing placing, double reached) {
        beside = placing.layout().sections(reached).map(SectionColumn::new);
        countBeside = 0;
        scalesBeside.clear();
        for (WeakPoint p : points) {
            Optional<OpeningCorner> corner = CornerView.corner(p, evidence);
            if (count == LETTERS.length()) {
                return;
            }
            if (corner.isPresent()) {
                corner(p, corner.get(), planes, placing.view());
            } else {
                planner.plan(p, 0.5).ifPresent(plan -> cut(p, plan, planes, points));
            }
        }
    }

    private void cut(WeakPoint p, SectionPlan plan, SectionPlanes planes, List<WeakPoint> points) {
        if (done.stream().anyMatch(d -> isSame(d, p, plan.cut()))) {
            shown.add(p.number());
        } else {
            section(p, plan.cut().plumb(), planes, points);
        }
    }

    /** Numbers of those of no or one defence that no section shows: a cut across would not, or its plane found no room. */
    List<Integer> notShown(List<WeakPoint> points) {
        return points.stream().filter(p -> p.finding().defences() <= 1).map(WeakPoint::number).filter(n -> !shown.contains(n)).toList();
    }

    /** The same rule along the same line, or another at the same place, would show the same once more. */
    private static boolean isSame(Done d, WeakPoint p, Cut b) {
        Cut a = d.cut();
        boolean sameLine = a.plumb() == b.plumb() && Math.abs(a.centre() - b.centre()) < SAME;
        return sameLine && (d.rule().equals(p.finding().rule()) || Math.abs(a.across() - b.across()) < SAME);
    }

    private boolean isRoom(boolean halfWidth, double height) {
        return isBesideFree(halfWidth, height) || sheets.isPresent() && columns().get(0).fits(halfWidth, height);
    }

    private boolean isBesideFree(boolean halfWidth, double height) {
        return countBeside < MOST_BESIDE && beside.isPresent() && beside.get().fits(halfWidth, height);
    }

    /** Beside the elevation while there is room, then on further sheets, as many as it takes. */
    private SectionColumn column(boolean halfWidth, double height) {
        if (isBesideFree(halfWidth, height)) {
            countBeside++;
            return beside.orElseThrow();
        }
        if (further.isEmpty() || further.get(further.size() - 1).stream().noneMatch(c -> c.fits(halfWidth, height))) {
            further.add(columns());
        }
        return further.get(further.size() - 1).stream().filter(c -> c.fits(halfWidth, height))
                .min(Comparator.comparingDouble(c -> c.reached(halfWidth))).orElseThrow();
    }

    private List<SectionColumn> columns() {
        return sheets.orElseThrow().sections(HEADING).stream().map(SectionColumn::new).toList();
    }

    private void corner(WeakPoint p, OpeningCorner corner, SectionPlanes planes, View view) {
        if (corners.contains(corner)) {
            shown.add(p.number());
            return;
        }
        if (isRoom(false, CornerCell.HEIGHT)) {
            shown.add(p.number());
            String letter = next();
            corners.add(corner);
            PaperBox square = view.box(CornerView.square(corner));
            planes.circle(square.middle(), Math.max(square.width(), square.height()) * 0.8 + 3, letter);
            CornerCell cell = new CornerCell(p, letter, evidence, corner);
            Optional<Answer> answer = MendedCuts.ofCorner(p, evidence);
            ToIntFunction<PaperBox> scale = b -> CornerCell.scale(corner, b);
            pair(new Pair(answer, false, CornerCell.HEIGHT, CornerCell.pairHeight()), scale, cell::drawn, cell::pair, cell::mended);
        }
    }

    /**
     * What stands beside one another.
     *
     * @param answer empty where nothing is to be mended
     * @param half whether one alone takes half the width
     */
    private record Pair(Optional<Answer> answer, boolean half, double single, double both) {
        Optional<Mended> mended() {
            return answer.flatMap(Answer::mended);
        }

        Optional<String> note(boolean room) {
            return mended().isPresent() ? room ? Optional.empty() : Optional.of(NO_ROOM) : answer.flatMap(Answer::sentence);
        }
    }

    /** Both together where they fit, else each for itself; without a mended one, or without room for it, the one as drawn says so. */
    private void pair(Pair p, ToIntFunction<PaperBox> scale, BiFunction<PaperBox, Optional<String>, Mark> drawn, BiFunction<PaperBox, Mended, Mark> pair,
            BiFunction<PaperBox, Mended, Mark> alone) {
        if (p.mended().isPresent() && isRoom(false, p.both())) {
            add(false, p.both(), scale, box -> pair.apply(box, p.mended().get()));
            return;
        }
        boolean room = p.mended().isPresent() && sheets.isPresent();
        add(p.half() && p.note(room).isEmpty(), p.single(), scale, box -> drawn.apply(box, p.note(room)));
        if (room) {
            add(p.half(), p.single(), scale, box -> alone.apply(box, p.mended().get()));
        }
    }

    private void add(boolean half, double height, ToIntFunction<PaperBox> scale, Function<PaperBox, Mark> mark) {
        SectionColumn column = column(half, height);
        PaperBox box = column.take(half, height);
        note(column, scale.applyAsInt(box));
        column.add(mark.apply(box));
    }

    private void section(WeakPoint p, boolean plumb, SectionPlanes planes, List<WeakPoint> all) {
        double single = plumb ? SectionView.PLUMB_HEIGHT : SectionView.LEVEL_HEIGHT;
        if (!isRoom(plumb && !MendedCuts.isAsked(p), single)) {
            return;
        }
        Optional<SectionPlan> plan = planes.place(p, planner, LETTERS.substring(count, count + 1));
        if (plan.isEmpty()) {
            return;
        }
        next();
        Cut cut = plan.get().cut();
        done.add(new Done(p.finding().rule(), cut));
        SectionPlan shown = plan.get().of(shown(p, cut, all));
        shown.points().forEach(o -> this.shown.add(o.number()));
        Optional<Answer> answer = MendedCuts.of(p, cut, evidence);
        pair(new Pair(answer, plumb, single, SectionPair.height(plumb)), b -> shown.scale(), (box, note) -> SectionView.of(shown, evidence, box, note),
                (box, mended) -> SectionPair.of(shown, evidence, mended, box), (box, mended) -> SectionPair.mended(shown, evidence, mended, box));
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

    private String next() {
        return LETTERS.substring(count, ++count);
    }

    private void note(SectionColumn column, int scale) {
        (beside.filter(b -> b == column).isPresent() ? scalesBeside : scalesFurther).add(scale);
    }

    /** The scales of those beside the last elevation: {@code 1:5, 1:10}, or nothing. */
    String scalesBeside() {
        return words(scalesBeside);
    }

    String scalesFurther() {
        return words(scalesFurther);
    }

    private static String words(TreeSet<Integer> scales) {
        return scales.stream().map(s -> "1:" + s).collect(Collectors.joining(", "));
    }

    boolean isBeside() {
        return beside.filter(b -> !b.isEmpty()).isPresent();
    }

    /** What stands beside the last elevation. */
    Group takeBeside() {
        return Group.of("sections", beside.map(SectionColumn::marks).orElse(List.of()));
    }

    /** What found no room beside the elevations, sheet by sheet. */
    List<Group> further() {
        return further.stream().map(columns -> {
            PaperBox heading = sheets.orElseThrow().full();
            List<Mark> out = new ArrayList<>(List.of(Text.of(heading.left(), heading.top() + 4, "Sections, worst first", Looks.TITLE)));
            columns.forEach(c -> out.addAll(c.marks()));
            return Group.of("further-sections", out);
        }).toList();
    }
}
