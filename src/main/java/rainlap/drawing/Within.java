package rainlap.drawing;

import java.util.ArrayList;
import java.util.List;
import rainlap.paper.Group;
import rainlap.paper.Halo;
import rainlap.paper.Mark;
import rainlap.paper.PaperBox;
import rainlap.paper.Strokes;

/** Leaves away what lies outside a window altogether, so that a bay does not carry the whole wall. */
final class Within {
    private Within() {}

    static List<Mark> window(List<Mark> marks, PaperBox window) {
        List<Mark> out = new ArrayList<>();
        for (Mark m : marks) {
            if (m instanceof Group g) {
                out.add(new Group(g.id(), g.classes(), g.title(), g.data(), window(g.marks(), window)));
            } else if (m instanceof Strokes s) {
                out.add(new Strokes(s.segments().stream().filter(window::meets).toList(), s.edge()));
            } else if (window.meets(m instanceof Halo h ? h.of().box() : m.box())) {
                out.add(m);
            }
        }
        return out;
    }
}
