package rainlap.file;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rainlap.practice.Limit;
import rainlap.practice.LimitValue;
import rainlap.practice.Practice;
import rainlap.practice.Practices;
import rainlap.source.Known;

class PracticeFileTest {
    private static final ElevationSchema SCHEMA = ElevationSchema.named("practice.schema.json");
    private static final String CREW = """
            { // ours
              "rainlap": 1, "practice": "our-crew", "base": "us-irc-2015", "title": "Our crew",
              "limits": [
                { "limit": "course-lap", "value": 120, "note": "wind from the sea" },
                { "limit": "corner-wrap", "value": 250, "document": "A drawing", "clause": "sheet 3", "known": "from memory" },
                { "limit": "tape-free-lap", "never": true },
              ]
            }
            """;

    private static PracticeReading read(String json) {
        return PracticeFile.read("crew.json", json.getBytes(StandardCharsets.UTF_8));
    }

    @Test
    void itSpeaksFirstThenItsBaseThenCommon() throws IOException {
        Practice crew = read(CREW).practice().orElseThrow();
        assertEquals("our-crew", crew.id());
        assertEquals("Our crew", crew.title());
        assertSaid(crew, Limit.COURSE_LAP, 120, "our-crew", Known.COMMON_PRACTICE);
        assertSaid(crew, Limit.CORNER_WRAP, 250, "our-crew", Known.FROM_MEMORY);
        assertSaid(crew, Limit.END_LAP, 152, "us-irc-2015", Known.PUBLISHED);
        assertSaid(crew, Limit.TAPE_COVER, 25, "common", Known.COMMON_PRACTICE);
        assertTrue(crew.get(Limit.TAPE_FREE_LAP).isNever());
        assertEquals(List.of(), SCHEMA.complaints(CREW.getBytes(StandardCharsets.UTF_8)));
    }

    private static void assertSaid(Practice p, Limit limit, double value, String by, Known known) {
        LimitValue v = p.get(limit);
        assertEquals(value, v.value(), limit.id());
        assertEquals(by, v.spokenBy(), limit.id());
        assertEquals(known, v.source().known(), limit.id());
    }

    /** Each fault is told at its line, with what would be right; the schema refuses it too unless it is beyond a schema. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            "our-crew"                    | "Our crew!"                | 2 | must be lower-case letters   | write "our-crew"        | true
            "our-crew"                    | "common"                   | 2 | is a practice of the product | choose a name           | false
            "us-irc-2015"                 | "us-irc"                   | 2 | cannot be "us-irc"           | us-irc-2015             | true
            "course-lap"                  | "coarse-lap"               | 4 | cannot be "coarse-lap"       | course-lap              | false
            "value": 120                  | "value": -1                | 4 | must be above 0              |                         | true
            "value": 120,                 |                            | 4 | "value" is missing           | add "value": 150        | true
            "never": true                 | "never": true, "value": 3  | 6 | exclude each other           | keep one                | true
            "known": "from memory"        | "known": "read"            | 5 | cannot be "read"             | from memory             | true
            , "known": "from memory"      |                            | 5 | how well its value is known  | add "known"             | false
            "document": "A drawing",      |                            | 5 | belongs to a document        | add "document"          | false
            "tape-free-lap"               | "course-lap"               | 6 | stands here twice            | keep one                | false
            "title": "Our crew",          | "titel": "Our crew",       | 2 | there is no key "titel"      | title                   | true
            """)
    void faultsAreTold(String right, String wrong, int line, String what, String hint, boolean schemaToo) throws IOException {
        assertTrue(CREW.contains(right), right);
        String json = CREW.replace(right, wrong == null ? "" : wrong);
        List<Problem> problems = read(json).problems();
        assertEquals(1, problems.size(), problems::toString);
        assertEquals(line, problems.get(0).line(), problems::toString);
        assertTrue(problems.get(0).what().contains(what) && problems.get(0).hint().contains(hint == null ? "" : hint), problems::toString);
        assertEquals(schemaToo, !SCHEMA.complaints(json.getBytes(StandardCharsets.UTF_8)).isEmpty());
    }

    @Test
    void whatIsNoFileIsTold() {
        assertEquals("there is no such file", PracticeFile.read(Path.of("nowhere.json")).problems().get(0).what());
        assertEquals("this is a folder", PracticeFile.read(Path.of("src")).problems().get(0).what());
        assertFalse(read("").problems().isEmpty());
        assertFalse(read("[]").problems().isEmpty());
    }

    @Test
    void schemaAndReaderKnowTheSame() {
        assertEquals(new TreeSet<>(PracticeFile.KEYS), keys(SCHEMA.json()));
        assertEquals(new TreeSet<>(PracticeFile.LIMIT_KEYS), keys(SCHEMA.json().at("/$defs/limit")));
        Set<String> bases = new TreeSet<>();
        SCHEMA.json().at("/properties/base/enum").forEach(n -> bases.add(n.asText()));
        assertEquals(new TreeSet<>(Practices.ids()), bases);
    }

    private static Set<String> keys(JsonNode object) {
        Set<String> out = new TreeSet<>();
        object.get("properties").fieldNames().forEachRemaining(out::add);
        return out;
    }
}
