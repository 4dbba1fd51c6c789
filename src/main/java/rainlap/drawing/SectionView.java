package rainlap.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import rainlap.mend.Mended;
import rainlap.paper.Group;
import rainlap.paper.Mark;
import rainlap.paper.Occupied;
import rainlap.paper.PaperBox;
import rainlap.paper.PaperPoint;
import rainlap.paper.Polyline;
import rainlap.paper.Text;
import rainlap.paper.TextMetrics;
import rainlap.rule.Evidence;
import rainlap.rule.Finding;
import rainlap.wall.Opening;
import rainlap.wall.Stage;
import rainlap.water.Arrival;

/** One section in its cell: the stack along a cut, dimensioned and named. */
final class SectionView {
    static final double PLUMB_HEIGHT = 77;
    static final double LEVEL_HEIGHT = 48;
    private static final double DEPTH = 8;
    private static final double DEEPEST = 20;
    private static final double LEAST_DEPTH = 6;
    /** Width of the words beside a level cut, and what the cut itself must have in a narrow column. */
    private static final double BESIDE = 34;
    private static final double LEVEL_FIELD = 54;
    private static final String NOT_HERE = "Water gets in beside this cut.";
    private static final String FOOT = "Frame below not to scale.";
    private static final String OTHER_WALL = "Of the other wall only what this one's pieces cover is drawn.";
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
    private List<String> unnamed = List.of();

    /** @param head room above the cut, printed mm */
    SectionView(SectionPlan plan, Evidence evidence, PaperBox cell, double head) {
        this.plan = plan;
        this.cell = cell;
        this.withFace = SectionPlanner.isBeyondTheWrap(plan.first().finding(), evidence);
        this.stack = CutStack.of(evidence, plan.cut(), withFace);
        boolean plumb = plan.cut().plumb();
        this.field = plumb
                ? new PaperBox(cell.left(), cell.top() + head + 1, cell.right(), cell.top() + head + 44)
                : new PaperBox(cell.left(), cell.top() + head + 1, cell.right() - beside() - 3, cell.bottom());
        double centre = (plan.cut().from() + plan.cut().to()) / 2.0, depth = plumb ? withinCell(depth(), centre) : depth();
        this.grid = plumb ? plumb(depth, centre)
                : new SectionGrid(false, plan.scale(), field.top() + 1.2 + Math.min(depth, legs() ? depth : 5), field.middle().x(), centre);
        double deep = plumb || legs() ? depth : 5;
        this.strands = new SectionStrands(stack, grid, deep);
        this.water = new SectionWater(evidence, stack, grid, strands, deep);
        this.pipes = new SectionPipes(evidence, stack, grid, strands.furthest(), deep);
    }

    private SectionGrid plumb(double depth, double centre) {
        return new SectionGrid(true, plan.scale(), field.right() - depth - 1.5, field.middle().y(), centre);
    }

    /** No deeper than leaves room outside for what stands out the furthest. */
    private double withinCell(double depth, double centre) {
        double left = Group.of(new SectionStrands(stack, plumb(depth, centre), depth).marks()).box().left();
        return Math.max(LEAST_DEPTH, Math.min(depth, depth - (cell.left() - left)));
    }

    static Group of(SectionPlan plan, Evidence evidence, PaperBox cell, Optional<String> note) {
        if (plan.cut().plumb() && note.isPresent()) {
            return SectionPair.without(plan, evidence, note.get(), cell);
        }
        SectionView view = new SectionView(plan, evidence, cell, SectionCell.HEAD);
        view.out.addAll(SectionCell.head(cell, plan.letter() + "–" + plan.letter(), view.title(), view.scale(evidence), plan.points()));
        Optional<WaterSigns.Way> way = view.drawCut(evidence);
        view.words(view.told(way, note.stream().toList(), SectionPair.lines(plan.cut().plumb()) + (plan.cut().plumb() ? 0 : 1)));
        return group(plan, view.out);
    }

    static Group group(SectionPlan plan, List<Mark> marks) {
        return Group.of("section-" + plan.letter(), marks).withData("weak", Integer.toString(plan.first().number()));
    }

