package rainlap.drawing;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import rainlap.check.WeakPoint;
import rainlap.geom.Box;
import rainlap.geom.Point;
import rainlap.paper.Area;
import rainlap.paper.Mark;
import rainlap.paper.Occupied;
import rainlap.paper.PaperBox;
import rainlap.paper.PaperPoint;
import rainlap.paper.Polyline;
import rainlap.rule.Evidence;
import rainlap.water.Arrival;
import rainlap.water.Step;

/** The water's way to the worst weak points, laid over the elevation where it meets no words. */
final class ElevationWays {
    /** More ways than this could not be told apart. */
    private static final int MOST = 3;
    private static final double PITCH = 11;
    /** A shorter way would be hidden by its own arrow. */
    private static final double SHORTEST = 3.5;
    /** A longer way with bends can be followed through a crowd. */
    private static final double FOLLOWED = 20;
    /** What lies nearer to a way, or to the drop at its end, counts as met, printed mm. */
    private static final double BESIDE = 0.8;
    private static final double DROP = 5;
    private static final double[] SHARES = {0.5, 0.62, 0.38, 0.75, 0.25, 0.85, 0.15, 0.93, 0.07};
    private final Evidence evidence;
    private final PaperBox drawn;
    private final WayPoints way;
    private final Occupied words;

    /** @param written what carries the words that no way may meet */
    ElevationWays(Evidence evidence, View view, PaperBox drawn, List<Mark> written) {
        this.evidence = evidence;
        this.way = new WayPoints(evidence.elevation(), view);
        this.drawn = drawn.grown(0.1);
        this.words = Occupied.byTexts(written);
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
                    List<Mark> marks = WaterSigns.arriving(way.get(), PITCH);
                    marks.stream().filter(m -> m instanceof Area).forEach(m -> taken.add(m.box()));
                    out.add(WaterSigns.named(way.get(), marks).withData("weak", Integer.toString(p.number())));
                }
            }
        }
        return out;
    }

    /** The place along the arrival from which the way keeps clearest of all else. */
    private Optional<WaterSigns.Way> place(Arrival a, Box near, Occupied taken) {
        return Arrays.stream(SHARES).mapToObj(share -> way(way, a, near, share)).filter(w -> isClear(w.points()) && !isCrowded(w.points(), taken))
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

    /** The way of an arrival that ends by a place, on paper. */
    static WaterSigns.Way way(WayPoints way, Arrival a, Box near, double share) {
        List<Step> path = a.path();
        List<Point> at = way.points(path, a.surface(), near, share);
        int failure = 0;
        while (failure < path.size() && !path.get(failure).failure()) {
            failure++;
        }
        List<PaperPoint> free = way.joined(at.subList(0, Math.min(at.size(), failure + 1)));
        return new WaterSigns.Way(free, failure >= at.size() ? List.of() : way.joined(at.subList(failure, at.size())));
    }
}
