package rainlap.paper;

import java.nio.ByteBuffer;
import java.util.function.IntUnaryOperator;

/** One entry of a font's {@code glyf} table, rewritten without instructions and with new numbers for its parts. */
final class GlyphOutline {

    private static final int HEADER = 10;
    private static final int WORDS = 0x0001;
    private static final int ONE_SCALE = 0x0008;
    private static final int MORE = 0x0020;
    private static final int TWO_SCALES = 0x0040;
    private static final int FOUR_SCALES = 0x0080;
    private static final int INSTRUCTIONS = 0x0100;

    private GlyphOutline() {
    }

    /** @param number gives the new number of a glyph that this one is composed of */
    static byte[] renumbered(byte[] outline, IntUnaryOperator number) {
        if (outline.length == 0) {
            return outline;
        }
        return ByteBuffer.wrap(outline).getShort(0) >= 0 ? simple(outline) : composite(outline, number);
    }

    private static byte[] simple(byte[] outline) {
        ByteBuffer in = ByteBuffer.wrap(outline);
        int lengthAt = HEADER + 2 * in.getShort(0);
        int instructions = in.getShort(lengthAt) & 0xFFFF;
        int rest = lengthAt + 2 + instructions;
        ByteBuffer out = ByteBuffer.allocate(outline.length - instructions);
        out.put(outline, 0, lengthAt).putShort((short) 0).put(outline, rest, outline.length - rest);
        return out.array();
    }

    private static byte[] composite(byte[] outline, IntUnaryOperator number) {
        ByteBuffer out = ByteBuffer.wrap(outline.clone());
        int at = HEADER;
        int flags;
        do {
            flags = out.getShort(at);
            out.putShort(at, (short) (flags & ~INSTRUCTIONS));
            out.putShort(at + 2, (short) number.applyAsInt(out.getShort(at + 2) & 0xFFFF));
            at += 4 + ((flags & WORDS) != 0 ? 4 : 2);
            at += (flags & ONE_SCALE) != 0 ? 2 : (flags & TWO_SCALES) != 0 ? 4 : (flags & FOUR_SCALES) != 0 ? 8 : 0;
        } while ((flags & MORE) != 0);
        byte[] rewritten = new byte[at];
        out.get(0, rewritten);
        return rewritten;
    }
}
