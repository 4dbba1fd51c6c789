package rainlap.drawing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.DoubleFunction;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import rainlap.check.CheckResult;
import rainlap.check.WeakPoint;
import rainlap.paper.Frame;
import rainlap.paper.Group;
import rainlap.paper.Mark;
import rainlap.paper.PaperBox;
import rainlap.paper.Sheet;
import rainlap.paper.SheetSize;
import rainlap.wall.Elevation;

/** The marked-up elevation of a check, on as many sheets as its findings need. */
public final class Sheets {
    /** With more marks round one elevation its leaders can no longer be followed. */
    private static final int MOST_MARKS = 40;
    /** Beyond this many sheets with the elevation nobody leafs on: further weak points stand in the table only, which says so. */
    private static final int MOST_ELEVATIONS = 10;
    private final CheckResult result;
    private final TitleBlock title;
    private final List<Page> pages = new ArrayList<>();
    private final Set<String> unnamed = new LinkedHashSet<>();
    private final Set<String> named = new TreeSet<>();

    private final Slots slots;
    private final Sections sections;
    private final WetPlaces wet;
    /** Legends that tell what the sheets behind them show too: drawn when that is known. */
    private final List<Runnable> keys = new ArrayList<>();
    private boolean hasPlanes;
    private boolean hasOnwards;
    private boolean hasFree;
    private boolean hasFailed;
    /** Numbers of the weak points that some elevation marks. */
    private final Set<Integer> marked = new TreeSet<>();

    /**
     * A sheet in the making, with slots for the table, found by its height; none where an elevation takes all of it.
     *
     * @param aside where the table's closing notes may end, sooner than begin another sheet
     */
    private record Page(String scale, List<Mark> marks, List<DoubleFunction<PaperBox>> tables, Optional<PaperBox> aside) {}

    private Sheets(CheckResult result, TitleBlock title, SheetSize size) {
        this.result = result;
        this.title = title;
        this.slots = new Slots(size);
        this.sections = Sections.onSheets(result.evidence(), slots);
        this.wet = WetPlaces.of(result);
    }

    /**
     * The sheets in order: the elevation with the worst weak points, further elevations while there are weak points whose marks found no
     * room, the rest of the table.
     *
     * @throws TooLarge when the wall does not fit the paper at 1:100
     */
    public static List<Sheet> of(CheckResult result, TitleBlock title) {
        return of(result, title, Paper.A3);
    }

    /** The same on other paper. */
    public static List<Sheet> of(CheckResult result, TitleBlock title, Paper paper) {
        List<Bay> bays = bays(result, paper);
        if (bays.isEmpty()) {
            throw new TooLarge(Extents.of(result), paper);
        }
        Sheets sheets = new Sheets(result, title, bays.get(0).placing().layout().size());
        sheets.elevations(bays);
        sheets.sections.rest(result.weakPoints());
        sheets.behind(bays.stream().anyMatch(Sheets::isAlone));
        sheets.tables();
        return sheets.finished();
    }

    /**
     * Tells before any work that a wall will not fit, as far as its outline alone shows.
     *
     * @throws TooLarge when the outline does not fit the paper at 1:100
     */
    public static void requireRoom(Elevation wall, Paper paper) {
        Extents outline = new Extents(wall.outline().box(), wall.outline().box(), wall.outline().ground());
        if (paper.ways().stream().allMatch(size -> Bay.of(outline, false, size).isEmpty())) {
            throw new TooLarge(outline, paper);
        }
    }

    /** The way of laying the sheet that draws the wall whole, else the largest, then in the fewest bays. */
    static List<Bay> bays(CheckResult result, Paper paper) {
        return paper.ways().stream().map(size -> Bay.of(Extents.of(result), !result.weakPoints().isEmpty(), size)).filter(b -> !b.isEmpty())
                .min(Comparator.comparing((List<Bay> b) -> b.size() > 1).thenComparingInt(b -> b.get(0).placing().view().scale()).thenComparingInt(List::size))
                .orElse(List.of());
    }

    /** Every weak point is marked in each bay it runs through. */
    private void elevations(List<Bay> bays) {
        for (Bay bay : bays) {
            List<WeakPoint> here = result.weakPoints().stream().filter(p -> Bay.marking(bays, p).contains(bay)).toList();
            do {
                here = elevation(bay, here);
            } while (!here.isEmpty() && pages.size() < MOST_ELEVATIONS);
        }
    }

    /** One sheet with an elevation; returns the weak points whose marks found no room on it. */
    private List<WeakPoint> elevation(Bay bay, List<WeakPoint> wanted) {
        List<WeakPoint> shown = wanted.subList(0, Math.min(MOST_MARKS, wanted.size()));
        ElevationView first = new ElevationView(result.evidence(), wet, bay, shown);
        while (!first.left().isEmpty() && first.left().size() < shown.size()) {
            Set<Integer> left = first.left();
            shown = shown.stream().filter(p -> !left.contains(p.number())).toList();
            first = new ElevationView(result.evidence(), wet, bay, shown);
        }
        ElevationView view = first;
        List<Mark> marks = new ArrayList<>(List.of(view.marks(sections), sections.room().takeBeside()));
        unnamed.addAll(view.unnamed());
        named.addAll(view.named());
        hasPlanes |= view.hasPlanes();
        hasOnwards |= hasOnwards(bay, shown);
        noteWays(marks);
        if (!isAlone(bay)) {
            int at = marks.size();
            List<WeakPoint> here = shown;
            keys.add(() -> marks.addAll(at, key(here, view.hasPlanes(), hasOnwards(bay, here))));
        }
        String also = sections.room().scalesBeside();
        double title = bay.placing().title(bay.extents());
        pages.add(new Page("1:" + bay.placing().view().scale() + (also.isEmpty() ? "" : " (" + also + ")"), marks,
                isAlone(bay) || !slots.isWide() ? List.of() : List.of(height -> Slots.table(title, height)), sections.room().restBeside()));
        Set<Integer> done = shown.stream().map(WeakPoint::number).collect(Collectors.toSet());
        marked.addAll(done);
        return wanted.stream().filter(p -> !done.contains(p.number())).toList();
    }

