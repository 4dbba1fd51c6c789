package rainlap.paper;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.Font;
import java.awt.font.FontRenderContext;
import java.awt.font.GlyphVector;
import java.awt.geom.Area;
import java.io.ByteArrayInputStream;
import java.util.BitSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class FontSubsetTest {

    private static final FontRenderContext CONTEXT = new FontRenderContext(null, true, true);

    @ParameterizedTest
    @EnumSource(Weight.class)
    void everyGlyphKeepsItsOutlineAndWidth(Weight weight) throws Exception {
        BitSet all = new BitSet();
        for (int c = 0x21; c <= 0xFFFF; c++) {
            if (Typeface.font(weight).glyph(c) != 0) {
                all.set(c);
            }
        }
        Font full = awt(Typeface.file(weight));
        Font subset = awt(FontSubset.of(Typeface.font(weight), all));
        for (int c : all.stream().toArray()) {
            GlyphVector was = full.createGlyphVector(CONTEXT, Character.toChars(c));
            GlyphVector is = subset.createGlyphVector(CONTEXT, Character.toChars(c));
            assertEquals(was.getGlyphMetrics(0).getAdvance(), is.getGlyphMetrics(0).getAdvance(), 0.001f);
            assertTrue(new Area(was.getOutline()).equals(new Area(is.getOutline())), "U+" + Integer.toHexString(c));
        }
    }

    @Test
    void onlyWhatWasAskedForIsInside() throws Exception {
        byte[] bytes = FontSubset.of(Typeface.font(Weight.REGULAR), set('a', 'Ä', 0x416));
        TrueType subset = new TrueType(bytes);
        assertEquals(0, subset.glyph('b'));
        assertEquals(0, subset.glyph(0x416));
        assertFalse(subset.glyph('a') == 0 || subset.glyph('Ä') == 0);
        assertTrue(bytes.length < 3500, "size " + bytes.length);
        assertTrue(awt(bytes).canDisplay('Ä'));
    }

    @Test
    void sameCharactersGiveSameBytes() {
        BitSet some = set(65, 66, 196, 8722);
        assertArrayEquals(FontSubset.of(Typeface.font(Weight.MEDIUM), some), FontSubset.of(Typeface.font(Weight.MEDIUM), some));
    }

    private static BitSet set(int... characters) {
        BitSet set = new BitSet();
        for (int c : characters) {
            set.set(c);
        }
        return set;
    }

    private static Font awt(byte[] bytes) throws Exception {
        return Font.createFont(Font.TRUETYPE_FONT, new ByteArrayInputStream(bytes)).deriveFont(1000f);
    }
}
