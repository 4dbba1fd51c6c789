package rainlap.page;

import java.util.List;
import java.util.Optional;
import rainlap.check.CheckResult;
import rainlap.file.Problem;

/**
 * A page that a server keeps up to date: the last good drawing, and what is wrong with the file as it is now.
 *
 * @param body the drawing's part of the page; empty as long as there was none
 * @param result that was drawn, for what is drawn only when it is asked for
 * @param problems of the file as last read; none when the drawing is of the file as it is
 * @param drawing counts the drawings, so that a page knows whether it is behind
 */
public record LivePage(String title, Optional<String> body, Optional<CheckResult> result, List<Problem> problems, int drawing) implements Live {
    public LivePage {
        problems = List.copyOf(problems);
    }

    /** Before anything was read. */
    public static LivePage empty(String file) {
        return new LivePage(file, Optional.empty(), Optional.empty(), List.of(), 0);
    }

    /**
     * With a new drawing and nothing wrong.
     *
     * @throws rainlap.drawing.Sheets.TooLarge when the wall cannot be drawn
     */
    public LivePage drawn(CheckResult result, HtmlPage.About about) {
        return new LivePage(result.evidence().elevation().name() + ": weak points", Optional.of(HtmlPage.body(result, about)), Optional.of(result), List.of(), drawing + 1);
    }

    /** The same drawing, now behind a file with faults. */
    public LivePage with(List<Problem> faults) {
        return new LivePage(title, body, result, faults, drawing);
    }

    @Override
    public String should(int number) {
        return result.map(r -> HtmlPage.should(r, number)).orElse("");
    }

    @Override
    public String html() {
        return shell(title, panel(), drawing, body, true);
    }

    @Override
    public String panel() {
        return panel(problems, body.isPresent(), false);
    }

    /** @param explored whether the body is a wall's, to be explored */
    static String shell(String title, String panel, int drawing, Optional<String> body, boolean explored) {
        String view = Shell.resource("view.js");
        String top = "<div id=\"problems\" role=\"alert\" data-drawing=\"" + drawing + "\">" + panel + "</div>\n<p id=\"lost\" role=\"alert\" hidden></p>\n";
        String none = "<main class=\"index\"><p>Nothing is drawn yet. As soon as the file is mended and saved, the wall stands here.</p></main>\n";
        return Shell.page(title, top + body.orElse(none), body.isPresent() && explored ? List.of(Shell.resource("page.js"), view) : List.of(view), true);
    }

    /**
     * What is wrong, where, and what would be right; nothing when nothing is.
     *
     * @param drawn whether an older drawing stands beneath
     * @param several whether there are several files, so that each is named
     */
    static String panel(List<Problem> problems, boolean drawn, boolean several) {
        if (problems.isEmpty()) {
            return "";
        }
        Html out = new Html();
        String count = problems.size() + (problems.size() == 1 ? " problem" : " problems") + (several ? " in the files as saved." : " in the file as saved.");
        out.raw("<section class=\"problems\">").element("h2", count + (drawn ? " The drawing is of the last version without." : "")).raw("<ol>");
        for (Problem p : problems) {
            String place = p.line() > 0 ? "line " + p.line() + ", column " + p.column() + ": " : "";
            out.raw("<li>").element("b", (several || place.isEmpty() ? p.file() + (place.isEmpty() ? ": " : ", ") + place : place.replaceFirst("^l", "L")) + p.what());
            p.excerpt().ifPresent(e -> out.raw("<pre>").text(e.text() + "\n" + " ".repeat(e.caretAt()) + "^").raw("</pre>"));
            out.raw(p.hint().isEmpty() ? "" : " <span>").text(p.hint()).raw(p.hint().isEmpty() ? "" : "</span>").raw("</li>");
        }
        return out.raw("</ol></section>").toString();
    }
}
