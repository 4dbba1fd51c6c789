package rainlap.paper;

import java.util.Base64;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;

/** The style rules that carry the fonts of a drawing with it: for each weight used, the glyphs used. */
final class EmbeddedFonts {

    private EmbeddedFonts() {
    }

    static String css(List<Mark> marks) {
        Map<Weight, TreeSet<Integer>> used = new EnumMap<>(Weight.class);
        collect(marks, used);
        StringBuilder css = new StringBuilder();
        used.forEach((weight, characters) -> css.append("@font-face{font-family:'").append(Typeface.EMBEDDED_FAMILY)
                .append("';font-weight:").append(weight.css()).append(";src:url(data:font/ttf;base64,")
                .append(Base64.getEncoder().encodeToString(FontSubset.of(Typeface.font(weight), characters)))
                .append(") format('truetype')}\n"));
        return css.append("text{font-kerning:none}").toString();
    }

    private static void collect(List<Mark> marks, Map<Weight, TreeSet<Integer>> used) {
        for (Mark mark : marks) {
            if (mark instanceof Text text) {
                text.text().codePoints().forEach(
                        used.computeIfAbsent(text.style().weight(), w -> new TreeSet<>())::add);
            } else if (mark instanceof Group group) {
                collect(group.marks(), used);
            } else if (mark instanceof Clip clip) {
                collect(clip.marks(), used);
            } else if (mark instanceof Halo halo) {
                collect(List.of(halo.of()), used);
            }
        }
    }
}
