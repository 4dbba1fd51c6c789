package rainlap.drawing;

import java.util.ArrayList;
import java.util.List;
import rainlap.check.CheckResult;
import rainlap.paper.Mark;
import rainlap.paper.Sheet;

/**
 * The sheets of several elevations as one set: an index in front, and all of them numbered through.
 *
 * @param index as many sheets as it needs
 * @param walls the sheets of each wall, in the order the walls were given
 */
public record SheetSet(List<Sheet> index, List<List<Sheet>> walls) {
    public SheetSet {
        index = List.copyOf(index);
        walls = walls.stream().map(List::copyOf).toList();
    }

    /**
     * One elevation.
     *
     * @param name as the index has it
     * @param place where its sheets are to be found, or empty where they stand behind the index
     * @param sheets numbered by themselves
     */
    public record Wall(String name, String place, CheckResult result, List<Sheet> sheets) {}

    /** With an index on A3. */
    public static SheetSet of(String name, TitleBlock title, List<Wall> walls) {
        return of(Sheets.Paper.A3, name, title, walls);
    }

    /** @param name of the building, or of what the elevations are together */
    public static SheetSet of(Sheets.Paper paper, String name, TitleBlock title, List<Wall> walls) {
        int before = IndexSheets.count(paper, walls.size());
        int all = before + walls.stream().mapToInt(w -> w.sheets().size()).sum();
        List<IndexSheets.Entry> entries = new ArrayList<>();
        List<List<Sheet>> numbered = new ArrayList<>();
        int next = before + 1;
        for (Wall w : walls) {
            entries.add(new IndexSheets.Entry(w, next));
            List<Sheet> sheets = new ArrayList<>();
            for (Sheet s : w.sheets()) {
                sheets.add(numbered(s, next++, all));
            }
            numbered.add(sheets);
        }
        return new SheetSet(new IndexSheets(paper, name, title, entries, all).sheets(), numbered);
    }

    /** In the order in which they are leafed through. */
    public List<Sheet> all() {
        List<Sheet> out = new ArrayList<>(index);
        walls.forEach(out::addAll);
        return out;
    }

    private static Sheet numbered(Sheet sheet, int number, int of) {
        List<Mark> marks = sheet.marks().stream().map(m -> TitleBlockMarks.numbered(m, number, of)).toList();
        return new Sheet(sheet.size(), sheet.title(), sheet.language(), marks);
    }
}
