package rainlap.drawing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.stream.Stream;
import rainlap.paper.Group;
import rainlap.paper.Halo;
import rainlap.paper.Mark;
import rainlap.paper.Occupied;
import rainlap.paper.PaperBox;
import rainlap.paper.PaperPoint;
import rainlap.paper.PaperRegion;
import rainlap.paper.PaperSegment;
import rainlap.paper.Polyline;
import rainlap.paper.SheetCheck;
import rainlap.paper.Text;
import rainlap.paper.TextMetrics;
import rainlap.paper.TextStyle;
import rainlap.paper.Tone;

/** Finds room for names on the drawing, among what is taken and beside hatched strips, and off thin lines where it can be helped. */
final class Room {
    private static final double LEADER_GAP = 0.7;
    private final Occupied taken;
    private final Occupied hatched;
    private final PaperBox drawing;
    private final Occupied lines;

    /**
     * @param hatched boxes of strips, and openings, on which no loose text stands
     * @param drawing box that the names stay in
     */
    Room(Occupied taken, Occupied hatched, PaperBox drawing) {
        this(taken, hatched, drawing, new Occupied());
    }

    /** @param lines that a text would break, and does only where it finds no place off them */
    Room(Occupied taken, Occupied hatched, PaperBox drawing, Occupied lines) {
        this.taken = taken;
        this.hatched = hatched;
        this.drawing = drawing;
        this.lines = lines;
    }

    /** The first of some texts, middle-anchored, that is free; it takes its room. */
    Optional<Text> first(List<Text> candidates) {
        Optional<Text> free = offLines(() -> candidates.stream().filter(t -> isFree(t.box())), Text::box);
        free.ifPresent(t -> taken.add(t.box()));
        return free;
    }

    /** The first of some boxes that is free but for hatched strips, over which it may be put; it takes its room. */
    Optional<PaperBox> firstOver(List<PaperBox> candidates) {
        Optional<PaperBox> free = offLines(() -> candidates.stream().filter(this::isFreeOver), b -> b);
        free.ifPresent(taken::add);
        return free;
    }

    /** The first that breaks no line, else the first. */
    private <T> Optional<T> offLines(Supplier<Stream<T>> free, Function<T, PaperBox> box) {
        return free.get().filter(t -> lines.isFree(box.apply(t))).findFirst().or(() -> free.get().findFirst());
    }

    boolean isFree(PaperBox box) {
        return drawing.holds(box) && taken.isFree(box) && hatched.isFree(box);
    }

    /** Whether a box may be put over hatched strips. */
    boolean isFreeOver(PaperBox box) {
        return drawing.holds(box) && taken.isFree(box);
    }

    void take(PaperBox box) {
        taken.add(box);
    }

    /** Text inside the largest of some regions: its middle, four shifts, then a grid of places. */
    Optional<Text> inside(List<PaperRegion> regions, String name, TextStyle style) {
        List<PaperRegion> largest = regions.stream()
                .sorted(Comparator.comparingDouble((PaperRegion r) -> -r.box().width() * r.box().height())).limit(4).toList();
        for (double clear : new double[] {4, 1.5, 0.6}) {
            for (PaperRegion r : largest) {
                Optional<Text> found = first(places(r.box()).stream().map(p -> Text.centred(p, name, style))
                        .filter(t -> holds(r, t.box().grown(clear)) && (clear < 2 || isFree(t.box().grown(clear / 2)))).toList());
                if (found.isPresent()) {
                    return found;
                }
            }
        }
        return Optional.empty();
    }

    private static List<PaperPoint> places(PaperBox b) {
        List<PaperPoint> out = new ArrayList<>();
        PaperPoint m = b.middle();
        double dx = b.width() / 4, dy = b.height() / 4;
        out.addAll(List.of(m, m.plus(-dx, 0), m.plus(dx, 0), m.plus(0, -dy), m.plus(0, dy)));
        for (int row = 1; row < 8; row++) {
            for (int column = 1; column < 12; column++) {
                out.add(new PaperPoint(b.left() + b.width() * column / 12, b.top() + b.height() * row / 8));
            }
        }
        return out;
    }

    private static boolean holds(PaperRegion r, PaperBox b) {
        return b.corners().stream().allMatch(r::holds) && r.holds(b.middle()) && r.holds(new PaperPoint(b.middle().x(), b.top()))
                && r.holds(new PaperPoint(b.middle().x(), b.bottom()));
    }

    /** Text near a box, joined to it by a short thin leader that meets nothing. */
    Optional<List<Mark>> beside(PaperBox target, String name, TextStyle style, Tone ground) {
        List<Text> texts = around(target, name, style);
        Optional<Led> near = offLines(() -> texts.stream().filter(t -> isFree(t.box())).flatMap(t -> leader(t.box(), target).stream().map(l -> new Led(t, l))), led -> led.text().box());
        return near.map(led -> {
            taken.add(led.text().box());
            taken.add(led.leader());
            List<Mark> out = new ArrayList<>(Symbols.haloed(led.text(), ground));
            out.add(new Halo(led.leader(), ground, 0.9));
            out.add(Group.of(List.of(led.leader())).withClass(SheetCheck.LEADER));
            return out;
        });
    }

    /** A text with its leader. */
    private record Led(Text text, Polyline leader) {}

    private static List<Text> around(PaperBox target, String name, TextStyle style) {
        double w = TextMetrics.width(name, style) / 2, h = style.capHeight() / 2;
        List<Text> out = new ArrayList<>();
        for (double away : new double[] {3.2, 5.5, 8, 11}) {
            for (double[] d : new double[][] {{1, 0}, {-1, 0}, {1, -1}, {-1, -1}, {1, 1}, {-1, 1}, {0, -1}, {0, 1}}) {
                PaperPoint at = new PaperPoint(target.middle().x() + d[0] * (target.width() / 2 + away + w),
                        target.middle().y() + d[1] * (target.height() / 2 + (d[0] == 0 ? away : away * 0.7) + h));
                out.add(Text.centred(at, name, style));
            }
        }
        return out;
    }

    /** From the nearest side of a text's box into the target; empty when it would pass through something. */
    private Optional<Polyline> leader(PaperBox text, PaperBox target) {
        PaperPoint aim = nearest(target.grown(-Math.min(1, Math.min(target.width(), target.height()) / 3)), text.middle());
        PaperPoint start = nearest(text.grown(LEADER_GAP), aim);
        return start.distance(aim) < 0.5 || !taken.isFree(new PaperSegment(start, aim)) ? Optional.empty()
                : Optional.of(Polyline.of(Looks.THIN, start, aim));
    }

    private static PaperPoint nearest(PaperBox b, PaperPoint p) {
        return new PaperPoint(Math.max(b.left(), Math.min(b.right(), p.x())), Math.max(b.top(), Math.min(b.bottom(), p.y())));
    }
}
