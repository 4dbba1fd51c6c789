package rainlap.file;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is wrong with a file as a whole has no line. */
class UnreadableFileTest {
    @TempDir
    Path folder;

    private static List<String> lines(Path path) {
        Reading r = ElevationFile.read(path);
        assertTrue(r.elevation().isEmpty());
        assertEquals(1, r.problems().size());
        assertEquals(0, r.problems().get(0).line());
        return r.problems().get(0).lines();
    }

    @Test
    void missing() {
        Path p = folder.resolve("none.json");
        assertEquals(List.of(p + ": there is no such file"), lines(p));
    }

    @Test
    void folder() {
        assertEquals(List.of(folder + ": this is a folder", "  name one elevation file in it"), lines(folder));
    }

    @Test
    void tooLarge() throws IOException {
        Path p = folder.resolve("large.json");
        try (var file = new java.io.RandomAccessFile(p.toFile(), "rw")) {
            file.setLength(64L << 20 | 1);
        }
        assertEquals(List.of(p + ": the file is larger than 67108864 bytes", "  split the wall into several elevations"), lines(p));
    }

    @Test
    void readsWhatIsThere() throws IOException {
        Path p = Files.writeString(folder.resolve("hut.json"), ElevationFileTest.HUT);
        Reading r = ElevationFile.read(p);
        assertEquals(p.toString(), r.file());
        assertEquals(4, r.elevation().orElseThrow().pieces().size());
    }
}
