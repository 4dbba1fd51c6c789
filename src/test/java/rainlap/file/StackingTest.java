package rainlap.file;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

/** Which tucks are possible. */
class StackingTest {
    private static List<Problem> problems(String... pieces) {
        return ElevationFileTest.read("{\"rainlap\":1,\"wall\":{\"outline\":[[0,0],[900,0],[900,900],[0,900]],\"edges\":[\"base\",\"free\",\"free\",\"free\"]},"
                + "\"openings\":[{\"id\":\"W\",\"kind\":\"vent\",\"rect\":[100,100,300,300],\"reveal\":90}],\"pieces\":[" + String.join(",", pieces) + "]}").problems();
    }

    private static String piece(String id, String shape, String... under) {
        return "{\"id\":\"" + id + "\",\"material\":\"foil-membrane\"," + shape + ",\"under\":[" + String.join(",",
                List.of(under).stream().map(u -> "\"" + u + "\"").toList()) + "]}";
    }

    @Test
    void fourFlapsInARingAreSound() {
        assertEquals(List.of(), problems(piece("A", "\"rect\":[0,0,60,20]"), piece("B", "\"rect\":[40,0,20,60]"),
                piece("C", "\"rect\":[0,40,60,20]"), piece("D", "\"rect\":[0,0,20,60]", "A")));
    }

    @Test
    void threeFlapsInARingAreSoundWhereTheyDoNotMeetInOnePoint() {
        assertEquals(List.of(), problems(piece("A", "\"rect\":[0,0,60,20]"), piece("B", "\"ring\":[[40,0],[60,0],[60,20],[20,60],[0,60]]"),
                piece("C", "\"rect\":[0,0,10,60]", "A")));
    }

    @Test
    void threeAtOnePointGoRound() {
        List<Problem> all = problems(piece("A", "\"rect\":[0,0,50,50]"), piece("B", "\"rect\":[10,10,50,50]"), piece("C", "\"rect\":[20,20,50,50]", "A"));
        assertEquals(1, all.size());
        assertEquals("pieces \"C\", \"A\" and \"B\" lie round in a circle at one point: \"C\" under \"A\", \"A\" under \"B\", \"B\" under \"C\"", all.get(0).what());
        assertEquals("tuck \"C\" under \"B\" too, or no longer under \"A\", or \"B\" under \"A\" as well", all.get(0).hint());
    }

    @Test
    void theHintMendsIt() {
        assertEquals(List.of(), problems(piece("A", "\"rect\":[0,0,50,50]"), piece("B", "\"rect\":[10,10,50,50]"), piece("C", "\"rect\":[20,20,50,50]", "A", "B")));
        assertEquals(List.of(), problems(piece("A", "\"rect\":[0,0,50,50]"), piece("B", "\"rect\":[10,10,50,50]"), piece("C", "\"rect\":[20,20,50,50]")));
    }

    @Test
    void whereTheThirdIsTuckedTheHintDoesNotContradictIt() {
        List<Problem> all = problems(piece("A", "\"rect\":[0,0,50,50]"), piece("B", "\"rect\":[10,10,50,50]", "A"), piece("C", "\"rect\":[20,20,50,50]", "B"));
        assertEquals("pieces \"B\", \"A\" and \"C\" lie round in a circle at one point: \"B\" under \"A\", \"A\" under \"C\", \"C\" under \"B\"", all.get(0).what());
        assertEquals("no longer tuck \"B\" under \"A\", or no longer \"C\" under \"B\"", all.get(0).hint());
    }

    @Test
    void threeThatOnlyTouchDoNotGoRound() {
        assertEquals(List.of(), problems(piece("A", "\"rect\":[0,0,50,50]"), piece("B", "\"rect\":[50,0,50,50]"), piece("C", "\"rect\":[0,0,100,50]", "A")));
    }

    @Test
    void surfacesAreApart() {
        String sill = "\"on\":\"W.sill\",\"rect\":[0,0,50,50]";
        assertEquals(List.of(), problems(piece("A", "\"rect\":[0,0,50,50]"), piece("B", sill), piece("C", "\"rect\":[0,0,50,50]", "A")));
        assertTrue(problems(piece("A", sill), piece("B", sill), piece("C", sill, "A")).get(0).what().contains("circle"));
    }

    @Test
    void aThousandPiecesOnOneSpotAreRead() {
        String[] all = new String[1001];
        for (int i = 0; i < 1000; i++) {
            all[i] = piece("P" + i, "\"rect\":[0,0,50,50]");
        }
        all[1000] = piece("X", "\"rect\":[0,0,50,50]", java.util.stream.IntStream.range(0, 1000).mapToObj(i -> "P" + i).toArray(String[]::new));
        assertEquals(List.of(), problems(all));
    }
}
