package rainlap.paper;

import java.util.Base64;
import java.util.BitSet;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/** The style rules that carry the fonts of a drawing with it: for each weight used, the glyphs used. */
final class EmbeddedFonts {

    private final Map<Weight, BitSet> used = new EnumMap<>(Weight.class);

    private EmbeddedFonts() {
    }

    /** The characters of some marks by weight. */
    static Map<Weight, BitSet> characters(List<Mark> marks) {
        EmbeddedFonts fonts = new EmbeddedFonts();
        fonts.collect(marks);
        return fonts.used;
    }

    /** For each weight in use a font file with the glyphs used and nothing else, so without ligatures. */
    static Map<Weight, byte[]> files(List<Mark> marks) {
        Map<Weight, BitSet> used = characters(marks);
        used.values().forEach(Shown::addInstead);
        return files(used);
    }

    private static Map<Weight, byte[]> files(Map<Weight, BitSet> used) {
        Map<Weight, byte[]> files = new EnumMap<>(Weight.class);
        used.forEach((weight, characters) -> files.put(weight, FontSubset.of(Typeface.font(weight), characters)));
        return files;
    }

    static String css(List<Mark> marks) {
        return css(characters(marks)) + "text{font-kerning:none}";
    }

    /** The style rules for these characters of each weight. */
    static String css(Map<Weight, BitSet> used) {
        StringBuilder css = new StringBuilder();
        files(used).forEach((weight, file) -> css.append("@font-face{font-family:'")
                .append(Typeface.EMBEDDED_FAMILY).append("';font-weight:").append(weight.css())
                .append(";src:url(data:font/ttf;base64,")
                .append(Base64.getEncoder().encodeToString(file))
                .append(") format('truetype')}\n"));
        return css.toString();
    }

    private void collect(List<Mark> marks) {
        for (Mark mark : marks) {
            collect(mark);
        }
    }

    private void collect(Mark mark) {
        if (mark instanceof Text text) {
            BitSet characters = used.computeIfAbsent(text.style().weight(), w -> new BitSet());
            String words = text.text();
            for (int i = 0; i < words.length(); i = words.offsetByCodePoints(i, 1)) {
                characters.set(words.codePointAt(i));
            }
        } else if (mark instanceof Group group) {
            collect(group.marks());
        } else if (mark instanceof Clip clip) {
            collect(clip.marks());
        } else if (mark instanceof Halo halo) {
            collect(halo.of());
        }
    }
}
