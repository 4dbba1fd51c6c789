package rainlap.paper;

/** Cleans text for printing: one line, single spaces, nothing XML forbids. */
final class PrintableText {

    private static final int REPLACEMENT = 0xFFFD;

    private PrintableText() {
    }

    /** White space folded to single spaces and trimmed; forbidden characters and lone surrogates become U+FFFD. */
    static String of(String raw) {
        StringBuilder out = new StringBuilder(raw.length());
        boolean space = false;
        for (int i = 0; i < raw.length(); ) {
            int c = raw.codePointAt(i);
            i += Character.charCount(c);
            if (c == ' ' || c == '\t' || c == '\n' || c == '\r') {
                space = out.length() > 0;
                continue;
            }
            if (space) {
                out.append(' ');
                space = false;
            }
            out.appendCodePoint(allowed(c) ? c : REPLACEMENT);
        }
        return out.toString();
    }

    /** The characters of XML 1.0, less the control characters that it allows but nobody can print. */
    private static boolean allowed(int c) {
        return c >= 0x20 && c < 0x7F || c >= 0xA0 && c <= 0xD7FF || c >= 0xE000 && c <= 0xFFFD
                || c >= 0x10000 && c <= 0x10FFFF;
    }
}
