package rainlap.paper;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.TreeMap;

/**
 * The tables of a TrueType font that measuring and subsetting need, as the OpenType specification lays them out:
 * {@code head}, {@code hhea}, {@code maxp}, {@code cmap} (formats 4 and 12), {@code hmtx}, {@code loca}, {@code glyf}.
 * Lengths are font units.
 */
final class TrueType {

    private final ByteBuffer file;
    private final Map<String, int[]> tables = new TreeMap<>();
    private final int unitsPerEm;
    private final int glyphs;
    private final int longMetrics;
    private final boolean longOffsets;
    private final int charMap;
    private final int widths;
    private final int places;
    private final int outlines;
    /** Glyphs of the first characters: nearly all that is measured, and measured often. */
    private final int[] often = new int[0x100];

    TrueType(byte[] bytes) {
        file = ByteBuffer.wrap(bytes.clone()).asReadOnlyBuffer();
        int count = u16(4);
        for (int i = 0; i < count; i++) {
            int at = 12 + 16 * i;
            byte[] tag = new byte[4];
            file.get(at, tag);
            tables.put(new String(tag, StandardCharsets.US_ASCII), new int[] {file.getInt(at + 8), file.getInt(at + 12)});
        }
        unitsPerEm = u16(start("head") + 18);
        longOffsets = u16(start("head") + 50) == 1;
        glyphs = u16(start("maxp") + 4);
        longMetrics = u16(start("hhea") + 34);
        charMap = findCharMap();
        widths = start("hmtx");
        places = start("loca");
        outlines = start("glyf");
        for (int c = 0; c < often.length; c++) {
            often[c] = lookedUp(c);
        }
    }

    int unitsPerEm() {
        return unitsPerEm;
    }

    int glyphs() {
        return glyphs;
    }

    /** The glyph of a character, 0 where the font has none. */
    int glyph(int codePoint) {
        return codePoint < often.length ? often[codePoint] : lookedUp(codePoint);
    }

    private int lookedUp(int codePoint) {
        return u16(charMap) == 12 ? glyphInGroups(codePoint) : glyphInSegments(codePoint);
    }

    int advance(int glyph) {
        return u16(widths + 4 * Math.min(glyph, longMetrics - 1));
    }

    int leftSideBearing(int glyph) {
        return glyph < longMetrics ? file.getShort(widths + 4 * glyph + 2)
                : file.getShort(widths + 4 * longMetrics + 2 * (glyph - longMetrics));
    }

    /** Lowest ink, up positive; 0 for a glyph without ink. */
    int yMin(int glyph) {
        return outlineLength(glyph) == 0 ? 0 : file.getShort(outlineStart(glyph) + 4);
    }

    /** Highest ink, up positive; 0 for a glyph without ink. */
    int yMax(int glyph) {
        return outlineLength(glyph) == 0 ? 0 : file.getShort(outlineStart(glyph) + 8);
    }

    /** The bytes of a glyph's outline, empty for a glyph without ink. */
    byte[] outline(int glyph) {
        byte[] bytes = new byte[outlineLength(glyph)];
        file.get(outlineStart(glyph), bytes);
        return bytes;
    }

    /** The bytes of a whole table. */
    byte[] table(String tag) {
        start(tag);
        int[] place = tables.get(tag);
        byte[] bytes = new byte[place[1]];
        file.get(place[0], bytes);
        return bytes;
    }

    boolean has(String tag) {
        return tables.containsKey(tag);
    }

    private int outlineStart(int glyph) {
        return outlines + offset(glyph);
    }

    private int outlineLength(int glyph) {
        return offset(glyph + 1) - offset(glyph);
    }

    private int offset(int glyph) {
        return longOffsets ? file.getInt(places + 4 * glyph) : 2 * u16(places + 2 * glyph);
    }

    private int findCharMap() {
        int cmap = start("cmap");
        int found = -1;
        for (int i = 0; i < u16(cmap + 2); i++) {
            int at = cmap + 4 + 8 * i;
            int subtable = cmap + file.getInt(at + 4);
            boolean unicode = u16(at) == 0 || u16(at) == 3 && (u16(at + 2) == 1 || u16(at + 2) == 10);
            int format = u16(subtable);
            if (unicode && (format == 12 || format == 4 && found < 0)) {
                found = subtable;
            }
        }
        if (found < 0) {
            throw new IllegalArgumentException("the font has no Unicode character map of format 4 or 12");
        }
        return found;
    }

    private int glyphInGroups(int codePoint) {
        int groups = file.getInt(charMap + 12);
        for (int i = 0; i < groups; i++) {
            int at = charMap + 16 + 12 * i;
            if (codePoint >= file.getInt(at) && codePoint <= file.getInt(at + 4)) {
                return file.getInt(at + 8) + codePoint - file.getInt(at);
            }
        }
        return 0;
    }

    private int glyphInSegments(int codePoint) {
        if (codePoint > 0xFFFF) {
            return 0;
        }
        int twice = u16(charMap + 6);
        int ends = charMap + 14;
        int starts = ends + twice + 2;
        for (int i = 0; i < twice; i += 2) {
            if (codePoint <= u16(ends + i)) {
                return codePoint < u16(starts + i) ? 0 : glyphInSegment(codePoint, starts + i, twice);
            }
        }
        return 0;
    }

    private int glyphInSegment(int codePoint, int startAt, int twice) {
        int delta = u16(startAt + twice);
        int rangeAt = startAt + 2 * twice;
        int range = u16(rangeAt);
        if (range == 0) {
            return codePoint + delta & 0xFFFF;
        }
        int glyph = u16(rangeAt + range + 2 * (codePoint - u16(startAt)));
        return glyph == 0 ? 0 : glyph + delta & 0xFFFF;
    }

    private int start(String tag) {
        int[] place = tables.get(tag);
        if (place == null) {
            throw new IllegalArgumentException("the font has no table " + tag);
        }
        return place[0];
    }

    private int u16(int at) {
        return file.getShort(at) & 0xFFFF;
    }
}
