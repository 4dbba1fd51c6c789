package rainlap.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import rainlap.Shipped;
import rainlap.check.CheckResult;
import rainlap.check.WeakPoint;
import rainlap.paper.Group;
import rainlap.paper.Mark;
import rainlap.paper.PaperSegment;
import rainlap.paper.Sheet;
import rainlap.paper.Strokes;
import rainlap.paper.Text;
import rainlap.wall.Stage;

/** No word of a section stands on the hatch of its frame, at both stages, on A3 and on A4. */
class WordsOffTheFrameTest {

    @ParameterizedTest
    @MethodSource("rainlap.drawing.SectionWordsTest#walls")
    void noneStandsOnTheHatch(Shipped wall) {
        List<String> wrong = new ArrayList<>();
        for (Stage stage : Stage.values()) {
            CheckResult result = wall.at(stage).result();
            int cuts = 0;
            for (Sheets.Paper paper : Sheets.Paper.values()) {
                for (Sheet sheet : Drawn.of(result, paper)) {
                    for (Group section : sections(sheet.marks())) {
                        List<PaperSegment> hatch = all(section.marks()).filter(m -> m instanceof Strokes s && s.edge().equals(Looks.FRAME_HATCH)).flatMap(m -> ((Strokes) m).segments().stream()).toList();
                        cuts += hatch.isEmpty() ? 0 : 1;
                        all(section.marks()).filter(m -> m instanceof Text t && hatch.stream().anyMatch(t.box()::meets))
                                .forEach(m -> wrong.add(stage + " " + paper + " " + section.id().orElseThrow() + ": " + ((Text) m).text()));
                    }
                }
            }
            assertTrue(cuts > 0 || result.weakPoints().stream().filter(MendedCuts::isAsked).noneMatch(p -> isCut(p, result)), "the hatch is found");
        }
        assertEquals(List.of(), wrong);
    }

    private static boolean isCut(WeakPoint p, CheckResult result) {
        return CloseUp.of(p, result.evidence()).isEmpty();
    }

    private static List<Group> sections(List<Mark> marks) {
        return all(marks).filter(m -> m instanceof Group g && g.id().filter(id -> id.matches("(section|mended)-[A-Z]+")).isPresent()).map(m -> (Group) m).toList();
    }

    private static Stream<Mark> all(List<Mark> marks) {
        return marks.stream().flatMap(m -> m instanceof Group g ? Stream.concat(Stream.of(m), all(g.marks())) : Stream.of(m));
    }
}
