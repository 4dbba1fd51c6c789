package rainlap.page;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import rainlap.check.Cautions;
import rainlap.check.CheckResult;
import rainlap.drawing.PageSign;
import rainlap.drawing.TitleBlock;
import rainlap.measure.LitresText;
import rainlap.paper.PageParts;
import rainlap.report.LeftRound;
import rainlap.report.TakenForGranted;
import rainlap.report.TerminalTable;
import rainlap.rule.Evidence;
import rainlap.water.Balance;

/** Beneath the list: what can hurt, what was taken for granted, what was not checked, and whose drawing it is. */
final class NotesHtml {
    private static final String NO_RAIN = "No litres an hour (l/h), because no rain is stated.";
    private static final String LITRES = "Litres an hour (l/h): what runs over or beside the place, or falls on it, on what lies outermost; none where that is not"
            + " reckoned, as in reveals, round pipes and at corners.";
    private static final String LIMITS = "Not followed: soaking, ice, fixings that are not drawn.";
    private final Html out;
    private final CheckResult result;

    NotesHtml(Html out, CheckResult result) {
        this.out = out;
        this.result = result;
    }

    void add(TitleBlock title, String file) {
        Evidence e = result.evidence();
        out.raw("<div class=\"notes\">\n");
        signs();
        note("Mind", Cautions.of(e).stream().map(Cautions.Caution::full).toList());
        note("This page", List.of(String.join(" ", TerminalTable.caution()), LIMITS));
        List<String> granted = new ArrayList<>();
        TakenForGranted.all(e).forEach(a -> granted.add(a.text()));
        note("Taken for granted", granted);
        note("Rain", rain(e));
        note("Not checked, " + (result.unchecked().size() + result.crashes().size()), unchecked());
        List<String> round = LeftRound.lines(e);
        if (!round.isEmpty()) {
            note("Round the corners", round);
        }
        int held = result.held().values().stream().mapToInt(Integer::intValue).sum();
        note("As asked", List.of(held + " places by " + result.held().size() + " rules"
                + (result.held().isEmpty() ? "." : ": " + String.join(", ", result.held().keySet()) + ".")));
        if (!result.notApplicable().isEmpty()) {
            note("Nothing to judge", List.of(result.notApplicable().size() + " rules: " + String.join(", ", result.notApplicable().keySet()) + "."));
        }
        note("Drawing", drawing(title, file));
        out.raw("</div>\n");
    }

    private void signs() {
        out.raw("<section class=\"note signs\">").element("h2", "Signs on the elevation").raw("<ul>");
        for (PageSign s : PageSign.of(result)) {
            out.raw("<li><svg viewBox=\"" + PageParts.viewBox(PageSign.BOX) + "\" aria-hidden=\"true\" font-family=\"" + PageParts.families() + "\">").raw(PageParts.svg(s.marks()))
                    .raw("</svg><span>").text(s.words()).raw("</span></li>");
        }
        out.raw("</ul>").element("p class=\"s\"", "Ticks along an edge point towards the sheet beneath.").raw("</section>\n");
    }

    private void note(String heading, List<String> lines) {
        out.raw("<section class=\"note\">").element("h2", heading);
        if (lines.size() == 1) {
            out.element("p", lines.get(0));
        } else {
            out.raw("<ul>");
            lines.forEach(l -> out.element("li", l));
            out.raw("</ul>");
        }
        out.raw("</section>\n");
    }

    private static List<String> rain(Evidence e) {
        if (e.trace().balance().isEmpty()) {
            return List.of(NO_RAIN);
        }
        Balance b = e.trace().balance().get();
        List<String> lines = new ArrayList<>(List.of(LITRES, "On the wall as drawn: " + LitresText.perHour(b.fallen()) + " l/h"));
        e.trace().shares().forEach(s -> lines.add(s.says() + s.inBrackets() + ": " + LitresText.perHour(s.litresPerHour()) + " l/h, "
                + LitresText.percent(s.litresPerHour(), b.fallen())));
        return lines;
    }

    /** Reasons that repeat are said once, with all their pieces. */
    private List<String> unchecked() {
        Map<String, LinkedHashSet<String>> byReason = new TreeMap<>();
        result.unchecked().forEach(u -> byReason.computeIfAbsent(u.rule() + ": " + u.why(), k -> new LinkedHashSet<>()).addAll(u.pieces()));
        List<String> lines = new ArrayList<>();
        byReason.forEach((reason, pieces) -> lines.add(reason + (pieces.isEmpty() ? "" : " (" + String.join(", ", pieces) + ")")));
        result.crashes().forEach(c -> lines.add("FAILED: rule " + c.rule() + " broke down, which is our fault (" + c.what() + "). Please report it."));
        return lines.isEmpty() ? List.of("Nothing was left out.") : lines;
    }

    private static List<String> drawing(TitleBlock t, String file) {
        List<String> lines = new ArrayList<>(List.of("input " + file + (t.inputHash().isEmpty() ? "" : ", SHA-256 begins with " + t.inputHash())));
        String[][] given = {{"legal owner", t.owner()}, {"identification", t.identification()}, {"date of issue", t.date()},
            {"revision", t.revision()}, {"drawn up by", t.creator()}};
        for (String[] g : given) {
            if (!g[1].isBlank()) {
                lines.add(g[0] + ": " + g[1]);
            }
        }
        return lines;
    }
}
