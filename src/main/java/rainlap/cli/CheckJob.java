package rainlap.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import rainlap.check.CheckResult;
import rainlap.check.Checker;
import rainlap.defect.Study;
import rainlap.drawing.Sheets;
import rainlap.file.ElevationFile;
import rainlap.file.Limits;
import rainlap.file.Problem;
import rainlap.file.Reading;
import rainlap.paper.Sheet;
import rainlap.report.DefectTable;
import rainlap.report.FindingsJson;
import rainlap.report.Lists;
import rainlap.report.PlainText;
import rainlap.report.TerminalTable;
import rainlap.wall.Elevation;
import rainlap.wall.Stage;

/** One run of {@code check}: options and places first, then all inputs, then the work, and the outputs together at the end. */
final class CheckJob implements AutoCloseable {
    private static final String STANDARD_INPUT = "-";
    /** Named like an input, for the names of outputs. */
    private static final String INDEX = "elevations-index.json";

    private final Surroundings around;
    private final CheckCommand options;
    private final Stage stage;
    private final OutputNames names;
    private final OutputFiles outputs;
    private final PageFiles pages;
    private final ListFiles lists;
    private final SetFiles set;
    private final List<String> written = new ArrayList<>();

    CheckJob(Surroundings around, CheckCommand options) {
        this.around = around;
        this.options = options;
        this.stage = options.judgedBy.stage();
        this.names = new OutputNames(around.folder(), options.files.size() > 1);
        this.outputs = new OutputFiles(Stream.concat(options.files.stream().filter(f -> !f.equals(STANDARD_INPUT)), options.judgedBy.practiceFile().stream())
                .map(around.folder()::resolve).toList());
        this.pages = new PageFiles(outputs);
        this.set = new SetFiles(outputs, options.chosenDpi(), options.chosenPaper());
        this.lists = new ListFiles(outputs, names, options.list);
    }

    ExitStatus run() {
        options.checkValues();
        List<Problem> problems = new ArrayList<>(options.judgedBy.readPractice(around));
        options.files.forEach(this::claimOutputs);
        claimSet();
        pages.claimIndex(options.files.stream().flatMap(f -> sheet(f).stream()).toList());
        List<Reading> readings = options.files.stream().map(this::read).toList();
        readings.forEach(r -> problems.addAll(r.problems()));
        if (!problems.isEmpty()) {
            complain(around, problems, options.files.size());
            return ExitStatus.BAD_INPUT;
        }
        requireRoom(readings);
        List<CheckResult> results = new ArrayList<>();
        List<Optional<Study>> defects = new ArrayList<>();
        for (int i = 0; i < readings.size(); i++) {
            CheckResult result = check(readings.get(i).elevation().orElseThrow());
            results.add(result);
            defects.add(options.simulateDefects ? Optional.of(Study.of(result.evidence())) : Optional.empty());
            print(options.files.get(i), result, defects.get(i));
        }
        for (int i = 0; i < results.size(); i++) {
            write(options.files.get(i), readings.get(i), results.get(i), defects.get(i));
        }
        written.addAll(set.close("Elevations", options.title.block("")));
        written.addAll(pages.close("Elevations"));
        outputs.moveAll();
        close(results);
        return status(options, results);
    }

    private void requireRoom(List<Reading> readings) {
        for (int i = 0; i < readings.size(); i++) {
            if (!options.noSheet && sheet(options.files.get(i)).filter(OutputNames::isPage).isEmpty()) {
                try {
                    Sheets.requireRoom(readings.get(i).elevation().orElseThrow(), options.chosenPaper());
                } catch (Sheets.TooLarge e) {
                    throw Refusal.tooLarge(options.files.get(i), e);
                }
            }
        }
    }

    private void claimOutputs(String file) {
        findings(file).ifPresent(outputs::claim);
        lists.claim(name(file));
        if (options.sheet != null) {
            sheet(file).ifPresent(outputs::claim);
        } else {
            sheet(file).ifPresent(outputs::claimInNewFolder);
        }
    }

    /** Where the sheets of several elevations go together, or their index. */
    private void claimSet() {
        if (options.noSheet || options.files.size() == 1) {
            return;
        }
        if (isOnePdf()) {
            set.claimOnePdf(around.folder().resolve(options.sheet));
        } else {
            sheet(INDEX).filter(p -> !OutputNames.isPage(p)).ifPresent(set::claimIndex);
        }
    }

