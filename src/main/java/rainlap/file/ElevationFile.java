package rainlap.file;

import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import rainlap.wall.Elevation;

/** Reads elevation files. Whatever is wrong with a file comes back as problems; nothing is thrown for it. */
public final class ElevationFile {
    private ElevationFile() {}

    /** Reads a file; problems name it as the path was given. */
    public static Reading read(Path path) {
        FileBytes file = FileBytes.of(path, "elevation", Limits.STATED.bytes());
        return file.bytes().map(b -> read(path.toString(), b)).orElseGet(() -> unread(file.problem().orElseThrow()));
    }

    private static Reading unread(Problem problem) {
        return new Reading(problem.file(), Optional.empty(), List.of(problem), "", new Places(new SourceText(problem.file(), new byte[0]), Map.of()));
    }

    /**
     * Reads an elevation from bytes.
     *
     * @param displayName what problems call the file; its stem names an elevation that has no name
     */
    public static Reading read(String displayName, byte[] bytes) {
        return read(displayName, bytes, Limits.STATED);
    }

    static Reading read(String name, byte[] bytes, Limits limits) {
        if (bytes.length > limits.bytes()) {
            return unread(Problem.ofFile(name, "the file is larger than " + limits.bytes() + " bytes", "split the wall into several elevations"));
        }
        SourceText source = new SourceText(name, bytes.clone());
        Problems problems = new Problems(source, limits);
        Optional<Value> root = Encoding.isSound(source, problems) ? TreeReader.read(source, problems) : Optional.empty();
        ElevationReader reader = new ElevationReader(problems);
        Optional<Elevation> elevation = root.flatMap(v -> reader.read(v, stem(name)));
        return new Reading(name, problems.isEmpty() ? elevation : Optional.empty(), problems.sorted(), sha256(bytes),
                new Places(source, reader.piecePlaces()));
    }

    static String stem(String name) {
        String last = name.substring(Math.max(name.lastIndexOf('/'), name.lastIndexOf('\\')) + 1);
        int dot = last.lastIndexOf('.');
        return dot > 0 ? last.substring(0, dot) : last;
    }

    private static String sha256(byte[] bytes) {
        try {
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }
}
