package rainlap.paper;

import java.awt.Font;
import java.awt.font.FontRenderContext;
import java.awt.font.GlyphVector;
import java.awt.geom.AffineTransform;
import java.awt.geom.PathIterator;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.font.PDType0Font;
import org.apache.pdfbox.util.Matrix;

/**
 * Lines of text on a PDF page: as texts in the typeface that ships, kerning off, so that they stand as they were measured. Characters that it lacks are drawn
 * as outlines of the sans-serif the machine has; they can be read but not selected. See {@link Shown} for what it lacks too.
 */
final class PdfTexts {
    private static final FontRenderContext EXACT = new FontRenderContext(null, true, true);

    private final PDPageContentStream out;
    private final Map<Weight, PDType0Font> fonts;

    PdfTexts(PDPageContentStream out, Map<Weight, PDType0Font> fonts) {
        this.out = out;
        this.fonts = fonts;
    }

    /** A stretch of one line that the typeface has, or that it lacks; {@code at} is how far along the line it begins, mm. */
    private record Run(String words, boolean ours, boolean rightToLeft, double at) {}

    void write(Text text) throws IOException {
        for (Run run : runs(text)) {
            if (run.ours) {
                out.beginText();
                out.setFont(fonts.get(text.style().weight()), (float) text.style().fontSize());
                out.setTextMatrix(matrix(text, run.at));
                out.showText(run.words);
                out.endText();
            } else {
                trace(foreign(run, text), matrix(text, run.at));
                out.fill();
            }
        }
    }

    /** The outlines of a line's glyphs, as a path still to be painted. */
    void outline(Text text) throws IOException {
        for (Run run : runs(text)) {
            Matrix m = matrix(text, run.at);
            if (!run.ours) {
                trace(foreign(run, text), m);
                continue;
            }
            PDType0Font font = fonts.get(text.style().weight());
            TrueType metrics = Typeface.font(text.style().weight());
            double size = text.style().fontSize() / metrics.unitsPerEm(), x = 0;
            for (int c : run.words.codePoints().toArray()) {
                AffineTransform place = AffineTransform.getTranslateInstance(x, 0);
                place.scale(size, size);
                trace(font.getPath(code(font, c)).getPathIterator(place), m);
                x += metrics.advance(metrics.glyph(c)) * size;
            }
        }
    }

    /** The two bytes by which the page's font knows a character. */
    private static int code(PDType0Font font, int character) throws IOException {
        return ByteBuffer.wrap(font.encode(Character.toString(character))).getShort() & 0xFFFF;
    }

    private static List<Run> runs(Text text) {
        String words = Shown.of(text.text());
        return BidiLine.isIn(words) ? ordered(words, text) : runs(words, text);
    }

    /** Stretch after stretch from the left; letters that are read from right to left are joined as they join in writing, and stand closer than they were measured. */
    private static List<Run> ordered(String words, Text text) {
        List<Run> out = new ArrayList<>();
        double at = 0;
        for (BidiLine.Part part : BidiLine.visual(words)) {
            double from = at;
            if (part.rightToLeft()) {
                out.add(new Run(part.words(), false, true, from));
                at += advance(glyphs(out.get(out.size() - 1), text));
            } else {
                runs(part.words(), text).forEach(r -> out.add(new Run(r.words, r.ours, false, from + r.at)));
                at += TextMetrics.width("|" + part.words() + "|", text.style()) - TextMetrics.width("||", text.style());
            }
        }
        double spare = text.width() - at, shift = switch (text.style().anchor()) {
            case START -> 0;
            case MIDDLE -> spare / 2;
            case END -> spare;
        };
        return out.stream().map(r -> new Run(r.words, r.ours, r.rightToLeft, r.at + shift)).toList();
    }

    private static double advance(GlyphVector glyphs) {
        return glyphs.getGlyphPosition(glyphs.getNumGlyphs()).getX();
    }

    private static List<Run> runs(String words, Text text) {
        TrueType font = Typeface.font(text.style().weight());
        List<Run> out = new ArrayList<>();
        int begin = 0;
        for (int i = 0; i < words.length(); ) {
            boolean ours = font.glyph(words.codePointAt(i)) != 0;
            int end = i;
            while (end < words.length() && font.glyph(words.codePointAt(end)) != 0 == ours) {
                end = words.offsetByCodePoints(end, 1);
            }
            out.add(new Run(words.substring(begin, end), ours, false, TextMetrics.width("|" + words.substring(0, begin), text.style()) - TextMetrics.width("|", text.style())));
            begin = end;
            i = end;
        }
        return out;
    }

    private static Matrix matrix(Text text, double along) {
        double before = switch (text.style().anchor()) {
            case START -> 0;
            case MIDDLE -> text.width() / 2;
            case END -> text.width();
        };
        double angle = Math.toRadians(text.style().rotation()), cos = Math.cos(angle), sin = Math.sin(angle), shift = along - before;
        return new Matrix((float) cos, (float) sin, (float) sin, (float) -cos, (float) (text.at().x() + cos * shift), (float) (text.at().y() + sin * shift));
    }

    private static PathIterator foreign(Run run, Text text) {
        return glyphs(run, text).getOutline().getPathIterator(AffineTransform.getScaleInstance(1, -1));
    }

    private static GlyphVector glyphs(Run run, Text text) {
        Font font = new Font(Font.SANS_SERIF, text.style().weight() == Weight.SEMIBOLD ? Font.BOLD : Font.PLAIN, 1).deriveFont((float) text.style().fontSize());
        return run.rightToLeft ? font.layoutGlyphVector(EXACT, run.words.toCharArray(), 0, run.words.length(), Font.LAYOUT_RIGHT_TO_LEFT) : font.createGlyphVector(EXACT, run.words);
    }

    private void trace(PathIterator path, Matrix m) throws IOException {
        double[] p = new double[6];
        double x = 0, y = 0;
        for (; !path.isDone(); path.next()) {
            switch (path.currentSegment(p)) {
                case PathIterator.SEG_MOVETO -> out.moveTo(m.transformPoint((float) p[0], (float) p[1]).x, m.transformPoint((float) p[0], (float) p[1]).y);
                case PathIterator.SEG_LINETO -> out.lineTo(m.transformPoint((float) p[0], (float) p[1]).x, m.transformPoint((float) p[0], (float) p[1]).y);
                case PathIterator.SEG_QUADTO -> curve(m, x + (p[0] - x) * 2 / 3, y + (p[1] - y) * 2 / 3, p[2] + (p[0] - p[2]) * 2 / 3, p[3] + (p[1] - p[3]) * 2 / 3, p[2], p[3]);
                case PathIterator.SEG_CUBICTO -> curve(m, p[0], p[1], p[2], p[3], p[4], p[5]);
                default -> out.closePath();
            }
            int last = switch (path.currentSegment(p)) {
                case PathIterator.SEG_QUADTO -> 2;
                case PathIterator.SEG_CUBICTO -> 4;
                default -> 0;
            };
            x = p[last];
            y = p[last + 1];
        }
    }

    private void curve(Matrix m, double ax, double ay, double bx, double by, double cx, double cy) throws IOException {
        var a = m.transformPoint((float) ax, (float) ay);
        var b = m.transformPoint((float) bx, (float) by);
        var c = m.transformPoint((float) cx, (float) cy);
        out.curveTo(a.x, a.y, b.x, b.y, c.x, c.y);
    }
}
