package rainlap;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import rainlap.check.Rules;
import rainlap.cli.HelpPages;
import rainlap.material.Catalogue;
import rainlap.material.MaterialTable;
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
                + fenced(new PracticeTable(Practices.all()).lines()));
    }

    @Test void materials() {
        Generated.file(DOCS.resolve("materials.md"), "# Materials\n\nWhat `rainlap materials` prints: the built-in, generic catalogue.\n\n"
                + fenced(new MaterialTable(Catalogue.builtIn()).lines()));
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

    private static String page(RuleInfo rule) {
        RulePage written = RulePage.find(rule.id()).orElseThrow(() -> new AssertionError(rule.id() + ": write its page.md"));
        StringBuilder page = new StringBuilder(written.withLimits(LimitLines.of(rule, COLUMNS)).markdown().stripTrailing()).append('\n');
        List<String> examples = RuleExamples.names(rule.id());
        if (!examples.isEmpty()) {
            page.append("\n## Examples\n\nIn `src/main/resources/rules/").append(rule.id()).append("/`; `rainlap explain ").append(rule.id())
                    .append(" --drawings FOLDER` draws them.\n\n");
            examples.forEach(e -> page.append("- `").append(e).append("`\n"));
        }
        return page.toString();
    }

    private static String fenced(List<String> lines) {
        return "```\n" + String.join("\n", lines).strip() + "\n```\n";
    }
}
