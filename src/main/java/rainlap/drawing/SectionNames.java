package rainlap.drawing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import rainlap.paper.Disc;
import rainlap.paper.Group;
import rainlap.paper.Mark;
import rainlap.paper.Occupied;
import rainlap.paper.PaperBox;
import rainlap.paper.PaperPoint;
import rainlap.paper.PaperSegment;
import rainlap.paper.Polyline;
import rainlap.paper.Text;
import rainlap.paper.TextMetrics;
import rainlap.paper.Tone;

/** The names of the pieces in a section, each with a leader. */
final class SectionNames {
    private static final double NAME_PITCH = 4.3;
    private final CutStack stack;
    private final SectionGrid grid;
    private final SectionStrands strands;
    private final SectionPipes pipes;
    private final Room room;
    private final List<Mark> out;

    /** Where names may stand: inside a box, clear of other words and of what is drawn. */
    record Room(PaperBox box, Occupied taken, Occupied drawn) {}

    SectionNames(CutStack stack, SectionGrid grid, SectionStrands strands, SectionPipes pipes, Room room, List<Mark> out) {
        this.stack = stack;
        this.grid = grid;
        this.strands = strands;
        this.pipes = pipes;
        this.room = room;
        this.out = out;
    }

    /** A piece's name and the point of it that the leader meets. */
    private record Named(String name, List<PaperPoint> anchors) {
        PaperPoint at() {
            return anchors.get(0);
        }
    }

    void name() {
        List<Named> all = new ArrayList<>();
        for (CutStack.Strand s : stack.strands()) {
            List<PaperPoint> path = strands.paths(s).stream().max(Comparator.comparingDouble(SectionNames::length)).orElseThrow();
            List<PaperPoint> anchors = anchors(s, path), seen = anchors.stream().filter(a -> !pipes.hide(a)).toList();
            all.add(new Named(s.piece().id(), seen.isEmpty() ? anchors : seen));
        }
        boolean plumb = grid.plumb();
        all.sort(Comparator.comparingDouble(n -> plumb ? n.at().y() : n.at().x()));
        all.forEach(plumb ? this::nameLeft : this::nameBelow);
    }

    private static double length(List<PaperPoint> path) {
        double sum = 0;
        for (int i = 0; i + 1 < path.size(); i++) {
            sum += path.get(i).distance(path.get(i + 1));
        }
        return sum;
    }

    /** Places on the longest stretch over which nothing else lies, or on the longest at all. */
    private List<PaperPoint> anchors(CutStack.Strand s, List<PaperPoint> path) {
        CutStack.Step best = null;
        for (CutStack.Step step : s.steps()) {
            boolean topmost = stack.strands().stream().filter(o -> o != s).flatMap(o -> o.steps().stream())
                    .noneMatch(o -> o.level() > step.level() && o.from() < step.to() && o.to() > step.from());
            double worth = (step.to() - step.from()) * (topmost ? 10 : 1);
            double bestWorth = best == null ? 0 : (best.to() - best.from());
            if (worth > bestWorth) {
                best = step;
            }
        }
        List<PaperPoint> out = new ArrayList<>();
        if (best == null || s.piece().material().kind() == rainlap.material.MaterialKind.FLASHING) {
            for (int i = path.size() - 1; i > 0; i--) {
                out.add(path.get(i).towards(path.get(i - 1), 0.5));
            }
            return out;
        }
        for (double share : new double[] {0.5, 0.15, 0.85, 0.3, 0.7}) {
            out.add(nearest(path, grid.at(best.from() + share * (best.to() - best.from()), strands.out(best.level()))));
        }
        return out;
    }

    /** The point of a line nearest to a place: slopes leave the level of their step. */
    private static PaperPoint nearest(List<PaperPoint> path, PaperPoint p) {
        PaperPoint best = path.get(0);
        for (int i = 0; i + 1 < path.size(); i++) {
            PaperPoint a = path.get(i), b = path.get(i + 1);
            double dx = b.x() - a.x(), dy = b.y() - a.y(), square = dx * dx + dy * dy;
            double share = square == 0 ? 0 : ((p.x() - a.x()) * dx + (p.y() - a.y()) * dy) / square;
            PaperPoint q = a.towards(b, Math.max(0, Math.min(1, share)));
            best = q.distance(p) < best.distance(p) ? q : best;
        }
        return best;
    }

    private void nameLeft(Named n) {
        String name = TextMetrics.shorten(n.name(), 13, Looks.STRONG);
        double edge = grid.face() - strands.furthest() - 3;
        for (PaperPoint dot : n.anchors()) {
            for (double x : new double[] {edge - 6, edge, edge - 3, edge - 9, edge - 12}) {
                for (int k = 0; k < 9; k++) {
                    double y = dot.y() + shift(k) * NAME_PITCH;
                    if (place(Text.of(x, y + 1.25, name, Looks.STRONG.end()), dot)) {
                        return;
                    }
                }
            }
        }
    }

    private static double shift(int k) {
        return (k % 2 == 0 ? 1 : -1) * ((k + 1) / 2);
    }

    private void nameBelow(Named n) {
        String name = TextMetrics.shorten(n.name(), 16, Looks.STRONG);
        double edge = grid.face() + strands.furthest() + 5.5;
        for (PaperPoint dot : n.anchors()) {
            for (double y : new double[] {edge, edge + 4.3, edge + 8.6, edge + 12.9}) {
                for (int k = 0; k < 9; k++) {
                    double x = dot.x() + shift(k) * 4;
                    if (place(Text.of(x, y, name, Looks.STRONG.middle()), dot)) {
                        return;
                    }
                }
            }
        }
    }

    private boolean place(Text t, PaperPoint dot) {
        PaperBox b = t.box();
        PaperPoint start = grid.plumb() ? new PaperPoint(b.right() + 0.7, t.at().y() - 1.25) : new PaperPoint(t.at().x(), b.top() - 0.5);
        Polyline leader = Polyline.of(Looks.THIN, start, dot);
        if (!room.box.holds(b) || !room.taken.isFree(b) || !room.drawn.isFree(b) || b.meets(new PaperSegment(start, dot)) || !room.taken.isFree(new PaperSegment(start, dot))
                || !room.taken.isFree(PaperBox.around(dot, 0.6, 0.6))) {
            return false;
        }
        room.taken.add(b);
        room.taken.add(leader);
        room.taken.add(PaperBox.around(dot, 0.6, 0.6));
        out.add(t);
        out.add(Group.of(List.of(leader)).withClass(rainlap.paper.SheetCheck.LEADER));
        out.add(Disc.filled(dot, 0.45, Tone.INK));
        return true;
    }
}
