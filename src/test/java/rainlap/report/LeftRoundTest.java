package rainlap.report;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;
import rainlap.check.Checker;
import rainlap.check.Rules;
import rainlap.file.ElevationFile;
import rainlap.practice.Practices;
import rainlap.rule.Evidence;
import rainlap.wall.Elevation;
import rainlap.wall.Stage;

/** What no rule judged is told: ends of joints round a corner. */
class LeftRoundTest {
    private static Evidence wall(String roles, String... pieces) {
        Elevation e = ElevationFile.read("wall.json", ("{'rainlap': 1, 'wall': {'outline': [[0,0],[1800,0],[1800,1200],[0,1200]], 'edges': [" + roles + "]}, 'pieces': ["
                + "{'id': 'M1', 'material': 'foil-membrane', 'rect': [-300,-40,2400,740]}, {'id': 'M2', 'material': 'foil-membrane', 'rect': [-300,550,2400,690]}"
                + String.join("", pieces) + "]}").replace('\'', '"').getBytes(StandardCharsets.UTF_8)).elevation().orElseThrow();
        return Evidence.of(e, Stage.WRAP, Practices.common());
    }

    private static String tape(int from, int to) {
        return ", {'id': 'T1', 'material': 'foil-tape-75', 'line': [[" + from + ",550],[" + to + ",550]]}";
    }

    private static final String CORNERS = "'base','external-corner','eave','external-corner'";

    @Test void endsOfLapsRoundTheCornersAreLeftToTheWallsThere() {
        assertEquals(List.of("Left to the elevations round the corners, ends of joints: beyond x 0, M2 over M1; beyond x 1800, M2 over M1 (not taped all along)."), LeftRound.lines(wall(CORNERS, tape(-300, 1800))));
        assertEquals(List.of("Left to the elevations round the corners, ends of joints: beyond x 0, M2 over M1; beyond x 1800, M2 over M1."), LeftRound.lines(wall(CORNERS, tape(-300, 2100))));
    }

    @Test void withoutACornerNothingIsLeft() {
        assertEquals(List.of(), LeftRound.lines(wall("'base','free','eave','free'", tape(-300, 1800))));
    }

    @Test void theTableSaysSo() {
        Evidence e = wall(CORNERS, tape(-300, 1800));
        String text = String.join(" ", TerminalTable.lines("wall.json", Checker.check(e, Rules.all())));
        assertEquals("Left to the elevations round the corners, ends of joints: beyond x 0, M2 over M1; beyond x 1800, M2 over M1 (not taped all along). Not checked,",
                text.substring(text.indexOf("Left to the el"), text.indexOf("Not checked,") + 12));
    }
}
