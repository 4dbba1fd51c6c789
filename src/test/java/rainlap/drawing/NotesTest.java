package rainlap.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import rainlap.check.Cautions;
import rainlap.paper.Text;
import rainlap.practice.Practices;
import rainlap.rule.Evidence;
import rainlap.rule.Written;
import rainlap.wall.Stage;

class NotesTest {
    /** A wall that calls for every caution there is. */
    @Test
    void everyCautionOfTheWallStandsOnTheSheet() {
        Evidence e = Evidence.of(Written.read("{'rainlap': 1, 'exposure': {'towing_km_h': 80}, 'wall': {'outline': [[0,0],[1000,0],[1000,1000],[0,1000]], "
                + "'edges': ['free', 'free', 'free', 'free']}, 'penetrations': [{'id': 'P7', 'kind': 'stove flue', 'circle': [500, 500, 60]}], 'pieces': ["
                + "{'id': 'M1', 'material': 'foil-membrane', 'rect': [0, 0, 1000, 1000]}, {'id': 'T1', 'material': 'foil-tape-60', 'line': [[0, 100], [1000, 100]]}]}"),
                Stage.WRAP, Practices.common());
        String words = Notes.of(e).marks().marks().stream().filter(Text.class::isInstance).map(m -> ((Text) m).text()).collect(Collectors.joining(" "));
        assertEquals(4, Cautions.of(e).size());
        Cautions.of(e).forEach(c -> assertTrue(words.contains(c.brief()), () -> c.brief() + " is missing in: " + words));
        assertTrue(words.contains("certifies nothing"), words);
    }
}
