package rainlap.page;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import rainlap.report.RulePage;

/** A rule's page, which is Markdown of ours, as HTML: headings, paragraphs, lists, tables, blocks of text lines, bold and code. */
final class RuleText {
    private static final Pattern MARKS = Pattern.compile("\\*\\*(.+?)\\*\\*|`([^`]+)`|!?\\[([^\\]]*)\\]\\([^)]*\\)");
    private static final Pattern ITEM = Pattern.compile("(?:[-*]|[0-9]+\\.) +(.*)");

    private final Html out = new Html();
    private final List<String> open = new ArrayList<>();
    private String list = "";

    private RuleText() {}

    /** The first paragraph under its first heading of second rank: what the rule looks for. */
    static String what(String rule) {
        StringBuilder text = new StringBuilder();
        boolean in = false;
        for (String line : RulePage.find(rule).map(RulePage::markdown).orElse("").lines().toList()) {
            if (in && line.isBlank() && !text.isEmpty()) {
                break;
            }
            if (in) {
                text.append(text.isEmpty() || line.isBlank() ? "" : " ").append(line.strip());
            }
            in |= line.startsWith("## ");
        }
        return inline(text.toString());
    }

    /** All of it but its title. */
    static String html(String rule) {
        RuleText text = new RuleText();
        boolean code = false;
        for (String line : RulePage.find(rule).map(RulePage::markdown).orElse("").lines().toList()) {
            if (line.startsWith("```")) {
                text.close();
                text.out.raw(code ? "</pre>\n" : "<pre>");
                code = !code;
            } else if (code) {
                text.out.text(line).line();
            } else {
                text.take(line);
            }
        }
        text.close();
        return text.out.toString();
    }

    private void take(String line) {
        Matcher item = ITEM.matcher(line.strip());
        if (line.isBlank() || line.startsWith("# ") || line.startsWith("<!--")) {
            close();
        } else if (line.startsWith("#")) {
            close();
            out.raw("<h5>").raw(inline(line.replaceFirst("^#+ *", ""))).raw("</h5>\n");
        } else if (item.matches()) {
            begin(Character.isDigit(line.strip().charAt(0)) ? "ol" : "ul");
            open.add(item.group(1));
        } else if (line.startsWith("|")) {
            begin("table");
            open.add(line);
        } else if (open.isEmpty()) {
            open.add(line.strip());
        } else {
            open.add(open.remove(open.size() - 1) + " " + line.strip());
        }
    }

    private void begin(String kind) {
        if (!list.equals(kind)) {
            close();
            list = kind;
        }
    }

    private void close() {
        switch (list) {
            case "table" -> table();
            case "" -> open.forEach(p -> out.raw("<p>").raw(inline(p)).raw("</p>\n"));
            default -> {
                out.raw("<" + list + ">\n");
                open.forEach(i -> out.raw("<li>").raw(inline(i)).raw("</li>\n"));
                out.raw("</" + list + ">\n");
            }
        }
        open.clear();
        list = "";
    }

    private void table() {
        out.raw("<div class=\"wide\" tabindex=\"0\" role=\"region\" aria-label=\"What each practice asks\"><table>\n");
        String cell = "th";
        for (String row : open) {
            String inner = row.strip().replaceAll("^\\||\\|$", "");
            if (inner.matches("[-| :]+")) {
                continue;
            }
            out.raw("<tr>");
            for (String c : inner.split("\\|", -1)) {
                out.raw("<" + cell + ">").raw(inline(c.strip())).raw("</" + cell + ">");
            }
            out.raw("</tr>\n");
            cell = "td";
        }
        out.raw("</table></div>\n");
    }

    private static String inline(String text) {
        StringBuilder s = new StringBuilder();
        Matcher m = MARKS.matcher(text);
        int at = 0;
        while (m.find()) {
            s.append(Html.escaped(text.substring(at, m.start())));
            s.append(m.group(1) != null ? "<b>" + inline(m.group(1)) + "</b>"
                    : m.group(2) != null ? "<code>" + Html.escaped(m.group(2)) + "</code>" : inline(m.group(3)));
            at = m.end();
        }
        return s.append(Html.escaped(text.substring(at))).toString();
    }
}
