package rainlap.cli;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

@Command(name = "schema", description = "Prints the JSON Schema of a file form, for editors that complete and check.",
        parameterListHeading = "%n", optionListHeading = "%nOptions:%n", footerHeading = "%nExamples:%n",
        footer = {"  rainlap schema > elevation.schema.json", "  rainlap schema findings"})
final class SchemaCommand implements RainlapCommand {
    static final List<String> FORMS = List.of("elevation", "building", "practice", "findings", "building-findings");

    private final Surroundings around;

    @Parameters(paramLabel = "FORM", arity = "0..1", defaultValue = "elevation",
            description = "elevation or building (what check reads), practice (one of your own, for --practice), findings or building-findings (what --findings writes). Default: elevation.")
    String form;

    @Option(names = {"-h", "--help"}, usageHelp = true, description = "Print this help.")
    boolean help;

    SchemaCommand(Surroundings around) {
        this.around = around;
    }

    @Override
    public ExitStatus run() {
        if (!FORMS.contains(form)) {
            throw Refusal.unknown("schema", form, FORMS);
        }
        around.out().print(text(form));
        return ExitStatus.DONE;
    }

    static String text(String form) {
        String name = "/schema/" + form + ".schema.json";
        try (InputStream in = SchemaCommand.class.getResourceAsStream(name)) {
            if (in == null) {
                throw new IllegalStateException(name + " is missing from the program");
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
