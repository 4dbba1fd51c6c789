package rainlap.cli;

import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

@Command(name = "rainlap", version = RootCommand.VERSION, sortOptions = false,
        synopsisSubcommandLabel = "COMMAND", description = "Checks how a wall's membrane, tapes and flashings shed water before the cladding"
                + " hides them, and draws the elevation with its weak points marked.",
        optionListHeading = "%nOptions:%n", commandListHeading = "%nCommands:%n", exitCodeListHeading = "%nExit status:%n",
        footerHeading = "%nExamples:%n", footer = {
            "  rainlap check elevations/estuary-hut-north.json",
            "  rainlap explain reverse-lap",
            "  rainlap COMMAND --help"})
final class RootCommand implements RainlapCommand {
    static final String VERSION = "Rainlap 0.1.0";

    private final Surroundings around;

    @Option(names = {"-h", "--help"}, usageHelp = true, description = "Print this help.")
    boolean help;

    @Option(names = {"-V", "--version"}, versionHelp = true, description = "Print the version.")
    boolean version;

    RootCommand(Surroundings around) {
        this.around = around;
    }

    /** Without a command there is nothing to do but say which there are. */
    @Override
    public ExitStatus run() {
        around.err().print(Main.commandLine(around).getUsageMessage(CommandLine.Help.Ansi.OFF));
        return ExitStatus.USAGE;
    }
}
