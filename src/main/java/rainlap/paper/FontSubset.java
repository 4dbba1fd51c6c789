package rainlap.paper;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * Builds a TrueType font that holds only the glyphs of some characters, after the OpenType specification. Glyphs keep
 * their outlines and widths and lose their hinting instructions; what a composite glyph is made of comes along. Tables
 * written: {@code OS/2 cmap glyf head hhea hmtx loca maxp name post}. Same characters, same bytes.
 */
final class FontSubset {

    private static final int CHECKSUM_OF_FONT = 0xB1B0AFBA;

    private final TrueType font;
    private final List<Integer> oldGlyphs = new ArrayList<>();
    private final Map<Integer, Integer> newGlyphs = new TreeMap<>();
    private final SortedMap<Integer, Integer> characters = new TreeMap<>();

    private FontSubset(TrueType font) {
        this.font = font;
    }

    /** The font with the glyphs of these characters; characters it lacks are passed over. */
    static byte[] of(TrueType font, BitSet codePoints) {
        FontSubset subset = new FontSubset(font);
        subset.keep(0);
        for (int codePoint = codePoints.nextSetBit(0); codePoint >= 0; codePoint = codePoints.nextSetBit(codePoint + 1)) {
            int glyph = font.glyph(codePoint);
            if (glyph != 0) {
                subset.characters.put(codePoint, subset.keep(glyph));
            }
        }
        return subset.build();
    }

    private int keep(int oldGlyph) {
        Integer known = newGlyphs.get(oldGlyph);
        if (known != null) {
            return known;
        }
        int index = oldGlyphs.size();
        oldGlyphs.add(oldGlyph);
        newGlyphs.put(oldGlyph, index);
        return index;
    }

    private byte[] build() {
        List<byte[]> outlines = new ArrayList<>();
        for (int i = 0; i < oldGlyphs.size(); i++) {
            outlines.add(GlyphOutline.renumbered(font.outline(oldGlyphs.get(i)), this::keep));
        }
        SortedMap<String, byte[]> tables = new TreeMap<>();
        tables.put("OS/2", font.table("OS/2"));
        tables.put("cmap", characterMap());
        tables.put("glyf", glyphData(outlines));
        tables.put("head", head());
        tables.put("hhea", withShort(font.table("hhea"), 34, oldGlyphs.size()));
        tables.put("hmtx", metrics());
        tables.put("loca", offsets(outlines));
        tables.put("maxp", maxima());
        tables.put("name", font.table("name"));
        tables.put("post", post());
        return assemble(tables);
    }

    private byte[] metrics() {
        ByteBuffer out = ByteBuffer.allocate(4 * oldGlyphs.size());
        for (int glyph : oldGlyphs) {
            out.putShort((short) font.advance(glyph)).putShort((short) font.leftSideBearing(glyph));
        }
        return out.array();
    }

    private static byte[] glyphData(List<byte[]> outlines) {
        ByteBuffer out = ByteBuffer.allocate(outlines.stream().mapToInt(o -> padded(o.length)).sum());
        for (byte[] outline : outlines) {
            out.put(outline).position(padded(out.position()));
        }
        return out.array();
    }

    private static byte[] offsets(List<byte[]> outlines) {
        ByteBuffer out = ByteBuffer.allocate(4 * (outlines.size() + 1));
        int at = 0;
        for (byte[] outline : outlines) {
            out.putInt(at);
            at += padded(outline.length);
        }
        return out.putInt(at).array();
    }

    /** Long offsets; the checksum of the whole is set by {@link #assemble}. */
    private byte[] head() {
        byte[] head = withShort(font.table("head"), 50, 1);
        ByteBuffer.wrap(head).putInt(8, 0);
        return head;
    }

    private byte[] maxima() {
        byte[] maxima = withShort(font.table("maxp"), 4, oldGlyphs.size());
        for (int unused = 16; unused <= 26; unused += 2) {
            ByteBuffer.wrap(maxima).putShort(unused, (short) 0);
        }
        return withShort(maxima, 14, 1);
    }

    /** Version 3: no glyph names. */
    private byte[] post() {
        byte[] post = new byte[32];
        System.arraycopy(font.table("post"), 0, post, 0, 32);
        ByteBuffer.wrap(post).putInt(0, 0x00030000);
        return post;
    }

    /** One segment of format 12 for each character, and format 4 for those of the basic plane. */
    private byte[] characterMap() {
        byte[] four = segments();
        int groups = characters.size();
        ByteBuffer out = ByteBuffer.allocate(4 + 16 + four.length + 16 + 12 * groups);
        out.putShort((short) 0).putShort((short) 2);
        out.putShort((short) 3).putShort((short) 1).putInt(20);
        out.putShort((short) 3).putShort((short) 10).putInt(20 + four.length);
        out.put(four);
        out.putShort((short) 12).putShort((short) 0).putInt(16 + 12 * groups).putInt(0).putInt(groups);
        characters.forEach((character, glyph) -> out.putInt(character).putInt(character).putInt(glyph));
        return out.array();
    }

    private byte[] segments() {
        List<Map.Entry<Integer, Integer>> basic =
                characters.entrySet().stream().filter(e -> e.getKey() < 0xFFFF).toList();
        int count = basic.size() + 1;
        int power = Integer.highestOneBit(count);
        ByteBuffer out = ByteBuffer.allocate(16 + 8 * count);
        out.putShort((short) 4).putShort((short) out.capacity()).putShort((short) 0).putShort((short) (2 * count));
        out.putShort((short) (2 * power)).putShort((short) Integer.numberOfTrailingZeros(power))
                .putShort((short) (2 * (count - power)));
        basic.forEach(e -> out.putShort(e.getKey().shortValue()));
        out.putShort((short) 0xFFFF).putShort((short) 0);
        basic.forEach(e -> out.putShort(e.getKey().shortValue()));
        out.putShort((short) 0xFFFF);
        basic.forEach(e -> out.putShort((short) (e.getValue() - e.getKey())));
        out.putShort((short) 1);
        return out.array();
    }

    private static byte[] assemble(SortedMap<String, byte[]> tables) {
        int count = tables.size();
        int power = Integer.highestOneBit(count);
        int at = 12 + 16 * count;
        ByteBuffer out = ByteBuffer.allocate(at + tables.values().stream().mapToInt(t -> padded(t.length)).sum());
        out.putInt(0x00010000).putShort((short) count).putShort((short) (16 * power))
                .putShort((short) Integer.numberOfTrailingZeros(power)).putShort((short) (16 * (count - power)));
        int head = 0;
        for (Map.Entry<String, byte[]> entry : tables.entrySet()) {
            byte[] table = entry.getValue();
            out.put(entry.getKey().getBytes(StandardCharsets.US_ASCII)).putInt(checksum(table)).putInt(at)
                    .putInt(table.length);
            out.put(at, table);
            head = entry.getKey().equals("head") ? at : head;
            at += padded(table.length);
        }
        out.putInt(head + 8, CHECKSUM_OF_FONT - checksum(out.array()));
        return out.array();
    }

    private static int checksum(byte[] bytes) {
        ByteBuffer in = ByteBuffer.allocate(padded(bytes.length)).put(0, bytes);
        int sum = 0;
        while (in.hasRemaining()) {
            sum += in.getInt();
        }
        return sum;
    }

    private static byte[] withShort(byte[] table, int at, int value) {
        ByteBuffer.wrap(table).putShort(at, (short) value);
        return table;
    }

    private static int padded(int length) {
        return length + 3 & ~3;
    }
}
