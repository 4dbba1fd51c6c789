package rainlap.page;

import java.util.List;
import java.util.Optional;
import rainlap.check.Rules;
import rainlap.drawing.PageDrawing;
import rainlap.drawing.PageSections;
import rainlap.drawing.SectionPicture;
import rainlap.measure.LitresText;
import rainlap.paper.PageParts;
import rainlap.paper.PaperBox;
import rainlap.rule.Evidence;
import rainlap.rule.Finding;
import rainlap.rule.Place;
import rainlap.water.Step;

/** One weak point in the list: a head to open, and all that is known of it. */
final class FindingHtml {
    private static final double MARK = 3.6;
    private final Html out;
    private final Evidence evidence;
    private final Optional<PageSections> sections;

    /** @param sections draws the places as they should be; empty where that is left to be asked for */
    FindingHtml(Html out, Evidence evidence, Optional<PageSections> sections) {
        this.out = out;
        this.evidence = evidence;
        this.sections = sections;
    }

    void add(PageDrawing.Weak weak) {
        int n = weak.point().number();
        Finding f = weak.point().finding();
        out.raw("<li class=\"f\" id=\"weak-" + n + "\" data-weak=\"" + n + "\" data-focus=\"" + PageParts.viewBox(weak.focus()) + "\">\n");
        head(weak, n, f);
        out.raw("<div class=\"b\" id=\"more-" + n + "\">\n<div class=\"two\">");
        section(weak.section(), "Section at weak point " + n, weak.mended() ? "as drawn, " : "", "");
        should(weak, n);
        facts(f);
        out.raw("</div>\n");
        out.raw("<h4>What is wrong</h4><p>").text(f.says()).raw("</p>\n");
        way(f);
        rule(f);
        out.raw("<h4>Source</h4><p>").text(f.source().text()).raw(silent(f)).raw("</p>\n");
        out.raw("<h4>Remedy</h4><p class=\"rem\">").text(f.remedy()).raw("</p>\n</div>\n</li>\n");
    }

    private void head(PageDrawing.Weak weak, int n, Finding f) {
        String pieces = String.join(", ", f.pieces());
        String litres = f.litresPerHour().stream().mapToObj(LitresText::perHour).findFirst().orElse("");
        String label = n + ", " + title(f) + ", " + pieces + ", " + f.where().inWords() + ". " + defences(f)
                + (litres.isEmpty() ? "" : ". " + litres + " litres per hour");
        out.raw("<h3><button type=\"button\" class=\"head\" aria-expanded=\"false\" aria-controls=\"more-" + n + "\" aria-label=\"")
                .attribute(label).raw("\">");
        svg(weak.mark(), new PaperBox(-MARK, -MARK, MARK, MARK), "class=\"ic\" aria-hidden=\"true\"");
        out.element("span class=\"r\"", f.rule());
        out.raw("<span class=\"p\">").text(pieces + (pieces.isEmpty() ? "" : ", ") + f.where().inWords()).raw("</span>");
        out.raw("<span class=\"q\">" + (litres.isEmpty() ? "" : Html.escaped(litres) + " <small>l/h</small>") + "</span></button></h3>\n");
    }

    static String title(Finding f) {
        return Rules.find(f.rule()).map(r -> r.info().title()).orElse(f.rule().replace('-', ' '));
    }

    private static String defences(Finding f) {
        return switch (f.defences()) {
            case 0 -> "0, leaks as drawn";
            case 1 -> "1, one failure away";
            case 2 -> "2, fails safe";
            default -> Finding.MANY + " or more, fails safe";
        };
    }

    private void svg(List<rainlap.paper.Mark> marks, PaperBox box, String attributes) {
        out.raw("<svg viewBox=\"" + PageParts.viewBox(box) + "\" " + attributes + " font-family=\"" + PageParts.families() + "\">")
                .raw(PageParts.svg(marks)).raw("</svg>");
    }

    private void section(SectionPicture s, String label, String caption, String words) {
        PaperBox box = s.box();
        out.raw("<figure style=\"--w:" + PageParts.number(box.width()) + "\">");
        svg(s.marks(), box, "role=\"img\" aria-label=\"" + label + "\"");
        out.raw("<figcaption>").text(caption + s.scale()).raw(words.isEmpty() ? "" : "<span class=\"done\">").text(words).raw(words.isEmpty() ? "" : "</span>").raw("</figcaption></figure>");
    }

    /** The place as it should be, or where a server will put it. */
    private void should(PageDrawing.Weak weak, int n) {
        if (weak.mended()) {
            out.raw("<div class=\"should\"" + (sections.isPresent() ? "" : " data-should=\"" + n + "\"") + ">");
            sections.flatMap(s -> s.should(weak.point())).ifPresent(s -> should(s, n));
            out.raw(sections.isPresent() ? "" : "<p class=\"s\">as it should be: being drawn</p>").raw("</div>");
        }
    }

    /** What stands beside a section as drawn. */
    void should(PageSections.Should s, int n) {
        s.picture().ifPresentOrElse(p -> section(p, "The same at weak point " + n + " as it should be", "as it should be, ", s.words()), () -> out.element("p class=\"s\"", s.words()));
    }

    private void facts(Finding f) {
        out.raw("<dl>");
        fact("Drawn", f.drawn().isBlank() ? "–" : f.drawn());
        fact("Asked", f.asked().isBlank() ? "–" : f.asked());
        fact("Defences", defences(f));
        out.raw("</dl>");
    }

    private void fact(String what, String text) {
        out.element("dt", what).element("dd", text);
    }

    private void way(Finding f) {
        out.raw("<h4>Water's way");
        if (f.path().isEmpty()) {
            out.raw("</h4><p class=\"s\">").text(f.whyNoWay()).raw("</p>\n");
            return;
        }
        out.raw(" <button type=\"button\" class=\"again\">show again</button></h4>\n<ol class=\"way-in\">");
        for (Step s : f.path()) {
            out.raw("<li>").text(s.why());
            out.raw(s.failure() ? " <span class=\"fails\">(this must fail)</span>" : "");
            out.raw(" <span class=\"s\">").text(Place.line(evidence.elevation(), s.on(), s.where()).inWords()).raw("</span></li>\n");
        }
        out.raw("</ol>\n");
    }

    private void rule(Finding f) {
        String what = RuleText.what(f.rule());
        out.raw("<h4>Rule: ").text(title(f)).raw("</h4><p>").raw(what).raw("</p>\n");
        if (!what.isEmpty()) {
            out.raw("<div data-rule=\"").attribute(f.rule()).raw("\"></div>\n");
        }
    }

    private String silent(Finding f) {
        String practice = evidence.practice().id();
        return f.spokenBy().filter(p -> f.isUnspokenBy(practice))
                .map(p -> " <span class=\"s\">" + Html.escaped(practice) + " is silent; " + Html.escaped(p) + " speaks.</span>").orElse("");
    }
}
