package rainlap.cli;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rainlap.check.CheckResult;
import rainlap.drawing.Sheets;
import rainlap.drawing.TitleBlock;
import rainlap.page.HtmlPage;
import rainlap.page.IndexPage;

/** Writes pages of HTML: one for each elevation and, where there are several, one that leads to them. */
final class PageFiles {
    private static final String INDEX = "index.html";
    private final OutputFiles outputs;
    private final List<Path> places = new ArrayList<>();
    private final List<IndexPage.Entry> entries = new ArrayList<>();
    private Optional<Path> index = Optional.empty();

    PageFiles(OutputFiles outputs) {
        this.outputs = outputs;
    }

    /** Claims the place of the index beside the first of several pages; the pages themselves are claimed already. */
    void claimIndex(List<Path> sheets) {
        List<Path> pages = sheets.stream().filter(OutputNames::isPage).toList();
        if (pages.size() > 1) {
            index = Optional.of(pages.get(0).resolveSibling(INDEX));
            outputs.claimInNewFolder(index.get());
        }
    }

    void write(Path place, CheckResult result, String file, TitleBlock title) {
        String home = index.map(i -> "<a class=\"home\" href=\"" + IndexPage.link(place, i) + "\">all elevations</a>").orElse("");
        write(place, draw(result, new HtmlPage.About(file, title, home)));
        places.add(place);
        index.ifPresent(i -> entries.add(new IndexPage.Entry(file, IndexPage.link(i, place), result)));
    }

    private static String draw(CheckResult result, HtmlPage.About about) {
        try {
            return HtmlPage.of(result, about);
        } catch (Sheets.TooLarge e) {
            throw Refusal.tooLarge(about.file(), e);
        }
    }

    private void write(Path place, String page) {
        outputs.write(place, out -> out.write((page + Signature.SVG).getBytes(StandardCharsets.UTF_8)));
    }

    /** Writes the index, if there is to be one; says what was written. */
    List<String> close(String title) {
        index.ifPresent(i -> write(i, IndexPage.of(title, entries)));
        List<String> out = new ArrayList<>();
        index.ifPresent(i -> out.add("index: " + i));
        places.forEach(p -> out.add("page: " + p));
        return out;
    }
}
