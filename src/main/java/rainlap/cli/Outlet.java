package rainlap.cli;

import java.io.FilterOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.util.Locale;
import java.util.Optional;

/**
 * Standard output that remembers why writing failed, which a print stream forgets. A reader that has gone ({@code rainlap … | head})
 * is no failure: the rest is dropped in silence, as the reader wished.
 */
final class Outlet extends FilterOutputStream {
    private Optional<String> failure = Optional.empty();
    private boolean closed;

    Outlet(OutputStream out) {
        super(new java.io.BufferedOutputStream(out, 1 << 14));
    }

    @Override
    public void write(int b) {
        write(new byte[] {(byte) b}, 0, 1);
    }

    @Override
    public void write(byte[] b, int off, int len) {
        attempt(() -> out.write(b, off, len));
    }

    @Override
    public void flush() {
        attempt(out::flush);
    }

    /** Why what was printed did not arrive, unless all did or nobody was there to read it. */
    Optional<String> failure() {
        return failure;
    }

    private interface Writing {
        void run() throws IOException;
    }

    private void attempt(Writing writing) {
        if (closed) {
            return;
        }
        try {
            writing.run();
        } catch (IOException e) {
            closed = true;
            String why = String.valueOf(e.getMessage());
            failure = isReaderGone(why) ? Optional.empty() : Optional.of(why);
        }
    }

    private static boolean isReaderGone(String why) {
        String text = why.toLowerCase(Locale.ROOT);
        return text.contains("broken pipe") || text.contains("pipe is being closed") || text.contains("pipe has been ended");
    }
}
