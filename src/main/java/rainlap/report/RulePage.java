package rainlap.report;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** A rule's page, which ships beside its examples: Markdown, and the same as plain text for a terminal. */
public final class RulePage {
    /** How far blocks of text lines and tables are set in. */
    public static final int BLOCK_INDENT = 2;

    /** Between these a page gets what each practice asks; a page without them gets it at its end. */
    private static final String LIMITS = "<!-- limits -->", LIMITS_END = "<!-- /limits -->";

    private final String markdown;

    private RulePage(String markdown) {
        this.markdown = markdown;
    }

    /** The page of the rule with this id, if there is one. */
    public static Optional<RulePage> find(String rule) {
        try (InputStream in = RulePage.class.getResourceAsStream("/rules/" + rule + "/page.md")) {
            return in == null ? Optional.empty() : Optional.of(new RulePage(new String(in.readAllBytes(), StandardCharsets.UTF_8)));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static RulePage of(String markdown) {
        return new RulePage(markdown);
    }

    /** The page with what each practice asks in its place, as a block of text lines. */
    public RulePage withLimits(List<String> limitLines) {
        String block = limitLines.isEmpty() ? "No practice gives a number for this." : "```\n" + String.join("\n", limitLines) + "\n```";
        int from = markdown.indexOf(LIMITS), to = markdown.indexOf(LIMITS_END);
        if (from < 0 && limitLines.isEmpty()) {
            return this;
        }
        return of(from >= 0 && to > from ? markdown.substring(0, from) + block + markdown.substring(to + LIMITS_END.length())
                : markdown.stripTrailing() + "\n\n## What each practice asks\n\n" + block + "\n");
    }

    public String markdown() {
        return markdown;
    }

    /** The page without marks: headings underlined, paragraphs and list items broken at a width, tables and code as they stand. */
    public List<String> lines(int width) {
        List<String> out = new ArrayList<>();
        StringBuilder open = new StringBuilder();
        boolean code = false;
        for (String line : markdown.lines().toList()) {
            code ^= line.startsWith("```");
            if (line.startsWith("```")) {
                close(open, out, width);
            } else if (code || line.startsWith("|")) {
                close(open, out, width);
                out.add((" ".repeat(BLOCK_INDENT) + line).stripTrailing());
            } else if (line.isBlank()) {
                close(open, out, width);
                out.add("");
            } else {
                takeText(line, open, out, width);
            }
        }
        close(open, out, width);
        return List.copyOf(out);
    }

    private static void takeText(String line, StringBuilder open, List<String> out, int width) {
        if (line.startsWith("#")) {
            close(open, out, width);
            String heading = plain(line.replaceFirst("^#+ *", ""));
            out.add(heading);
            out.add((line.startsWith("##") ? "-" : "=").repeat(Math.min(width, heading.length())));
            return;
        }
        if (isItem(line)) {
            close(open, out, width);
        }
        open.append(open.isEmpty() ? line.stripTrailing() : " " + line.strip());
    }

    private static boolean isItem(String line) {
        return line.matches(" *([-*]|[0-9]+\\.) .*");
    }

    /** Ends the paragraph or list item that is being gathered. */
    private static void close(StringBuilder open, List<String> out, int width) {
        if (open.isEmpty()) {
            return;
        }
        String text = open.toString();
        open.setLength(0);
        if (isItem(text)) {
            int at = text.indexOf(' ', text.length() - text.stripLeading().length()) + 1;
            out.addAll(Columns.hanging(text.substring(0, at), plain(text.substring(at)), width));
        } else {
            out.addAll(Columns.wrap(plain(text), width));
        }
    }

    /** Without emphasis, code marks and the targets of links. */
    private static String plain(String text) {
        return text.replaceAll("!?\\[([^\\]]*)\\]\\([^)]*\\)", "$1").replace("**", "").replace("`", "");
    }
}
