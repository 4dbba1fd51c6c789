package rainlap.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rainlap.measure.LengthText;
import rainlap.paper.Mark;
import rainlap.paper.Occupied;
import rainlap.paper.PaperBox;
import rainlap.paper.PaperPoint;
import rainlap.paper.Polyline;
import rainlap.paper.Text;
import rainlap.paper.TextMetrics;
import rainlap.paper.TextStyle;
import rainlap.rule.Finding;
import rainlap.rule.Place;

/** Dimensions in a section: what is short and, beyond it, what is asked. */
final class SectionGauges {
    private static final double FIRST = 4;
    /** How far a dimension line runs past its strokes. */
    private static final double PAST = 1.4;
    private static final double NEXT = 5.5;
    private final SectionPlan plan;
    private final CutStack stack;
    private final SectionGrid grid;
    private final double furthest;
    private final Room room;

    /** Where figures may stand: inside the field, clear of other words and of the pieces drawn. */
    record Room(PaperBox field, Occupied taken, Occupied drawn) {
        boolean isFree(PaperBox b) {
            return field.grown(0.5).holds(b) && taken.isFree(b) && drawn.isFree(b);
        }
    }

    SectionGauges(SectionPlan plan, CutStack stack, SectionGrid grid, double furthest, Room room) {
        this.plan = plan;
        this.stack = stack;
        this.grid = grid;
        this.furthest = furthest;
        this.room = room;
    }

    void marks(List<Mark> out) {
        plan.gauge().ifPresent(g -> {
            if (g.sign() == 0) {
                inwards(g, out);
            } else {
                along(g, out);
            }
        });
    }

    private void along(SectionPlan.Gauge g, List<Mark> out) {
        double row = furthest + FIRST;
        if (g.measured() > 0) {
            line(grid.at(g.from(), row), grid.at(g.from() + g.sign() * g.measured(), row), text(g), out);
            row += NEXT;
        }
        if (g.asked() > 0) {
            line(grid.at(g.from(), row), grid.at(g.from() + g.sign() * g.asked(), row), LengthText.mm(g.asked()) + " asked", out);
        }
    }

    /** How far wind lifts water there, outside what is dimensioned already. */
    void driven(SectionWater.Lift l, List<Mark> out) {
        long rows = plan.gauge().filter(g -> g.sign() != 0).map(g -> (g.measured() > 0 ? 1L : 0L) + (g.asked() > 0 ? 1 : 0)).orElse(0L);
        double row = furthest + FIRST + rows * NEXT;
        line(grid.at(l.from(), row), grid.at(l.from() + l.rise(), row), "driven up " + Place.mm(l.rise()), out);
    }

    /** A length that changes along the place says that it is the one here: the words tell the least. */
    private String text(SectionPlan.Gauge g) {
        String here = g.asked() > 0 ? LengthText.mmBeside(g.measured(), g.asked()) : LengthText.mm(g.measured());
        Finding f = plan.first().finding();
        boolean other = g.asked() > 0 && f.unit().equals("mm") && f.measured().isPresent() && !LengthText.mmBeside(Math.round(f.measured().getAsDouble() * 100), g.asked()).equals(here);
        return other ? here + " here" : here;
    }

    /** Lengths from a turn inwards, or towards the eye at an internal corner, beyond what is turned there. */
    private void inwards(SectionPlan.Gauge g, List<Mark> out) {
        boolean high = stack.high().isPresent() && Math.abs(stack.frameTo() - g.from()) <= 100;
        boolean low = stack.low().isPresent() && Math.abs(stack.frameFrom() - g.from()) <= 100;
        if (!high && !low) {
            return;
        }
        boolean outwards = (high ? stack.high() : stack.low()).filter(CutStack.Turn::outwards).isPresent();
        double turn = high ? stack.frameTo() : stack.frameFrom(), sign = high == outwards ? -1 : 1, far = outwards ? 1 : -1;
        double row = furthest + FIRST;
        if (g.measured() > 0) {
            line(grid.at(turn + sign * grid.units(row), 0), grid.at(turn + sign * grid.units(row), far * grid.length(g.measured())), text(g), out);
            row += NEXT;
        }
        if (g.asked() > 0) {
            line(grid.at(turn + sign * grid.units(row), 0), grid.at(turn + sign * grid.units(row), far * grid.length(g.asked())),
                    LengthText.mm(g.asked()) + " asked", out);
        }
    }

    private void line(PaperPoint a, PaperPoint b, String words, List<Mark> out) {
        boolean upright = Math.abs(a.x() - b.x()) < 1e-6;
        double l = Math.max(1e-9, a.distance(b)), ux = (b.x() - a.x()) / l, uy = (b.y() - a.y()) / l;
        TextStyle style = upright ? Looks.PLAIN.middle().rotated(-90) : Looks.PLAIN.middle();
        double width = TextMetrics.width(words, style), past = l / 2 + width / 2 + 2;
        List<Text> candidates = new ArrayList<>();
        for (double shift : width + 1.6 > l ? new double[] {past, -past} : width + 1.6 > l / 2 ? new double[] {0, past, -past} : new double[] {0, l / 4, -l / 4, past, -past}) {
            PaperPoint m = a.towards(b, 0.5).plus(ux * shift, uy * shift);
            candidates.add(upright ? Text.of(m.x() - 0.9, m.y(), words, style) : Text.of(m.x(), m.y() - 0.9, words, style));
        }
        if (upright && stack.turnsOutwards()) { // long words beside a short line, away from the other wall
            boolean left = stack.high().filter(CutStack.Turn::outwards).isPresent();
            candidates.add(Text.of(a.x() + (left ? -2.2 : 2.2), Math.max(a.y(), b.y()) - 1, words, left ? Looks.PLAIN.end() : Looks.PLAIN));
        }
        PaperBox line = PaperBox.of(List.of(a, b)).grown(1.4);
        Optional<Text> figure = candidates.stream().filter(t -> room.isFree(t.box())).findFirst();
        if (figure.isEmpty() || !room.field().grown(2).holds(line)) {
            return;
        }
        out.add(Polyline.of(Looks.THIN, a.plus(-ux * PAST, -uy * PAST), b.plus(ux * PAST, uy * PAST)));
        for (PaperPoint p : List.of(a, b)) {
            out.add(Symbols.stroke(p.x(), p.y()));
            out.add(upright ? Polyline.of(Looks.THIN, p.plus(-1.4, 0), p.plus(2.9, 0)) : Polyline.of(Looks.THIN, p.plus(0, 1.4), p.plus(0, -2.9)));
        }
        room.taken().add(PaperBox.of(List.of(a.plus(-ux * PAST, -uy * PAST), b.plus(ux * PAST, uy * PAST))).grown(0.8));
        room.taken().add(figure.get().box());
        out.add(figure.get());
    }
}