    /** The cut alone, for where head and words are set beside it. */
    static SectionPicture picture(SectionPlan plan, Evidence evidence) {
        boolean plumb = plan.cut().plumb();
        double width = plumb ? Slots.SECTIONS.width() / 2 - 1.5 : Slots.SECTIONS.width();
        SectionView view = new SectionView(plan, evidence, PaperBox.ofSize(0, 0, width, plumb ? PLUMB_HEIGHT : LEVEL_HEIGHT), SectionCell.HEAD);
        view.drawCut(evidence);
        return new SectionPicture(view.out, view.scale(evidence));
    }

    /** The same cut as it should be. */
    static SectionPicture picture(SectionPlan plan, Mended mended) {
        boolean plumb = plan.cut().plumb();
        double width = plumb ? Slots.SECTIONS.width() / 2 - 1.5 : Slots.SECTIONS.width();
        SectionView view = new SectionView(MendedGauge.in(plan, mended), mended.evidence(), PaperBox.ofSize(0, 0, width, plumb ? PLUMB_HEIGHT : LEVEL_HEIGHT), SectionCell.HEAD);
        view.drawMended();
        return new SectionPicture(view.out, view.scale(mended.evidence()));
    }

    private double beside() {
        return Math.min(BESIDE, cell.width() - 3 - LEVEL_FIELD);
    }

    private boolean legs() {
        return Stream.of(stack.low(), stack.high()).flatMap(Optional::stream).anyMatch(t -> !t.outwards());
    }

