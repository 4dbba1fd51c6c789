package rainlap.cli;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import rainlap.file.PracticeFile;
import rainlap.file.PracticeReading;
import rainlap.file.Problem;
import rainlap.practice.Disagreement;
import rainlap.practice.Disagreements;
import rainlap.practice.Practice;
import rainlap.practice.PracticeTable;
import rainlap.practice.Practices;
import rainlap.report.PracticeJson;

@Command(name = "practices", sortOptions = false, description = {
        "Prints the practices side by side: what each asks, who says so, how well it is known, and where documents disagree.",
        "",
        "A practice of your own is a JSON file that names its base: { \"rainlap\": 1, \"practice\": \"our-crew\", \"base\": \"uk-nhbc-2021\","
                + " \"limits\": [ { \"limit\": \"course-lap\", \"value\": 120 } ] }. Give it to check with --practice."},
        parameterListHeading = "%n", optionListHeading = "%nOptions:%n", footerHeading = "%nExamples:%n",
        footer = {"  rainlap practices", "  rainlap practices common au-abcb-2022", "  rainlap practices uk-nhbc-2021 our-crew.json --json"})
final class PracticesCommand implements RainlapCommand {
    private final Surroundings around;

    @Parameters(paramLabel = "ID", arity = "0..*", description = "Only these practices, in this order; a practice of your own by its file. All without one.")
    List<String> ids = List.of();

    @Option(names = "--json", description = "Print JSON.")
    boolean json;

    @Option(names = {"-h", "--help"}, usageHelp = true, description = "Print this help.")
    boolean help;

    PracticesCommand(Surroundings around) {
        this.around = around;
    }

    @Override
    public ExitStatus run() {
        List<PracticeReading> readings = ids.stream().distinct().map(id -> read(around, id)).toList();
        List<Problem> problems = readings.stream().flatMap(r -> r.problems().stream()).toList();
        if (!problems.isEmpty()) {
            around.complain(problems);
            return ExitStatus.BAD_INPUT;
        }
        List<Practice> chosen = ids.isEmpty() ? Practices.all() : readings.stream().map(r -> r.practice().orElseThrow()).toList();
        List<Disagreement> disagreements = ids.isEmpty() ? Disagreements.all() : List.of();
        if (json) {
            print(chosen, disagreements);
        } else {
            around.print(new PracticeTable(chosen, disagreements).lines());
        }
        return ExitStatus.DONE;
    }

    private void print(List<Practice> chosen, List<Disagreement> disagreements) {
        try {
            PracticeJson.write(chosen, disagreements, around.out());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Whether a word names a file with a practice of the user's own. */
    static boolean isFile(String word) {
        return word.endsWith(".json") || word.contains("/") || word.contains("\\");
    }

    /** The practice by its id, or by its file, or what is wrong with that; a refusal that names the nearest where there is no such id. */
    static PracticeReading read(Surroundings around, String word) {
        return isFile(word) ? PracticeFile.read(around.folder().resolve(word)) : new PracticeReading(Optional.of(find(word)), List.of());
    }

    /** The practice with this id, or a refusal that names the nearest. */
    static Practice find(String id) {
        return Practices.find(id).orElseThrow(() -> Refusal.unknown("practice", id, Practices.ids()));
    }
}
