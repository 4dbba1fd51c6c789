package rainlap.cli;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import rainlap.drawing.Sheets;
import rainlap.file.BuildingFile;
import rainlap.paper.PngWriter;

@Command(name = "check", sortOptions = false, description = {
        "Checks elevations: prints every weak point, worst first, and draws the marked-up sheet. A building file joins elevations at their"
                + " corners; it is checked by itself, with one list for all its walls and sheets for each.",
        "",
        "Without --sheet the drawing goes to " + OutputNames.DEFAULT_FOLDER + "/NAME.svg under the current folder. Rainlap replaces no file"
                + " but those it wrote itself, and never an input."},
        parameterListHeading = "%n", optionListHeading = "%nOptions:%n",
        footerHeading = "%nExamples:%n", footer = {
            "  rainlap check elevations/estuary-hut-north.json",
            "  rainlap check hut.json --sheet hut.png --dpi 300 --findings hut-findings.json",
            "  rainlap check hut.json --sheet hut.html",
            "  rainlap check elevations/buildings/estuary-hut.json --findings hut-findings.json",
            "  rainlap check elevations/*.json --sheet 'sheets/{name}.svg' --strict --practice au-abcb-2022"})
final class CheckCommand implements RainlapCommand {
    private final Surroundings around;

    @Parameters(paramLabel = "FILE", arity = "1..*", description = "Elevation files, or one building file; - reads an elevation from standard input.")
    List<String> files;

    @Option(names = "--sheet", paramLabel = "PLACE", description = "Where to draw: a file ending in .svg, .png or .pdf, or a folder; further"
            + " sheets are numbered: out-2.svg, or stand in the one PDF. A name ending in .html gives a page to explore instead: layers, laying order,"
            + " each weak point with its section and the water's way. With several elevations, or a building, one PDF for all, a folder, or a name with {name} in it;"
            + " an index of them, worst first, stands first in the one PDF, or beside them: NAME-index.svg for a building, elevations-index.svg, index.html"
            + " for pages. Their sheets are numbered through.")
    String sheet;

    @Option(names = "--paper", paramLabel = "SIZE", defaultValue = "a3", description = "a3 or a4; it lies or stands as the wall asks. On A4 sections and table follow on"
            + " sheets of their own; an index is on A4 too. Default: a3.")
    String paper;

    @Option(names = "--no-sheet", description = "Draw nothing.")
    boolean noSheet;

    @Option(names = "--findings", paramLabel = "PLACE", description = "Write the findings as JSON to this file or folder; {name} as above.")
    String findings;

    @Option(names = "--list", paramLabel = "PLACE", description = "Write weak points and joints as lists for spreadsheets; {name} as above. A name"
            + " ending in .xlsx, or a folder, gives one workbook with a sheet of each and one of notes; a name ending in .csv gives the weak points there"
            + " and the joints beside it, out-joints.csv (UTF-8, RFC 4180). A text that a spreadsheet would run as a formula (= + - @ or a tab or line end"
            + " at its start) gets an apostrophe before it; numbers stay numbers.")
    String list;

    @Mixin
    JudgedBy judgedBy = new JudgedBy();

    @Option(names = "--simulate-defects", description = "Put holes of 6 mm into the drawn wall, one at a time (at jambs, above head flashings,"
            + " through joint seals, at penetrations), and tell which would reach the frame or pool on a batten. A desk study after the simulated"
            + " defects of NCC Volume Two 2022, H2V1, not that test. Follows the water twice for each hole; in a building round its corners.")
    boolean simulateDefects;

    @Option(names = "--strict", description = "End with status 4 when there is a weak point.")
    boolean strict;

    @Option(names = "--dpi", paramLabel = "N", description = "Dots per inch of a PNG, 30 to 1200. Default: 200.")
    Integer dpi;

    @ArgGroup(validate = false, heading = "%nFor the title block; blank where not given:%n")
    TitleOptions title = new TitleOptions();

    @Option(names = {"-h", "--help"}, usageHelp = true, description = "Print this help.")
    boolean help;

    CheckCommand(Surroundings around) {
        this.around = around;
    }

    @Override
    public ExitStatus run() {
        Optional<String> building = files.stream().filter(this::isBuilding).findFirst();
        if (building.isPresent() && files.size() > 1) {
            throw Refusal.usage(Suggestion.quoted(building.get()) + " is a building, and other files are named beside it", "check a building by itself");
        }
        if (building.isPresent()) {
            return new BuildingJob(around, this, building.get()).run();
        }
        try (CheckJob job = new CheckJob(around, this)) {
            return job.run();
        }
    }

    private boolean isBuilding(String file) {
        return BuildingFile.isOne(around.folder().resolve(file));
    }

    /** Refuses values that make no sense, before any work. */
    void checkValues() {
        title.check();
        chosenPaper();
        if (noSheet && sheet != null) {
            throw Refusal.usage("--sheet and --no-sheet exclude each other", "leave one of them out");
        }
        if (dpi != null && (dpi < SheetFiles.LEAST_DPI || dpi > SheetFiles.MOST_DPI)) {
            throw Refusal.usage("--dpi " + dpi + " is out of range", "choose " + SheetFiles.LEAST_DPI + " to " + SheetFiles.MOST_DPI);
        }
        if (dpi != null && (sheet == null || !sheet.toLowerCase(Locale.ROOT).endsWith(".png"))) {
            throw Refusal.usage("--dpi is for a PNG, and none is asked for", "add --sheet out.png");
        }
    }

    int chosenDpi() {
        return dpi == null ? PngWriter.DEFAULT_DPI : dpi;
    }

    Sheets.Paper chosenPaper() {
        return Arrays.stream(Sheets.Paper.values()).filter(p -> p.name().equalsIgnoreCase(paper)).findFirst()
                .orElseThrow(() -> Refusal.unknown("paper", paper, List.of("a3", "a4")));
    }
}
