package rainlap.file;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The page that explains the file form is written by hand; this holds it to the schema, the reader and the limits. */
class FileFormatPageTest {
    private static final Path PAGE = Path.of("docs/file-format.md");
    private static final Pattern BLOCK = Pattern.compile("```json *(\\w*)\\n(.*?)```", Pattern.DOTALL);

    private static String page() throws IOException {
        return Files.readString(PAGE);
    }

    @Test
    void everyKeyAndWordOfTheSchemaIsExplained() throws IOException {
        Set<String> words = new TreeSet<>();
        collect(ElevationSchema.named("elevation.schema.json").json(), words);
        collect(ElevationSchema.named("building.schema.json").json(), words);
        assertTrue(words.size() > 90, "the schema was walked");
        String page = page();
        assertEquals(List.of(), words.stream().filter(w -> !page.contains("`" + w + "`") && !page.contains("\"" + w + "\"")).toList());
    }

    private static void collect(JsonNode schema, Set<String> words) {
        schema.path("properties").fieldNames().forEachRemaining(words::add);
        schema.path("enum").forEach(w -> words.add(w.asText()));
        schema.forEach(child -> collect(child, words));
    }

    @Test
    void examplesReadWithoutProblems() throws IOException {
        Matcher m = BLOCK.matcher(page());
        String whole = "";
        List<String> kinds = new ArrayList<>(), buildings = new ArrayList<>();
        while (m.find()) {
            whole = whole.isEmpty() ? m.group(2) : whole;
            if (m.group(1).equals("building")) {
                assertEquals(List.of(), ElevationSchema.named("building.schema.json").complaints(m.group(2).getBytes(StandardCharsets.UTF_8)));
                buildings.add(m.group(2));
                continue;
            }
            String json = m.group(1).isEmpty() ? m.group(2) : within(whole, m.group(1), m.group(2));
            ElevationFileTest.sound(json);
            assertEquals(List.of(), ElevationSchema.named("elevation.schema.json").complaints(json.getBytes(StandardCharsets.UTF_8)));
            kinds.add(m.group(1));
        }
        assertEquals(1, buildings.size());
        Path drawn = Path.of("elevations/buildings/from-the-page.json");
        assertEquals(List.of(), BuildingFile.read(drawn, buildings.get(0).getBytes(StandardCharsets.UTF_8)).problems());
        assertEquals(List.of("", "opening", "piece", "piece", "expectation"), kinds);
    }

    /** A part put into the complete example. */
    private static String within(String whole, String kind, String part) {
        return switch (kind) {
            case "opening" -> whole.replace("\"openings\": [", "\"openings\": [" + part + ",");
            case "piece" -> whole.replace("    { \"id\": \"H1\"", part + ",    { \"id\": \"H1\"");
            default -> whole.replace("\"pieces\": [\n", "\"expect\": [" + part + "], \"pieces\": [\n");
        };
    }

    @Test
    void limitsOnThePageAreTheStatedOnes() throws IOException {
        Limits l = Limits.STATED;
        String limits = page().substring(page().indexOf("## Limits"), page().indexOf("## When"));
        List<String> missing = Stream.of(l.bytes(), l.depth(), l.values(), l.pieces(), l.layers(), l.points(), l.linePoints(), l.holes(), l.tucks(), l.idLength(),
                l.textLength(), l.wktLength(), l.problems()).map(n -> "| " + n).filter(n -> !limits.contains(n)).toList();
        assertEquals(List.of(), missing);
    }
}
