package rainlap.practice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;

class PracticeReaderTest {
    private static final String GOOD_LIMIT =
            "{\"limit\":\"end-lap\",\"value\":90.5,\"unit\":\"mm\",\"document\":\"Invented\",\"known\":\"published\"}";

    private static Practice read(String limits) {
        return readWhole("{\"practice\":\"mine\",\"title\":\"Mine\",\"about\":\"Invented.\",\"limits\":[" + limits + "]}");
    }

    private static Practice readWhole(String json) {
        return PracticeReader.withFallback("mine", json.getBytes(StandardCharsets.UTF_8), Practices.common());
    }

    private static void refused(String because, String limits) {
        String message = assertThrows(IllegalArgumentException.class, () -> read(limits)).getMessage();
        assertTrue(message.contains(because), message);
    }

    private static String with(String oldText, String newText) {
        assertTrue(GOOD_LIMIT.contains(oldText), oldText);
        return GOOD_LIMIT.replace(oldText, newText);
    }

    @Test
    void aGoodFileIsRead() {
        Practice mine = read(GOOD_LIMIT);
        assertEquals(9050, mine.get(Limit.END_LAP).hundredths());
        assertEquals("mine", mine.get(Limit.END_LAP).spokenBy());
        assertEquals("common", mine.get(Limit.COURSE_LAP).spokenBy());
        assertTrue(mine.isSilentOn(Limit.COURSE_LAP));
    }

    @Test
    void unknownAndDoubledKeysAreRefused() {
        refused("colour", with("\"value\"", "\"colour\":\"red\",\"value\""));
        refused("Duplicate", with("\"value\"", "\"unit\":\"mm\",\"value\""));
        assertThrows(IllegalArgumentException.class, () -> readWhole("{\"practice\":\"mine\",\"limit\":[]}"));
    }

    @Test
    void wrongValuesAreRefused() {
        refused("course", with("end-lap", "course"));
        refused("not in in", with("\"mm\"", "\"in\""));
        refused("needs a value", with("\"value\":90.5,", ""));
        refused("needs a value", with("90.5", "1e400"));
        refused("above zero", with("90.5", "-90.5"));
        refused("Cannot coerce", with("90.5", "\"90.5\""));
        refused("only one can be true", with("\"value\"", "\"never\":true,\"value\""));
        refused("given twice", GOOD_LIMIT + "," + GOOD_LIMIT);
    }

    @Test
    void aLimitMustSayHowWellItIsKnown() {
        refused("how well", with(",\"known\":\"published\"", ""));
        refused("how well", with("\"published\"", "\"surely\""));
        refused("Unrecognized", with("\"known\"", "\"row\":\"0.1\",\"known\""));
        refused("name of its document", with("\"document\":\"Invented\",", ""));
        refused("no document", with("\"published\"", "\"common practice (no source)\""));
    }

    @Test
    void aFileHoldsThePracticeItIsNamedAfter() {
        String json = "{\"practice\":\"other\",\"title\":\"Other\",\"about\":\"Invented.\",\"limits\":[]}";
        assertThrows(IllegalArgumentException.class, () -> readWhole(json));
        assertThrows(IllegalArgumentException.class, () -> readWhole(json.replace("other", "mine") + "x"));
        assertThrows(IllegalStateException.class, () -> PracticeReader.read("no-such-file", Practices.common()));
    }

    @Test
    void commonMustBeComplete() {
        String json = "{\"practice\":\"mine\",\"title\":\"Mine\",\"about\":\"Invented.\",\"limits\":[" + GOOD_LIMIT + "]}";
        String message = assertThrows(IllegalArgumentException.class,
                        () -> PracticeReader.common("mine", json.getBytes(StandardCharsets.UTF_8))).getMessage();
        assertTrue(message.contains("course-lap") && !message.contains(" end-lap,"), message);
    }
}
