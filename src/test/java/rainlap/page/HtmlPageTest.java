package rainlap.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import rainlap.Shipped;
import rainlap.building.Building;
import rainlap.check.BuildingChecker;
import rainlap.check.CheckResult;
import rainlap.check.Checker;
import rainlap.check.Rules;
import rainlap.check.WeakPoint;
import rainlap.drawing.TitleBlock;
import rainlap.file.BuildingFile;
import rainlap.file.ElevationFile;
import rainlap.file.Reading;
import rainlap.practice.Practices;
import rainlap.rule.Finding;
import rainlap.stack.Stack;
import rainlap.wall.Elevation;
import rainlap.wall.Stage;
import rainlap.wall.Surface;

class HtmlPageTest {
    static final String NASTY = "</script><script>alert(1)</script> \"quoted\" 'n' <b>&amp;";

    static String page(CheckResult result) {
        return HtmlPage.of(result, new HtmlPage.About("wall.json", TitleBlock.BLANK, ""));
    }

    static CheckResult check(String json) {
        Reading reading = ElevationFile.read("wall.json", json.getBytes(StandardCharsets.UTF_8));
        Elevation e = reading.elevation().orElseThrow(() -> new AssertionError(reading.problems().toString()));
        return Checker.check(e, Stage.WRAP, Practices.find(e.practice().orElse("common")).orElseThrow());
    }

    /** A wall whose every name is markup. */
    static CheckResult nasty() {
        String n = NASTY.replace("\"", "\\\"");
        return check("{ \"rainlap\": 1, \"name\": \"" + n + "\", \"wall\": { \"outline\": [[0, 0], [3000, 0], [3000, 2400], [0, 2400]],"
                + " \"edges\": [\"base\", \"free\", \"eave\", \"free\"] }, \"pieces\": ["
                + "{ \"id\": \"U<img src=x onerror=alert(1)>\", \"material\": \"foil-membrane\", \"rect\": [0, 1200, 3000, 1350] },"
                + "{ \"id\": \"M\\\"1\", \"material\": \"foil-membrane\", \"rect\": [0, 0, 3000, 1300] } ] }");
    }

    /** Two courses of thirty short sheets each, lapped too little everywhere. */
    static CheckResult crowded() {
        StringBuilder pieces = new StringBuilder();
        for (int i = 0; i < 60; i++) {
            pieces.append(i == 0 ? "" : ", ").append("{ \"id\": \"M").append(i).append("\", \"material\": \"foil-membrane\", \"rect\": [")
                    .append(i % 30 * 400).append(i < 30 ? ", -40, 470, 1300] }" : ", 1200, 470, 1350] }");
        }
        return check("{ \"rainlap\": 1, \"name\": \"Crowded\", \"wall\": { \"outline\": [[0, 0], [12000, 0], [12000, 2400], [0, 2400]],"
                + " \"edges\": [\"base\", \"free\", \"eave\", \"free\"] }, \"pieces\": [" + pieces + "] }");
    }

    private static final List<Shipped> ALONE = Shipped.all();

    static Stream<Shipped> walls() {
        return Stream.concat(ALONE.stream(), Shipped.inBuildings().stream());
    }

    @ParameterizedTest
    @MethodSource("walls")
    void tellsEveryWeakPointAndNothingFromElsewhere(Shipped wall) {
        String page = page(wall.result()), plain = page.replace("<span class=\"k\">(</span>", "(");
        for (WeakPoint p : wall.result().weakPoints()) {
            Finding f = p.finding();
            assertTrue(page.contains("id=\"weak-" + p.number() + "\""), wall + " " + p.number());
            for (String text : List.of(f.says(), f.remedy(), f.source().text(), f.where().inWords(), f.rule())) {
                assertTrue(plain.contains(Html.escaped(text)), () -> wall + ": " + text);
            }
        }
        Stack.of(wall.result().evidence().elevation(), Stage.FINISHED).on(Surface.WALL).stream().map(face -> face.piece().id())
                .forEach(id -> assertTrue(page.contains("data-piece=\"" + Html.escaped(id) + "\""), () -> wall + ": " + id));
        assertFalse(Pattern.compile("(src|href)=\"(?!data:)|url\\((?!data:)|@import|https?://(?!www\\.w3\\.org)").matcher(page).find());
        assertEquals(page, page(wall.result()));
    }

    @Test void namesStayText() {
        String page = page(nasty());
        assertEquals(1, page.split("<script", -1).length - 1);
        assertEquals(1, page.split("</script", -1).length - 1);
        assertFalse(page.contains("<img"));
        assertTrue(page.contains("<h1>&lt;/script&gt;&lt;script&gt;alert(1)&lt;/script&gt; &quot;quoted&quot;"));
    }

    @Test void theScriptIsShort() {
        for (String script : List.of("page.js", "view.js")) {
            assertTrue(Shell.resource(script).lines().count() < 300, script);
        }
    }

    @Test void theIndexPutsTheWorstFirst() {
        List<IndexPage.Entry> entries = ALONE.stream().map(w -> new IndexPage.Entry(w.file(), w.file() + ".html", w.result())).toList();
        String index = IndexPage.of("All", entries);
        List<Integer> defences = Pattern.compile("<tr><td>([0-9])").matcher(index).results().map(m -> Integer.valueOf(m.group(1))).toList();
        assertEquals(entries.stream().mapToInt(e -> e.result().weakPoints().size()).sum(), defences.size());
        assertEquals(defences.stream().sorted().toList(), defences);
        List<String> walls = Pattern.compile("<li><a href=\"([^\"]*)\"").matcher(index).results().map(m -> m.group(1)).toList();
        assertEquals(entries.size(), walls.size());
        CheckResult first = entries.stream().filter(e -> e.link().equals(walls.get(0))).findFirst().orElseThrow().result();
        assertEquals(0, first.weakPoints().get(0).finding().defences());
        assertTrue(entries.stream().filter(e -> e.link().equals(walls.get(walls.size() - 1))).allMatch(e -> e.result().weakPoints().isEmpty()));
    }

    @Test void theNumbersOfABuildingRunThroughItsIndex() {
        Building b = BuildingFile.read(Path.of("elevations/buildings/estuary-hut.json")).building().orElseThrow();
        List<IndexPage.Entry> entries = BuildingChecker.check(b, Stage.WRAP, e -> Practices.find(e.practice().orElseThrow()).orElseThrow(), Rules.all(), 1).walls().stream()
                .map(w -> new IndexPage.Entry(w.wall().id(), w.wall().id() + ".html", w.result())).toList();
        List<Integer> numbers = Pattern.compile("#weak-([0-9]+)\"").matcher(IndexPage.of("Hut", entries)).results().map(m -> Integer.valueOf(m.group(1))).toList();
        assertEquals(IntStream.rangeClosed(1, numbers.size()).boxed().toList(), numbers);
        assertTrue(numbers.size() > 20);
    }

    @Test void whatTurnsTextIsShown() {
        assertEquals("a\uFFFDb\uFFFD&lt;&quot;&#39;&amp;", Html.escaped("a\u202eb\u0000<\"'&"));
    }

    @Test void linksAreEncoded() {
        assertEquals("a%20b%22%3C.html", IndexPage.link(Path.of("x/index.html"), Path.of("x/a b\"<.html")));
    }
}
