package rainlap.report;

/** Text from a file, made safe for a terminal. */
public final class PlainText {
    private PlainText() {}

    /** The text with every control and direction-changing character shown as a replacement mark: a name cannot steer the terminal. */
    public static String of(String text) {
        StringBuilder out = new StringBuilder(text.length());
        text.codePoints().forEach(c -> out.appendCodePoint(steers(c) ? 0xFFFD : c));
        return out.toString();
    }

    private static boolean steers(int c) {
        int type = Character.getType(c);
        return type == Character.CONTROL || type == Character.FORMAT || type == Character.LINE_SEPARATOR
                || type == Character.PARAGRAPH_SEPARATOR || type == Character.SURROGATE;
    }
}
