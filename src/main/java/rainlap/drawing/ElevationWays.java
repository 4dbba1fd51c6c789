package rainlap.drawing;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import rainlap.check.WeakPoint;
import rainlap.geom.Box;
import rainlap.geom.Point;
import rainlap.geom.Segment;
import rainlap.paper.Group;
import rainlap.paper.Mark;
import rainlap.paper.Occupied;
import rainlap.paper.PaperBox;
import rainlap.paper.PaperPoint;
import rainlap.paper.Polyline;
import rainlap.paper.Text;
import rainlap.rule.Evidence;
import rainlap.rule.Place;
import rainlap.water.Arrival;
import rainlap.water.Step;

/** The water's way to the worst weak points, laid over the elevation where it meets no words. */
final class ElevationWays {
    /** More ways than this could not be told apart. */
    private static final int MOST = 3;
    private static final double PITCH = 11;
    /** How far beside an edge water is drawn that is driven over it sideways, printed mm. */
    private static final double ASIDE = 2.5;
    /** A shorter way would be hidden by its own arrow. */
    private static final double SHORTEST = 3.5;
    /** A longer way with bends can be followed through a crowd. */
    private static final double FOLLOWED = 20;
    /** What lies nearer to a way, or to the drop at its end, counts as met, printed mm. */
    private static final double BESIDE = 0.8;
    private static final double DROP = 5;
    private static final double[] SHARES = {0.5, 0.62, 0.38, 0.75, 0.25, 0.85, 0.15, 0.93, 0.07};
    private final Evidence evidence;
    private final View view;
    private final PaperBox drawn;
    private final Occupied words = new Occupied();

    /** @param written what carries the words that no way may meet */
    ElevationWays(Evidence evidence, View view, PaperBox drawn, List<Mark> written) {
        this.evidence = evidence;
        this.view = view;
        this.drawn = drawn.grown(0.1);
        written.forEach(this::keepClear);
    }

    private void keepClear(Mark m) {
        if (m instanceof Group g) {
            g.marks().forEach(this::keepClear);
        } else if (m instanceof Text t) {
            words.add(t.box());
        }
    }

    /** Ways that leak as drawn; where there is none, those that one failure opens. They take their room. */
    List<Mark> draw(List<WeakPoint> points, Occupied taken) {
        WaysIn all = new WaysIn(evidence);
        List<Mark> out = new ArrayList<>();
        List<Arrival> done = new ArrayList<>();
        for (int defences = 0; defences <= 1 && done.isEmpty(); defences++) {
            for (WeakPoint p : points) {
                int level = defences;
                Optional<Arrival> a = all.through(p).stream().findFirst().filter(x -> x.defences() == level && !done.contains(x));
                Optional<WaterSigns.Way> way = done.size() == MOST ? Optional.empty() : a.flatMap(x -> place(x, p.finding().where().box(), taken));
                if (way.isPresent()) {
                    done.add(a.get());
                    taken.add(new Polyline(way.get().points(), Looks.WIDE));
                    out.add(WaterSigns.named(way.get(), WaterSigns.arriving(way.get(), PITCH)).withData("weak", Integer.toString(p.number())));
                }
            }
        }
        return out;
    }

    /** The place along the arrival from which the way keeps clearest of all else. */
    private Optional<WaterSigns.Way> place(Arrival a, Box near, Occupied taken) {
        return Arrays.stream(SHARES).mapToObj(share -> way(a, near, share)).filter(w -> isClear(w.points()) && !isCrowded(w.points(), taken))
               .min(Comparator.comparingInt(w -> met(w.points(), taken)));
    }

    private boolean isClear(List<PaperPoint> line) {
        if (line.size() < 2) {
            return false;
        }
        Polyline l = new Polyline(line, Looks.WIDE);
        return l.length() >= SHORTEST && line.stream().allMatch(drawn::holds)
                && l.segments().stream().allMatch(s -> words.isFree(PaperBox.of(List.of(s.from(), s.to())).grown(0.5)));
    }

    /** A short way with many bends, of which every part meets something, can be told from none of it. */
    private static boolean isCrowded(List<PaperPoint> line, Occupied taken) {
        return bends(line) > 2 && new Polyline(line, Looks.WIDE).length() < FOLLOWED && met(line, taken) >= line.size() - 1;
    }

    private static int bends(List<PaperPoint> line) {
        int bends = 0;
        for (int i = 2; i < line.size(); i++) {
            PaperPoint a = line.get(i - 2), b = line.get(i - 1), c = line.get(i);
            bends += Math.abs((b.x() - a.x()) * (c.y() - b.y()) - (b.y() - a.y()) * (c.x() - b.x())) > 0.01 ? 1 : 0;
        }
        return bends;
    }

