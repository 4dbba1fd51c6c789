package rainlap.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import rainlap.practice.Practices;
import rainlap.report.TerminalTable;
import rainlap.rule.Evidence;
import rainlap.rule.Written;
import rainlap.wall.Stage;

/** Each caution stands where it belongs, and only there. */
class CautionsTest {
    private static final String SHEET = "{'id': 'M1', 'material': 'foil-membrane', 'rect': [0, 0, 1000, 1000]}";
    private static final String TAPE = ", {'id': 'T1', 'material': 'foil-tape-60', 'line': [[0, 500], [1000, 500]]}";

    private static Evidence wall(String exposure, String pipes, String pieces) {
        return Evidence.of(Written.read("{'rainlap': 1, 'exposure': {" + exposure + "}, 'wall': {'outline': [[0,0],[1000,0],[1000,1000],[0,1000]], "
                + "'edges': ['free', 'free', 'free', 'free']}, 'penetrations': [" + pipes + "], 'pieces': [" + pieces + "]}"), Stage.WRAP, Practices.common());
    }

    private static String pipe(String id, String kind) {
        return "{'id': '" + id + "', 'kind': '" + kind + "', 'circle': [500, 500, 60]}";
    }

    private static List<String> briefly(String exposure, String pipes, String pieces) {
        return Cautions.of(wall(exposure, pipes, pieces)).stream().map(c -> c.brief().substring(0, c.brief().indexOf(' '))).toList();
    }

    @Test
    void heightAndEdgesAreAlwaysMinded() {
        assertEquals(List.of("Mind"), briefly("", "", SHEET));
        String full = Cautions.of(wall("", "", SHEET)).get(0).full();
        assertTrue(full.contains("platform or scaffold") && full.contains("gloves"), full);
    }

    @Test
    void heatBelongsToWhatIsStuckOn() {
        assertEquals(List.of("Mind", "Hot-air"), briefly("", "", SHEET + TAPE));
        assertTrue(Cautions.of(wall("", "", SHEET + TAPE)).get(1).full().contains("In heat tape lets go"));
    }

    @Test
    void clearanceBelongsToFluesAndHotDucts() {
        for (String hot : List.of("flue", "oven flue", "Chimney", "hot duct", "exhaust pipe", "stove pipe")) {
            assertEquals(List.of("Mind", "Keep"), briefly("", pipe("P7", hot), SHEET), hot);
        }
        for (String cold : List.of("duct", "water pipe", "cable", "photocell")) {
            assertEquals(List.of("Mind"), briefly("", pipe("P7", cold), SHEET), cold);
        }
        Cautions.Caution c = Cautions.of(wall("", pipe("P7", "flue"), SHEET)).get(1);
        assertTrue(c.brief().contains("P7") && c.full().contains("licensed people and local code"), c.full());
    }

    @Test
    void towingBelongsToWhatTravels() {
        assertEquals(List.of("Mind", "Before"), briefly("'towing_km_h': 80", "", SHEET));
        assertEquals(List.of("Mind", "Before"), briefly("'road': 'eu'", "", SHEET));
        assertEquals(List.of("Mind"), briefly("'towing_km_h': 0", "", SHEET));
    }

    @Test
    void theTerminalPrintsAllOfThemInFull() {
        Evidence e = wall("'towing_km_h': 80", pipe("P7", "flue"), SHEET + TAPE);
        String text = TerminalTable.lines("wall.json", Checker.check(e, Rules.all())).stream().map(String::strip).collect(Collectors.joining(" "));
        assertEquals(4, Cautions.of(e).size());
        Cautions.of(e).forEach(c -> assertTrue(text.contains(c.full()), c.full()));
        assertTrue(text.indexOf("Mind: Work at height") > 0, text);
    }
}
