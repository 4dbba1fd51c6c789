package rainlap.cli;

import java.io.InputStream;
import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Map;
import picocli.CommandLine;

/** What the commands say of themselves, for the generated pages. */
public final class HelpPages {
    private HelpPages() {}

    /** Command to help text, the program itself first. */
    public static Map<String, String> all() {
        PrintStream nowhere = new PrintStream(OutputStream.nullOutputStream(), false, StandardCharsets.UTF_8);
        CommandLine root = Main.commandLine(Surroundings.ofProcess(InputStream.nullInputStream(), nowhere, nowhere));
        Map<String, String> pages = new LinkedHashMap<>();
        pages.put("rainlap", root.getUsageMessage(CommandLine.Help.Ansi.OFF));
        root.getSubcommands().forEach((name, command) -> pages.put("rainlap " + name, command.getUsageMessage(CommandLine.Help.Ansi.OFF)));
        return pages;
    }

    /** File form to its schema. */
    public static Map<String, String> schemas() {
        Map<String, String> all = new LinkedHashMap<>();
        SchemaCommand.FORMS.forEach(form -> all.put(form, SchemaCommand.text(form)));
        return all;
    }
}
