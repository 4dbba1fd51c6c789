package rainlap.cli;

import java.util.List;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import rainlap.practice.Practice;
import rainlap.practice.PracticeTable;
import rainlap.practice.Practices;

@Command(name = "practices", description = "Prints the practices side by side: what each asks, who says so, and how well it is known.",
        parameterListHeading = "%n", optionListHeading = "%nOptions:%n", footerHeading = "%nExamples:%n",
        footer = {"  rainlap practices", "  rainlap practices common au-abcb-2022"})
final class PracticesCommand implements RainlapCommand {
    private final Surroundings around;

    @Parameters(paramLabel = "ID", arity = "0..*", description = "Only these practices, in this order. All without one.")
    List<String> ids = List.of();

    @Option(names = {"-h", "--help"}, usageHelp = true, description = "Print this help.")
    boolean help;

    PracticesCommand(Surroundings around) {
        this.around = around;
    }

    @Override
    public ExitStatus run() {
        List<Practice> chosen = ids.isEmpty() ? Practices.all() : ids.stream().distinct().map(PracticesCommand::find).toList();
        around.print(new PracticeTable(chosen).lines());
        return ExitStatus.DONE;
    }

    /** The practice with this id, or a refusal that names the nearest. */
    static Practice find(String id) {
        return Practices.find(id).orElseThrow(() -> Refusal.unknown("practice", id, Practices.ids()));
    }
}
