package rainlap.paper;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.Font;
import java.awt.font.FontRenderContext;
import java.awt.geom.AffineTransform;
import java.io.ByteArrayInputStream;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class TextMetricsTest {

    @ParameterizedTest
    @EnumSource(Weight.class)
    void everyCharacterHasTheWidthThatAwtGivesIt(Weight weight) throws Exception {
        Font awt = Font.createFont(Font.TRUETYPE_FONT, new ByteArrayInputStream(Typeface.file(weight)))
                .deriveFont(1000f);
        FontRenderContext context = new FontRenderContext(new AffineTransform(), true, true);
        TrueType font = Typeface.font(weight);
        int compared = 0;
        for (int c = 0x21; c <= 0xFFFF; c++) {
            boolean has = font.glyph(c) != 0;
            if (has) {
                double advance = awt.createGlyphVector(context, Character.toChars(c)).getGlyphMetrics(0).getAdvance();
                assertEquals(advance, font.advance(font.glyph(c)) * 1000.0 / font.unitsPerEm(), 0.01,
                        "U+" + Integer.toHexString(c));
                compared++;
            }
        }
        assertTrue(compared > 400, () -> "only few glyphs compared");
    }

    @ParameterizedTest
    @EnumSource(Weight.class)
    void capitalsAreSeventyHundredthsOfTheSize(Weight weight) {
        TrueType font = Typeface.font(weight);
        assertEquals(TextMetrics.CAP_SHARE, (double) font.yMax(font.glyph('H')) / font.unitsPerEm(), 0.005);
        assertEquals(TextMetrics.X_SHARE, (double) font.yMax(font.glyph('x')) / font.unitsPerEm(), 0.005);
    }

    @Test
    void lettersItLacksAreNamedAndMeasuredAsOneEm() {
        assertEquals("", TextMetrics.lacks("lap 100 × 90 − ±0 Ø124 m² “sill” – ä ß ł Ż"));
        assertEquals("→Ж", TextMetrics.lacks("a → Ж → b"));
        assertEquals(2.5 / 0.7, TextMetrics.width("Ж", 2.5, Weight.REGULAR), 1e-9);
        assertTrue(TextMetrics.width("😀", 2.5, Weight.REGULAR) > 2.5 / 0.7);
    }

    @Test
    void sizesAndPlacesAreNotBrokenWhereALineHasRoom() {
        TextStyle style = TextStyle.of(2.5);
        double width = TextMetrics.width("2 bare 120 ×", style) + 0.1;
        assertEquals(List.of("2 bare", "120 × 120"), TextMetrics.wrap("2 bare 120 × 120", width, style));
        assertEquals(List.of("+900 to +990,", "x 4500"), TextMetrics.wrap("+900 to +990, x 4500", TextMetrics.width("+900 to +990, x", style) + 0.1, style));
        assertEquals(List.of("120", "×", "120"), TextMetrics.wrap("120 × 120", TextMetrics.width("120", style) + 0.1, style));
    }

    @Test
    void wrappedLinesFitAndLoseNoWord() {
        TextStyle style = TextStyle.of(2.5);
        String text = "Draw the foot of M3b out over M2, lap 100, and tape its edge along +1740.";
        List<String> lines = TextMetrics.wrap(text, 40, style);
        assertTrue(lines.size() > 1);
        lines.forEach(line -> assertTrue(TextMetrics.width(line, style) <= 40, line));
        assertEquals(text, String.join(" ", lines));
    }

    @Test
    void aWordWiderThanTheColumnIsBrokenInside() {
        TextStyle style = TextStyle.of(2.5);
        String word = "Unterspannbahnüberlappungsverklebung".repeat(3);
        List<String> lines = TextMetrics.wrap("the " + word + " here", 20, style);
        lines.forEach(line -> assertTrue(TextMetrics.width(line, style) <= 20, line));
        assertEquals("the" + word + "here", String.join("", lines).replace(" ", ""));
        assertFalse(TextMetrics.wrap("x", 0.01, style).isEmpty(), "a letter wider than the column still prints");
    }

    @Test
    void shortenedTextFitsAndSaysSo() {
        TextStyle style = TextStyle.of(2.5);
        assertEquals("short", TextMetrics.shorten("short", 40, style));
        String cut = TextMetrics.shorten("a name that is much too long for its cell", 30, style);
        assertTrue(cut.endsWith("…") && TextMetrics.width(cut, style) <= 30, cut);
    }
}
