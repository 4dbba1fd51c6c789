package rainlap.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import rainlap.Shipped;
import rainlap.paper.Clip;
import rainlap.paper.Group;
import rainlap.paper.Mark;
import rainlap.paper.PaperSegment;
import rainlap.paper.Sheet;
import rainlap.paper.Strokes;
import rainlap.paper.Text;

/** The dashes of a hidden edge run through no figure of a lap, on A3 and on A4. */
class LapFiguresTest {
    /** On laps so short between others that no place is clear of all dashes. */
    private static final Set<String> TOO_SHORT = Set.of("boat-shed-side: lap 140", "boat-shed-side: lap 150", "estuary-hut: west: lap 300");

    @ParameterizedTest
    @MethodSource("rainlap.drawing.SectionWordsTest#walls")
    void noDashesRunThroughOne(Shipped wall) {
        List<String> wrong = new ArrayList<>();
        for (Sheets.Paper paper : Sheets.Paper.values()) {
            Sheet first = Drawn.of(wall.result(), paper).get(0);
            List<PaperSegment> dashes = all(first.marks()).filter(m -> m instanceof Strokes s && s.edge().equals(Looks.HIDDEN)).flatMap(m -> ((Strokes) m).segments().stream()).toList();
            all(first.marks()).filter(m -> m instanceof Text t && t.text().startsWith("lap ") && dashes.stream().anyMatch(t.box()::meets))
                    .map(m -> wall.file() + ": " + ((Text) m).text()).filter(t -> !TOO_SHORT.contains(t)).forEach(t -> wrong.add(paper + " " + t));
        }
        assertEquals(List.of(), wrong);
    }

    private static Stream<Mark> all(List<Mark> marks) {
        return marks.stream().flatMap(m -> m instanceof Group g ? all(g.marks()) : m instanceof Clip c ? all(c.marks()) : Stream.of(m));
    }
}
