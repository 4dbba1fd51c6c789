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
import java.util.stream.IntStream;
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
        pages.add(page("1:" + bay.placing().view().scale() + (also.isEmpty() ? "" : " (" + also + ")"), marks, bay));
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

    /** What is left on the sheet of an elevation: beneath its title, or beneath the sections beside it; none where it takes all. */
    private Page page(String scale, List<Mark> marks, Bay bay) {
        double title = bay.placing().title(bay.extents());
        if (isAlone(bay)) {
            return new Page(scale, marks, List.of(), Optional.empty());
        }
        return slots.isWide() ? new Page(scale, marks, List.of(height -> Slots.table(title, height)), sections.room().restBeside())
                : beneath(scale, marks, Optional.of(title + ViewTitle.BAR_BENEATH), true);
    }

    /** A sheet with a table beneath what stands on it down to somewhere. */
    private Page beneath(String scale, List<Mark> marks, Optional<Double> bottom, boolean withKey) {
        List<PaperBox> table = slots.tableBeneath(bottom, withKey);
        return new Page(scale, marks, table.stream().map(box -> (DoubleFunction<PaperBox>) height -> box).toList(),
                table.isEmpty() ? bottom.map(b -> slots.beneath(b, withKey)) : Optional.empty());
    }

    /**
     * The sheets behind the elevations: further sections, on the first the legend where it found no place before, and the table. Of the ways to lay the sections
     * the one that takes the fewest sheets in all, if it can be without a section that has a sheet to itself.
     */
    private void behind(boolean withKey) {
        List<SectionSheet> further = slots.feet().stream().flatMap(foot -> sections.room().further(foot, withKey).stream()).min(
                Comparator.comparingInt((List<SectionSheet> way) -> count(way, withKey)).thenComparing(way -> way.size() > 1 && way.get(way.size() - 1).isLone())).orElseThrow();
        List<Group> drawn = further.stream().map(s -> s.drawn(slots.full())).toList();
        noteWays(List.copyOf(drawn));
        keys.forEach(Runnable::run);
        for (int i = 0; i < Math.max(drawn.size(), withKey ? 1 : 0); i++) {
            boolean keyHere = i == 0 && withKey, cuts = i < drawn.size() && !further.get(i).isEmpty();
            List<Mark> marks = new ArrayList<>(cuts ? List.of(drawn.get(i)) : List.of());
            marks.addAll(keyHere ? key(result.weakPoints(), hasPlanes, hasOnwards) : List.of());
            pages.add(beneath(cuts ? SectionRoom.words(further.get(i).scales()) : "", marks, Optional.of(i).filter(k -> cuts).map(k -> drawn.get(k).box().bottom()), keyHere));
        }
        List<List<Mark>> tables = tables(pages);
        for (int i = 0; i < tables.size(); i++) {
            if (i == pages.size()) {
                pages.add(new Page("", new ArrayList<>(), List.of(), Optional.empty()));
            }
            pages.get(i).marks().addAll(tables.get(i));
        }
    }

    /** How many sheets it takes in all if further sections are laid so. */
    private int count(List<SectionSheet> further, boolean withKey) {
        List<Page> all = new ArrayList<>(pages);
        for (int i = 0; i < Math.max(further.size(), withKey ? 1 : 0); i++) {
            all.add(beneath("", List.of(), further.stream().skip(i).findFirst().filter(s -> !s.isEmpty()).map(SectionSheet::bottom), i == 0 && withKey));
        }
        return tables(all).size();
    }

    /** The table's parts sheet by sheet: over those there are, then over sheets of its own. */
    private List<List<Mark>> tables(List<Page> all) {
        FindingsTable table = new FindingsTable(result, unnamed.stream().filter(id -> !named.contains(id)).toList(), result.weakPoints().size() - marked.size(),
                sections.notShown(result.weakPoints()), wet.leftOut());
        List<List<Mark>> out = new ArrayList<>();
        for (Page page : all) {
            List<Mark> here = new ArrayList<>();
            for (int slot = 0; slot < page.tables().size() && !table.isDone(); slot++) {
                PaperBox box = page.tables().get(slot).apply(table.height(Slots.TABLE));
                if (table.fits(box)) {
                    here.add(table.part(box, slot));
                }
            }
            out.add(here);
        }
        IntStream.range(0, all.size()).filter(i -> !table.isDone() && all.get(i).aside().filter(table::endsIn).isPresent()).max()
                .ifPresent(i -> out.get(i).add(table.end(all.get(i).aside().orElseThrow())));
        while (!table.isDone()) {
            out.add(List.of(table.part(slots.full(), 0)));
        }
        return out;
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