    /** As deep as what is turned inwards, within the room there is. */
    private double depth() {
        double longest = stack.isThreshold() ? stack.high().flatMap(CutStack.Turn::opening).map(Opening::reveal).orElse(0L) : 0;
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

    String title() {
        return SectionCell.title(plan.first().finding());
    }

    String scale(Evidence evidence) {
        String wrap = evidence.stage() == Stage.WRAP || withFace ? "" : ", wrap only";
        return "1:" + plan.scale() + ", thickness × " + LabelText.number(50.0 / plan.scale()) + (plan.cut().plumb() ? "" : ", seen from above") + wrap;
    }

    /** Draws everything but the head and the words; gives the water's way, if it shows. */
    Optional<WaterSigns.Way> drawCut(Evidence evidence) {
        drawPieces();
        Optional<WaterSigns.Way> alongPipe = pipes.way(plan.first().finding());
        alongPipe.ifPresent(w -> out.add(pipes.gap(plan.first().finding())));
        Optional<WaterSigns.Way> way = alongPipe.or(() -> wayIn(evidence));
        way.ifPresent(this::way);
        SectionGauges gauges = gauges();
        water.lift().ifPresent(l -> gauges.driven(l, out));
        name(false);
        return way;
    }

    /** Draws the pieces with what is dimensioned and their names, and no water. */
    void drawMended() {
        drawPieces();
        gauges();
        name(true);
    }

    private void drawPieces() {
        out.addAll(strands.frame());
        out.addAll(strands.marks());
        out.addAll(pipes.marks());
        pipes.marks().forEach(m -> drawn.add(m.box()));
        strands.otherWalls().forEach(drawn::add);
    }

    private SectionGauges gauges() {
        stack.strands().forEach(s -> strands.paths(s).forEach(path -> drawn.add(new Polyline(path, Looks.WIDE))));
        SectionGauges gauges = new SectionGauges(plan, stack, grid, strands.furthest(), new SectionGauges.Room(field, taken, drawn));
        gauges.marks(out);
        return gauges;
    }

    /** @param alikeOnce of new pieces of one kind, numbered only to be told apart, one is named for all */
    private void name(boolean alikeOnce) {
        PaperBox room = new PaperBox(cell.left(), field.top() - 0.5, plan.cut().plumb() ? cell.right() : field.right() + 1, field.bottom());
        unnamed = new SectionNames(stack, grid, strands, pipes, new SectionNames.Room(room, taken, drawn), out).name(alikeOnce);
        outside();
    }

    List<Mark> marks() {
        return out;
    }

    /** Pieces whose names found no room; known once it is drawn. */
    List<String> unnamed() {
        return unnamed;
    }

    /** What a finding says, what a reader must know of the cut, and that its water does not show where it gets in elsewhere. */
    List<String> told(Optional<WaterSigns.Way> way, List<String> note, int most) {
        boolean elsewhere = way.isEmpty() && !plan.first().finding().path().isEmpty();
        return SectionWords.told(plan.first().finding(), notes(note), Stream.concat(elsewhere ? Stream.of(NOT_HERE) : Stream.empty(), elsewhere()).toList(), wordsWidth(), most);
    }

    private List<String> notes(List<String> note) {
        Stream<String> known = stack.isThreshold() ? Stream.of(FOOT) : stack.turnsOutwards() ? Stream.of(OTHER_WALL) : Stream.empty();
        return Stream.of(plan.place().stream(), known, note.stream()).flatMap(s -> s).toList();
    }

    /** Pieces that the finding tells of and this cut does not meet. */
    private Stream<String> elsewhere() {
        Finding f = plan.first().finding();
        List<String> ids = f.pieces().stream().filter(id -> SectionWords.names(f, id) && stack.strands().stream().noneMatch(s -> s.piece().id().equals(id))).toList();
        return ids.isEmpty() ? Stream.empty() : Stream.of(String.join(", ", ids) + (ids.size() == 1 ? " is" : " are") + " not in this cut.");
    }

    /** How much higher than for so many lines the cell must be for what is to be told at the least. */
    double more(List<String> note, int lines) {
        return SectionWords.more(plan.first().finding(), notes(note), wordsWidth(), lines);
    }

    double wordsWidth() {
        return plan.cut().plumb() ? cell.width() : Math.min(beside(), cell.right() - besideLeft());
    }

    /** Where words beside a level cut begin: clear of many sheets one over another that turn a corner. */
    private double besideLeft() {
        double reached = stack.strands().stream().flatMap(s -> strands.paths(s).stream()).flatMap(List::stream).mapToDouble(PaperPoint::x).max().orElse(0);
        return Math.max(field.right() + 3, reached + 1.5);
    }

    /** Sets words beneath a plumb cut or beside a level one. */
    void words(List<String> lines) {
        PaperPoint at = plan.cut().plumb() ? new PaperPoint(cell.left(), field.bottom() + 5) : new PaperPoint(besideLeft(), field.top() + 4);
        out.addAll(SectionCell.text(lines, at.x(), at.y()));
    }

    /** Names the cut: above a plumb one, first of the words beside a level one. */
    void caption(String name) {
        out.add(plan.cut().plumb() ? Text.of(cell.left(), field.top() - 2.4, name, Looks.STRONG) : Text.of(besideLeft(), field.top() - 0.4, name, Looks.STRONG));
    }

    private Optional<WaterSigns.Way> wayIn(Evidence evidence) {
        Finding f = plan.first().finding();
        if (f.rule().equals(TRAPPED)) {
            return water.standing(f);
        }
        List<Arrival> ways = new WaysIn(evidence).through(plan.first());
        return ways.isEmpty() && WaysIn.isRainOnFrame(f) ? water.bare(f.path().get(0)) : water.find(ways);
    }

    private void way(WaterSigns.Way way) {
        drawn.add(new Polyline(way.points(), Looks.WIDE));
        out.add(WaterSigns.named(way, WaterSigns.way(way, SectionWater.PITCH, false)));
    }

    private void outside() {
        boolean plumb = plan.cut().plumb();
        for (double share : new double[] {0.5, 0.7, 0.3, 0.85, 0.15, 0.95, 0.05}) {
            double low = Math.min(grid.face() + strands.furthest() + 5 + 12 * share, cell.bottom() - 1);
            boolean onLeft = stack.high().filter(CutStack.Turn::outwards).isPresent(); // on the right it would stand inside the other wall
            Text t = plumb ? Text.of(cell.left(), field.top() + share * field.height(), "outside", Looks.SECOND)
                    : onLeft ? Text.of(field.left() + 4, low, "outside", Looks.SECOND) : Text.of(field.right() - 4, low, "outside", Looks.SECOND.end());
            if (taken.isFree(t.box()) && drawn.isFree(t.box()) && t.box().right() < (plumb ? grid.face() - strands.furthest() - 1 : cell.right())) {
                taken.add(t.box());
                out.add(t);
                return;
            }
        }
    }
}
