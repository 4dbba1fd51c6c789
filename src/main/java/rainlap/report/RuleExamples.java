package rainlap.report;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.net.URI;
import java.net.URISyntaxException;
import java.net.URL;
import java.nio.file.FileSystem;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/** The elevations that show a rule held and broken; they ship beside its page. */
public final class RuleExamples {
    private RuleExamples() {}

    /** Their names, {@code bad-…} before {@code good-…}, sorted; empty where a rule has none. */
    public static List<String> names(String rule) {
        URL page = RuleExamples.class.getResource("/rules/" + rule + "/page.md");
        if (page == null) {
            return List.of();
        }
        try {
            URI uri = page.toURI();
            if (!uri.getScheme().equals("jar")) {
                return names(Path.of(uri).getParent());
            }
            try (FileSystem jar = FileSystems.newFileSystem(uri, Map.of())) {
                return names(jar.getPath("/rules/" + rule));
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (URISyntaxException e) {
            throw new IllegalStateException(e);
        }
    }

    private static List<String> names(Path folder) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(f -> f.getFileName().toString()).filter(n -> n.matches("(good|bad)-.*\\.json")).sorted().toList();
        }
    }

    /** The bytes of one. */
    public static byte[] bytes(String rule, String name) {
        try (InputStream in = RuleExamples.class.getResourceAsStream("/rules/" + rule + "/" + name)) {
            if (in == null) {
                throw new IllegalArgumentException(rule + " has no example " + name);
            }
            return in.readAllBytes();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
