package rainlap.paper;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** One sheet with every kind of mark, for tests that look at a whole sheet and for the eye. */
final class SampleSheet {

    private static final PaperBox WALL = new PaperBox(90, 50, 260, 150);
    private static final TextStyle SMALL = TextStyle.of(2.5);

    private SampleSheet() {
    }

    static Sheet of() {
        List<Mark> marks = new ArrayList<>();
        marks.add(Frame.of(SheetSize.A3));
        marks.add(Group.of("pens", pens()));
        marks.add(Group.of("wall", wall()).withClass("view").withTitle("A wall & its \"sheets\""));
        marks.addAll(labels());
        marks.add(Group.of("section", section()));
        marks.add(Group.of("texts", texts()));
        return new Sheet(SheetSize.A3, "Sample sheet", "en", marks);
    }

    private static List<Mark> pens() {
        List<Mark> marks = new ArrayList<>();
        double y = 200;
        for (Pen pen : Pen.values()) {
            marks.add(Polyline.line(30, y, 80, y, Edge.of(pen)));
            marks.add(Text.of(84, y + 1.25, pen.name().toLowerCase(java.util.Locale.ROOT).replace('_', ' '), SMALL));
            y += 8;
        }
        return marks;
    }

    private static List<Mark> wall() {
        PaperRegion lap = PaperRegion.of(new PaperBox(90, 95, 260, 101));
        PaperRegion ring = new PaperRegion(List.of(new PaperBox(195, 62, 225, 86).corners(),
                new PaperBox(203, 68, 217, 80).corners()));
        PaperRegion opening = PaperRegion.of(new PaperBox(110, 64, 150, 92));
        List<Mark> marks = new ArrayList<>();
        marks.add(Area.of(PaperRegion.of(WALL), Tone.of("#eaf2f7"), Edge.of(Pen.EXTRA_WIDE)));
        marks.add(Area.filled(lap, Tone.of("#c3d9e6")));
        marks.add(Hatch.of(lap, 135, 1.3, Edge.of(Pen.THIN)));
        marks.add(Polyline.line(90, 95, 260, 95, Edge.of(Pen.NARROW_DASHED)));
        marks.add(Area.filled(ring, Tone.of("#f6d9a6")));
        marks.add(Hatch.crossed(ring, 45, 1.6, Edge.of(Pen.THIN, Tone.of("#8a5a00"))));
        marks.add(Area.edged(ring, Edge.of(Pen.NARROW)));
        marks.add(Area.of(opening, Tone.WHITE, Edge.of(Pen.WIDE)));
        marks.add(new Clip(opening, List.of(Polyline.line(80, 58, 160, 98, Edge.of(Pen.THIN_DASH_DOT)),
                Disc.ring(new PaperPoint(150, 78), 12, Edge.of(Pen.MEDIUM)))));
        Text name = Text.centred(new PaperPoint(125, 98), "lap 100 reversed", SMALL.medium());
        marks.add(new Halo(name, Tone.of("#c3d9e6"), 1));
        marks.add(name);
        marks.add(Text.centred(new PaperPoint(255, 75), "folded on to the side", SMALL.rotated(-90).grey()));
        return marks;
    }

    private static List<Mark> labels() {
        List<BoundaryLabels.Site> sites = new ArrayList<>();
        for (double[] p : new double[][] {{100, 101, 140, 101}, {112, 92, 112, 92}, {200, 86, 220, 86}, {240, 95, 260, 95},
            {150, 64, 150, 92}, {180, 150, 200, 150}, {114, 95, 118, 95}}) {
            List<PaperPoint> points = new ArrayList<>();
            for (int i = 0; i <= 4; i++) {
                points.add(new PaperPoint(p[0], p[1]).towards(new PaperPoint(p[2], p[3]), i / 4.0));
            }
            sites.add(new BoundaryLabels.Site(points, 26, 7, 3.5));
        }
        List<PaperSegment> edges = List.of(PaperSegment.of(90, 95, 260, 95), PaperSegment.of(90, 101, 260, 101),
                PaperSegment.of(90, 150, 260, 150));
        BoundaryLabels.Result result = BoundaryLabels.place(sites, new BoundaryLabels.Room(WALL,
                Optional.of(new PaperBox(86, 30, 264, 42)), Optional.of(new PaperBox(50, 46, 82, 154)),
                Optional.of(new PaperBox(268, 46, 300, 154)), edges));
        List<Mark> marks = new ArrayList<>();
        List<Mark> leaders = new ArrayList<>();
        result.placed().forEach(p -> leaders.add(Halo.of(new Polyline(p.leader(), Edge.of(Pen.NARROW)))));
        for (BoundaryLabels.Placed p : result.placed()) {
            leaders.add(new Polyline(p.leader(), Edge.of(Pen.NARROW)));
            leaders.add(Disc.filled(p.leader().get(p.leader().size() - 1), 0.75, Tone.INK));
            boolean left = p.side() == BoundarySide.LEFT;
            PaperPoint mark = new PaperPoint(left ? p.box().right() - 3.5 : p.box().left() + 3.5, p.box().middle().y());
            marks.add(Disc.of(mark, 3.15, Tone.WHITE, Edge.of(Pen.EXTRA_WIDE, Tone.of("#005f96"))));
            marks.add(Text.centred(mark, Integer.toString(p.site() + 1), TextStyle.of(2.9).bold()));
            TextStyle style = left ? SMALL.end() : SMALL;
            double x = mark.x() + (left ? -4.5 : 4.5);
            marks.add(Text.of(x, mark.y() - 0.5, "short end lap", style.medium()));
            marks.add(Text.of(x, mark.y() + 3.3, "90 of 150", style.grey()));
        }
        return List.of(Group.of("leaders", leaders).withClass(SheetCheck.LEADER), Group.of("marks", marks));
    }

    private static List<Mark> section() {
        List<Mark> marks = new ArrayList<>();
        List<PaperPoint> sheet = List.of(new PaperPoint(180, 200), new PaperPoint(180, 225), new PaperPoint(188, 233),
                new PaperPoint(188, 255), new PaperPoint(196, 255));
        marks.add(Area.filled(PaperRegion.along(sheet, 1), Tone.of("#2d4654")));
        marks.add(Polyline.line(176, 200, 176, 250, Edge.of(Pen.WIDE, Tone.of("#0a6aa8"))));
        marks.add(Arrowhead.of(new PaperPoint(176, 253), new PaperPoint(176, 240), 3, Tone.of("#0a6aa8")));
        PaperRegion frame = PaperRegion.of(new PaperBox(192, 200, 206, 250));
        marks.add(Hatch.of(frame, 45, 2, Edge.of(Pen.THIN)));
        marks.add(Area.edged(frame, Edge.of(Pen.WIDE)));
        return marks;
    }

    private static List<Mark> texts() {
        List<Mark> marks = new ArrayList<>();
        double y = 200;
        for (Weight weight : Weight.values()) {
            for (double height : new double[] {2.5, 3.5, 5}) {
                marks.add(Text.of(230, y, "Lap 100 over M2 (±0, −450, 45°), ÄÖÜ éß Ø124 × 90", TextStyle.of(height).with(weight)));
                y += 2.2 * height;
            }
        }
        marks.add(Text.of(230, y, "Стена → 壁", TextStyle.of(3.5)));
        return marks;
    }
}
