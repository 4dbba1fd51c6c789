package rainlap.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rainlap.check.WeakPoint;
import rainlap.geom.Point;
import rainlap.paper.Group;
import rainlap.paper.Mark;
import rainlap.paper.PaperBox;
import rainlap.paper.Polyline;
import rainlap.rule.Evidence;

/** Chooses the weak points to be cut, worst first, and sets their sections out in the slot. */
final class SectionsSlot {
    private static final String LETTERS = "ABCDEFGHJKLMNPQRSTUVWXYZ";
    private static final int MOST = 4;
    /** Two cuts nearer than this and in one direction show the same. */
    private static final long SAME = 60_00;
    private static final double GAP = 3;
    private final Evidence evidence;
    private final PaperBox slot;
    private final List<Mark> out = new ArrayList<>();
    private final List<Cut> cuts = new ArrayList<>();
    private double top;
    private Optional<PaperBox> half = Optional.empty();
    private int count;

    SectionsSlot(Evidence evidence, PaperBox slot) {
        this.evidence = evidence;
        this.slot = slot;
        this.top = slot.top();
    }

    /** Draws what fits, and each one's plane on the elevation. */
    void fill(List<WeakPoint> points, SectionPlanes planes, View view) {
        SectionPlanner planner = new SectionPlanner(evidence);
        for (WeakPoint p : points) {
            if (count == MOST) {
                return;
            }
            Optional<SectionPlan> plan = planner.plan(p, 0.5);
            if (SectionPlanes.isCorner(p, evidence)) {
                corner(p, planes, view);
            } else if (plan.isPresent() && cuts.stream().noneMatch(c -> isSame(c, plan.get().cut()))) {
                section(p, plan.get(), planner, planes, points);
            }
        }
    }

    private static boolean isSame(Cut a, Cut b) {
        return a.plumb() == b.plumb() && Math.abs(a.at().x() - b.at().x()) < SAME && Math.abs(a.at().y() - b.at().y()) < SAME;
    }

    private void corner(WeakPoint p, SectionPlanes planes, View view) {
        Optional<PaperBox> cell = cell(false, CornerView.HEIGHT);
        if (cell.isPresent()) {
            String letter = next();
            PaperBox square = view.box(CornerView.square(CornerView.corner(p, evidence).orElseThrow()));
            planes.circle(square.middle(), Math.max(square.width(), square.height()) * 0.8 + 3, letter);
            out.add(CornerView.of(p, letter, evidence, cell.get()));
        }
    }

    private void section(WeakPoint p, SectionPlan wanted, SectionPlanner planner, SectionPlanes planes, List<WeakPoint> all) {
        boolean plumb = wanted.cut().plumb();
        Optional<PaperBox> cell = cell(plumb, plumb ? SectionView.PLUMB_HEIGHT : SectionView.LEVEL_HEIGHT);
        if (cell.isPresent()) {
            SectionPlan plan = planes.place(p, planner, next());
            cuts.add(wanted.cut());
            cuts.add(plan.cut());
            out.add(SectionView.of(new SectionPlan(plan.letter(), shown(p, plan.cut(), all), plan.cut(), plan.scale(), plan.gauge()), evidence,
                    cell.get()));
        }
    }

    /** The weak point itself and others whose stretch the same plane crosses at the same place. */
    private static List<WeakPoint> shown(WeakPoint p, Cut cut, List<WeakPoint> all) {
        List<WeakPoint> out = new ArrayList<>(List.of(p));
        all.stream().filter(o -> o != p && o.finding().where().surface().isWall() && o.finding().where().isLine())
                .filter(o -> o.finding().where().box().grow(1).contains(cut.at()) && isAcross(o, cut.plumb())).forEach(out::add);
        return out;
    }

    private static boolean isAcross(WeakPoint o, boolean plumb) {
        Point a = o.finding().where().line().get(0), b = o.finding().where().line().get(o.finding().where().line().size() - 1);
        return Math.abs(b.x() - a.x()) >= Math.abs(b.y() - a.y()) == plumb;
    }

    private String next() {
        return LETTERS.substring(count, ++count);
    }

    /** Two plumb sections share a row; others take the whole width. */
    private Optional<PaperBox> cell(boolean halfWidth, double height) {
        double width = (slot.width() - GAP) / 2;
        if (halfWidth && half.isPresent()) {
            PaperBox free = half.get();
            half = Optional.empty();
            return Optional.of(free);
        }
        if (top + height > slot.bottom() + 0.01) {
            return Optional.empty();
        }
        if (top > slot.top()) {
            out.add(Polyline.line(slot.left(), top - 0.6, slot.right(), top - 0.6, Looks.RULE));
        }
        PaperBox row = new PaperBox(slot.left(), top, slot.right(), top + height);
        top += height + 1;
        if (halfWidth) {
            half = Optional.of(new PaperBox(row.right() - width, row.top(), row.right(), row.bottom()));
            return Optional.of(new PaperBox(row.left(), row.top(), row.left() + width, row.bottom()));
        }
        return Optional.of(row);
    }

    boolean isEmpty() {
        return count == 0;
    }

    Group group() {
        return Group.of("sections", out);
    }
}
