package rainlap.file;

import java.nio.charset.StandardCharsets;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;

/**
 * Looks for the first fault of a text that the JSON reader has already refused. The reader knows that it stopped; this scan knows
 * what was open and what was expected, which is what the message needs.
 */
final class SyntaxScan {
    private final byte[] b;
    private final Deque<Integer> open = new ArrayDeque<>();
    private int i;

    /** Ends the scan where the fault is. */
    private static final class Found extends RuntimeException {
        private static final long serialVersionUID = 1;
        private final transient SyntaxFault fault;

        Found(SyntaxFault fault) {
            super(null, null, false, false);
            this.fault = fault;
        }
    }

    SyntaxScan(byte[] bytes, int from) {
        this.b = bytes;
        this.i = from;
    }

    SyntaxFault firstFault() {
        try {
            blanks();
            if (i < b.length && !isOpening(b[i])) {
                throw at(i, "this is not an elevation file", "one begins with { \"rainlap\": 1, …");
            }
            value();
            while (!open.isEmpty()) {
                if (isObject()) {
                    member();
                } else {
                    item();
                }
            }
            blanks();
            return i < b.length ? new SyntaxFault(i, "the file goes on after its end", "take this out, or look for a } too many before")
                    : new SyntaxFault(i, "this cannot be read as JSON", "");
        } catch (Found e) {
            return e.fault;
        }
    }

    private static Found at(int at, String what, String hint) {
        return new Found(new SyntaxFault(at, what, hint));
    }

    private static boolean isOpening(int c) {
        return c == '{' || c == '[';
    }

    private boolean isObject() {
        return b[open.peek()] == '{';
    }

    /** A key, a colon and a value, with the comma or bracket after it; or the closing bracket. */
    private void member() {
        blanks();
        if (at('}')) {
            close();
            return;
        }
        if (peek() == ',') {
            throw at(i, "a comma with nothing before it", "take one comma out");
        }
        if (peek() != '"') {
            throw keyWithoutQuotes();
        }
        string();
        blanks();
        if (!at(':')) {
            throw i >= b.length ? endsEarly() : at(i, "a colon is missing after the key", "write \"key\": value");
        }
        blanks();
        value();
    }

    private void item() {
        blanks();
        if (at(']')) {
            close();
        } else if (peek() == ',') {
            throw at(i, "a comma with nothing before it", "take one comma out");
        } else {
            value();
        }
    }

    /** A value; one that opens a bracket is not followed to its end here. */
    private void value() {
        int c = peek();
        if (isOpening(c)) {
            open.push(i++);
            return;
        }
        if (c == '"') {
            string();
        } else {
            word();
        }
        after();
    }

    private void close() {
        open.pop();
        after();
    }

    /** What follows a value: a comma, or the closing bracket, which is left for the caller to find. */
    private void after() {
        if (open.isEmpty()) {
            return;
        }
        int end = i;
        blanks();
        int wanted = isObject() ? '}' : ']';
        if (at(',') || peek() == wanted) {
            return;
        }
        if (peek() == '}' || peek() == ']') {
            throw at(i, "a " + (char) peek() + " closes what a " + (char) b[open.peek()] + " opened",
                    "put " + (char) wanted + " here, or look for a missing bracket before");
        }
        throw at(end, "a comma is missing", "put one here");
    }

    private void word() {
        int from = i;
        while (i < b.length && (Character.isLetterOrDigit(b[i]) || b[i] < 0 || "+-._'$#".indexOf(b[i]) >= 0)) {
            i++;
        }
        String word = new String(b, from, i - from, StandardCharsets.UTF_8);
        if (word.matches("true|false|null|NaN|[+-]?(Infinity|INF)|-?(0|[1-9][0-9]*)(\\.[0-9]+)?([eE][+-]?[0-9]+)?")) {
            if (word.length() > 1000) {
                throw at(from, "a number of more than 1000 characters", "write fewer digits");
            }
            return;
        }
        throw notAValue(from, word);
    }

