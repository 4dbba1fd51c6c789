package rainlap.page;

import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import rainlap.check.CheckResult;
import rainlap.drawing.PageDrawing;
import rainlap.drawing.PageLayer;
import rainlap.drawing.PageSections;
import rainlap.drawing.TitleBlock;
import rainlap.paper.PageParts;
import rainlap.report.TerminalTable;
import rainlap.rule.Evidence;
import rainlap.rule.Finding;
import rainlap.wall.Piece;

/** The page of one check. Same check, same text. */
public final class HtmlPage {
    private static final String KEYS = "<p class=\"note keys\">Keys: <kbd>1</kbd> to <kbd>9</kbd> and longer numbers choose, <kbd>0</kbd> shows the whole wall,"
            + " <kbd>J</kbd> <kbd>K</kbd> next and previous, <kbd>[</kbd> <kbd>]</kbd> laying order, <kbd>+</kbd> <kbd>-</kbd> and the arrows enlarge and move,"
            + " <kbd>/</kbd> searches, <kbd>Esc</kbd> clears, <kbd>P</kbd> prints.</p>\n";
    private static final String SIGNS = "<p class=\"note keys\">On the elevation: water's way is solid in front of a piece and dashed behind it; a cross stands where"
            + " something must fail. Marks: a diamond leaks as drawn, one ring is one failure away, two rings fail safe.</p>\n";
    private final Html out = new Html();
    private final CheckResult result;
    private final Evidence evidence;
    private final PageDrawing drawing;
    private final String name;

    private HtmlPage(CheckResult result) {
        this.result = result;
        this.evidence = result.evidence();
        this.drawing = PageDrawing.of(result);
        this.name = evidence.elevation().name();
    }

    /**
     * What a page says besides its check.
     *
     * @param file the input, as shown
     * @param title what the title block says; blank where not given
     * @param home markup for a way back to other pages; may be empty
     */
    public record About(String file, TitleBlock title, String home) {}

    /** The page as one file that needs nothing else. */
    public static String of(CheckResult result, About about) {
        HtmlPage page = new HtmlPage(result);
        page.body(about, true);
        return Shell.page(page.name + ": weak points", page.out.toString(), List.of(Shell.resource("page.js")), false);
    }

    /** A weak point's place as it should be, for a page that has left it out; empty where there is no such weak point. */
    static String should(CheckResult result, int number) {
        Html out = new Html();
        result.weakPoints().stream().filter(p -> p.number() == number).findFirst().flatMap(p -> new PageSections(result).should(p))
                .ifPresent(s -> new FindingHtml(out, result.evidence(), Optional.empty()).should(s, number));
        return out.toString();
    }

    /** The same as the body of a page that a server keeps up to date, the places as they should be left to {@link #should}. */
    static String body(CheckResult result, About about) {
        HtmlPage page = new HtmlPage(result);
        page.body(about, false);
        return page.out.toString();
    }

    private void body(About about, boolean whole) {
        out.raw("<header>").raw(about.home()).element("h1", name);
        out.element("p", "seen from outside, " + evidence.stage().word() + " stage, practice " + evidence.practice().id() + ", scale on paper 1:" + drawing.scale());
        out.raw("<p class=\"sum\">").text(capital(TerminalTable.counts(result.weakPoints()))).raw("</p><button type=\"button\" id=\"print\">print</button><span id=\"told\" class=\"unseen\" role=\"status\" aria-live=\"polite\"></span></header>\n<main>\n");
        out.raw("<section class=\"left\" aria-label=\"Elevation\">\n");
        layers();
        laying();
        elevation();
        out.raw("</section>\n<aside aria-label=\"Weak points and notes\">\n");
        list(whole ? Optional.of(new PageSections(result)) : Optional.empty());
        out.raw(KEYS).raw(SIGNS);
        new NotesHtml(out, result).add(about.title(), about.file());
        out.raw("</aside>\n</main>\n");
    }

    private static String capital(String text) {
        return text.substring(0, 1).toUpperCase(java.util.Locale.ROOT) + text.substring(1);
    }

