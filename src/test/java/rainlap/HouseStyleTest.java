package rainlap;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** What can be read off the sources. */
class HouseStyleTest {
    private static final int LONGEST_FILE = 300;
    private static final Path MAIN = Path.of("src/main/java"), TEST = Path.of("src/test/java");
    /** What only {@code cli} may touch: the terminal, the process, its environment, the clock. */
    private static final Pattern OUTSIDE_WORLD = Pattern.compile("System\\.(out|err|in|exit|getenv|getProperty|setProperty|currentTimeMillis"
            + "|nanoTime|console)\\b|\\.now\\(|\\bClock\\b|new Date\\(|\\bexec\\(|ProcessBuilder|printStackTrace|Runtime\\.getRuntime\\(\\)\\.(exit|halt)");
    /** What differs from one machine or run to the next. */
    private static final Pattern UNSTEADY = Pattern.compile("\\.to(Lower|Upper)Case\\(\\)|\\.getBytes\\(\\)|new Random\\(\\)|Math\\.random"
            + "|new FileReader|new FileWriter|Locale\\.getDefault|Charset\\.defaultCharset|identityHashCode|String\\.format\\(\"|\\.formatted\\(");

    private static List<Path> sources(Path root) {
        try (Stream<Path> all = Files.walk(root)) {
            return all.filter(p -> p.toString().endsWith(".java")).sorted().toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static List<String> lines(Path file) {
        try {
            return Files.readAllLines(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Lines of code that a pattern is found in, as file:line: text. Lines of comments and Javadoc are left out. */
    private static List<String> found(List<Path> files, Pattern pattern) {
        List<String> out = new ArrayList<>();
        for (Path file : files) {
            List<String> lines = lines(file);
            for (int i = 0; i < lines.size(); i++) {
                String line = lines.get(i).strip();
                if (!line.startsWith("*") && !line.startsWith("//") && !line.startsWith("/*") && pattern.matcher(line).find()) {
                    out.add(file + ":" + (i + 1) + ": " + line);
                }
            }
        }
        return out;
    }

    private static List<Path> all() {
        return Stream.concat(sources(MAIN).stream(), sources(TEST).stream()).toList();
    }

    @Test void onlyCliTouchesTheOutsideWorld() {
        List<Path> others = sources(MAIN).stream().filter(p -> !p.startsWith(MAIN.resolve("rainlap/cli"))).toList();
        assertTrue(others.size() > 50);
        assertEquals(List.of(), found(others, OUTSIDE_WORLD));
    }

    @Test void theSearchFindsWhatItLooksFor() {
        assertTrue(OUTSIDE_WORLD.matcher("System.out.println(x);").find());
        assertTrue(OUTSIDE_WORLD.matcher("Instant.now()").find());
        assertTrue(UNSTEADY.matcher("word.toLowerCase()").find());
        assertTrue(found(sources(MAIN), OUTSIDE_WORLD).stream().anyMatch(s -> s.contains("cli/Main.java")));
    }

    @Test void nothingDependsOnTheMachine() {
        assertEquals(List.of(), found(sources(MAIN), UNSTEADY));
    }

    @Test void noFileIsLongerThan300Lines() {
        assertEquals(List.of(), all().stream().filter(p -> lines(p).size() > LONGEST_FILE).map(p -> p + ": " + lines(p).size()).toList());
    }

    @Test void noImportTakesAWholePackage() {
        assertEquals(List.of(), found(all(), Pattern.compile("^import .*\\*;")));
    }

    @Test void everyPackageSaysWhatItIs() {
        assertEquals(List.of(), sources(MAIN).stream().map(Path::getParent).distinct()
                .filter(folder -> !Files.exists(folder.resolve("package-info.java"))).toList());
    }

    @Test void noPackageIsADrawerForOddments() {
        assertEquals(List.of(), sources(MAIN).stream().filter(p -> p.toString().matches(".*/(util|utils|base|common|helper)/.*")).toList());
    }
}
