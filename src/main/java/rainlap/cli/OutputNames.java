package rainlap.cli;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Locale;

/** What outputs are called: an option's value and an input's name give a path. */
final class OutputNames {
    /** Stands in an option's value for the input's name without folder and extension. */
    static final String NAME = "{name}";
    /** Where sheets go when no place is named. */
    static final String DEFAULT_FOLDER = "rainlap-out";

    private final Path folder;
    private final boolean several;

    /**
     * @param folder the current folder
     * @param several whether there is more than one input
     */
    OutputNames(Path folder, boolean several) {
        this.folder = folder;
        this.several = several;
    }

    /**
     * The path that an option's value gives for one input.
     *
     * @param suffix what a name gets where the value is a folder
     * @throws Refusal if the value is one file for several inputs
     */
    Path path(String option, String value, String input, String suffix) {
        if (value.contains(NAME)) {
            return folder.resolve(value.replace(NAME, stem(input)));
        }
        Path path = folder.resolve(value);
        if (value.endsWith("/") || Files.isDirectory(path)) {
            return path.resolve(stem(input) + suffix);
        }
        if (several) {
            throw Refusal.usage(option + " names one file, but several elevations are to be checked",
                    "name a folder, or put " + NAME + " where the file's name goes: " + option + " 'out/" + NAME + suffix + "'");
        }
        return path;
    }

    /** @param wanted value of the option; null where no place is named */
    Path firstSheet(String wanted, String input) {
        if (wanted == null) {
            return folder.resolve(DEFAULT_FOLDER).resolve(stem(input) + ".svg");
        }
        Path place = path("--sheet", wanted, input, ".svg");
        form(place);
        return place;
    }

    /** The n-th sheet of a drawing, from 1: {@code hut.svg}, {@code hut-2.svg}. */
    static Path sheet(Path first, int n) {
        String name = first.getFileName().toString();
        int dot = name.lastIndexOf('.');
        return n == 1 ? first : first.resolveSibling(name.substring(0, dot) + "-" + n + name.substring(dot));
    }

    /** What a sheet is drawn as. */
    enum Form {
        SVG, PNG, PDF, HTML;

        private String ending() {
            return "." + name().toLowerCase(Locale.ROOT);
        }

        private boolean isOf(Path sheet) {
            return String.valueOf(sheet.getFileName()).toLowerCase(Locale.ROOT).endsWith(ending());
        }
    }

    /** Whether a sheet's name asks for a page. */
    static boolean isPage(Path sheet) {
        return form(sheet) == Form.HTML;
    }

    /** What a sheet's name asks for. */
    static Form form(Path sheet) {
        return Arrays.stream(Form.values()).filter(f -> f.isOf(sheet)).findFirst().orElseThrow(() -> Refusal.usage(
                "a sheet is an SVG, a PNG, a PDF or a page of HTML, and " + Suggestion.quoted(sheet.toString()) + " is none of them",
                "end its name in .svg, .png, .pdf or .html, or name a folder that is there"));
    }

    /** An input's name without folder and extension. */
    static String stem(String input) {
        String name = input.substring(Math.max(input.lastIndexOf('/'), input.lastIndexOf('\\')) + 1);
        int dot = name.lastIndexOf('.');
        return dot > 0 ? name.substring(0, dot) : name;
    }
}