    private boolean isOnePdf() {
        return options.files.size() > 1 && SetFiles.isOnePdf(around.folder(), options.sheet);
    }

    /** The place of an elevation's first sheet or page; none of its own where all sheets go into one PDF. */
    private Optional<Path> sheet(String file) {
        return options.noSheet || isOnePdf() ? Optional.empty() : Optional.of(names.firstSheet(options.sheet, name(file)));
    }

    private Optional<Path> findings(String file) {
        return Optional.ofNullable(options.findings).map(v -> names.path("--findings", v, name(file), ".findings.json"));
    }

    private static String name(String file) {
        return file.equals(STANDARD_INPUT) ? "standard-input" : file;
    }

    private Reading read(String file) {
        return file.equals(STANDARD_INPUT) ? readStandardInput() : around.read(file);
    }

    private Reading readStandardInput() {
        try {
            return ElevationFile.read("standard input", around.in().readNBytes(Limits.STATED.bytes() + 1));
        } catch (IOException e) {
            throw Refusal.usage("standard input cannot be read: " + e.getMessage(), "");
        }
    }

    /** @param of how many files were read */
    static void complain(Surroundings around, List<Problem> problems, int of) {
        around.complain(problems);
        long files = problems.stream().map(Problem::file).distinct().count();
        String where = of == 1 ? "" : " in " + files + " of " + of + " files";
        around.complain("");
        around.complain(problems.size() + (problems.size() == 1 ? " problem" : " problems") + where + "; nothing was checked or written");
    }

    private CheckResult check(Elevation elevation) {
        return Checker.check(elevation, stage, options.judgedBy.practiceFor(elevation), around.rules(), around.processors());
    }

    private void print(String file, CheckResult result, Optional<Study> defects) {
        around.print(TerminalTable.lines(name(file), result));
        around.print("");
        defects.ifPresent(d -> {
            around.print(DefectTable.lines(d));
            around.print("");
        });
    }

    private void write(String file, Reading reading, CheckResult result, Optional<Study> defects) {
        findings(file).ifPresent(place -> {
            outputs.write(place, out -> FindingsJson.write(result, defects, out));
            written.add("findings: " + place);
        });
        written.addAll(lists.write(name(file), () -> Lists.of(result)));
        if (!options.noSheet) {
            draw(file, reading, result, sheet(file));
        }
    }

    private void draw(String file, Reading reading, CheckResult result, Optional<Path> place) {
        if (place.filter(OutputNames::isPage).isPresent()) {
            pages.write(place.get(), result, name(file), options.title.block(reading.sha256()));
        } else if (options.files.size() > 1) {
            set.add(result.evidence().elevation().name(), place, result, draw(file, reading, result));
        } else {
            List<Sheet> sheets = draw(file, reading, result);
            List<Path> places = new SheetFiles(outputs, options.chosenDpi()).write(place.orElseThrow(), sheets);
            places.forEach(p -> written.add("sheet: " + p));
            written.addAll(SheetFiles.notes(places, sheets));
        }
    }

    private List<Sheet> draw(String file, Reading reading, CheckResult result) {
        try {
            return Sheets.of(result, options.title.block(reading.sha256()), options.chosenPaper());
        } catch (Sheets.TooLarge e) {
            throw Refusal.tooLarge(file, e);
        }
    }

    private void close(List<CheckResult> results) {
        if (results.size() > 1) {
            around.print(TerminalTable.total(options.files.stream().map(CheckJob::name).toList(), results));
            around.print("");
        }
        around.print(TerminalTable.caution());
        around.print(written.stream().map(PlainText::of).toList());
    }

    static ExitStatus status(CheckCommand options, List<CheckResult> results) {
        if (options.strict && results.stream().anyMatch(r -> !r.weakPoints().isEmpty())) {
            return ExitStatus.WEAK_POINTS;
        }
        return results.stream().anyMatch(r -> !r.crashes().isEmpty()) ? ExitStatus.INCOMPLETE : ExitStatus.DONE;
    }

    @Override
    public void close() {
        outputs.close();
    }
}
