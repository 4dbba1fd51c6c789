package rainlap.drawing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Collectors;
import rainlap.paper.Group;
import rainlap.paper.Mark;
import rainlap.paper.PaperBox;
import rainlap.paper.Text;

/** Where sections stand: beside an elevation while there is room, then on further sheets, as many as it takes. */
final class SectionRoom {
    private static final int MOST_BESIDE = 4;
    private static final double HEADING = 10;
    /** How further sheets are laid out; empty where there are none. */
    private final Optional<Slots> sheets;
    /** Columns of each further sheet. */
    private final List<List<SectionColumn>> further = new ArrayList<>();
    private final TreeSet<Integer> scalesBeside = new TreeSet<>();
    private final List<TreeSet<Integer>> scalesFurther = new ArrayList<>();
    private Optional<SectionColumn> beside = Optional.empty();
    private int countBeside;

    SectionRoom(Optional<Slots> sheets) {
        this.sheets = sheets;
    }

    /** Begins another elevation with room beside it or without. */
    void begin(Optional<PaperBox> slot) {
        beside = slot.map(SectionColumn::new);
        countBeside = 0;
        scalesBeside.clear();
    }

    boolean isRoom(boolean halfWidth, double height) {
        return isBesideFree(halfWidth, height) || hasFurther(halfWidth, height);
    }

    /** Whether there are further sheets, and one is high enough. */
    boolean hasFurther(boolean halfWidth, double height) {
        return sheets.isPresent() && columns().get(0).fits(halfWidth, height);
    }

    private boolean isBesideFree(boolean halfWidth, double height) {
        return countBeside < MOST_BESIDE && beside.isPresent() && beside.get().fits(halfWidth, height);
    }

    private SectionColumn column(boolean halfWidth, double height) {
        if (isBesideFree(halfWidth, height) || sheets.isEmpty()) { // with nowhere else to go, words run on below
            countBeside++;
            return beside.orElseThrow();
        }
        if (further.isEmpty() || further.get(further.size() - 1).stream().noneMatch(c -> c.fits(halfWidth, height))) {
            further.add(columns());
            scalesFurther.add(new TreeSet<>());
        }
        return further.get(further.size() - 1).stream().filter(c -> c.fits(halfWidth, height))
                .min(Comparator.comparingDouble(c -> c.reached(halfWidth, height))).orElseThrow();
    }

    private List<SectionColumn> columns() {
        return sheets.orElseThrow().sections(HEADING).stream().map(SectionColumn::new).toList();
    }

    /** Takes the room that {@link #isRoom} found. */
    void add(boolean half, double height, Function<PaperBox, Integer> scale, Function<PaperBox, Mark> mark) {
        SectionColumn column = column(half, height);
        PaperBox box = column.take(half, height);
        (beside.filter(b -> b == column).isPresent() ? scalesBeside : scalesFurther.get(scalesFurther.size() - 1)).add(scale.apply(box));
        column.add(mark.apply(box));
    }

    /** The scales of those beside the last elevation: {@code 1:5, 1:10}, or nothing. */
    String scalesBeside() {
        return words(scalesBeside);
    }

    /** Those of a further sheet. */
    String scalesFurther(int sheet) {
        return words(scalesFurther.get(sheet));
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

    /** What they leave free beneath; none where no section stands beside the last elevation. */
    Optional<PaperBox> restBeside() {
        return beside.filter(b -> !b.isEmpty()).map(SectionColumn::rest);
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
