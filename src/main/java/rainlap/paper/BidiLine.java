package rainlap.paper;

import java.text.Bidi;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/** A line of text in which some letters are read from right to left, as Arabic and Hebrew are. */
final class BidiLine {
    /** Tells a reader of an SVG that what has no direction of its own beside it is read from right to left too. */
    private static final String MARK = "\u200f";

    private BidiLine() {}

    /** A stretch of one direction, its characters in the order they are read. */
    record Part(String words, boolean rightToLeft) {}

    /** Whether some of a line is read from right to left. */
    static boolean isIn(String text) {
        char[] all = text.toCharArray();
        return Bidi.requiresBidi(all, 0, all.length);
    }

    /** Whether all letters of a line are, so that it as a whole is: a sentence of ours that names a piece is not. */
    private static boolean isWhole(String text) {
        return isIn(text) && text.codePoints().noneMatch(c -> Character.getDirectionality(c) == Character.DIRECTIONALITY_LEFT_TO_RIGHT);
    }

    /** The stretches from left to right as they stand on paper. */
    static List<Part> visual(String text) {
        Bidi bidi = new Bidi(text, isWhole(text) ? Bidi.DIRECTION_RIGHT_TO_LEFT : Bidi.DIRECTION_LEFT_TO_RIGHT);
        int runs = bidi.getRunCount();
        byte[] levels = new byte[runs];
        Integer[] order = IntStream.range(0, runs).boxed().toArray(Integer[]::new);
        IntStream.range(0, runs).forEach(i -> levels[i] = (byte) bidi.getRunLevel(i));
        Bidi.reorderVisually(levels, 0, order, 0, runs);
        List<Part> out = new ArrayList<>();
        for (int i : order) {
            out.add(new Part(text.substring(bidi.getRunStart(i), bidi.getRunLimit(i)), bidi.getRunLevel(i) % 2 == 1));
        }
        return out;
    }

    /** The line as an SVG is to carry it: in the order it is read, with marks where all of it is read from right to left. */
    static String marked(String text) {
        return isWhole(text) ? MARK + text + MARK : text;
    }
}
