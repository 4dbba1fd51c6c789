package rainlap.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardWatchEventKinds;
import java.nio.file.WatchKey;
import java.nio.file.WatchService;
import java.util.Arrays;
import java.util.concurrent.TimeUnit;
import rainlap.file.Limits;

/**
 * Waits for a file to be saved. The folder is watched, since editors save by putting another file in its place; where a folder tells nothing
 * (on some network drives) the file's time and size are looked at now and then.
 */
final class FileWatch implements AutoCloseable {
    private static final long LOOK_MS = 250;
    /** A save may come in several writes. */
    private static final long SETTLE_MS = 60;
    private final Path file;
    private final WatchService service;
    private State last;
    private String stamp = "";

    FileWatch(Path file) throws IOException {
        this.file = file.toAbsolutePath();
        this.service = this.file.getFileSystem().newWatchService();
        this.file.getParent().register(service, StandardWatchEventKinds.ENTRY_CREATE, StandardWatchEventKinds.ENTRY_MODIFY, StandardWatchEventKinds.ENTRY_DELETE);
        this.stamp = stamp();
        this.last = read();
    }

    /** What stood there when it was last looked at: a file's bytes, or why there are none. */
    private record State(byte[] bytes, String gone) {
        boolean isSame(State o) {
            return Arrays.equals(bytes, o.bytes) && gone.equals(o.gone);
        }
    }

    /** The file as it was last read; nothing while it is not there. */
    byte[] bytes() {
        return last.bytes.clone();
    }

    /** Why there is nothing to read; empty while there is. */
    String gone() {
        return last.gone;
    }

    /** Returns when the file holds something else than before. */
    void await() throws InterruptedException {
        while (true) {
            WatchKey key = service.poll(LOOK_MS, TimeUnit.MILLISECONDS);
            boolean told = key != null;
            if (told) {
                key.pollEvents();
                key.reset();
            }
            String now = stamp();
            if (told || !now.equals(stamp)) {
                stamp = now;
                if (hasChanged()) {
                    return;
                }
            }
        }
    }

    private boolean hasChanged() throws InterruptedException {
        State now = read(), before;
        do {
            before = now;
            Thread.sleep(SETTLE_MS);
            now = read();
        } while (!now.isSame(before));
        boolean changed = !now.isSame(last);
        last = now;
        return changed;
    }

    private String stamp() {
        try {
            return Files.getLastModifiedTime(file) + " " + Files.size(file);
        } catch (IOException e) {
            return "";
        }
    }

    private State read() {
        if (Files.isDirectory(file)) {
            return new State(new byte[0], "a folder stands in its place");
        }
        try (var in = Files.newInputStream(file)) {
            return new State(in.readNBytes(Limits.STATED.bytes() + 1), "");
        } catch (IOException e) {
            return new State(new byte[0], Files.exists(file) ? "the file cannot be read" : "the file is not there");
        }
    }

    @Override
    public void close() throws IOException {
        service.close();
    }
}
