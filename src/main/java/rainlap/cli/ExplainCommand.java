package rainlap.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import rainlap.check.Checker;
import rainlap.check.Rules;
import rainlap.drawing.Sheets;
import rainlap.drawing.TitleBlock;
import rainlap.file.ElevationFile;
import rainlap.paper.PngWriter;
import rainlap.paper.Sheet;
import rainlap.practice.Practice;
import rainlap.practice.Practices;
import rainlap.report.LimitLines;
import rainlap.report.RuleExamples;
import rainlap.report.RulePage;
import rainlap.report.TerminalTable;
import rainlap.rule.Rule;
import rainlap.rule.RuleInfo;
import rainlap.wall.Elevation;
import rainlap.wall.Stage;

@Command(name = "explain", sortOptions = false, description = "Explains a rule: what it looks for, why, who asks it and what it does not"
        + " cover. Without a rule, lists them all.",
        parameterListHeading = "%n", optionListHeading = "%nOptions:%n", footerHeading = "%nExamples:%n",
        footer = {"  rainlap explain", "  rainlap explain reverse-lap", "  rainlap explain reverse-lap --drawings pictures"})
final class ExplainCommand implements RainlapCommand {
    private static final int ID_COLUMNS = 32;

    private final Surroundings around;

    @Parameters(paramLabel = "RULE", arity = "0..1", description = "A rule's id, as check prints it.")
    String rule;

    @Option(names = "--drawings", paramLabel = "FOLDER", description = "Also draw the rule's examples into this folder.")
    String drawings;

    @Option(names = {"-h", "--help"}, usageHelp = true, description = "Print this help.")
    boolean help;

    ExplainCommand(Surroundings around) {
        this.around = around;
    }

    @Override
    public ExitStatus run() {
        if (rule == null) {
            refuseDrawings();
            list();
        } else {
            RuleInfo info = find();
            explain(info);
            draw(info);
        }
        return ExitStatus.DONE;
    }

    private void refuseDrawings() {
        if (drawings != null) {
            throw Refusal.usage("--drawings is for the examples of one rule", "name the rule: rainlap explain RULE --drawings FOLDER");
        }
    }

    private void list() {
        for (RuleInfo.Theme theme : RuleInfo.Theme.values()) {
            List<RuleInfo> rules = around.rules().stream().map(Rule::info).filter(r -> r.theme() == theme).toList();
            if (!rules.isEmpty()) {
                around.print(theme.word());
                rules.forEach(r -> around.print("  " + r.id() + " ".repeat(Math.max(1, ID_COLUMNS - r.id().length())) + r.title()));
            }
        }
    }

    private RuleInfo find() {
        return Rules.find(rule).map(Rule::info)
                .orElseThrow(() -> Refusal.unknown("rule", rule, around.rules().stream().map(r -> r.info().id()).toList()));
    }

    private void explain(RuleInfo info) {
        RulePage page = RulePage.find(info.id()).orElseThrow(() -> new IllegalStateException("the page of " + info.id() + " is missing"));
        around.print(page.withLimits(LimitLines.of(info, TerminalTable.COLUMNS - RulePage.BLOCK_INDENT)).lines(TerminalTable.COLUMNS));
    }

    /** One sheet or more for each example, named after rule and example. */
    private void draw(RuleInfo info) {
        if (drawings == null) {
            return;
        }
        Path folder = around.folder().resolve(drawings);
        List<String> names = RuleExamples.names(info.id());
        try (OutputFiles outputs = new OutputFiles(List.of())) {
            names.forEach(n -> outputs.claim(place(folder, info, n)));
            List<Path> written = new ArrayList<>();
            names.forEach(n -> written.addAll(new SheetFiles(outputs, PngWriter.DEFAULT_DPI).write(place(folder, info, n), sheets(info, n))));
            outputs.moveAll();
            around.print("");
            written.forEach(p -> around.print("drawing: " + p));
        }
    }

    private static Path place(Path folder, RuleInfo info, String example) {
        return folder.resolve(info.id() + "-" + OutputNames.stem(example) + ".svg");
    }

    private static List<Sheet> sheets(RuleInfo info, String example) {
        Elevation elevation = ElevationFile.read(example, RuleExamples.bytes(info.id(), example)).elevation()
                .orElseThrow(() -> new IllegalStateException(info.id() + "/" + example + " cannot be read"));
        Practice practice = PracticesCommand.find(elevation.practice().orElse(Practices.COMMON));
        return Sheets.of(Checker.check(elevation, Stage.drawn(elevation), practice), TitleBlock.BLANK);
    }
}
