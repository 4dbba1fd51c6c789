package rainlap.drawing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import rainlap.paper.Disc;
import rainlap.paper.Group;
import rainlap.paper.Mark;
import rainlap.paper.Occupied;
import rainlap.paper.PaperBox;
import rainlap.paper.PaperPoint;
import rainlap.paper.PaperSegment;
import rainlap.paper.Polyline;
import rainlap.paper.Text;
import rainlap.paper.TextMetrics;
import rainlap.paper.Tone;
import rainlap.rule.Evidence;
import rainlap.rule.Finding;
import rainlap.wall.Stage;
import rainlap.water.Arrival;

/** One section in its cell: the stack along a cut, dimensioned and named. */
final class SectionView {
    static final double PLUMB_HEIGHT = 77;
    static final double LEVEL_HEIGHT = 48;
    private static final double DEPTH = 8;
    private static final double DEEPEST = 20;
    private static final double NAME_PITCH = 4.3;
    /** Width of the words beside a level cut, and what the cut itself must have in a narrow column. */
    private static final double BESIDE = 34;
    private static final double LEVEL_FIELD = 54;
    private static final String NOT_HERE = "Water gets in beside this cut.";
    private static final String TRAPPED = "trapped-water";
    private final SectionPlan plan;
    private final CutStack stack;
    private final boolean withFace;
    private final PaperBox cell;
    private final PaperBox field;
    private final SectionGrid grid;
    private final SectionStrands strands;
    private final SectionWater water;
    private final SectionPipes pipes;
    private final Occupied taken = new Occupied();
    private final Occupied drawn = new Occupied();
    private final List<Mark> out = new ArrayList<>();

    private SectionView(SectionPlan plan, Evidence evidence, PaperBox cell) {
        this.plan = plan;
        this.cell = cell;
        this.withFace = SectionPlanner.isBeyondTheWrap(plan.first().finding(), evidence);
        this.stack = CutStack.of(evidence, plan.cut(), withFace);
        boolean plumb = plan.cut().plumb();
        this.field = plumb
                ? new PaperBox(cell.left(), cell.top() + SectionCell.HEAD + 1, cell.right(), cell.top() + SectionCell.HEAD + 44)
                : new PaperBox(cell.left(), cell.top() + SectionCell.HEAD + 1, cell.right() - beside() - 3, cell.bottom());
        double depth = depth();
        double centre = (plan.cut().from() + plan.cut().to()) / 2.0;
        this.grid = plumb ? new SectionGrid(true, plan.scale(), field.right() - depth - 1.5, field.middle().y(), centre)
                : new SectionGrid(false, plan.scale(), field.top() + 1.2 + Math.min(depth, legs() ? depth : 5), field.middle().x(), centre);
        double deep = plumb || legs() ? depth : 5;
        this.strands = new SectionStrands(stack, grid, deep);
        this.water = new SectionWater(evidence, stack, grid, strands, deep);
        this.pipes = new SectionPipes(evidence, stack, grid, strands.furthest(), deep);
    }

    static Group of(SectionPlan plan, Evidence evidence, PaperBox cell) {
        SectionView view = new SectionView(plan, evidence, cell);
        view.draw(evidence);
        return Group.of("section-" + plan.letter(), view.out).withData("weak", Integer.toString(plan.first().number()));
    }

    /** The cut alone, for where head and words are set beside it. */
    static SectionPicture picture(SectionPlan plan, Evidence evidence) {
        boolean plumb = plan.cut().plumb();
        double width = plumb ? Slots.SECTIONS.width() / 2 - 1.5 : Slots.SECTIONS.width();
        SectionView view = new SectionView(plan, evidence, PaperBox.ofSize(0, 0, width, plumb ? PLUMB_HEIGHT : LEVEL_HEIGHT));
        view.drawCut(evidence);
        return new SectionPicture(view.out, view.scale(evidence) + (plumb ? "" : ", seen from above"));
    }

    private double beside() {
        return Math.min(BESIDE, cell.width() - 3 - LEVEL_FIELD);
    }

    private boolean legs() {
        return stack.low().isPresent() || stack.high().isPresent();
    }

    /** As deep as what is turned inwards, within the room there is. */
    private double depth() {
        double longest = 0;
        for (CutStack.Strand s : stack.strands()) {
            for (CutStack.Step step : s.lowLeg()) {
                longest = Math.max(longest, step.to());
            }
            for (CutStack.Step step : s.highLeg()) {
                longest = Math.max(longest, step.to());
            }
        }
        double asked = plan.gauge().filter(g -> g.sign() == 0).map(g -> (double) Math.max(g.asked(), g.measured())).orElse(0.0);
        double wanted = Math.max(longest, asked) / 100 / plan.scale() + 3;
        return Math.max(DEPTH, Math.min(plan.cut().plumb() ? DEEPEST : 16, legs() ? wanted : DEPTH));
    }

