package rainlap.cli;

import java.util.List;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import rainlap.material.Catalogue;
import rainlap.material.Material;
import rainlap.material.MaterialTable;

@Command(name = "materials", description = "Prints the built-in, generic materials with their numbers and who says them.",
        parameterListHeading = "%n", optionListHeading = "%nOptions:%n", footerHeading = "%nExamples:%n",
        footer = {"  rainlap materials", "  rainlap materials head-flashing"})
final class MaterialsCommand implements RainlapCommand {
    private final Surroundings around;

    @Parameters(paramLabel = "ID", arity = "0..*", description = "Only these materials. All without one.")
    List<String> ids = List.of();

    @Option(names = {"-h", "--help"}, usageHelp = true, description = "Print this help.")
    boolean help;

    MaterialsCommand(Surroundings around) {
        this.around = around;
    }

    @Override
    public ExitStatus run() {
        Catalogue all = Catalogue.builtIn();
        Catalogue chosen = ids.isEmpty() ? all : Catalogue.of(ids.stream().distinct().map(id -> find(all, id)).toList());
        around.print(new MaterialTable(chosen).lines());
        return ExitStatus.DONE;
    }

    private static Material find(Catalogue all, String id) {
        return all.find(id).orElseThrow(() -> Refusal.unknown("material", id, all.all().stream().map(Material::id).toList()));
    }
}
