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
    private byte[] last;
    private String stamp = "";

    FileWatch(Path file) throws IOException {
        this.file = file.toAbsolutePath();
        this.service = this.file.getFileSystem().newWatchService();
        this.file.getParent().register(service, StandardWatchEventKinds.ENTRY_CREATE, StandardWatchEventKinds.ENTRY_MODIFY, StandardWatchEventKinds.ENTRY_DELETE);
        this.stamp = stamp();
        this.last = read();
    }

    /** The file as it was last read; nothing while it is not there. */
    byte[] bytes() {
        return last.clone();
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
        byte[] now = read();
        for (byte[] before = null; !Arrays.equals(before, now); now = read()) {
            before = now;
            Thread.sleep(SETTLE_MS);
        }
        boolean changed = !Arrays.equals(now, last);
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

    private byte[] read() {
        try (var in = Files.newInputStream(file)) {
            return in.readNBytes(Limits.STATED.bytes() + 1);
        } catch (IOException e) {
            return new byte[0];
        }
    }

    @Override
    public void close() throws IOException {
        service.close();
    }
}
