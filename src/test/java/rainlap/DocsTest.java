package rainlap;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import rainlap.check.Rules;
import rainlap.cli.HelpPages;
import rainlap.cli.Main;
import rainlap.drawing.Picture;
import rainlap.material.Catalogue;
import rainlap.material.MaterialTable;
import rainlap.paper.SheetCheck;
import rainlap.practice.Disagreements;
import rainlap.practice.PracticeTable;
import rainlap.practice.Practices;
import rainlap.report.LimitLines;
import rainlap.report.RuleExamples;
import rainlap.report.RulePage;
import rainlap.rule.Rule;
import rainlap.rule.RuleInfo;

/** The generated part of {@code docs/}: rewritten from the program, and failing when it changed. */
class DocsTest {
    private static final Path DOCS = Path.of("docs");
    private static final int COLUMNS = 100;
    /** Bytes of a rule's picture: a folder of them is to stay small beside the program. */
    private static final int LARGEST_PICTURE = 55_000;
    private static final String OUTPUT = "<!-- output of the wall above; written by DocsTest -->", OUTPUT_END = "<!-- end of output -->";

    @Test void commands() {
        StringBuilder page = new StringBuilder("# Commands\n\nWhat `rainlap COMMAND --help` prints. Rainlap is started by"
                + " `java -jar target/rainlap.jar`.\n");
        HelpPages.all().forEach((command, help) -> page.append("\n## ").append(command).append("\n\n").append(fenced(help.lines().toList())));
        Generated.file(DOCS.resolve("commands.md"), page.toString());
    }

    @Test void schemas() {
        Map<String, String> files = new TreeMap<>();
        HelpPages.schemas().forEach((form, schema) -> files.put(form + ".schema.json", schema));
        Generated.folder(DOCS.resolve("schema"), ".json", files);
    }

    @Test void practices() {
        Generated.file(DOCS.resolve("practices.md"), "# Practices\n\nWhat `rainlap practices` prints.\n\n"
                + fenced(new PracticeTable(Practices.all(), Disagreements.all()).lines()));
    }

    @Test void publishedValues() {
        Generated.file(DOCS.resolve("published-values.md"), PublishedRows.page());
    }

    @Test void materials() {
        Generated.file(DOCS.resolve("materials.md"), "# Materials\n\nWhat `rainlap materials` prints: the built-in, generic catalogue.\n\n"
                + fenced(new MaterialTable(Catalogue.builtIn()).lines()));
    }

    /** The README's picture is what its command draws. */
    @Test void picture() throws IOException {
        Path drawn = Path.of("target/docs/estuary-hut-north.svg");
        Files.createDirectories(drawn.getParent());
        assertEquals(0, run("check", "elevations/estuary-hut-north.json", "--sheet", drawn.toString()).status());
        Generated.file(DOCS.resolve("estuary-hut-north.svg"), Files.readString(drawn));
    }

    /** The README's wall can be read, and what stands beneath it is what the check prints of it. */
    @Test void readme() throws IOException {
        Path readme = Path.of("README.md"), wall = Path.of("target/docs/store-west.json");
        String text = Files.readString(readme);
        Files.createDirectories(wall.getParent());
        Files.writeString(wall, between(text, "```json\n", "```\n"));
        Ran ran = run("check", wall.toString(), "--no-sheet");
        assertEquals(0, ran.status(), ran.err());
        String block = between(text, OUTPUT, OUTPUT_END);
        Generated.file(readme, text.replace(block, "\n```\n" + ran.out().replace(wall.toString(), "store-west.json") + "```\n"));
    }

    private static String between(String text, String from, String to) {
        int start = text.indexOf(from) + from.length();
        return text.substring(start, text.indexOf(to, start));
    }

    private record Ran(int status, String out, String err) {}

    private static Ran run(String... args) {
        ByteArrayOutputStream out = new ByteArrayOutputStream(), err = new ByteArrayOutputStream();
        int status = Main.run(List.of(args), InputStream.nullInputStream(), new PrintStream(out, false, StandardCharsets.UTF_8),
                new PrintStream(err, false, StandardCharsets.UTF_8));
        return new Ran(status, out.toString(StandardCharsets.UTF_8), err.toString(StandardCharsets.UTF_8));
    }

    @Test void rules() {
        Map<String, String> files = new TreeMap<>();
        StringBuilder index = new StringBuilder("# Rules\n\nWhat `rainlap explain RULE` prints, one page a rule.\n");
        for (RuleInfo.Theme theme : RuleInfo.Theme.values()) {
            index.append("\n## ").append(theme.word()).append("\n\n| rule | looked for | judged by |\n|---|---|---|\n");
            Rules.all().stream().map(Rule::info).filter(r -> r.theme() == theme).forEach(r -> {
                index.append("| [").append(r.id()).append("](").append(r.id()).append(".md) | ").append(r.title()).append(" | ")
                        .append(String.join(", ", r.limits().stream().map(l -> "`" + l.id() + "`").toList())).append(" |\n");
                files.put(r.id() + ".md", page(r));
            });
        }
        files.put("README.md", index.toString());
        Generated.folder(DOCS.resolve("rules"), ".md", files);
    }

    /** The pictures on the rules' pages are what the examples beside the rules draw, as legible as a sheet, and small. */
    @Test void drawings() {
        Map<String, String> files = new TreeMap<>();
        Rules.all().stream().map(Rule::info).flatMap(r -> RulePictures.of(r.id()).stream()).forEach(p -> {
            Picture drawing = p.drawing();
            assertEquals(List.of(), SheetCheck.of(drawing.sheet()), p.file());
            assertTrue(drawing.svg().length() < LARGEST_PICTURE, () -> p.file() + ": " + drawing.svg().length() + " bytes");
            files.put(p.file(), drawing.svg());
        });
        Generated.folder(DOCS.resolve("rules/drawings"), ".svg", files);
    }

    private static String page(RuleInfo rule) {
        RulePage written = RulePage.find(rule.id()).orElseThrow(() -> new AssertionError(rule.id() + ": write its page.md"));
        StringBuilder page = new StringBuilder(written.withLimits(LimitLines.of(rule, COLUMNS)).markdown().stripTrailing()).append('\n');
        List<String> examples = RuleExamples.names(rule.id());
        List<RulePictures.Picture> pictures = RulePictures.of(rule.id());
        if (!pictures.isEmpty()) {
            page.append("\n## Drawings\n");
            pictures.forEach(p -> page.append("\n**").append(p.caption()).append("**\n\n![").append(p.caption()).append("](drawings/")
                    .append(p.file()).append(")\n"));
        }
        if (!examples.isEmpty()) {
            page.append("\n## Examples\n\nIn `src/main/resources/rules/").append(rule.id()).append("/`; `rainlap explain ").append(rule.id())
                    .append(" --drawings FOLDER` draws them.\n\n");
            examples.forEach(e -> page.append("- `").append(e).append("`\n"));
        }
        return page.toString();
    }

    private static String fenced(List<String> lines) {
        return "```\n" + String.join("\n", lines).stripTrailing() + "\n```\n";
    }
}
