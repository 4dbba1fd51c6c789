package rainlap.cli;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.AccessDeniedException;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * The files of one run: places are claimed first, contents are written aside, and all are moved into place at the end. Whatever is left
 * aside is deleted on closing, so that a run that fails leaves nothing behind.
 */
final class OutputFiles implements AutoCloseable {
    private static final int ATTEMPTS = 1000;

    private final List<Path> inputs;
    private final Set<Path> claimed = new HashSet<>();
    private final List<Aside> aside = new ArrayList<>();

    /** @param inputs files that must stay as they are */
    OutputFiles(List<Path> inputs) {
        this.inputs = List.copyOf(inputs);
    }

    private record Aside(Path written, Path target) {}

    /** What writes a file's content. */
    interface Content {
        void writeTo(OutputStream out) throws IOException;
    }

    /**
     * Claims a place in a folder that is there.
     *
     * @throws Refusal if it would replace an input or anything Rainlap did not write, if it is claimed already, or cannot be written
     */
    void claim(Path shown) {
        try {
            Path parent = parent(shown);
            if (!Files.isDirectory(parent)) {
                throw Refusal.usage("there is no folder " + Suggestion.quoted(parent.toString()) + " to write "
                        + Suggestion.quoted(String.valueOf(shown.getFileName())) + " to", "make it first, or choose another place");
            }
            if (!Files.isWritable(parent)) {
                throw Refusal.usage("the folder " + Suggestion.quoted(parent.toString()) + " may not be written to", "choose another place");
            }
            refuseToHarm(shown);
            claim(shown, real(shown));
        } catch (IOException e) {
            throw cannotWrite(shown, e);
        }
    }

    /** Claims a place in a folder that is made when the files are moved, if it is not there. */
    void claimInNewFolder(Path shown) {
        Path parent = parent(shown);
        if (Files.exists(parent)) {
            claim(shown);
        } else {
            claim(shown, shown.toAbsolutePath().normalize());
        }
    }

    private void claim(Path shown, Path real) {
        if (!claimed.add(real)) {
            throw Refusal.usage("two outputs would be written to " + Suggestion.quoted(shown.toString()),
                    "give each its own name, or run rainlap once for each");
        }
    }

    private void refuseToHarm(Path shown) throws IOException {
        if (!Files.exists(shown)) {
            if (Files.isSymbolicLink(shown)) {
                throw Refusal.usage(Suggestion.quoted(shown.toString()) + " is a link to a file that is not there", "choose another name");
            }
            return;
        }
        for (Path input : inputs) {
            if (Files.exists(input) && Files.isSameFile(shown, input)) {
                throw Refusal.usage("writing " + Suggestion.quoted(shown.toString()) + " would replace the input "
                        + Suggestion.quoted(input.toString()), "choose another name");
            }
        }
        if (!Files.isRegularFile(shown)) {
            throw Refusal.usage(Suggestion.quoted(shown.toString()) + " is there and is no ordinary file", "choose another name");
        }
        if (!Signature.isOn(shown)) {
            throw Refusal.usage(Suggestion.quoted(shown.toString()) + " is there and Rainlap did not write it",
                    "choose another name, or delete it first");
        }
    }

    /** Where a move must go to reach the file behind a link. */
    private static Path real(Path shown) throws IOException {
        return Files.exists(shown) ? shown.toRealPath() : parent(shown).toRealPath().resolve(shown.getFileName());
    }

    private static Path parent(Path shown) {
        Path parent = shown.toAbsolutePath().getParent();
        if (parent == null || shown.getFileName() == null) {
            throw Refusal.usage(Suggestion.quoted(shown.toString()) + " is no file name", "name a file");
        }
        return parent;
    }

    /** Writes a claimed file aside, beside its place. */
    void write(Path shown, Content content) {
        try {
            Files.createDirectories(parent(shown));
            Path target = real(shown);
            Path written = open(target);
            aside.add(new Aside(written, target));
            try (OutputStream out = new BufferedOutputStream(Files.newOutputStream(written), 1 << 16)) {
                content.writeTo(out);
            }
        } catch (IOException e) {
            throw cannotWrite(shown, e);
        }
    }

    private static Path open(Path target) throws IOException {
        for (int i = 0; i < ATTEMPTS; i++) {
            Path path = target.resolveSibling("." + target.getFileName() + "." + i + ".part");
            try {
                Files.newOutputStream(path, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE).close();
                return path;
            } catch (FileAlreadyExistsException e) {
                continue;
            }
        }
        throw new FileAlreadyExistsException(target.resolveSibling("." + target.getFileName() + ".0.part").toString());
    }

    /** Moves everything into place. */
    void moveAll() {
        while (!aside.isEmpty()) {
            Aside next = aside.get(0);
            try {
                move(next);
            } catch (IOException e) {
                throw cannotWrite(next.target, e);
            }
            aside.remove(0);
        }
    }

    private static void move(Aside one) throws IOException {
        try {
            Files.move(one.written, one.target, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
        } catch (AtomicMoveNotSupportedException e) {
            Files.move(one.written, one.target, StandardCopyOption.REPLACE_EXISTING);
        }
    }

    private static Refusal cannotWrite(Path path, IOException e) {
        return Refusal.usage("cannot write " + Suggestion.quoted(path.toString()) + ": " + why(e), "choose another place");
    }

    /** Where the machine names only the file, which is one written aside, what that means. */
    private static String why(IOException e) {
        return e instanceof AccessDeniedException ? "that is not allowed" : e instanceof NoSuchFileException ? "its folder takes no new files"
                : e.getMessage() == null ? e.getClass().getSimpleName() : e.getMessage();
    }

    @Override
    public void close() {
        for (Aside one : aside) {
            try {
                Files.deleteIfExists(one.written);
            } catch (IOException e) {
                // What is left aside harms nothing, and the reason for stopping is worth more than this one.
            }
        }
    }
}
