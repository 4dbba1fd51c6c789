package rainlap;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class GeneratedTest {
    @TempDir
    Path folder;

    @Test void aChangedFileIsRewrittenAndFailsOnce() throws IOException {
        Path file = folder.resolve("docs/a.md");
        assertThrows(AssertionError.class, () -> Generated.file(file, "one\n"));
        Generated.file(file, "one\n");
        Files.writeString(file, "edited by hand\n");
        assertThrows(AssertionError.class, () -> Generated.file(file, "one\n"));
        assertEquals("one\n", Files.readString(file));
    }

    @Test void aFileThatNoLongerBelongsIsDeletedAndFailsOnce() throws IOException {
        Map<String, String> files = Map.of("a.md", "a\n");
        assertThrows(AssertionError.class, () -> Generated.folder(folder, ".md", files));
        Files.writeString(folder.resolve("old.md"), "old\n");
        Files.writeString(folder.resolve("picture.svg"), "kept\n");
        assertThrows(AssertionError.class, () -> Generated.folder(folder, ".md", files));
        Generated.folder(folder, ".md", files);
        assertFalse(Files.exists(folder.resolve("old.md")));
        assertTrue(Files.exists(folder.resolve("picture.svg")));
    }
}
