package rainlap.drawing;

import java.util.ArrayList;
import java.util.List;
import rainlap.paper.Group;
import rainlap.paper.Mark;
import rainlap.paper.Sheet;
import rainlap.paper.Text;

/** The texts on some sheets, in the order they are drawn. */
final class SheetWords {
    private SheetWords() {}

    static List<String> of(List<Sheet> sheets) {
        List<String> out = new ArrayList<>();
        sheets.forEach(s -> add(s.marks(), out));
        return out;
    }

    /** Those in the groups of one name. */
    static List<String> in(Sheet sheet, String group) {
        List<String> out = new ArrayList<>();
        add(sheet.marks().stream().filter(m -> m instanceof Group g && g.id().filter(group::equals).isPresent()).toList(), out);
        return out;
    }

    private static void add(List<Mark> marks, List<String> out) {
        for (Mark m : marks) {
            if (m instanceof Group g) {
                add(g.marks(), out);
            } else if (m instanceof Text t) {
                out.add(t.text());
            }
        }
    }
}
