package rainlap.page;

/** Gathers a page; the only place where text becomes HTML. */
final class Html {
    private static final int REPLACEMENT = 0xFFFD;
    private final StringBuilder out = new StringBuilder();

    /** Markup of ours, as it stands. */
    Html raw(String markup) {
        out.append(markup);
        return this;
    }

    /** Text of whatever origin. The typeface is set without kerning: a little room keeps two brackets apart. */
    Html text(String text) {
        out.append(escaped(text).replace(")(", ")<span class=\"k\">(</span>"));
        return this;
    }

    /** The same in a quoted attribute. */
    Html attribute(String text) {
        out.append(escaped(text));
        return this;
    }

    /** An element with nothing but text in it; its start tag is ours. */
    Html element(String tag, String text) {
        String name = tag.split(" ", 2)[0];
        return raw("<" + tag + ">").text(text).raw("</" + name + ">");
    }

    Html line() {
        return raw("\n");
    }

    /** Text as it may stand between tags and in quoted attributes. What HTML forbids, and what turns the direction of text, shows as a mark. */
    static String escaped(String text) {
        StringBuilder s = new StringBuilder(text.length() + 16);
        text.codePoints().forEach(c -> {
            switch (c) {
                case '&' -> s.append("&amp;");
                case '<' -> s.append("&lt;");
                case '>' -> s.append("&gt;");
                case '"' -> s.append("&quot;");
                case '\'' -> s.append("&#39;");
                default -> s.appendCodePoint(isPrintable(c) ? c : REPLACEMENT);
            }
        });
        return s.toString();
    }

    private static boolean isPrintable(int c) {
        int type = Character.getType(c);
        return c == '\n' || type != Character.CONTROL && type != Character.FORMAT && type != Character.SURROGATE
                && type != Character.LINE_SEPARATOR && type != Character.PARAGRAPH_SEPARATOR && (c & 0xFFFE) != 0xFFFE;
    }

    @Override
    public String toString() {
        return out.toString();
    }
}
