package rainlap.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Collectors;
import rainlap.paper.Group;
import rainlap.paper.Mark;
import rainlap.paper.PaperBox;

/** Where sections stand: beside an elevation while there is room, then on further sheets, as many as it takes. */
final class SectionRoom {
    private static final int MOST_BESIDE = 4;
    private static final double HEADING = 10;
    /** How further sheets are laid out; empty where there are none. */
    private final Optional<Slots> sheets;
    /** What found no room beside the elevations. */
    private final List<SectionSheet.Cell> further = new ArrayList<>();
    private final TreeSet<Integer> scalesBeside = new TreeSet<>();
    private Optional<SectionColumn> beside = Optional.empty();
    private int countBeside;
    /** Whether a section of the last elevation stands on a further sheet, so that those after it must too. */
    private boolean isFull;

    SectionRoom(Optional<Slots> sheets) {
        this.sheets = sheets;
    }

    /** Begins another elevation with room beside it or without. */
    void begin(Optional<PaperBox> slot) {
        beside = slot.map(SectionColumn::new);
        countBeside = 0;
        isFull = false;
        scalesBeside.clear();
    }

    boolean isRoom(boolean halfWidth, double height) {
        return isBesideFree(halfWidth, height) || hasFurther(halfWidth, height);
    }

    /** Whether there are further sheets, and one may be high enough. */
    boolean hasFurther(boolean halfWidth, double height) {
        return sheets.filter(s -> new SectionColumn(s.sections(HEADING, s.feet().get(s.feet().size() - 1)).get(0)).fits(halfWidth, height)).isPresent();
    }

    private boolean isBesideFree(boolean halfWidth, double height) {
        return !isFull && countBeside < MOST_BESIDE && beside.isPresent() && beside.get().fits(halfWidth, height);
    }

    /** Takes the room that {@link #isRoom} found. */
    void add(boolean half, double height, Function<PaperBox, Integer> scale, Function<PaperBox, Mark> mark) {
        if (sheets.isPresent() && !isBesideFree(half, height)) {
            isFull = true;
            further.add(new SectionSheet.Cell(half, height, scale, mark));
            return;
        }
        countBeside++; // with nowhere else to go, words run on below
        PaperBox box = beside.orElseThrow().take(half, height);
        scalesBeside.add(scale.apply(box));
        beside.get().add(mark.apply(box));
    }

    /** The scales of those beside the last elevation: {@code 1:5, 1:10}, or nothing. */
    String scalesBeside() {
        return words(scalesBeside);
    }

    static String words(TreeSet<Integer> scales) {
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

    /**
     * What found no room beside the elevations, sheet by sheet; empty where a section is too high for that.
     *
     * @param foot how far down sections may reach
     * @param withKey whether the legend stands on the first sheet, which is then no lower than it must be
     */
    Optional<List<SectionSheet>> further(double foot, boolean withKey) {
        Slots slots = sheets.orElseThrow();
        List<SectionSheet> out = new ArrayList<>();
        for (SectionSheet.Cell cell : further) {
            while (out.isEmpty() || !out.get(out.size() - 1).add(cell)) {
                if (!out.isEmpty() && out.get(out.size() - 1).isEmpty() && (!withKey || out.size() > 1)) {
                    return Optional.empty();
                }
                out.add(new SectionSheet(slots.sections(HEADING, withKey && out.isEmpty() ? slots.feet().get(0) : foot)));
            }
        }
        return Optional.of(out);
    }
}
