package rainlap.paper;

import java.util.ArrayList;
import java.util.List;
import rainlap.measure.Unbroken;

/**
 * Widths of text in the typeface that ships, from the font's own tables, without kerning and without AWT. Characters it
 * lacks are painted by whatever sans-serif the reader has and are measured as one em, beyond the basic plane 1.3.
 */
public final class TextMetrics {

    /** Height of capitals as a share of the font size. */
    public static final double CAP_SHARE = 0.70;
    /** Height of small letters without ascender as a share of the font size. */
    public static final double X_SHARE = 0.51;

    private static final double FALLBACK_ASCENT = 0.95;
    private static final double FALLBACK_DESCENT = 0.25;

    private TextMetrics() {
    }

    /** Width in millimetres along the baseline. */
    public static double width(String text, double capHeight, Weight weight) {
        return ems(PrintableText.of(text), weight) * capHeight / CAP_SHARE;
    }

    public static double width(String text, TextStyle style) {
        return width(text, style.capHeight(), style.weight());
    }

    /** The characters of the text for which the typeface has no glyph, each once, in order of appearance. */
    public static String lacks(String text) {
        TrueType font = Typeface.font(Weight.REGULAR);
        StringBuilder lacking = new StringBuilder();
        PrintableText.of(text).codePoints().distinct().filter(c -> font.glyph(c) == 0)
                .forEach(lacking::appendCodePoint);
        return lacking.toString();
    }

    /**
     * Breaks text into lines no wider than the width, at spaces; a word that is wider by itself is broken inside.
     *
     * @param width in millimetres
     */
    public static List<String> wrap(String text, double width, TextStyle style) {
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        for (String word : Unbroken.parts(PrintableText.of(text), t -> width(t, style) <= width)) {
            String longer = line.length() == 0 ? word : line + " " + word;
            if (width(longer, style) <= width) {
                line.setLength(0);
                line.append(longer);
                continue;
            }
            if (line.length() > 0) {
                lines.add(line.toString());
            }
            line.setLength(0);
            line.append(breakWord(word, width, style, lines));
        }
        if (line.length() > 0) {
            lines.add(line.toString());
        }
        return List.copyOf(lines);
    }

    /** The text if it fits, else its beginning with an ellipsis. */
    public static String shorten(String text, double width, TextStyle style) {
        String clean = PrintableText.of(text);
        if (width(clean, style) <= width) {
            return clean;
        }
        int end = clean.length();
        while (end > 0 && width(clean.substring(0, end).stripTrailing() + "…", style) > width) {
            end = clean.offsetByCodePoints(end, -1);
        }
        return clean.substring(0, end).stripTrailing() + "…";
    }

    /** The box of an unrotated line of text. */
    static PaperBox box(Text text) {
        TextStyle style = text.style();
        double width = width(text.text(), style);
        double left = switch (style.anchor()) {
            case START -> text.at().x();
            case MIDDLE -> text.at().x() - width / 2;
            case END -> text.at().x() - width;
        };
        double up = CAP_SHARE;
        double down = 0;
        TrueType font = Typeface.font(style.weight());
        for (int c : text.text().codePoints().toArray()) {
            int glyph = font.glyph(c);
            double em = font.unitsPerEm();
            up = Math.max(up, glyph == 0 ? FALLBACK_ASCENT : font.yMax(glyph) / em);
            down = Math.max(down, glyph == 0 ? FALLBACK_DESCENT : -font.yMin(glyph) / em);
        }
        double size = style.fontSize();
        return new PaperBox(left, text.at().y() - up * size, left + width, text.at().y() + down * size);
    }

    /** Puts the full lines of a word that is too wide into {@code lines} and returns the rest of it. */
    private static String breakWord(String word, double width, TextStyle style, List<String> lines) {
        String rest = word;
        while (width(rest, style) > width) {
            int end = rest.offsetByCodePoints(0, 1);
            while (end < rest.length() && width(rest.substring(0, rest.offsetByCodePoints(end, 1)), style) <= width) {
                end = rest.offsetByCodePoints(end, 1);
            }
            if (end >= rest.length()) {
                break;
            }
            lines.add(rest.substring(0, end));
            rest = rest.substring(end);
        }
        return rest;
    }

    private static double ems(String text, Weight weight) {
        TrueType font = Typeface.font(weight);
        long units = 0;
        double fallback = 0;
        for (int i = 0; i < text.length(); ) {
            int c = text.codePointAt(i);
            i += Character.charCount(c);
            int glyph = font.glyph(c);
            if (glyph != 0) {
                units += font.advance(glyph);
            } else {
                fallback += c > 0xFFFF ? 1.3 : 1.0;
            }
        }
        return (double) units / font.unitsPerEm() + fallback;
    }
}
