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
import rainlap.defect.Study;
import rainlap.drawing.Sheets;
import rainlap.drawing.TitleBlock;
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
        List<Problem> problems = new ArrayList<>(options.judgedBy.readPractice(around));
        BuildingReading reading = BuildingFile.read(around.folder().resolve(file));
        problems.addAll(reading.problems());
        if (!problems.isEmpty()) {
            CheckJob.complain(around, problems, 1 + reading.elevations().size());
            return ExitStatus.BAD_INPUT;
        }
        List<Path> inputs = Stream.of(Stream.of(file), options.judgedBy.practiceFile().stream(), reading.elevations().stream().map(Reading::file)).flatMap(s -> s).map(around.folder()::resolve).toList();
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
        SetFiles set = set(outputs);
        PageFiles pages = new PageFiles(outputs);
        pages.claimIndex(sheets.stream().flatMap(Optional::stream).toList());
        List<String> files = reading.elevations().stream().map(Reading::file).toList();
        BuildingResult result = BuildingChecker.check(building, options.judgedBy.stage(), options.judgedBy::practiceFor, around.rules(),
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
            if (!options.noSheet) {
                draw(set, pages, result.walls().get(i), reading.elevations().get(i), sheets.get(i));
            }
        }
        written.addAll(set.close(building.name(), options.title.block("")));
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

    /** The place of a wall's first sheet or page; none of its own where all sheets go into one PDF. */
    private Optional<Path> sheet(Building.Wall wall, OutputFiles outputs) {
        if (options.noSheet || SetFiles.isOnePdf(around.folder(), options.sheet)) {
            return Optional.empty();
        }
        Path place = place(wall.id());
        if (options.sheet == null) {
            outputs.claimInNewFolder(place);
        } else {
            outputs.claim(place);
        }
        return Optional.of(place);
    }

    /** @param part of the building: a wall's id, or the index */
    private Path place(String part) {
        return new OutputNames(around.folder(), true).firstSheet(options.sheet, OutputNames.stem(file) + "-" + part + ".json");
    }

    /** Where all sheets go, or their index. */
    private SetFiles set(OutputFiles outputs) {
        SetFiles set = new SetFiles(outputs, options.chosenDpi(), options.chosenPaper());
        if (!options.noSheet && SetFiles.isOnePdf(around.folder(), options.sheet)) {
            set.claimOnePdf(around.folder().resolve(options.sheet));
        } else if (!options.noSheet && !OutputNames.isPage(place("index"))) {
            set.claimIndex(place("index"));
        }
        return set;
    }

    private void draw(SetFiles set, PageFiles pages, BuildingResult.OneWall wall, Reading reading, Optional<Path> place) {
        TitleBlock block = options.title.block(reading.sha256());
        if (place.filter(OutputNames::isPage).isPresent()) {
            pages.write(place.get(), wall.result(), reading.file(), block);
            return;
        }
        try {
            String name = wall.wall().id() + ": " + wall.result().evidence().elevation().name();
            set.add(name, place, wall.result(), Sheets.of(wall.result(), block, options.chosenPaper()));
        } catch (Sheets.TooLarge e) {
            throw Refusal.tooLarge(reading.file(), e);
        }
    }
}