    private void layers() {
        out.raw("<fieldset class=\"bar\"><legend class=\"unseen\">Layers</legend><b aria-hidden=\"true\">Layers</b>");
        drawing.layers().stream().filter(l -> !drawing.ignored().contains(l)).forEach(l -> layer(l, true));
        if (!drawing.ignored().isEmpty()) {
            out.raw("<span class=\"not\">not looked at in this stage:");
            drawing.ignored().forEach(l -> layer(l, false));
            out.raw("</span>");
        }
        out.raw("</fieldset>\n");
    }

    private void layer(PageLayer layer, boolean on) {
        out.raw("<label><input type=\"checkbox\" data-l=\"" + layer.id() + "\" autocomplete=\"off\"" + (on ? " checked" : "") + "><span>")
                .text(layer.words()).raw("</span></label>");
    }

    private void laying() {
        int last = drawing.pieces().size();
        out.raw("<div class=\"bar\" role=\"group\" aria-label=\"Laying order\"><b>Laying order</b>"
                + "<button type=\"button\" id=\"back\" aria-label=\"One piece back\">−</button>"
                + "<input id=\"step\" type=\"range\" min=\"0\" max=\"" + last + "\" value=\"" + last + "\" autocomplete=\"off\" aria-label=\"Laying step\">"
                + "<button type=\"button\" id=\"on\" aria-label=\"One piece on\">+</button><output id=\"now\" for=\"step\"></output></div>\n");
        out.raw("<ol id=\"steps\" hidden>");
        for (Piece p : drawing.pieces()) {
            out.element("li", p.id() + ", " + p.material().id());
        }
        out.raw("</ol>\n");
    }

    private void elevation() {
        String size = "--w:" + PageParts.number(drawing.paper().width()) + ";--h:" + PageParts.number(drawing.paper().height());
        out.raw("<div class=\"draw\"><svg id=\"elevation\" viewBox=\"" + PageParts.viewBox(drawing.box()) + "\" data-paper=\"" + PageParts.viewBox(drawing.paper()) + "\" style=\"" + size
                + "\" role=\"group\" tabindex=\"0\" aria-label=\"").attribute("Elevation of " + name + ", seen from outside. Weak points are buttons.")
                .raw("\" font-family=\"" + PageParts.families() + "\">\n<g aria-hidden=\"true\">\n").raw(PageParts.svg(drawing.wall()))
                .raw("</g>\n").raw(PageParts.svg(drawing.weak())).raw("<g id=\"front\" aria-hidden=\"true\"></g>\n<g aria-hidden=\"true\">\n")
                .raw(PageParts.svg(drawing.ways())).raw("</g>\n</svg>\n<div class=\"tools\">"
                + "<button type=\"button\" id=\"further\" aria-label=\"Show more of the wall\">−</button>"
                + "<button type=\"button\" id=\"nearer\" aria-label=\"Enlarge\">+</button>"
                + "<button type=\"button\" id=\"whole\">whole wall</button></div></div>\n");
    }

    private void list(Optional<PageSections> sections) {
        out.raw("<div class=\"find\"><h2>Weak points, worst first</h2><label><span class=\"unseen\">Search the list</span>"
                + "<input id=\"search\" type=\"search\" placeholder=\"rule, piece, text\" autocomplete=\"off\"></label>"
                + "<small id=\"found\" role=\"status\"></small><button type=\"button\" id=\"clear\">clear</button></div>\n");
        out.raw("<p id=\"none\" hidden>No weak point has all these words.</p>\n<ol class=\"list\">\n");
        FindingHtml findings = new FindingHtml(out, evidence, sections);
        drawing.points().forEach(findings::add);
        out.raw("</ol>\n");
        rules();
        if (drawing.points().isEmpty()) {
            out.element("p class=\"note\"", "No weak point was found.");
        }
    }

    /** Each rule's page once; the script puts it with the weak point that is chosen. */
    private void rules() {
        out.raw("<section id=\"rules\">");
        drawing.points().stream().map(w -> w.point().finding()).filter(f -> !RuleText.what(f.rule()).isEmpty())
                .collect(Collectors.toMap(Finding::rule, FindingHtml::title, (a, b) -> a, TreeMap::new))
                .forEach((rule, title) -> out.raw("<details data-page=\"").attribute(rule).raw("\"><summary>All of this rule: ").text(title)
                        .raw("</summary>\n").raw(RuleText.html(rule)).raw("</details>\n"));
        out.raw("</section>\n");
    }
}
