package rainlap.file;

/**
 * A line of a file, cut to a window and safe to print: tabs are four spaces, control and direction marks are dots.
 *
 * @param caretAt how many terminal columns stand before the marked place
 */
public record Excerpt(String text, int caretAt) {
    private static final int WINDOW = 110;
    private static final int BEFORE = 60;
    private static final String CUT = "…";

    /** The window of a line around the character at an index. */
    static Excerpt of(String line, int index) {
        boolean fits = columns(line, 0, line.length()) <= WINDOW || columns(line, 0, index) <= WINDOW - 20;
        int from = fits ? 0 : back(line, index, BEFORE);
        StringBuilder out = new StringBuilder(from > 0 ? CUT : "");
        int caret = out.length() + columns(line, from, index);
        int width = out.length();
        int at = from;
        while (at < line.length() && width < WINDOW) {
            int c = line.codePointAt(at);
            out.append(shown(c));
            width += width(c);
            at += Character.charCount(c);
        }
        return new Excerpt(at < line.length() ? out.append(CUT).toString() : out.toString(), caret);
    }

    private static int back(String line, int index, int columns) {
        int at = index, width = 0;
        while (at > 0 && width < columns) {
            int c = line.codePointBefore(at);
            at -= Character.charCount(c);
            width += width(c);
        }
        return at;
    }

    private static int columns(String line, int from, int to) {
        return line.substring(from, to).codePoints().map(Excerpt::width).sum();
    }

    static String shown(int c) {
        if (c == '\t') {
            return "    ";
        }
        return switch (Character.getType(c)) {
            case Character.CONTROL, Character.FORMAT, Character.SURROGATE, Character.UNASSIGNED, Character.PRIVATE_USE,
                    Character.LINE_SEPARATOR, Character.PARAGRAPH_SEPARATOR -> ".";
            default -> Character.toString(c);
        };
    }

    /** Terminal columns: none for marks set over a letter, two for East Asian wide characters and pictures. */
    static int width(int c) {
        if (c == '\t') {
            return 4;
        }
        int type = Character.getType(c);
        if (type == Character.NON_SPACING_MARK || type == Character.ENCLOSING_MARK) {
            return 0;
        }
        return isWide(c) ? 2 : 1;
    }

    /** The blocks Unicode's East Asian Width gives as wide or full width, coarsely. */
    private static boolean isWide(int c) {
        return c >= 0x1100 && c <= 0x115F || c >= 0x2E80 && c <= 0x303E || c >= 0x3041 && c <= 0xA4CF
                || c >= 0xAC00 && c <= 0xD7A3 || c >= 0xF900 && c <= 0xFAFF || c >= 0xFE30 && c <= 0xFE6F
                || c >= 0xFF00 && c <= 0xFF60 || c >= 0xFFE0 && c <= 0xFFE6 || c >= 0x1F300 && c <= 0x1FAFF
                || c >= 0x20000 && c <= 0x3FFFD;
    }
}