    private void draw(Evidence evidence) {
        String from = plan.cut().plumb() ? "" : ", seen from above";
        out.addAll(SectionCell.head(cell, plan.letter() + "–" + plan.letter(), SectionCell.title(plan.first().finding()) + from,
                scale(evidence), plan.points()));
        Optional<WaterSigns.Way> way = drawCut(evidence);
        words(way.isEmpty() && !plan.first().finding().path().isEmpty());
    }

    private String scale(Evidence evidence) {
        String wrap = evidence.stage() == Stage.WRAP || withFace ? "" : ", wrap only";
        return "1:" + plan.scale() + ", thickness × " + LabelText.number(50.0 / plan.scale()) + wrap;
    }

    /** Draws everything but the head and the words; gives the water's way, if it shows. */
    private Optional<WaterSigns.Way> drawCut(Evidence evidence) {
        out.addAll(strands.frame());
        out.addAll(strands.marks());
        out.addAll(pipes.marks());
        pipes.marks().forEach(m -> drawn.add(m.box()));
        Optional<WaterSigns.Way> alongPipe = pipes.way(plan.first().finding());
        alongPipe.ifPresent(w -> out.add(pipes.gap(plan.first().finding())));
        Optional<WaterSigns.Way> way = alongPipe.or(() -> wayIn(evidence));
        way.ifPresent(this::way);
        stack.strands().forEach(s -> strands.paths(s).forEach(path -> drawn.add(new Polyline(path, Looks.WIDE))));
        SectionGauges gauges = new SectionGauges(plan, stack, grid, strands.furthest(), new SectionGauges.Room(field, taken, drawn));
        gauges.marks(out);
        water.lift().ifPresent(l -> gauges.driven(l, out));
        names();
        outside();
        return way;
    }

    /** @param elsewhere whether water gets in, but nowhere in this plane */
    private void words(boolean elsewhere) {
        boolean plumb = plan.cut().plumb();
        double width = plumb ? cell.width() : beside();
        List<String> note = elsewhere ? TextMetrics.wrap(NOT_HERE, width, Looks.PLAIN) : List.of();
        List<String> lines = new ArrayList<>(SectionCell.sentence(plan.first().finding(), width, (plumb ? 4 : 8) - note.size()));
        lines.addAll(note);
        out.addAll(plumb ? SectionCell.text(lines, cell.left(), field.bottom() + 5) : SectionCell.text(lines, field.right() + 3, field.top() + 4));
    }

    private Optional<WaterSigns.Way> wayIn(Evidence evidence) {
        Finding f = plan.first().finding();
        if (f.rule().equals(TRAPPED)) {
            return water.standing(f);
        }
        List<Arrival> ways = new WaysIn(evidence).through(plan.first());
        return ways.isEmpty() && WaysIn.isRainOnFrame(f) ? water.bare() : water.find(ways);
    }

    private void way(WaterSigns.Way way) {
        drawn.add(new Polyline(way.points(), Looks.WIDE));
        out.add(WaterSigns.named(way, WaterSigns.way(way, SectionWater.PITCH, false)));
    }

    private void outside() {
        boolean plumb = plan.cut().plumb();
        for (double share : new double[] {0.5, 0.7, 0.3, 0.85, 0.15, 0.95, 0.05}) {
            Text t = plumb ? Text.of(cell.left(), field.top() + share * field.height(), "outside", Looks.SECOND)
                    : Text.of(field.right() - 4, Math.min(grid.face() + strands.furthest() + 5 + 12 * share, cell.bottom() - 1), "outside", Looks.SECOND.end());
            if (taken.isFree(t.box()) && drawn.isFree(t.box()) && t.box().right() < (plumb ? grid.face() - strands.furthest() - 1 : cell.right())) {
                taken.add(t.box());
                out.add(t);
                return;
            }
        }
    }

    /** A piece's name and the point of it that the leader meets. */
    private record Named(String name, List<PaperPoint> anchors) {
        PaperPoint at() {
            return anchors.get(0);
        }
    }

    private void names() {
        List<Named> all = new ArrayList<>();
        for (CutStack.Strand s : stack.strands()) {
            List<PaperPoint> path = strands.paths(s).stream().max(Comparator.comparingDouble(SectionView::length)).orElseThrow();
            List<PaperPoint> anchors = anchors(s, path), seen = anchors.stream().filter(a -> !pipes.hide(a)).toList();
            all.add(new Named(s.piece().id(), seen.isEmpty() ? anchors : seen));
        }
        boolean plumb = plan.cut().plumb();
        all.sort(Comparator.comparingDouble(n -> plumb ? n.at().y() : n.at().x()));
        all.forEach(plumb ? this::nameLeft : this::nameBelow);
    }