    /** Whether some stretch ends in a head, because it goes on in another bay. */
    private static boolean hasOnwards(Bay bay, List<WeakPoint> shown) {
        return shown.stream().anyMatch(p -> p.finding().where().isLine() && !bay.showsAll(p));
    }

    private void noteWays(List<Mark> marks) {
        hasFree |= WaterSigns.areIn(marks, WaterSigns.FREE);
        hasFailed |= WaterSigns.areIn(marks, WaterSigns.FAILED);
    }

    private static boolean isAlone(Bay bay) {
        return bay.placing().layout().isAlone();
    }

    /** Legend, notes and key plan. */
    private List<Mark> key(List<WeakPoint> shown, boolean planes, boolean onwards) {
        Notes notes = Notes.of(result.evidence());
        return Stream.of(Legend.of(result.evidence(), shown, planes, new Legend.Ways(hasFree, hasFailed, wet.any(), onwards), notes.top()), notes.marks(), Notes.keyPlan())
                .map(slots::onTitleBlock).toList();
    }

    /** The sheets behind the elevations: further sections, and on the first the legend where it found no place before. */
    private void behind(boolean withKey) {
        List<Group> further = sections.room().further();
        noteWays(List.copyOf(further));
        keys.forEach(Runnable::run);
        for (int i = 0; i < Math.max(further.size(), withKey ? 1 : 0); i++) {
            List<Mark> marks = new ArrayList<>();
            Optional<Group> cuts = i < further.size() ? Optional.of(further.get(i)) : Optional.empty();
            cuts.ifPresent(marks::add);
            boolean keyHere = i == 0 && withKey;
            if (keyHere) {
                marks.addAll(key(result.weakPoints(), hasPlanes, hasOnwards));
            }
            List<PaperBox> table = slots.tableBeneath(cuts.map(g -> g.box().bottom()), keyHere);
            pages.add(new Page(cuts.isPresent() ? sections.room().scalesFurther(i) : "", marks,
                    table.stream().map(box -> (DoubleFunction<PaperBox>) height -> box).toList(), table.isEmpty() ? cuts.map(g -> slots.beneath(g.box().bottom(), keyHere)) : Optional.empty()));
        }
    }

    /** The table runs on over the elevations' sheets, then over sheets of its own. */
    private void tables() {
        FindingsTable table = new FindingsTable(result, unnamed.stream().filter(id -> !named.contains(id)).toList(), result.weakPoints().size() - marked.size(), sections.notShown(result.weakPoints()), wet.leftOut());
        for (Page page : List.copyOf(pages)) {
            for (int slot = 0; slot < page.tables().size() && !table.isDone(); slot++) {
                page.marks().add(table.part(page.tables().get(slot).apply(table.height(Slots.TABLE)), slot));
            }
        }
        pages.stream().filter(p -> !table.isDone() && p.aside().filter(table::endsIn).isPresent()).reduce((first, next) -> next)
                .ifPresent(p -> p.marks().add(table.end(p.aside().orElseThrow())));
        while (!table.isDone()) {
            pages.add(new Page("", new ArrayList<>(List.of(table.part(slots.full(), 0))), List.of(), Optional.empty()));
        }
    }

    private List<Sheet> finished() {
        List<Sheet> out = new ArrayList<>();
        String name = result.evidence().elevation().name() + ": marked-up elevation";
        for (int i = 0; i < pages.size(); i++) {
            List<Mark> marks = new ArrayList<>();
            marks.add(Frame.of(slots.size()));
            marks.addAll(pages.get(i).marks());
            marks.add(slots.inCorner(TitleBlockMarks.of(
                    new TitleBlockMarks.Filling(TitleBlockMarks.Subject.of(result.evidence()), title, slots.size(), pages.get(i).scale(), i + 1, pages.size()))));
            out.add(new Sheet(slots.size(), name, "en", marks));
        }
        return List.copyOf(out);
    }

    /** The paper to draw on; it lies or stands as the wall asks. */
    public enum Paper {
        A3(SheetSize.A3, SheetSize.A3_UPRIGHT), A4(SheetSize.A4, SheetSize.A4_LYING);

        private final List<SheetSize> ways;

        Paper(SheetSize... ways) {
            this.ways = List.of(ways);
        }

        /** Of two that draw alike the first is taken. */
        List<SheetSize> ways() {
            return ways;
        }
    }

    /** The wall does not fit the largest sheet at the smallest scale. */
    public static final class TooLarge extends IllegalArgumentException {
        private static final long serialVersionUID = 1L;

        TooLarge(Extents extents, Paper paper) {
            super("a wall of " + extents.sheets().width() / 100 + " x " + extents.sheets().height() / 100
                    + " mm is too high for " + paper + " at 1:100");
        }
    }
}
