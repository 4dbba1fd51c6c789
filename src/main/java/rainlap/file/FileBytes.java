package rainlap.file;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.Optional;

/**
 * What a file holds, or why it cannot be read.
 *
 * @param bytes no more than one beyond the limit, so that an endless file ends
 */
record FileBytes(Optional<byte[]> bytes, Optional<Problem> problem) {
    /**
     * @param form what it should be, for messages: {@code elevation}
     * @param most how many bytes it may have
     */
    static FileBytes of(Path path, String form, int most) {
        String name = path.toString();
        try {
            if (Files.isDirectory(path)) {
                return no(name, "this is a folder", "name one " + form + " file in it");
            }
            try (InputStream in = Files.newInputStream(path)) {
                return new FileBytes(Optional.of(in.readNBytes(most + 1)), Optional.empty());
            }
        } catch (NoSuchFileException e) {
            return no(name, "there is no such file", "");
        } catch (AccessDeniedException e) {
            return no(name, "the file may not be read", "look at its permissions");
        } catch (IOException e) {
            return no(name, "the file cannot be read", "");
        }
    }

    private static FileBytes no(String name, String what, String hint) {
        return new FileBytes(Optional.empty(), Optional.of(Problem.ofFile(name, what, hint)));
    }
}
