package rainlap.paper;

import java.io.IOException;
import java.io.Writer;

/** A buffer before a writer, for one thread: XML is written in pieces of a few characters, and locks would cost most. */
final class UnlockedWriter extends Writer {

    private final Writer out;
    private final char[] buffer = new char[1 << 15];
    private int used;

    UnlockedWriter(Writer out) {
        this.out = out;
    }

    @Override
    public void write(int c) throws IOException {
        if (used == buffer.length) {
            empty();
        }
        buffer[used++] = (char) c;
    }

    @Override
    public void write(char[] chars, int offset, int length) throws IOException {
        if (length > buffer.length - used) {
            empty();
        }
        if (length > buffer.length) {
            out.write(chars, offset, length);
        } else {
            System.arraycopy(chars, offset, buffer, used, length);
            used += length;
        }
    }

    @Override
    public void write(String text, int offset, int length) throws IOException {
        if (length > buffer.length - used) {
            empty();
        }
        if (length > buffer.length) {
            out.write(text, offset, length);
        } else {
            text.getChars(offset, offset + length, buffer, used);
            used += length;
        }
    }

    @Override
    public void flush() throws IOException {
        empty();
        out.flush();
    }

    @Override
    public void close() throws IOException {
        flush();
        out.close();
    }

    private void empty() throws IOException {
        out.write(buffer, 0, used);
        used = 0;
    }
}
