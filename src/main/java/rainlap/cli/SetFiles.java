package rainlap.cli;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import rainlap.check.CheckResult;
import rainlap.drawing.SheetSet;
import rainlap.drawing.Sheets;
import rainlap.drawing.TitleBlock;
import rainlap.paper.Sheet;

/** Writes the sheets of several elevations as one set: all in one PDF, or each wall's in their own files and the index beside them. */
final class SetFiles {
    private final OutputFiles outputs;
    private final SheetFiles files;
    private final List<SheetSet.Wall> walls = new ArrayList<>();
    private final List<Path> places = new ArrayList<>();
    private final Sheets.Paper paper;
    private Optional<Path> index = Optional.empty();
    private Optional<Path> onePdf = Optional.empty();

    SetFiles(OutputFiles outputs, int dpi, Sheets.Paper paper) {
        this.paper = paper;
        this.outputs = outputs;
        this.files = new SheetFiles(outputs, dpi);
    }

    /** Whether the value of the option names one PDF, which takes the sheets of all elevations. */
    static boolean isOnePdf(Path folder, String value) {
        return value != null && !value.contains(OutputNames.NAME) && value.toLowerCase(Locale.ROOT).endsWith(".pdf") && !Files.isDirectory(folder.resolve(value));
    }

    /** Everything goes into one PDF. */
    void claimOnePdf(Path place) {
        outputs.claim(place);
        onePdf = Optional.of(place);
    }

    /** The index stands by itself. */
    void claimIndex(Path place) {
        outputs.claimInNewFolder(place);
        index = Optional.of(place);
    }

    /** @param place of its first sheet, claimed already; not used where there is one PDF */
    void add(String name, Optional<Path> place, CheckResult result, List<Sheet> sheets) {
        walls.add(new SheetSet.Wall(name, place.map(p -> p.getFileName().toString()).orElse(""), result, sheets));
        place.ifPresent(places::add);
    }

    /** Writes the set, if any sheets were added; says what was written. */
    List<String> close(String title, TitleBlock block) {
        List<String> written = new ArrayList<>();
        if (walls.isEmpty()) {
            return written;
        }
        SheetSet set = SheetSet.of(paper, title, block, walls);
        onePdf.ifPresent(place -> {
            files.write(place, set.all());
            written.add("sheets: " + place);
            written.addAll(SheetFiles.notes(List.of(place), set.all()));
        });
        index.ifPresent(place -> {
            say("index", files.write(place, set.index()), set.index(), written);
            for (int i = 0; i < places.size(); i++) {
                say("sheet", files.write(places.get(i), set.walls().get(i)), set.walls().get(i), written);
            }
        });
        return written;
    }

    private static void say(String what, List<Path> places, List<Sheet> sheets, List<String> written) {
        places.forEach(p -> written.add(what + ": " + p));
        written.addAll(SheetFiles.notes(places, sheets));
    }
}
