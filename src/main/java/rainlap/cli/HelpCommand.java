package rainlap.cli;

import java.util.List;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

@Command(name = "help", description = "Prints the help of a command.", parameterListHeading = "%n")
final class HelpCommand implements RainlapCommand {
    private final Surroundings around;

    @Parameters(paramLabel = "COMMAND", arity = "0..1", description = "The command to explain.")
    String command;

    HelpCommand(Surroundings around) {
        this.around = around;
    }

    @Override
    public ExitStatus run() {
        CommandLine root = Main.commandLine(around);
        CommandLine chosen = command == null ? root : root.getSubcommands().get(command);
        if (chosen == null) {
            throw Refusal.unknown("command", command, List.copyOf(root.getSubcommands().keySet()));
        }
        around.out().print(chosen.getUsageMessage(CommandLine.Help.Ansi.OFF));
        return ExitStatus.DONE;
    }
}
