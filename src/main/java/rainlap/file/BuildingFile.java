package rainlap.file;

import java.io.IOException;
import java.io.InputStream;
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

    private BuildingFile() {}

    /** Whether a file is one: a file of JSON with the key {@code elevations}, and no wall of its own. */
    public static boolean isOne(Path path) {
        try {
            if (!Files.isRegularFile(path) || Files.size(path) > MOST_BYTES) {
                return false;
            }
            SourceText source = new SourceText(path.toString(), bytes(path));
            Problems unheard = new Problems(source, Limits.STATED);
            return Encoding.isSound(source, unheard) && TreeReader.read(source, unheard).filter(Value.Keys.class::isInstance)
                    .map(v -> ((Value.Keys) v).members().stream().map(Value.Member::name).toList())
                    .filter(keys -> keys.contains(BuildingReader.ELEVATIONS) && !keys.contains("wall")).isPresent();
        } catch (IOException e) {
            return false;
        }
    }

    private static byte[] bytes(Path path) throws IOException {
        try (InputStream in = Files.newInputStream(path)) {
            return in.readNBytes(MOST_BYTES + 1);
        }
    }

    /** Reads a building file and all its elevations; problems name each file as seen from where the building's path starts. */
    public static BuildingReading read(Path path) {
        try {
            return read(path, bytes(path));
        } catch (IOException e) {
            return new BuildingReading(Optional.empty(), List.of(Problem.ofFile(path.toString(), "the file cannot be read", "")), List.of());
        }
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
