package rainlap.drawing;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import rainlap.paper.Group;
import rainlap.paper.Mark;
import rainlap.paper.PaperBox;
import rainlap.paper.Text;

/** A sheet of sections behind the elevations, filled row by row from the left, so that they read in the order of their letters. */
final class SectionSheet {
    private final List<SectionColumn> columns;
    private final List<Placed> placed = new ArrayList<>();
    /** Columns left out of a row because what came next was too high for them: nothing later may stand there. */
    private final Set<Integer> closed = new HashSet<>();
    private int last = -1;

    /** A section that is to be drawn in a box of this height and the width of a column or of half of one. */
    record Cell(boolean half, double height, Function<PaperBox, Integer> scale, Function<PaperBox, Mark> mark) {}

    private record Placed(Cell cell, SectionColumn column, PaperBox box) {}

    SectionSheet(List<PaperBox> columns) {
        this.columns = columns.stream().map(SectionColumn::new).toList();
    }

    /** Takes room for the next section; false where there is none. */
    boolean add(Cell cell) {
        Optional<Integer> column = next(cell);
        column.ifPresent(c -> {
            for (int i = (last + 1) % columns.size(); last != c && i != c; i = (i + 1) % columns.size()) {
                closed.add(i);
            }
            if (last >= 0 && last != c) {
                columns.get(last).endRow();
            }
            last = c;
            placed.add(new Placed(cell, columns.get(c), columns.get(c).take(cell.half(), cell.height())));
        });
        return column.isPresent();
    }

    /** Beside the last one where both take half a column, else the next column with room, in this row or a further one. */
    private Optional<Integer> next(Cell cell) {
        if (last >= 0 && columns.get(last).isBeside(cell.half(), cell.height())) {
            return Optional.of(last);
        }
        for (int i = 1; i <= columns.size(); i++) {
            int c = (last + i) % columns.size();
            if (!closed.contains(c) && columns.get(c).fits(cell.half(), cell.height())) {
                return Optional.of(c);
            }
        }
        return Optional.empty();
    }

    boolean isEmpty() {
        return placed.isEmpty();
    }

    /** Whether it holds one section and no more. */
    boolean isLone() {
        return placed.size() == 1;
    }

    /** How far down its sections may reach. */
    double bottom() {
        return placed.stream().mapToDouble(p -> p.box().bottom()).max().orElse(0);
    }

    TreeSet<Integer> scales() {
        TreeSet<Integer> out = new TreeSet<>();
        placed.forEach(p -> out.add(p.cell().scale().apply(p.box())));
        return out;
    }

    /** @param full the part of the sheet that it stands in */
    Group drawn(PaperBox full) {
        List<Mark> out = new ArrayList<>(List.of(Text.of(full.left(), full.top() + 4, "Sections, worst first", Looks.TITLE)));
        for (SectionColumn column : columns) {
            out.addAll(column.marks());
            placed.stream().filter(p -> p.column() == column).forEach(p -> out.add(p.cell().mark().apply(p.box())));
        }
        return Group.of("further-sections", out);
    }
}
