package rainlap.drawing;

import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import rainlap.check.CheckResult;
import rainlap.check.WeakPoint;
import rainlap.paper.Group;
import rainlap.paper.Mark;
import rainlap.paper.PaperBox;
import rainlap.paper.Sheet;
import rainlap.paper.SheetSize;
import rainlap.paper.SvgWriter;

/**
 * A small picture of a wall for a page about a rule: the elevation with its weak points and at most one row of sections, drawn like a sheet
 * and cut to what is drawn. No table, legend and title block: the page says the rest.
 */
public final class Picture {
    private static final double MARGIN = 2;

    private final Sheet sheet;

    private Picture(Sheet sheet) {
        this.sheet = sheet;
    }

    /** The picture of a wall that was checked; of a wall too large for it, the sheet's own exception. */
    public static Picture of(CheckResult result) {
        Extents extents = Extents.of(result);
        Placing placing = Placing.of(extents, Slots.Layout.PICTURE).orElseThrow(() -> new Sheets.TooLarge(extents, Sheets.Paper.A3));
        List<WeakPoint> shown = result.weakPoints().subList(0, Math.min(Labels.WITH_WORDS, result.weakPoints().size()));
        Sections sections = Sections.besideOnly(result.evidence());
        Group elevation = new ElevationView(result.evidence(), WetPlaces.of(result), Bay.whole(extents, placing), shown).marks(sections);
        List<Mark> marks = new ArrayList<>(List.of(elevation));
        marks.add(sections.room().takeBeside());
        return new Picture(new Sheet(SheetSize.A3, result.evidence().elevation().name(), "en", marks));
    }

    /** What is drawn, as a sheet without frame. */
    public Sheet sheet() {
        return sheet;
    }

    /** The picture as SVG, no larger than what is drawn. */
    public String svg() {
        StringWriter out = new StringWriter();
        try {
            SvgWriter.write(sheet, box(), out);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return out.toString();
    }

    private PaperBox box() {
        return Group.of(sheet.marks()).box().grown(MARGIN);
    }
}
