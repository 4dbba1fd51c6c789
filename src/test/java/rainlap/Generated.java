package rainlap;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;

/**
 * Files that are generated and committed. Whatever differs is rewritten, and then the test fails once: look at the change, run again,
 * commit.
 */
final class Generated {
    private Generated() {}

    /** Holds one file to its content. */
    static void file(Path file, String content) {
        report(update(file, content) ? List.of(file.toString()) : List.of());
    }

    /** Holds a folder to these files, by name, and nothing else with their ending: a file that no longer belongs there is deleted. */
    static void folder(Path folder, String ending, Map<String, String> files) {
        List<String> changed = new ArrayList<>();
        new TreeMap<>(files).forEach((name, content) -> {
            if (update(folder.resolve(name), content)) {
                changed.add(folder.resolve(name).toString());
            }
        });
        for (Path file : list(folder)) {
            String name = file.getFileName().toString();
            if (name.endsWith(ending) && !files.containsKey(name)) {
                delete(file);
                changed.add(file + " (deleted)");
            }
        }
        report(changed);
    }

    private static boolean update(Path file, String content) {
        try {
            if (Files.exists(file) && Files.readString(file).equals(content)) {
                return false;
            }
            Files.createDirectories(file.toAbsolutePath().getParent());
            Files.writeString(file, content);
            return true;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static List<Path> list(Path folder) {
        try (Stream<Path> files = Files.list(folder)) {
            return files.sorted().toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static void delete(Path file) {
        try {
            Files.delete(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static void report(List<String> changed) {
        assertEquals(List.of(), changed, "rewritten: look at the change, run again, commit");
    }
}
