package rainlap.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Supplier;
import rainlap.report.Lists;

/** Writes the lists for spreadsheets: one workbook, or the weak points as CSV to the place that was asked for and the joints beside it. */
final class ListFiles {
    private final OutputFiles outputs;
    private final OutputNames names;
    private final Optional<String> wanted;

    /** @param value of the option; null where no list is asked for */
    ListFiles(OutputFiles outputs, OutputNames names, String value) {
        this.outputs = outputs;
        this.names = names;
        this.wanted = Optional.ofNullable(value);
    }

    /** Claims the places of one input's lists. */
    void claim(String input) {
        place(input).ifPresent(p -> {
            outputs.claim(p);
            if (isCsv(p)) {
                outputs.claim(joints(p));
            }
        });
    }

    /** Writes one input's lists to the places claimed for it, if they are asked for; says where they are. */
    List<String> write(String input, Supplier<Lists> made) {
        return place(input).map(p -> write(p, made.get())).orElse(List.of());
    }

    private List<String> write(Path place, Lists lists) {
        if (!isCsv(place)) {
            outputs.write(place, lists::writeWorkbook);
            return List.of("lists: " + place);
        }
        outputs.write(place, lists::writeWeakPoints);
        outputs.write(joints(place), lists::writeJoints);
        return List.of("list of weak points: " + place, "list of joints: " + joints(place));
    }

    private Optional<Path> place(String input) {
        return wanted.map(v -> names.path("--list", v, input, ".xlsx")).map(p -> {
            if (!isCsv(p) && !endsIn(p, ".xlsx")) {
                throw Refusal.usage("a list is an XLSX or a CSV, and " + Suggestion.quoted(p.toString()) + " is none of them",
                        "end its name in .xlsx or .csv, or name a folder that is there");
            }
            return p;
        });
    }

    private static Path joints(Path weakPoints) {
        String name = weakPoints.getFileName().toString();
        int dot = name.lastIndexOf('.');
        return weakPoints.resolveSibling(name.substring(0, dot) + "-joints" + name.substring(dot));
    }

    private static boolean isCsv(Path place) {
        return endsIn(place, ".csv");
    }

    private static boolean endsIn(Path place, String ending) {
        return String.valueOf(place.getFileName()).toLowerCase(Locale.ROOT).endsWith(ending);
    }
}