    private static double length(List<PaperPoint> path) {
        double sum = 0;
        for (int i = 0; i + 1 < path.size(); i++) {
            sum += path.get(i).distance(path.get(i + 1));
        }
        return sum;
    }

    /** Places on the longest stretch over which nothing else lies, or on the longest at all. */
    private List<PaperPoint> anchors(CutStack.Strand s, List<PaperPoint> path) {
        CutStack.Step best = null;
        for (CutStack.Step step : s.steps()) {
            boolean topmost = stack.strands().stream().filter(o -> o != s).flatMap(o -> o.steps().stream())
                    .noneMatch(o -> o.level() > step.level() && o.from() < step.to() && o.to() > step.from());
            double worth = (step.to() - step.from()) * (topmost ? 10 : 1);
            double bestWorth = best == null ? 0 : (best.to() - best.from());
            if (worth > bestWorth) {
                best = step;
            }
        }
        List<PaperPoint> out = new ArrayList<>();
        if (best == null || s.piece().material().kind() == rainlap.material.MaterialKind.FLASHING) {
            for (int i = path.size() - 1; i > 0; i--) {
                out.add(path.get(i).towards(path.get(i - 1), 0.5));
            }
            return out;
        }
        for (double share : new double[] {0.5, 0.15, 0.85, 0.3, 0.7}) {
            out.add(nearest(path, grid.at(best.from() + share * (best.to() - best.from()), strands.out(best.level()))));
        }
        return out;
    }

    /** The point of a line nearest to a place: slopes leave the level of their step. */
    private static PaperPoint nearest(List<PaperPoint> path, PaperPoint p) {
        PaperPoint best = path.get(0);
        for (int i = 0; i + 1 < path.size(); i++) {
            PaperPoint a = path.get(i), b = path.get(i + 1);
            double dx = b.x() - a.x(), dy = b.y() - a.y(), square = dx * dx + dy * dy;
            double share = square == 0 ? 0 : ((p.x() - a.x()) * dx + (p.y() - a.y()) * dy) / square;
            PaperPoint q = a.towards(b, Math.max(0, Math.min(1, share)));
            best = q.distance(p) < best.distance(p) ? q : best;
        }
        return best;
    }

    private void nameLeft(Named n) {
        String name = TextMetrics.shorten(n.name(), 13, Looks.STRONG);
        double edge = grid.face() - strands.furthest() - 3;
        for (PaperPoint dot : n.anchors()) {
            for (double x : new double[] {edge - 6, edge, edge - 3, edge - 9, edge - 12}) {
                for (int k = 0; k < 9; k++) {
                    double y = dot.y() + shift(k) * NAME_PITCH;
                    if (place(Text.of(x, y + 1.25, name, Looks.STRONG.end()), dot)) {
                        return;
                    }
                }
            }
        }
    }

    private static double shift(int k) {
        return (k % 2 == 0 ? 1 : -1) * ((k + 1) / 2);
    }

    private void nameBelow(Named n) {
        String name = TextMetrics.shorten(n.name(), 16, Looks.STRONG);
        double edge = grid.face() + strands.furthest() + 5.5;
        for (PaperPoint dot : n.anchors()) {
            for (double y : new double[] {edge, edge + 4.3, edge + 8.6, edge + 12.9}) {
                for (int k = 0; k < 9; k++) {
                    double x = dot.x() + shift(k) * 4;
                    if (place(Text.of(x, y, name, Looks.STRONG.middle()), dot)) {
                        return;
                    }
                }
            }
        }
    }

    private boolean place(Text t, PaperPoint dot) {
        PaperBox room = new PaperBox(cell.left(), field.top() - 0.5, plan.cut().plumb() ? cell.right() : field.right() + 1, field.bottom());
        PaperBox b = t.box();
        PaperPoint start = plan.cut().plumb() ? new PaperPoint(b.right() + 0.7, t.at().y() - 1.25) : new PaperPoint(t.at().x(), b.top() - 0.5);
        Polyline leader = Polyline.of(Looks.THIN, start, dot);
        if (!room.holds(b) || !taken.isFree(b) || !drawn.isFree(b) || b.meets(new PaperSegment(start, dot)) || !taken.isFree(new PaperSegment(start, dot))
                || !taken.isFree(PaperBox.around(dot, 0.6, 0.6))) {
            return false;
        }
        taken.add(b);
        taken.add(leader);
        taken.add(PaperBox.around(dot, 0.6, 0.6));
        out.add(t);
        out.add(Group.of(List.of(leader)).withClass(rainlap.paper.SheetCheck.LEADER));
        out.add(Disc.filled(dot, 0.45, Tone.INK));
        return true;
    }
}
