package rainlap.file;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import rainlap.building.Building;

/** Reads the form of a building file; the elevations it names are not opened here. */
final class BuildingReader {
    static final String ELEVATIONS = "elevations";
    static final List<String> KEYS = List.of("rainlap", "name", ELEVATIONS, "closed", "$schema");
    static final List<String> ENTRY_KEYS = List.of("id", "file");
    /** Elevations of one building. */
    static final int MOST = 100;
    private static final int LEAST = 2;
    private static final String ID = "[\\p{L}\\p{N}][\\p{L}\\p{N}_-]*";

    private final Problems problems;
    private final Path file;
    private final Ids<String> ids = new Ids<>("elevation");
    private final Map<Path, Integer> files = new HashMap<>();

    private BuildingReader(Problems problems, Path file) {
        this.problems = problems;
        this.file = file;
    }

    /**
     * What the form says.
     *
     * @param at where the list of elevations stands
     */
    record Form(String name, int at, List<Entry> entries, boolean closed) {}

    /**
     * One elevation of the list.
     *
     * @param at where it stands
     * @param path of its file, from where the building's path starts
     */
    record Entry(int at, String id, Path path) {}

    static Optional<Form> read(Value root, String nameless, Path file, Problems problems) {
        return Fields.of(root, "", KEYS, problems).flatMap(f -> new BuildingReader(problems, file).read(f, nameless));
    }

    private Optional<Form> read(Fields f, String nameless) {
        ElevationReader.version(f);
        f.text("$schema");
        String name = f.text("name").orElse(nameless);
        f.required("closed", "true, where the last elevation meets the first, or false");
        boolean closed = f.flag("closed").orElse(false);
        Optional<Value> list = f.required(ELEVATIONS, "[{ \"id\": \"north\", \"file\": \"north.json\" }, …]");
        List<Value> listed = list.map(v -> f.list(v, ELEVATIONS, MOST)).orElse(List.of());
        List<Entry> entries = new ArrayList<>();
        for (int i = 0; i < listed.size(); i++) {
            entry(listed.get(i), i + 1).ifPresent(entries::add);
        }
        if (list.isEmpty() || entries.size() < listed.size() || !problems.isEmpty()) {
            return Optional.empty();
        }
        if (entries.size() < LEAST) {
            f.wrong(list.get().at(), "a building joins at least " + LEAST + " elevations, not " + entries.size(), "check one elevation by itself");
        } else if (closed && entries.size() < Building.LEAST_CLOSED) {
            f.wrong(f.keyAt("closed"), entries.size() + " elevations do not close round a plan", "write \"closed\": false, or name all elevations");
        }
        return Optional.of(new Form(name, list.get().at(), entries, closed));
    }

    private Optional<Entry> entry(Value v, int number) {
        return Fields.of(v, ids.label(v, number), ENTRY_KEYS, problems).flatMap(f -> {
            Optional<String> id = ids.claim(f).filter(i -> isShort(f, i));
            Optional<Path> path = f.required("file", "\"north.json\"").flatMap(p -> f.text(p, "file", f.limits().textLength())).flatMap(t -> path(f, t));
            return id.isPresent() && path.isPresent() ? Optional.of(new Entry(f.at(), id.get(), path.get())) : Optional.empty();
        });
    }

    /** It goes before the ids of pieces, and into the names of sheets. */
    private boolean isShort(Fields f, String id) {
        if (!id.matches(ID)) {
            f.wrong(ids.places().get(id), "the id of an elevation holds letters, digits, - and _ only", "write a short one: north");
        }
        return id.matches(ID);
    }

    private Optional<Path> path(Fields f, Value.Text text) {
        Path path;
        try {
            path = Path.of(text.text());
        } catch (InvalidPathException e) {
            f.wrong(text.at(), Quoted.text(text.text()) + " is no file name on this machine", "write the path from this file to the elevation's");
            return Optional.empty();
        }
        if (path.isAbsolute()) {
            f.wrong(text.at(), "the path of \"file\" starts at the root", "write the path from this file to the elevation's: north.json, ../north.json");
            return Optional.empty();
        }
        Path from = file.resolveSibling(path).normalize();
        Integer first = files.putIfAbsent(from, text.at());
        if (first != null) {
            f.wrong(text.at(), "this file is named twice", "the other is on " + problems.line(first) + "; each wall of the building is an elevation of its own");
            return Optional.empty();
        }
        return Optional.of(from);
    }
}
