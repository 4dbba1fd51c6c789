package rainlap.drawing;

import java.util.ArrayList;
import java.util.List;
import rainlap.paper.Area;
import rainlap.paper.Group;
import rainlap.paper.Mark;
import rainlap.paper.PaperBox;
import rainlap.paper.PaperPoint;
import rainlap.paper.Polyline;

/** Finds the sections whose way of water runs on past all else that is drawn in them. */
final class OutOfSection {
    /** Rain on a bare frame comes from so far outside, printed mm. */
    private static final double RAIN = 8.5;
    private final List<PaperPoint> drawn = new ArrayList<>();
    private final List<PaperPoint> ways = new ArrayList<>();

    private OutOfSection() {}

    /** Ids of their groups. */
    static List<String> of(List<Mark> marks) {
        List<String> out = new ArrayList<>();
        for (Mark m : marks) {
            if (m instanceof Group g && g.id().filter(id -> id.matches("section-[A-Z]+")).isPresent()) {
                OutOfSection section = new OutOfSection();
                section.collect(g.marks(), false);
                PaperBox all = PaperBox.of(section.drawn).grown(RAIN);
                g.id().filter(id -> !section.ways.stream().allMatch(all::holds)).ifPresent(out::add);
            } else if (m instanceof Group g) {
                out.addAll(of(g.marks()));
            }
        }
        return out;
    }

    private void collect(List<Mark> marks, boolean inWay) {
        for (Mark m : marks) {
            if (m instanceof Group g) {
                collect(g.marks(), inWay || g.classes().contains(WaterSigns.FREE) || g.classes().contains(WaterSigns.FAILED));
            } else if (m instanceof Polyline line) {
                (inWay ? ways : drawn).addAll(line.points());
            } else if (!inWay && m instanceof Area a) {
                drawn.addAll(a.region().box().corners());
            }
        }
    }
}