    private Found notAValue(int from, String word) {
        if (word.isEmpty()) {
            char c = (char) b[from];
            return at(from, c == ':' || c == ',' || c == '}' || c == ']' ? "a value is missing before this " + c
                    : "a value cannot begin with " + Quoted.text(String.valueOf(c)), "");
        }
        if (word.startsWith("#")) {
            return hash(from);
        }
        if (word.matches("[+-]?[0-9.].*")) {
            return at(from, Quoted.text(word) + " is not a number as JSON writes them", "write it like 150, -40 or 62.5");
        }
        if (word.startsWith("'")) {
            return at(from, "texts stand in double quotation marks", "write \"…\" instead of '…'");
        }
        return at(from, Quoted.text(word) + " is not a value", Nearest.hint(word, List.of("true", "false", "null"),
                "a text stands in double quotation marks: " + Quoted.text(word)));
    }

    private static Found hash(int at) {
        return at(at, "a # has no meaning here", "a comment begins with // or /*");
    }

    private Found keyWithoutQuotes() {
        int c = peek();
        if (c == ']') {
            return at(i, "a ] closes what a { opened", "put } here, or look for a missing bracket before");
        }
        if (c == '#') {
            return hash(i);
        }
        if (c >= '0' && c <= '9') {
            return at(i, "a key is expected here", "a number is written with a point: 90.5");
        }
        return at(i, "a key is expected here", "keys stand in double quotation marks: \"id\": …");
    }

    private void string() {
        int from = i++;
        while (i < b.length && b[i] != '"') {
            if (b[i] >= 0 && b[i] < 0x20) {
                throw b[i] == '\n' || b[i] == '\r' ? at(from, "this text is not closed on its line", "put a \" at its end")
                        : at(i, "a control character stands in a text", "take it out, or write a tab as \\t");
            }
            if (b[i] == '\\') {
                escape();
            }
            i++;
        }
        if (i++ >= b.length) {
            throw at(from, "this text is not closed before the file ends", "put a \" at its end");
        }
    }

    private void escape() {
        int from = i++;
        if (i < b.length && b[i] == 'u') {
            for (int end = i + 4; i < end; ) {
                if (++i < b.length && Character.digit(b[i], 16) < 0) {
                    throw at(from, "\\u is followed by four digits 0-9 a-f", "");
                }
            }
        } else if (i < b.length && "\"\\/bfnrt".indexOf(b[i]) < 0) {
            throw at(from, "a backslash in a text has a meaning of its own", "write \\\\ for one backslash");
        }
    }

    private void blanks() {
        while (i < b.length) {
            if (b[i] == ' ' || b[i] == '\t' || b[i] == '\n' || b[i] == '\r') {
                i++;
            } else if (b[i] == '/') {
                comment();
            } else {
                return;
            }
        }
    }

    private void comment() {
        int from = i++;
        if (i < b.length && b[i] == '/') {
            while (i < b.length && b[i] != '\n' && b[i] != '\r') {
                refuseControl("a comment");
                i++;
            }
        } else if (i < b.length && b[i] == '*') {
            for (i++; i + 1 < b.length && !(b[i] == '*' && b[i + 1] == '/'); i++) {
                refuseControl("a comment");
            }
            i += 2;
            if (i > b.length) {
                throw at(from, "this comment is not closed", "put */ at its end");
            }
        } else {
            throw at(from, "a single / has no meaning here", "a comment begins with // or /*");
        }
    }

    private void refuseControl(String where) {
        if (b[i] >= 0 && b[i] < 0x20 && b[i] != '\t' && b[i] != '\n' && b[i] != '\r') {
            throw at(i, "a control character stands in " + where, "take it out");
        }
    }

    /** The next byte, which must be there. */
    private int peek() {
        if (i >= b.length) {
            throw endsEarly();
        }
        return b[i];
    }

    private boolean at(char c) {
        if (i < b.length && b[i] == c) {
            i++;
            return true;
        }
        return false;
    }

    private Found endsEarly() {
        int end = b.length;
        while (end > 0 && (b[end - 1] == '\n' || b[end - 1] == '\r' || b[end - 1] == ' ')) {
            end--;
        }
        String opened = open.isEmpty() ? "" : "the " + (char) b[open.peek()] + " on line " + lineOf(open.peek()) + " is still open";
        return at(end, "the file ends too early", opened);
    }

    private int lineOf(int at) {
        int line = 1;
        for (int k = 0; k < at; k++) {
            line += b[k] == '\n' || b[k] == '\r' && b[k + 1] != '\n' ? 1 : 0;
        }
        return line;
    }
}
