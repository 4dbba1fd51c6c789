package rainlap.paper;

import java.awt.Font;
import java.util.BitSet;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * What a PDF or PNG made on this machine can show: the letters of the typeface that ships and those of the machine's sans-serif. For any other {@code ?} stands
 * there, never an empty box, and {@link #lacking} names it. An SVG and a page keep every character: there the reader's own fonts paint it.
 */
public final class Shown {
    private static final String INSTEAD = "?";

    private Shown() {}

    /** Asked for only where the typeface that ships lacks a letter: the machine's fonts are slow to load. */
    private static final class Machine {
        static final Font SANS = new Font(Font.SANS_SERIF, Font.PLAIN, 12);
    }

    private static boolean isShown(int character) {
        return character < ' ' || Typeface.font(Weight.REGULAR).glyph(character) != 0 || Machine.SANS.canDisplay(character);
    }

    /** The text as it can be shown. */
    static String of(String text) {
        return text.codePoints().allMatch(Shown::isShown) ? text
                : text.codePoints().mapToObj(c -> isShown(c) ? Character.toString(c) : INSTEAD).collect(Collectors.joining());
    }

    /** What stands for others, where there are any. */
    static void addInstead(BitSet characters) {
        if (characters.stream().anyMatch(c -> !isShown(c))) {
            characters.set(INSTEAD.charAt(0));
        }
    }

    /** The characters of some sheets that are not shown, each once, with spaces between; empty where all are. */
    public static String lacking(List<Sheet> sheets) {
        BitSet all = new BitSet();
        sheets.forEach(s -> EmbeddedFonts.characters(s.marks()).values().forEach(all::or));
        IntStream lacking = all.stream().filter(c -> !isShown(c));
        return lacking.mapToObj(Character::toString).collect(Collectors.joining(" "));
    }
}
