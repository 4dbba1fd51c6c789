package rainlap.file;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Lines, columns and carets, whatever the text before them holds. */
class PlacesInTextTest {
    private static final String WALL = "\"wall\": {\"outline\": [[0,0],[90,0],[90,90]], \"edges\": [\"base\",\"free\",\"free\"]}";

    private static Problem only(byte[] bytes) {
        List<Problem> all = ElevationFile.read("x.json", bytes).problems();
        assertEquals(1, all.size(), all::toString);
        return all.get(0);
    }

    private static Problem only(String json) {
        return only(json.getBytes(StandardCharsets.UTF_8));
    }

    private static void assertCaretUnder(String marked, Problem p) {
        String source = p.lines().get(1), caret = p.lines().get(2);
        int at = source.indexOf(marked);
        assertTrue(at >= 0, source);
        assertEquals(source.substring(0, at).codePoints().map(Excerpt::width).sum(), caret.indexOf('^'), source + "\n" + caret);
    }

    @Test
    void lineEndsOfEverySystem() {
        for (String end : List.of("\n", "\r\n", "\r")) {
            Problem p = only("{ \"rainlap\": 1," + end + WALL + "," + end + "  \"nme\": 1 }");
            assertEquals(Optional.of(new Place(3, 3)), p.place());
            assertEquals("3 |   \"nme\": 1 }", p.lines().get(1));
            assertCaretUnder("\"nme\"", p);
        }
    }

    @Test
    void byteOrderMarkIsNoColumn() {
        Problem p = only("\uFEFF{ \"nme\": 1, \"rainlap\": 1, " + WALL + " }");
        assertEquals(Optional.of(new Place(1, 3)), p.place());
        assertEquals("1 | { \"nme\": 1, \"rainlap\": 1, " + WALL + " }", p.lines().get(1));
        assertCaretUnder("\"nme\"", p);
        assertTrue(ElevationFile.read("x", ("\uFEFF{ \"rainlap\": 1, " + WALL + " }").getBytes(StandardCharsets.UTF_8)).elevation().isPresent());
    }

    @Test
    void columnsCountCharactersAndCaretsCountTerminalColumns() {
        Problem p = only("{ \"rainlap\": 1, \"name\": \"艇庫🚲é\", \"nme\": 1, " + WALL + " }");
        assertEquals(Optional.of(new Place(1, 33)), p.place());
        assertCaretUnder("\"nme\"", p);
        assertEquals(4 + 32 + 3, p.lines().get(2).indexOf('^'), "three of the characters before it are two columns wide");
    }

    @Test
    void combiningMarksTakeNoColumn() {
        Problem p = only("{ \"rainlap\": 1, \"name\": \"e\u0301te\u0301\", \"nme\": 1, " + WALL + " }");
        assertCaretUnder("\"nme\"", p);
    }

    @Test
    void tabsAreFourColumns() {
        Problem p = only("{ \"rainlap\": 1,\n\t\t\"nme\": 1, " + WALL + " }");
        assertEquals(Optional.of(new Place(2, 3)), p.place());
        assertTrue(p.lines().get(1).startsWith("2 |         \"nme\""), p.lines().get(1));
        assertCaretUnder("\"nme\"", p);
    }

    @Test
    void endlessLinesAreCutToAWindow() {
        String pad = "\"name\": \"" + "x".repeat(900) + "\", ";
        Problem p = only("{ \"rainlap\": 1, " + pad + "\"nme\": 1, " + WALL + ", \"$schema\": \"" + "艇".repeat(900) + "\" }");
        assertCaretUnder("\"nme\"", p);
        String shown = p.lines().get(1).substring("1 | ".length());
        assertTrue(shown.startsWith("…") && shown.endsWith("…"), shown);
        assertTrue(shown.codePoints().map(Excerpt::width).sum() <= 113, shown);
    }

    @Test
    void windowNeverSplitsACharacter() {
        for (int pad = 0; pad < 8; pad++) {
            String wide = "\"name\": \"" + "🚲".repeat(700) + "x".repeat(pad) + "\", ";
            Problem p = only("{ \"rainlap\": 1, " + wide + "\"nme\": 1, " + WALL + " }");
            assertCaretUnder("\"nme\"", p);
            assertEquals(-1, p.lines().get(1).indexOf('\uFFFD'));
        }
    }

    @Test
    void terminalsAreNotGivenControlCharacters() {
        Problem p = only("{ \"rainlap\": 1, \"name\": \"a\u001B[31m\u202Eb\" }");
        String all = String.join("", p.lines());
        assertTrue(all.codePoints().noneMatch(c -> c < 32 || c == 0x202E), all);
        Problem key = only("{ \"rainlap\": 1, " + WALL + ", \"a\\u001b[31m\": 1 }");
        assertTrue(key.what().codePoints().noneMatch(c -> c < 32), key.what());
    }

    @Test
    void problemsStandInOrderOfTheirPlaces() {
        List<Problem> all = ElevationFileTest.read("{ \"z\": 1, \"y\": 2,\n \"rainlap\": 2, \"wall\": 3 }").problems();
        assertEquals(List.of(new Place(1, 3), new Place(1, 11), new Place(2, 13), new Place(2, 24)),
                all.stream().map(p -> p.place().orElseThrow()).toList());
    }

    @Test
    void messageLooksAsPromised() {
        String json = "{ \"rainlap\": 1, " + WALL + ", \"pieces\": [\n"
                + "    { \"id\": \"M2\", \"material\": \"foil-membrane\", \"rect\": [0, 0, 9, 9] },\n"
                + "    { \"id\": \"H1\", \"material\": \"head-flashing\", \"under\": [\"M7\"], \"rect\": [0, 0, 9, 9] }\n] }";
        assertEquals(List.of("elevations/hut.json:3:58: piece \"H1\" is tucked under \"M7\", which is not in this file",
                "3 |     { \"id\": \"H1\", \"material\": \"head-flashing\", \"under\": [\"M7\"], \"rect\": [0, 0, 9, 9] }",
                "                                                             ^ did you mean \"M2\"?"),
                ElevationFile.read("elevations/hut.json", json.getBytes(StandardCharsets.UTF_8)).problems().get(0).lines());
    }
}
