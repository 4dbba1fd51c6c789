package rainlap.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import rainlap.file.Nearest;
import rainlap.report.PlainText;

/** "Did you mean" for words and file names. */
final class Suggestion {
    /** Folders with more entries than this are not searched. */
    private static final int MOST_ENTRIES = 10_000;

    private Suggestion() {}

    static Optional<String> of(String word, Collection<String> known) {
        return Nearest.of(word, known).map(w -> "did you mean " + quoted(w) + "?");
    }

    /** The existing file in the same folder whose name is nearest. */
    static Optional<String> ofFile(Path missing) {
        Path folder = missing.toAbsolutePath().normalize().getParent();
        Path name = missing.getFileName();
        if (folder == null || name == null || !Files.isDirectory(folder)) {
            return Optional.empty();
        }
        try (Stream<Path> entries = Files.list(folder)) {
            List<String> names = entries.limit(MOST_ENTRIES).filter(Files::isRegularFile).map(p -> p.getFileName().toString())
                    .sorted().toList();
            return Nearest.of(name.toString(), names).map(n -> "did you mean " + quoted(missing.resolveSibling(n).toString()) + "?");
        } catch (IOException e) {
            return Optional.empty();
        }
    }

    static String quoted(String word) {
        return "\"" + PlainText.of(word) + "\"";
    }
}