    private static int met(List<PaperPoint> line, Occupied taken) {
        int met = (int) new Polyline(line, Looks.WIDE).segments().stream().filter(s -> !taken.isFree(PaperBox.of(List.of(s.from(), s.to())).grown(BESIDE))).count();
        return met + (taken.isFree(PaperBox.around(line.get(line.size() - 1), DROP, DROP)) ? 0 : 1);
    }

    /** Back from the frame: each step where its line comes nearest to the one after it. */
    private WaterSigns.Way way(Arrival a, Box near, double share) {
        List<Step> path = a.path();
        List<List<Point>> lines = path.stream().map(s -> Place.line(evidence.elevation(), s.on(), s.where()).line()).toList();
        List<Point> at = new ArrayList<>();
        Point p = along(Place.line(evidence.elevation(), a.surface(), path.get(path.size() - 1).where()).line(), near, share);
        for (int i = lines.size() - 1; i >= 0; i--) {
            p = i == lines.size() - 1 ? p : nearest(lines.get(i), p);
            at.add(0, p);
        }
        at = fromAside(at, lines.get(0));
        int failure = 0;
        while (failure < path.size() && !path.get(failure).failure()) {
            failure++;
        }
        List<PaperPoint> free = joined(at.subList(0, Math.min(at.size(), failure + 1)), view);
        return new WaterSigns.Way(free, failure >= at.size() ? List.of() : joined(at.subList(failure, at.size()), view));
    }

    /** Where water leaves its first piece sideways, it is shown to have run down beside that edge. */
    private List<Point> fromAside(List<Point> at, List<Point> rain) {
        if (at.size() < 2 || at.get(0).x() != at.get(1).x()) {
            return at;
        }
        long from = Math.min(rain.get(0).x(), rain.get(1).x()), to = Math.max(rain.get(0).x(), rain.get(1).x()), x = at.get(0).x();
        long aside = Math.round(view.units(ASIDE));
        boolean sideways = at.size() > 2 && at.get(2).y() == at.get(1).y() && at.get(2).x() != x;
        if (!sideways || x != from && x != to || to - from < aside) {
            return at;
        }
        List<Point> out = new ArrayList<>(at);
        out.set(0, new Point(x == from ? x + aside : x - aside, at.get(0).y()));
        return out;
    }

    private static Point along(List<Point> line, Box near, double share) {
        Point a = line.get(0), b = line.get(line.size() - 1);
        Box whole = new Segment(a, b).box();
        if (a.y() == b.y() && Math.max(whole.minX(), near.minX()) < Math.min(whole.maxX(), near.maxX())) {
            a = new Point(Math.max(whole.minX(), near.minX()), a.y());
            b = new Point(Math.min(whole.maxX(), near.maxX()), b.y());
        } else if (a.x() == b.x() && Math.max(whole.minY(), near.minY()) < Math.min(whole.maxY(), near.maxY())) {
            a = new Point(a.x(), Math.max(whole.minY(), near.minY()));
            b = new Point(b.x(), Math.min(whole.maxY(), near.maxY()));
        }
        return new Point(Math.round(a.x() + share * (b.x() - a.x())), Math.round(a.y() + share * (b.y() - a.y())));
    }

    /** On a line: straight above or below, else straight beside, else its nearer end. */
    private static Point nearest(List<Point> line, Point p) {
        Point a = line.get(0), b = line.get(line.size() - 1);
        if (a.x() != b.x()) {
            double share = Math.max(0, Math.min(1, (p.x() - a.x()) / (double) (b.x() - a.x())));
            return new Point(Math.round(a.x() + share * (b.x() - a.x())), Math.round(a.y() + share * (b.y() - a.y())));
        }
        return new Point(a.x(), Math.max(Math.min(a.y(), b.y()), Math.min(Math.max(a.y(), b.y()), p.y())));
    }

    /** Water runs plumb, then goes across. */
    private static List<PaperPoint> joined(List<Point> at, View view) {
        List<PaperPoint> out = new ArrayList<>();
        for (Point p : at) {
            PaperPoint q = view.at(p);
            if (!out.isEmpty()) {
                add(out, new PaperPoint(out.get(out.size() - 1).x(), q.y()));
            }
            add(out, q);
        }
        return out;
    }

    private static void add(List<PaperPoint> out, PaperPoint p) {
        if (out.isEmpty() || out.get(out.size() - 1).distance(p) > 0.05) {
            out.add(p);
        }
    }
}
