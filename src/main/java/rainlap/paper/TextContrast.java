package rainlap.paper;

import java.util.ArrayList;
import java.util.List;
import rainlap.paper.SheetCheck.Kind;
import rainlap.paper.SheetCheck.Violation;

/**
 * Whether every text stands out from what was painted beneath it, in colour and when the sheet is printed in grey, and is covered by nothing
 * painted later. Looked at are points all over the text's box against areas, discs and halos; strokes are too thin to be a ground. A circle that marks a
 * place is as thin, but runs through words as it comes: what it crosses of a text must have been painted over before the text was written.
 */
final class TextContrast {
    /** Least contrast ratio of text by WCAG 2. */
    static final double LEAST = 4.5;
    private static final double STEP = 0.6;
    /** The box reaches a little beyond the ink. */
    private static final double RIM = 0.25;
    /** From one point looked at on a circle to the next, printed mm. */
    private static final double ALONG = 0.2;
    private final List<Paint> paints = new ArrayList<>();
    private final List<Written> texts = new ArrayList<>();
    private final List<Round> circles = new ArrayList<>();

    /** What covers its points, if the clips round it hold them. */
    private interface Cover {
        boolean holds(PaperPoint p);
    }

    private record Paint(PaperBox box, Cover cover, Fill fill, List<PaperRegion> clips) {
        boolean covers(PaperPoint p) {
            return box.holds(p) && cover.holds(p) && clips.stream().allMatch(c -> c.holds(p));
        }

        boolean hides(PaperPoint p) {
            return fill.opacity() == 1 && covers(p);
        }
    }

    /** @param before how many paints were there when it was written */
    private record Written(Text text, int before, List<PaperRegion> clips) {}

    /** @param before how many paints were there when it was drawn */
    private record Round(Disc circle, int before, List<PaperRegion> clips) {
        List<PaperPoint> points() {
            int count = (int) Math.ceil(2 * Math.PI * circle.radius() / ALONG);
            return circle.around(count).stream().filter(p -> clips.stream().allMatch(c -> c.holds(p))).toList();
        }
    }

    private TextContrast() {}

    static List<Violation> of(Sheet sheet) {
        TextContrast all = new TextContrast();
        all.walk(sheet.marks(), List.of());
        List<Violation> out = new ArrayList<>();
        all.texts.forEach(w -> all.look(w, out));
        all.circles.forEach(c -> all.look(c, out));
        return out;
    }

    private void walk(List<Mark> marks, List<PaperRegion> clips) {
        for (Mark m : marks) {
            if (m instanceof Group g) {
                walk(g.marks(), clips);
            } else if (m instanceof Clip c) {
                List<PaperRegion> more = new ArrayList<>(clips);
                more.add(c.region());
                walk(c.marks(), more);
            } else if (m instanceof Area a) {
                a.fill().ifPresent(f -> paints.add(new Paint(a.box(), a.region()::holds, f, clips)));
            } else if (m instanceof Disc d) {
                d.fill().ifPresentOrElse(f -> paints.add(new Paint(d.box(), p -> d.centre().distance(p) <= d.radius(), f, clips)),
                        () -> circles.add(new Round(d, paints.size(), clips)));
            } else if (m instanceof Halo h) {
                paints.add(new Paint(h.box().grown(h.width() / 2), p -> isIn(h, p), Fill.of(h.ground()), clips));
            } else if (m instanceof Text t && !t.text().isBlank()) {
                texts.add(new Written(t, paints.size(), clips));
            }
        }
    }

    private static boolean isIn(Halo h, PaperPoint p) {
        if (h.of() instanceof Polyline line) {
            return line.segments().stream().anyMatch(s -> s.distance(p) <= h.width() / 2);
        }
        if (h.of() instanceof Strokes strokes) {
            return strokes.segments().stream().anyMatch(s -> s.distance(p) <= h.width() / 2);
        }
        return !(h.of() instanceof Area a) || a.region().holds(p);
    }

    private void look(Written w, List<Violation> out) {
        Tone ink = w.text().style().tone();
        double least = Double.MAX_VALUE;
        boolean covered = false;
        for (PaperPoint p : points(w.text().box())) {
            if (w.clips().stream().allMatch(c -> c.holds(p))) {
                Tone ground = ground(p, w.before());
                least = Math.min(least, Math.min(ink.contrast(ground), ink.grey().contrast(ground.grey())));
                covered |= paints.subList(w.before(), paints.size()).stream().anyMatch(x -> x.covers(p));
            }
        }
        if (least < LEAST) {
            out.add(new Violation(Kind.TEXT_FAINT, "\"" + w.text().text() + "\" has a contrast of " + Math.round(least * 10) / 10.0, w.text().box()));
        }
        if (covered) {
            out.add(new Violation(Kind.TEXT_COVERED, "\"" + w.text().text() + "\"", w.text().box()));
        }
    }

    /** A text written before a circle has nothing painted between. */
    private void look(Round c, List<Violation> out) {
        List<PaperPoint> line = c.points();
        for (Written w : texts) {
            PaperBox box = w.text().box().grown(-RIM);
            List<Paint> between = paints.subList(Math.min(c.before(), w.before()), w.before());
            if (box.meets(c.circle().box()) && line.stream().anyMatch(p -> box.holds(p) && between.stream().noneMatch(x -> x.hides(p)))) {
                out.add(new Violation(Kind.CIRCLE_OVER_TEXT, "\"" + w.text().text() + "\"", w.text().box()));
            }
        }
    }

    /** What the first paints make of a place, from bare paper on. */
    private Tone ground(PaperPoint p, int paintsBefore) {
        Tone ground = Tone.WHITE;
        for (Paint paint : paints.subList(0, paintsBefore)) {
            if (paint.covers(p)) {
                ground = paint.fill().tone().over(ground, paint.fill().opacity());
            }
        }
        return ground;
    }

    private static List<PaperPoint> points(PaperBox b) {
        List<PaperPoint> out = new ArrayList<>();
        int across = (int) Math.ceil(Math.max(1, (b.width() - 2 * RIM) / STEP)), down = (int) Math.ceil(Math.max(1, (b.height() - 2 * RIM) / STEP));
        for (int i = 0; i <= across; i++) {
            for (int k = 0; k <= down; k++) {
                out.add(new PaperPoint(b.left() + RIM + i * (b.width() - 2 * RIM) / across, b.top() + RIM + k * (b.height() - 2 * RIM) / down));
            }
        }
        return out;
    }
}
