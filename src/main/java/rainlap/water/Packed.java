package rainlap.water;

import java.util.Arrays;
import rainlap.geom.Point;

/** Whole numbers in little room: seven bits a byte, the lowest first; the last byte of each is below 128. Small ones take one byte, any takes ten at most. */
final class Packed {
    private static final Point START = new Point(0, 0);

    private byte[] data = new byte[64];
    private int size;
    private Point last = START;

    /** A number that is not negative; a negative one takes ten bytes. */
    void put(long v) {
        if (size + 10 > data.length) {
            data = Arrays.copyOf(data, data.length * 2);
        }
        long rest = v;
        for (; rest >>> 7 != 0; rest >>>= 7) {
            data[size++] = (byte) (rest & 127 | 128);
        }
        data[size++] = (byte) rest;
    }

    /** A number of either sign; small ones take little room. */
    void signed(long v) {
        put(v << 1 ^ v >> 63);
    }

    /** A place, by how far it lies from the one before. */
    void point(Point p) {
        signed(p.x() - last.x());
        signed(p.y() - last.y());
        last = p;
    }

    /** Takes no more room than it needs from now on. */
    void trim() {
        data = Arrays.copyOf(data, size);
    }

    boolean isEmpty() {
        return size == 0;
    }

    Reader reader() {
        return new Reader();
    }

    /** Reads the numbers as they were put, from the first on. */
    final class Reader {
        private int next;
        private Point last = START;

        boolean hasMore() {
            return next < size;
        }

        long get() {
            long v = 0;
            for (int shift = 0;; shift += 7) {
                byte b = data[next++];
                v |= (long) (b & 127) << shift;
                if (b >= 0) {
                    return v;
                }
            }
        }

        long signed() {
            long v = get();
            return v >>> 1 ^ -(v & 1);
        }

        Point point() {
            last = new Point(last.x() + signed(), last.y() + signed());
            return last;
        }
    }
}
