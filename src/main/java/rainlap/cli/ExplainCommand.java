package rainlap.cli;

import java.util.List;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import rainlap.check.Rules;
import rainlap.report.LimitLines;
import rainlap.report.RulePage;
import rainlap.report.TerminalTable;
import rainlap.rule.Rule;
import rainlap.rule.RuleInfo;

@Command(name = "explain", sortOptions = false, description = "Explains a rule: what it looks for, why, who asks it and what it does not"
        + " cover. Without a rule, lists them all.",
        parameterListHeading = "%n", optionListHeading = "%nOptions:%n", footerHeading = "%nExamples:%n",
        footer = {"  rainlap explain", "  rainlap explain reverse-lap"})
final class ExplainCommand implements RainlapCommand {
    private static final int ID_COLUMNS = 32;

    private final Surroundings around;

    @Parameters(paramLabel = "RULE", arity = "0..1", description = "A rule's id, as check prints it.")
    String rule;

    @Option(names = {"-h", "--help"}, usageHelp = true, description = "Print this help.")
    boolean help;

    ExplainCommand(Surroundings around) {
        this.around = around;
    }

    @Override
    public ExitStatus run() {
        if (rule == null) {
            list();
        } else {
            explain(find());
        }
        return ExitStatus.DONE;
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
        around.print(page.lines(TerminalTable.COLUMNS));
        if (!info.limits().isEmpty()) {
            around.print(List.of("", "What each practice asks", "-----------------------"));
            around.print(LimitLines.of(info, TerminalTable.COLUMNS));
        }
    }
}
