package rainlap.file;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
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
        String name = path.toString();
        try {
            if (Files.isDirectory(path)) {
                return unread(name, "this is a folder", "name one elevation file in it");
            }
            return read(name, bytes(path));
        } catch (NoSuchFileException e) {
            return unread(name, "there is no such file", "");
        } catch (AccessDeniedException e) {
            return unread(name, "the file may not be read", "look at its permissions");
        } catch (IOException e) {
            return unread(name, "the file cannot be read", "");
        }
    }

    /** No more than one byte beyond the limit, so that an endless file ends. */
    private static byte[] bytes(Path path) throws IOException {
        try (InputStream in = Files.newInputStream(path)) {
            return in.readNBytes(Limits.STATED.bytes() + 1);
        }
    }

    private static Reading unread(String name, String what, String hint) {
        return new Reading(name, Optional.empty(), List.of(Problem.ofFile(name, what, hint)), "",
                new Places(new SourceText(name, new byte[0]), Map.of()));
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
            return unread(name, "the file is larger than " + limits.bytes() + " bytes", "split the wall into several elevations");
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
