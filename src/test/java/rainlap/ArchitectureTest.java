package rainlap;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.spi.ToolProvider;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** Packages import only downwards, and each library has its place: read from the compiled classes, without exemptions. */
class ArchitectureTest {
    static final List<String> BOTTOM_TO_TOP = List.of("measure", "geom", "source", "material", "practice", "wall", "building", "stack", "joint",
            "water", "rule", "rule.lap", "rule.tape", "rule.opening", "rule.penetration", "rule.edge", "rule.cavity", "rule.face", "rule.water", "rule.material", "rule.transport", "defect", "check", "mend", "file", "paper", "drawing", "report", "page", "cli");
    /** Packages that see only these, whatever stands below them. */
    private static final Map<String, Set<String>> SEES_ONLY = Map.of(
            "paper", Set.of("geom", "measure"),
            "file", Set.of("building", "wall", "practice", "material", "source", "geom", "measure"));
    private static final Map<String, Set<String>> LIBRARY_HOMES = Map.of(
            "org.locationtech.jts", Set.of("geom"),
            "com.fasterxml.jackson", Set.of("material", "practice", "file", "report"),
            "org.apache.batik", Set.of("paper"),
            "org.apache.pdfbox", Set.of("paper"),
            "org.dhatim.fastexcel", Set.of("report"),
            "javax.xml", Set.of("paper"),
            "java.awt", Set.of("paper"),
            "java.text", Set.of("paper"), // which letters are read from right to left; numbers are set by measure
            "com.sun.net.httpserver", Set.of("cli"),
            "picocli", Set.of("cli"));
    /** Of the Java platform, what any package may use. */
    private static final Pattern EVERYWHERE = Pattern.compile("java\\.(lang|util|io|nio|math|net|security|time)(\\..*)?");

    private static final List<Import> IMPORTS = jdeps();

    /** One package that uses another; {@code to} without the root for our own. */
    record Import(String from, String to, boolean ours) {
        @Override
        public String toString() {
            return from + " uses " + to;
        }
    }

    /** Packages only, from the classes as compiled. */
    private static List<Import> jdeps() {
        StringWriter out = new StringWriter(), err = new StringWriter();
        int status = ToolProvider.findFirst("jdeps").orElseThrow().run(new PrintWriter(out), new PrintWriter(err), "-verbose:package",
                "--multi-release", "base", "target/classes");
        assertEquals(0, status, err::toString);
        Matcher line = Pattern.compile("^ +rainlap\\.(\\S+) +-> (rainlap\\.)?(\\S+) .*$", Pattern.MULTILINE).matcher(out.toString());
        return line.results().map(m -> new Import(m.group(1), m.group(3), m.group(2) != null)).toList();
    }

    @Test void theListingIsReadAtAll() {
        assertTrue(IMPORTS.contains(new Import("check", "rule", true)), () -> "jdeps shows " + IMPORTS);
        assertTrue(IMPORTS.contains(new Import("cli", "picocli", false)), () -> "jdeps shows " + IMPORTS);
    }

    @Test void everyPackageHasItsPlace() {
        Set<String> used = IMPORTS.stream().map(Import::from).collect(Collectors.toCollection(TreeSet::new));
        used.removeAll(BOTTOM_TO_TOP);
        assertEquals(Set.of(), used, "give each a place in BOTTOM_TO_TOP");
    }

    @Test void packagesImportOnlyDownwards() {
        assertEquals(List.of(), IMPORTS.stream().filter(Import::ours)
                .filter(i -> BOTTOM_TO_TOP.indexOf(i.from()) <= BOTTOM_TO_TOP.indexOf(i.to())).toList(),
                "move the shared type down, or hand a value up");
    }

    @Test void rulesOfOneThemeKnowNoOther() {
        assertEquals(List.of(), IMPORTS.stream().filter(Import::ours)
                .filter(i -> i.from().startsWith("rule.") && i.to().startsWith("rule.")).toList());
    }

    @Test void paperKnowsNoWallAndFilesKnowNoCheck() {
        assertEquals(List.of(), IMPORTS.stream().filter(Import::ours)
                .filter(i -> SEES_ONLY.containsKey(i.from()) && !SEES_ONLY.get(i.from()).contains(i.to())).toList());
    }

    @Test void eachLibraryKeepsToItsPlace() {
        assertEquals(List.of(), IMPORTS.stream().filter(i -> !i.ours()).filter(i -> !isAtHome(i)).toList());
    }

    private static boolean isAtHome(Import i) {
        return EVERYWHERE.matcher(i.to()).matches() || LIBRARY_HOMES.entrySet().stream()
                .anyMatch(home -> i.to().startsWith(home.getKey()) && home.getValue().contains(i.from()));
    }
}
