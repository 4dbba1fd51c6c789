package rainlap.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import rainlap.building.Building;
import rainlap.check.BuildingChecker;
import rainlap.check.BuildingResult;
import rainlap.check.CheckResult;
import rainlap.defect.Study;
import rainlap.drawing.Sheets;
import rainlap.file.BuildingFile;
import rainlap.file.BuildingReading;
import rainlap.file.Problem;
import rainlap.file.Reading;
import rainlap.report.BuildingJson;
import rainlap.report.BuildingTable;
import rainlap.report.DefectTable;
import rainlap.report.Lists;
import rainlap.report.PlainText;
import rainlap.report.TerminalTable;

/** One run of {@code check} on a building: one list for all of it, one findings file, and sheets for each wall. */
final class BuildingJob {
    private final Surroundings around;
    private final CheckCommand options;
    private final String file;
    private final List<String> written = new ArrayList<>();

    BuildingJob(Surroundings around, CheckCommand options, String file) {
        this.around = around;
        this.options = options;
        this.file = file;
    }

    ExitStatus run() {
        options.checkValues();
        List<Problem> problems = new ArrayList<>(options.readPractice());
        BuildingReading reading = BuildingFile.read(around.folder().resolve(file));
        problems.addAll(reading.problems());
        if (!problems.isEmpty()) {
            CheckJob.complain(around, problems, 1 + reading.elevations().size());
            return ExitStatus.BAD_INPUT;
        }
        List<Path> inputs = Stream.of(Stream.of(file), options.practiceFile().stream(), reading.elevations().stream().map(Reading::file)).flatMap(s -> s).map(around.folder()::resolve).toList();
        try (OutputFiles outputs = new OutputFiles(inputs)) {
            return check(reading, outputs);
        }
    }

    private ExitStatus check(BuildingReading reading, OutputFiles outputs) {
        Building building = reading.building().orElseThrow();
        Optional<Path> findings = Optional.ofNullable(options.findings)
                .map(v -> new OutputNames(around.folder(), false).path("--findings", v, file, ".findings.json"));
        findings.ifPresent(outputs::claim);
        ListFiles lists = new ListFiles(outputs, new OutputNames(around.folder(), false), options.list);
        lists.claim(file);
        List<Optional<Path>> sheets = building.walls().stream().map(w -> sheet(w, outputs)).toList();
        PageFiles pages = new PageFiles(outputs);
        pages.claimIndex(sheets.stream().flatMap(Optional::stream).toList());
        List<String> files = reading.elevations().stream().map(Reading::file).toList();
        BuildingResult result = BuildingChecker.check(building, options.chosenStage(), e -> options.practiceFor(e.practice()), around.rules(),
                around.processors());
        around.print(BuildingTable.lines(file, files, result));
        around.print("");
        List<Optional<Study>> defects = defects(result);
        findings.ifPresent(place -> {
            outputs.write(place, out -> BuildingJson.write(result, files, defects, out));
            written.add("findings: " + place);
        });
        written.addAll(lists.write(file, () -> Lists.of(result)));
        for (int i = 0; i < sheets.size(); i++) {
            int wall = i;
            sheets.get(i).ifPresent(place -> draw(pages, result.walls().get(wall).result(), reading.elevations().get(wall), place, outputs));
        }
        written.addAll(pages.close(building.name()));
        outputs.moveAll();
        around.print(TerminalTable.caution());
        around.print(written.stream().map(PlainText::of).toList());
        return CheckJob.status(options, result.walls().stream().map(BuildingResult.OneWall::result).toList());
    }

    /** Puts holes into each wall, if asked, and prints what became of them in one list; the holes are numbered through. */
    private List<Optional<Study>> defects(BuildingResult result) {
        if (!options.simulateDefects) {
            return Collections.nCopies(result.walls().size(), Optional.empty());
        }
        Map<String, Study> studies = new LinkedHashMap<>();
        int next = 1;
        for (BuildingResult.OneWall w : result.walls()) {
            Study study = Study.ofWall(w.result().evidence(), w.unfolded(), next);
            studies.put(w.wall().id(), study);
            next += study.holes().size();
        }
        around.print(DefectTable.lines(studies));
        around.print("");
        return studies.values().stream().map(Optional::of).toList();
    }

    private Optional<Path> sheet(Building.Wall wall, OutputFiles outputs) {
        if (options.noSheet) {
            return Optional.empty();
        }
        OutputNames names = new OutputNames(around.folder(), true);
        String name = OutputNames.stem(file) + "-" + wall.id() + ".json";
        if (options.sheet == null) {
            Path place = names.defaultSheet(name);
            outputs.claimInNewFolder(place);
            return Optional.of(place);
        }
        Path place = names.path("--sheet", options.sheet, name, ".svg");
        OutputNames.form(place);
        outputs.claim(place);
        return Optional.of(place);
    }

    private void draw(PageFiles pages, CheckResult result, Reading reading, Path place, OutputFiles outputs) {
        if (OutputNames.isPage(place)) {
            pages.write(place, result, reading.file(), options.title.block(reading.sha256()));
            return;
        }
        try {
            List<Path> places = new SheetFiles(outputs, options.chosenDpi()).write(place, Sheets.of(result, options.title.block(reading.sha256()), options.chosenPaper()));
            places.forEach(p -> written.add("sheet: " + p));
            SheetFiles.leftOver(places).forEach(p -> written.add("left from an earlier run, not part of this drawing: " + p));
        } catch (Sheets.TooLarge e) {
            throw Refusal.usage(reading.file() + ": " + e.getMessage(), "check it with --no-sheet");
        }
    }
}
