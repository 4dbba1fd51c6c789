package rainlap.file;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assertions.fail;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Small wrong files, each with the messages it must give beside it. The name's first word says what kind of wrong: {@code text} is no
 * sound JSON, {@code form} breaks the schema, {@code sense} is a form that the schema cannot see through. New cases and changed wording:
 * run with {@code -Dgolden=accept}, then read what was written.
 */
class InvalidCasesTest {
    private static final Path FOLDER = Path.of("src/test/resources/cases/invalid");
    private static final ElevationSchema SCHEMA = ElevationSchema.named("elevation.schema.json");
    private static final boolean ACCEPT = "accept".equals(System.getProperty("golden"));

    static List<String> cases() throws IOException {
        try (Stream<Path> files = Files.list(FOLDER)) {
            return files.map(p -> p.getFileName().toString()).filter(n -> n.endsWith(".json")).sorted().toList();
        }
    }

    @ParameterizedTest
    @MethodSource("cases")
    void messagesAreAsReviewed(String name) throws IOException {
        byte[] bytes = Files.readAllBytes(FOLDER.resolve(name));
        Reading reading = ElevationFile.read(name, bytes);
        assertTrue(reading.elevation().isEmpty(), "this file must be refused");
        String said = String.join("\n", reading.problems().stream().flatMap(p -> p.lines().stream()).toList()) + "\n";
        Path golden = FOLDER.resolve(name.replace(".json", ".txt"));
        if (ACCEPT) {
            Files.writeString(golden, said);
        } else if (Files.notExists(golden)) {
            fail(golden + " is missing: run with -Dgolden=accept and read it");
        } else {
            assertEquals(Files.readString(golden), said);
        }
    }

    @ParameterizedTest
    @MethodSource("cases")
    void schemaSeesWhatItCanSee(String name) throws IOException {
        byte[] bytes = Files.readAllBytes(FOLDER.resolve(name));
        if (name.startsWith("form-")) {
            assertFalse(SCHEMA.complaints(bytes).isEmpty(), "the schema must refuse it");
        } else if (name.startsWith("sense-")) {
            assertEquals(List.of(), SCHEMA.complaints(bytes), "name it form-…: the schema sees it");
        } else {
            assertTrue(name.startsWith("text-"), "begin the name with text-, form- or sense-");
        }
    }

    @Test
    void everyMessageBelongsToACase() throws IOException {
        try (Stream<Path> files = Files.list(FOLDER)) {
            List<String> stray = files.map(p -> p.getFileName().toString()).filter(n -> n.endsWith(".txt"))
                    .filter(n -> Files.notExists(FOLDER.resolve(n.replace(".txt", ".json")))).toList();
            assertEquals(List.of(), stray);
        }
    }

    @ParameterizedTest
    @MethodSource("cases")
    void noMessageSpeaksOfOurInsides(String name) throws IOException {
        for (Problem p : ElevationFile.read(name, Files.readAllBytes(FOLDER.resolve(name))).problems()) {
            String words = p.what() + " " + p.hint();
            assertFalse(words.matches("(?s).*(Exception|jackson|rainlap\\.|java\\.|org\\.|\\bnull pointer).*"), words);
            assertTrue(p.line() >= 1 && p.column() >= 1, "a place");
        }
    }
}
