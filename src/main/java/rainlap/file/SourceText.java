package rainlap.file;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;

/** The bytes of a file and where its lines begin. Lines end at LF, CR LF or a single CR. */
final class SourceText {
    private final String name;
    private final byte[] bytes;
    private final int[] lineStarts;

    SourceText(String name, byte[] bytes) {
        this.name = name;
        this.bytes = bytes;
        this.lineStarts = lineStarts(bytes);
    }

    private static int[] lineStarts(byte[] bytes) {
        int[] starts = new int[64];
        int count = 1;
        for (int i = 0; i < bytes.length; i++) {
            boolean ends = bytes[i] == '\n' || bytes[i] == '\r' && !(i + 1 < bytes.length && bytes[i + 1] == '\n');
            if (ends) {
                starts = count == starts.length ? Arrays.copyOf(starts, 2 * count) : starts;
                starts[count++] = i + 1;
            }
        }
        starts = Arrays.copyOf(starts, count);
        starts[0] = hasMark(bytes) ? 3 : 0;
        return starts;
    }

    /** Whether the file begins with UTF-8's byte-order mark, which is no part of its first line. */
    private static boolean hasMark(byte[] b) {
        return b.length >= 3 && b[0] == (byte) 0xEF && b[1] == (byte) 0xBB && b[2] == (byte) 0xBF;
    }

    String name() {
        return name;
    }

    byte[] bytes() {
        return bytes;
    }

    /** The first byte after a byte-order mark. */
    int start() {
        return lineStarts[0];
    }

    Place place(int offset) {
        int line = lineOf(offset);
        int column = 1;
        for (int i = lineStarts[line]; i < Math.min(offset, bytes.length); i++) {
            column += (bytes[i] & 0xC0) == 0x80 ? 0 : 1; // all but the first byte of a character in UTF-8
        }
        return new Place(line + 1, column);
    }

    Excerpt excerpt(int offset) {
        int line = lineOf(offset);
        int from = lineStarts[line];
        int to = line + 1 < lineStarts.length ? lineStarts[line + 1] : bytes.length;
        // Of an endless line only the neighbourhood is decoded; a window needs no more.
        int near = Math.max(from, startOfCharacter(offset - 2000));
        int far = Math.min(to, offset + 2000);
        String before = text(near, Math.min(offset, bytes.length));
        String all = before + text(Math.min(offset, far), far);
        return Excerpt.of(all.replaceAll("[\\r\\n]+$", ""), before.length());
    }

    private int startOfCharacter(int offset) {
        int at = Math.max(0, offset);
        while (at > 0 && (bytes[at] & 0xC0) == 0x80) {
            at--;
        }
        return at;
    }

    private int lineOf(int offset) {
        int found = Arrays.binarySearch(lineStarts, Math.max(offset, lineStarts[0]));
        return found >= 0 ? found : -found - 2;
    }

    private String text(int from, int to) {
        return new String(bytes, from, Math.max(0, to - from), StandardCharsets.UTF_8);
    }
}
