package rainlap.drawing;

import java.util.ArrayList;
import java.util.List;
import rainlap.paper.Area;
import rainlap.paper.Group;
import rainlap.paper.Mark;
import rainlap.paper.PaperBox;
import rainlap.paper.PaperPoint;
import rainlap.paper.PaperRegion;
import rainlap.paper.PaperSegment;
import rainlap.paper.Polyline;
import rainlap.paper.Strokes;
import rainlap.paper.Text;
import rainlap.paper.TextMetrics;
import rainlap.paper.Tone;
import rainlap.rule.Place;

/** Beneath the elevation: the ground, the name of the view with its scale, the scale bar. */
final class ViewTitle {
    /** Width of all of it, printed mm. */
    static final double WIDTH = 214;
    /** How far beneath the title the scale bar stands where the sheet is narrow. */
    static final double BAR_BENEATH = 7;
    /** Where the scale bar begins. */
    private static final double BAR = 156;
    private static final double BAR_LENGTH = 50;
    private static final double BAR_LABEL = 34;
    private static final double GREY_GAP = 3;

    private ViewTitle() {}

    /**
     * @param name of the wall; left to the title block where it is too long
     * @param suffix what part of the wall, where it is not the whole: ", bay 1 of 3"
     * @param at where the name stands
     * @param narrow whether the scale bar stands beneath it
     */
    static Group marks(String name, String suffix, String second, int scale, PaperPoint at, boolean narrow) {
        List<Mark> out = new ArrayList<>();
        String seen = ", seen from outside" + suffix;
        double room = (narrow ? BAR : BAR - 34) - GREY_GAP - TextMetrics.width(second, Looks.SECOND) - TextMetrics.width(seen, Looks.TITLE);
        boolean fits = TextMetrics.width(name, Looks.TITLE) <= room;
        String title = fits ? name + seen : "Seen from outside" + suffix;
        out.add(Text.of(at.x(), at.y(), title, Looks.TITLE));
        out.add(Text.of(at.x() + TextMetrics.width(title, Looks.TITLE) + GREY_GAP, at.y(), second, Looks.SECOND));
        scaleBar(scale, narrow ? at.plus(BAR_LABEL, BAR_BENEATH) : at.plus(BAR, 0), out);
        return Group.of("view-title", out);
    }

    private static void scaleBar(int scale, PaperPoint at, List<Mark> out) {
        double left = at.x(), y = at.y();
        for (int i = 0; i < 4; i++) {
            PaperBox part = PaperBox.ofSize(left + i * BAR_LENGTH / 4, y - 1.6, BAR_LENGTH / 4, 1.3);
            out.add(Area.of(PaperRegion.of(part), i % 2 == 0 ? Tone.INK : Tone.WHITE, Looks.THIN));
        }
        long full = Math.round(BAR_LENGTH * scale);
        out.add(Text.of(left - 3, y, "50 mm on paper", Looks.SECOND.end()));
        out.add(Text.of(left, y - 2.9, "0", Looks.PLAIN.middle()));
        out.add(Text.of(left + BAR_LENGTH / 2, y - 2.9, Place.mm(full * 50), Looks.PLAIN.middle()));
        out.add(Text.of(left + BAR_LENGTH, y - 2.9, Place.mm(full * 100) + " mm", Looks.PLAIN.middle()));
    }

    /** The ground as a heavy line with short strokes under it. */
    static Group ground(double left, double right, double y) {
        List<PaperSegment> strokes = new ArrayList<>();
        for (double x = left + 2.5; x <= right - 1; x += 4) {
            strokes.add(PaperSegment.of(x, y, x - 1.6, y + 1.9));
        }
        return Group.of("ground", List.of(Polyline.line(left, y, right, y, Looks.OUTLINE), new Strokes(strokes, Looks.THIN)));
    }
}
