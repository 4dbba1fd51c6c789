package rainlap.drawing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import java.util.stream.Stream;
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
    /** Names that find no room are tried before the others, so often. */
    private static final int ATTEMPTS = 6;
    /** Where nothing usual is free: how fine the room is searched, how far apart a piece's points are, and the longest leader, printed mm. */
    private static final double FINE = 1;
    private static final double POINTS = 1.5;
    private static final double LONGEST = 45;
    private static final double CLEAR = 1;
    private static final double LONGEST_NAME = 18;
    private static final Pattern NUMBERED = Pattern.compile("(.+) \\([0-9]+\\)");
    /** A leader starts a little off its name and comes no nearer. */
    private static final double NEAR = 0.35;
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

    /** A piece's name, the points of it that the leader meets best, and further ones all along it. */
    private record Named(String name, List<PaperPoint> anchors, List<PaperPoint> further) {
        PaperPoint at() {
            return anchors.get(0);
        }
    }

    /** Where a name may stand and where its leader begins and ends. */
    private record Spot(Text text, PaperPoint start, PaperPoint dot) {
        double length() {
            return start.distance(dot);
        }
    }

    private boolean isAlike(CutStack.Strand s) {
        Matcher numbered = NUMBERED.matcher(s.piece().id());
        return numbered.matches() && stack.strands().stream().anyMatch(o -> o.piece().id().equals(numbered.group(1)) && o.piece().material().equals(s.piece().material()));
    }

    /**
     * Draws them; returns those that found no room.
     *
     * @param alikeOnce whether pieces alike that are told apart by a number are named but once
     */
    List<String> name(boolean alikeOnce) {
        List<Named> all = new ArrayList<>();
        for (CutStack.Strand s : stack.strands().stream().filter(s -> !alikeOnce || !isAlike(s)).toList()) {
            List<List<PaperPoint>> paths = strands.paths(s);
            List<PaperPoint> path = paths.stream().max(Comparator.comparingDouble(SectionNames::length)).orElseThrow();
            List<PaperPoint> further = paths.stream().flatMap(p -> along(p).stream()).filter(a -> !pipes.hide(a)).toList();
            List<PaperPoint> anchors = anchors(s, path), seen = anchors.stream().filter(a -> !pipes.hide(a)).toList();
            all.add(new Named(s.piece().id(), seen.isEmpty() ? anchors : seen, further));
        }
        all.sort(Comparator.comparingDouble(n -> grid.plumb() ? n.at().y() : n.at().x()));
        Map<Named, Spot> best = Map.of();
        List<Named> order = new ArrayList<>(all);
        for (int i = 0; i < ATTEMPTS && best.size() < all.size(); i++) {
            Map<Named, Spot> found = attempt(order);
            best = found.size() > best.size() ? found : best;
            List<Named> left = order.stream().filter(n -> !found.containsKey(n)).toList();
            order.removeAll(left);
            order.addAll(0, left);
        }
        best.values().forEach(this::draw);
        Set<Named> placed = best.keySet();
        return all.stream().filter(n -> !placed.contains(n)).map(Named::name).toList();
    }

    /** Each where it stands best clear of those before it; if none does by the usual places, the nearest of all there are. */
    private Map<Named, Spot> attempt(List<Named> order) {
        Map<Named, Spot> out = new LinkedHashMap<>();
        Occupied mine = new Occupied();
        for (Named n : order) {
            Stream<Spot> usual = grid.plumb() ? left(n) : below(n);
            usual.filter(s -> isFree(s, mine)).findFirst().or(() -> anywhere(n).filter(s -> isFree(s, mine)).findFirst()).ifPresent(s -> {
                out.put(n, s);
                take(s, mine);
            });
        }
        return out;
    }

    private static double length(List<PaperPoint> path) {
        double sum = 0;
        for (int i = 0; i + 1 < path.size(); i++) {
            sum += path.get(i).distance(path.get(i + 1));
        }
        return sum;
    }

    /** Points along a line, a little apart. */
    private static List<PaperPoint> along(List<PaperPoint> path) {
        List<PaperPoint> out = new ArrayList<>();
        for (int i = 0; i + 1 < path.size(); i++) {
            PaperPoint a = path.get(i), b = path.get(i + 1);
            int parts = (int) Math.max(2, a.distance(b) / POINTS);
            IntStream.range(0, parts).forEach(k -> out.add(a.towards(b, (k + 0.5) / parts)));
        }
        return out;
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

    private Stream<Spot> left(Named n) {
        Text name = Text.of(0, 0, TextMetrics.shorten(n.name(), LONGEST_NAME, Looks.STRONG), Looks.STRONG.end());
        double edge = grid.face() - strands.furthest() - 3;
        return n.anchors().stream().flatMap(dot -> Stream.of(edge - 6, edge, edge - 3, edge - 9, edge - 12)
                .flatMap(x -> IntStream.range(0, 9).mapToObj(k -> spot(name, x, dot.y() + shift(k) * NAME_PITCH + 1.25, dot))));
    }

    private static double shift(int k) {
        return (k % 2 == 0 ? 1 : -1) * ((k + 1) / 2);
    }

    private Stream<Spot> below(Named n) {
        Text name = Text.of(0, 0, TextMetrics.shorten(n.name(), LONGEST_NAME, Looks.STRONG), Looks.STRONG.middle());
        double edge = grid.face() + strands.furthest() + 5.5;
        return n.anchors().stream().flatMap(dot -> Stream.of(edge, edge + 4.3, edge + 8.6, edge + 12.9)
                .flatMap(y -> IntStream.range(0, 9).mapToObj(k -> spot(name, dot.x() + shift(k) * 4, y, dot))));
    }

    /** All over the room outside the frame, the shortest leaders first. */
    private Stream<Spot> anywhere(Named n) {
        Text name = Text.of(0, 0, TextMetrics.shorten(n.name(), LONGEST_NAME, Looks.STRONG), Looks.STRONG.middle());
        List<Spot> out = new ArrayList<>();
        double right = grid.plumb() ? grid.face() - CLEAR : room.box.right(), top = room.box.top();
        for (double x = right; x > room.box.left(); x -= FINE) {
            for (double y = top; y < room.box.bottom(); y += FINE) {
                for (PaperPoint dot : n.further()) {
                    Spot s = aside(Text.of(x, y, name.text(), name.style()), dot);
                    if (s.length() > CLEAR && s.length() < LONGEST && !isOnFrame(s.text().box())) {
                        out.add(s);
                    }
                }
            }
        }
        out.sort(Comparator.comparingDouble(Spot::length));
        return out.stream();
    }

    /** At a corner there is room beside the frame. */
    private boolean isOnFrame(PaperBox b) {
        if (grid.plumb()) {
            return b.right() >= grid.face() - CLEAR;
        }
        double one = grid.at(stack.frameFrom(), 0).x(), other = grid.at(stack.frameTo(), 0).x();
        return b.top() < grid.face() + CLEAR && b.right() > Math.min(one, other) && b.left() < Math.max(one, other);
    }

    private Spot spot(Text name, double x, double y, PaperPoint dot) {
        Text t = Text.of(x, y, name.text(), name.style());
        PaperBox b = t.box();
        return new Spot(t, grid.plumb() ? new PaperPoint(b.right() + 0.7, y - 1.25) : new PaperPoint(x, b.top() - 0.5), dot);
    }

    /** The leader begins at the side of the name that is turned to its end. */
    private static Spot aside(Text t, PaperPoint dot) {
        PaperBox b = t.box();
        double x = Math.max(b.left() + 1, Math.min(b.right() - 1, dot.x())), y = t.at().y() - 1.25;
        PaperPoint start = dot.x() > b.right() + CLEAR ? new PaperPoint(b.right() + 0.7, y) : dot.x() < b.left() - CLEAR ? new PaperPoint(b.left() - 0.7, y)
                : dot.y() < b.top() ? new PaperPoint(x, b.top() - 0.5) : new PaperPoint(x, b.bottom() + 0.5);
        return new Spot(t, start, dot);
    }

    private boolean isFree(Spot s, Occupied mine) {
        PaperBox b = s.text().box(), dot = PaperBox.around(s.dot(), 0.6, 0.6);
        PaperSegment leader = new PaperSegment(s.start(), s.dot());
        return room.box.holds(b) && !b.grown(NEAR).meets(leader) && room.drawn.isFree(b)
                && Stream.of(room.taken, mine).allMatch(o -> o.isFree(b) && o.isFree(leader) && o.isFree(dot));
    }

    private static void take(Spot s, Occupied taken) {
        taken.add(s.text().box());
        taken.add(leader(s));
        taken.add(PaperBox.around(s.dot(), 0.6, 0.6));
    }

    private static Polyline leader(Spot s) {
        return Polyline.of(Looks.THIN, s.start(), s.dot());
    }

    private void draw(Spot s) {
        take(s, room.taken);
        out.add(s.text());
        out.add(Group.of(List.of(leader(s))).withClass(rainlap.paper.SheetCheck.LEADER));
        out.add(Disc.filled(s.dot(), 0.45, Tone.INK));
    }
}
