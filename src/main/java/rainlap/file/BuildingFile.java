package rainlap.file;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rainlap.building.Building;
import rainlap.building.Building.Wall;

/** Reads building files and the elevations they name. */
public final class BuildingFile {
    /** The size of a building file: 1 MiB. */
    static final int MOST_BYTES = 1 << 20;
    private static final String FORM = "building";

    private BuildingFile() {}

    /** Whether a file is one: a file of JSON with the key {@code elevations}, and no wall of its own. */
    public static boolean isOne(Path path) {
        return Files.isRegularFile(path) && FileBytes.of(path, FORM, MOST_BYTES).bytes().filter(b -> b.length <= MOST_BYTES).filter(b -> namesElevations(path, b)).isPresent();
    }

    private static boolean namesElevations(Path path, byte[] bytes) {
        SourceText source = new SourceText(path.toString(), bytes);
        Problems unheard = new Problems(source, Limits.STATED);
        return Encoding.isSound(source, unheard) && TreeReader.read(source, unheard).filter(Value.Keys.class::isInstance)
                .map(v -> ((Value.Keys) v).members().stream().map(Value.Member::name).toList())
                .filter(keys -> keys.contains(BuildingReader.ELEVATIONS) && !keys.contains("wall")).isPresent();
    }

    /** Reads a building file and all its elevations; problems name each file as seen from where the building's path starts. */
    public static BuildingReading read(Path path) {
        FileBytes file = FileBytes.of(path, FORM, MOST_BYTES);
        return file.bytes().map(b -> read(path, b)).orElseGet(() -> new BuildingReading(Optional.empty(), file.problem().stream().toList(), List.of()));
    }

    /** @param path where the bytes stand, or would: the elevations' paths start there */
    static BuildingReading read(Path path, byte[] bytes) {
        SourceText source = new SourceText(path.toString(), bytes);
        Problems problems = new Problems(source, Limits.STATED);
        if (bytes.length > MOST_BYTES) {
            problems.add(0, "the file is larger than " + MOST_BYTES + " bytes", "a building file only names its elevations");
        }
        Optional<Value> root = problems.isEmpty() && Encoding.isSound(source, problems) ? TreeReader.read(source, problems) : Optional.empty();
        Optional<BuildingReader.Form> form = root.flatMap(v -> BuildingReader.read(v, ElevationFile.stem(path.toString()), path, problems));
        List<Reading> elevations = form.map(f -> f.entries().stream().map(e -> ElevationFile.read(e.path())).toList()).orElse(List.of());
        boolean sound = form.isPresent() && problems.isEmpty() && elevations.stream().allMatch(r -> r.elevation().isPresent());
        Optional<Building> building = sound ? Joining.joined(form.get(), elevations, problems) : Optional.empty();
        List<Problem> all = new ArrayList<>(problems.sorted());
        elevations.forEach(r -> all.addAll(r.problems()));
        return new BuildingReading(all.isEmpty() ? building : Optional.empty(), all, elevations);
    }

    /** The walls of a form. */
    static List<Wall> walls(BuildingReader.Form form, List<Reading> elevations) {
        List<Wall> out = new ArrayList<>();
        for (int i = 0; i < elevations.size(); i++) {
            out.add(new Wall(form.entries().get(i).id(), elevations.get(i).elevation().orElseThrow()));
        }
        return out;
    }
}
