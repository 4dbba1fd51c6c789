package rainlap.drawing;

import java.util.ArrayList;
import java.util.List;
import rainlap.paper.Clip;
import rainlap.paper.Group;
import rainlap.paper.Mark;
import rainlap.paper.PaperBox;
import rainlap.paper.PaperSegment;
import rainlap.paper.Polyline;
import rainlap.paper.Text;

/** Finds the words that some way of water is drawn over. */
final class WrittenOver {
    private static final double HALF_WIDTH = 0.25;
    private final List<Text> words = new ArrayList<>();
    private final List<PaperSegment> ways = new ArrayList<>();

    private WrittenOver() {}

    static List<String> by(List<Mark> marks) {
        WrittenOver all = new WrittenOver();
        all.collect(marks, false);
        return all.words.stream().filter(t -> all.ways.stream().anyMatch(w -> meets(w, t.box()))).map(Text::text).toList();
    }

    private static boolean meets(PaperSegment way, PaperBox words) {
        return words.grown(HALF_WIDTH).meets(way);
    }

    private void collect(List<Mark> marks, boolean inWay) {
        for (Mark m : marks) {
            if (m instanceof Group g) {
                collect(g.marks(), inWay || g.classes().contains(WaterSigns.FREE) || g.classes().contains(WaterSigns.FAILED));
            } else if (m instanceof Clip c) {
                collect(c.marks(), inWay);
            } else if (m instanceof Text t) {
                words.add(t);
            } else if (inWay && m instanceof Polyline line) {
                ways.addAll(line.segments());
            }
        }
    }
}
