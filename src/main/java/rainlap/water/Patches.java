package rainlap.water;

import java.util.ArrayList;
import java.util.List;

/**
 * Wet patches of one surface, each with the numbers of defences at which it is wet, in a tenth of the room that objects take: a wall has ten a piece.
 * They are only written, and read from the first to the last.
 */
final class Patches {
    private static final int SLOPED_FOOT = 16, SLOPED_TOP = 32;

    private final Packed packed = new Packed();
    /** Lines that are not level, in the order of the patches that lie on them. */
    private final List<Line> sloped = new ArrayList<>(0);
    private long x;
    private long y;

    /** A patch that is wet from one number of defences to another. */
    void add(Patch p, int first, int last) {
        boolean foot = !p.lower().isLevel(), top = p.upper() != null && !p.upper().isLevel();
        packed.put(first | last << 2 | (foot ? SLOPED_FOOT : 0) | (top ? SLOPED_TOP : 0));
        packed.signed(p.from() - x);
        packed.put(p.to() - p.from());
        packed.signed(p.leftTop() - y);
        packed.signed(p.rightTop() - p.leftTop());
        if (foot) {
            sloped.add(p.lower());
        } else {
            packed.signed(p.leftTop() - p.lower().ay());
        }
        if (top) {
            sloped.add(p.upper());
        }
        x = p.from();
        y = p.leftTop();
    }

    void trim() {
        packed.trim();
    }

    boolean isEmpty() {
        return packed.isEmpty();
    }

    /** All that are wet at a number of defences, in the order they were added. */
    List<Patch> at(int defences) {
        List<Patch> out = new ArrayList<>();
        Reader in = new Reader();
        while (in.from.hasMore()) {
            int flags = (int) in.from.get();
            Patch p = in.patch(flags);
            if ((flags & 3) <= defences && defences <= (flags >> 2 & 3)) {
                out.add(p);
            }
        }
        return out;
    }

    private final class Reader {
        private final Packed.Reader from = packed.reader();
        private int line;
        private long x;
        private long y;

        Patch patch(int flags) {
            x += from.signed();
            long to = x + from.get();
            y += from.signed();
            long rightTop = y + from.signed();
            Line lower = (flags & SLOPED_FOOT) != 0 ? sloped.get(line++) : Line.level(y - from.signed(), x, to);
            Line upper = (flags & SLOPED_TOP) != 0 ? sloped.get(line++) : null;
            return new Patch(lower, upper, x, to, y, rightTop);
        }
    }
}
