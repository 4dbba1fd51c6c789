package rainlap.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/** Waits for any of several files to be saved: their times and sizes are looked at several times a second, which every drive can tell. */
final class FilesWatch {
    private static final long LOOK_MS = 100;
    /** A save may come in several writes. */
    private static final long SETTLE_MS = 60;
    private List<Path> files;
    private String last;

    FilesWatch(List<Path> files) {
        look(files);
    }

    /** Watches these from now on. */
    void look(List<Path> others) {
        files = List.copyOf(others);
        last = stamps();
    }

    /** Returns when one of them is not what it was. */
    void await() throws InterruptedException {
        String now = stamps();
        while (now.equals(last)) {
            Thread.sleep(LOOK_MS);
            now = stamps();
        }
        for (String before = ""; !before.equals(now); now = stamps()) {
            before = now;
            Thread.sleep(SETTLE_MS);
        }
        last = now;
    }

    private String stamps() {
        StringBuilder out = new StringBuilder();
        for (Path p : files) {
            try {
                out.append(Files.getLastModifiedTime(p)).append(' ').append(Files.size(p)).append('\n');
            } catch (IOException e) {
                out.append("none\n");
            }
        }
        return out.toString();
    }
}
