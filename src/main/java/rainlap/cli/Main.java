package rainlap.cli;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.InputStream;
import java.io.PrintStream;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.InvalidPathException;
import java.util.List;
import java.util.Locale;
import picocli.CommandLine;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.UnmatchedArgumentException;
import rainlap.report.PlainText;

/** The program, as a function of arguments and streams. */
public final class Main {
    private static final int HELP_COLUMNS = 100;

    private Main() {}

    public static void main(String[] args) {
        System.setProperty("java.awt.headless", "true");
        Outlet outlet = new Outlet(new FileOutputStream(FileDescriptor.out));
        PrintStream out = new PrintStream(outlet, false, StandardCharsets.UTF_8);
        PrintStream err = new PrintStream(new FileOutputStream(FileDescriptor.err), true, StandardCharsets.UTF_8);
        int status = run(List.of(args), System.in, out, err);
        System.exit(outlet.failure().map(why -> {
            err.print("rainlap: what was to be printed could not be written: " + why + "\n");
            return ExitStatus.USAGE.code();
        }).orElse(status));
    }

    /**
     * Runs one command.
     *
     * @return the exit status, see {@link ExitStatus}
     */
    public static int run(List<String> args, InputStream in, PrintStream out, PrintStream err) {
        return run(args, Surroundings.ofProcess(in, out, err)).code();
    }

    static ExitStatus run(List<String> args, Surroundings around) {
        try {
            return runCommand(args, around);
        } catch (Refusal e) {
            complain(around, e.getMessage(), e.hint());
            return e.status();
        } catch (InvalidPathException e) {
            complain(around, Suggestion.quoted(e.getInput()) + " is no file name on this machine", "choose another name");
            return ExitStatus.USAGE;
        } catch (OutOfMemoryError e) {
            complain(around, "the memory of " + Runtime.getRuntime().maxMemory() / (1 << 20) + " MB is too small for this; nothing was written",
                    "give the wall as several elevations, or more memory: java -Xmx8g -jar rainlap.jar ...");
            return ExitStatus.CRASHED;
        } catch (Exception | StackOverflowError e) {
            around.complain("Rainlap failed: " + PlainText.of(inShort(e)) + ", please report");
            if (around.traces()) {
                e.printStackTrace(around.err());
            }
            return ExitStatus.CRASHED;
        } finally {
            around.out().flush();
            around.err().flush();
        }
    }

    private static ExitStatus runCommand(List<String> args, Surroundings around) {
        CommandLine line = commandLine(around);
        try {
            CommandLine.ParseResult parsed = line.parseArgs(args.toArray(String[]::new));
            if (CommandLine.printHelpIfRequested(parsed)) {
                return ExitStatus.DONE;
            }
            List<CommandLine> chosen = parsed.asCommandLineList();
            return ((RainlapCommand) chosen.get(chosen.size() - 1).getCommand()).run();
        } catch (ParameterException e) {
            complain(around, what(e), hint(e));
            return ExitStatus.USAGE;
        }
    }

    /** The commands as picocli sees them; the page of commands is written from it as well. */
    static CommandLine commandLine(Surroundings around) {
        CommandLine line = new CommandLine(new RootCommand(around));
        line.addSubcommand(new CheckCommand(around)).addSubcommand(new ViewCommand(around)).addSubcommand(new ExplainCommand(around))
                .addSubcommand(new PracticesCommand(around)).addSubcommand(new MaterialsCommand(around))
                .addSubcommand(new SchemaCommand(around)).addSubcommand(new HelpCommand(around));
        setExitStatuses(line);
        return line.setExpandAtFiles(false).setUsageHelpAutoWidth(false).setUsageHelpWidth(HELP_COLUMNS)
                .setColorScheme(CommandLine.Help.defaultColorScheme(CommandLine.Help.Ansi.OFF))
                .setOut(new PrintWriter(around.out(), true)).setErr(new PrintWriter(around.err(), true));
    }

    /** Only {@code check} can end in all of them; {@code view} goes on whatever is wrong with the elevation. */
    private static void setExitStatuses(CommandLine root) {
        root.getCommandSpec().usageMessage().exitCodeList(ExitStatus.forHelp(ExitStatus.INCOMPLETE));
        root.getSubcommands().forEach((name, command) -> command.getCommandSpec().usageMessage().exitCodeListHeading("%nExit status:%n")
                .exitCodeList(ExitStatus.forHelp(name.equals("check") ? ExitStatus.INCOMPLETE : name.equals("view") ? ExitStatus.BAD_INPUT : ExitStatus.USAGE)));
    }

    private static String what(ParameterException e) {
        if (e instanceof UnmatchedArgumentException u && !u.getUnmatched().isEmpty()) {
            String word = u.getUnmatched().get(0);
            String kind = word.startsWith("-") ? "option " : isRoot(e) ? "command " : "argument ";
            return "there is no " + kind + Suggestion.quoted(word)
                    + (isRoot(e) ? "" : " of " + e.getCommandLine().getCommandName());
        }
        String message = e.getMessage();
        return message.substring(0, 1).toLowerCase(Locale.ROOT) + message.substring(1);
    }

    private static String hint(ParameterException e) {
        String help = "see: " + e.getCommandLine().getCommandSpec().qualifiedName() + " --help";
        if (e instanceof UnmatchedArgumentException u && !u.getUnmatched().isEmpty()) {
            String word = u.getUnmatched().get(0);
            List<String> known = word.startsWith("-") ? e.getCommandLine().getCommandSpec().optionsMap().keySet().stream().sorted().toList()
                    : isRoot(e) ? e.getCommandLine().getSubcommands().keySet().stream().sorted().toList() : List.of();
            return Suggestion.of(word, known).map(s -> s + " (" + help + ")").orElse(help);
        }
        return help;
    }

    private static boolean isRoot(ParameterException e) {
        return e.getCommandLine().getParent() == null;
    }

    private static void complain(Surroundings around, String what, String hint) {
        around.complain("rainlap: " + PlainText.of(what));
        if (!hint.isEmpty()) {
            around.complain("  " + PlainText.of(hint));
        }
    }

    private static String inShort(Throwable e) {
        return e.getClass().getSimpleName() + (e.getMessage() == null ? "" : ": " + e.getMessage());
    }
}
