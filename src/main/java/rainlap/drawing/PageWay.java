package rainlap.drawing;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import rainlap.geom.EdgeFrame;
import rainlap.geom.Intervals;
import rainlap.geom.Point;
import rainlap.geom.Segment;
import rainlap.paper.Edge;
import rainlap.paper.Group;
import rainlap.paper.Halo;
import rainlap.paper.Mark;
import rainlap.paper.PaperPoint;
import rainlap.paper.Pen;
import rainlap.paper.Polyline;
import rainlap.paper.Tone;
import rainlap.rule.Evidence;
import rainlap.rule.Finding;
import rainlap.stack.Face;
import rainlap.wall.Opening;
import rainlap.wall.Surface;
import rainlap.water.Step;

/** The way that a finding tells, step by step over the elevation: solid in front of the pieces, dashed behind them, a cross where something fails. */
final class PageWay {
    private static final Edge FRONT = Edge.of(Pen.WIDE, WaterSigns.WATER);
    private static final Edge BEHIND = Edge.of(Pen.WIDE_DASHED, WaterSigns.WATER);
    private static final Edge CROSS = Edge.of(Pen.MEDIUM, WaterSigns.WATER);
    private static final double DROPS_APART = 11;
    private static final double CROSS_HALF = 1;
    private static final double ASIDE = 2.2;
    private static final double LEAST_FOR_ARROW = 3;
    /** A shorter stretch is a point. */
    private static final double SHORTEST = 0.05;
    private final Evidence evidence;
    private final View view;
    private final Map<String, Integer> numbers = new HashMap<>();

    PageWay(Evidence evidence, View view) {
        this.evidence = evidence;
        this.view = view;
        evidence.elevation().pieces().forEach(p -> numbers.put(p.id(), numbers.size()));
    }

    /** A group for each step, with its number from 0; none where no way is told. */
    List<Mark> marks(Finding f) {
        List<Step> path = f.path();
        if (path.isEmpty()) {
            return List.of();
        }
        WayPoints way = new WayPoints(evidence.elevation(), view);
        List<Point> at = way.points(path, path.get(path.size() - 1).on(), f.where().box(), 0.5);
        long aside = 0, turn = Math.round(view.units(ASIDE));
        int heading = 0;
        List<Mark> out = new ArrayList<>();
        for (int i = 0; i < at.size(); i++) {
            List<Mark> marks = new ArrayList<>();
            if (i > 0) {
                Point from = moved(at.get(i - 1), aside);
                int next = Long.signum(at.get(i).y() - at.get(i - 1).y());
                aside += next != 0 && next == -heading ? turn : 0; // up or down the line that it came by: drawn beside it
                heading = Math.abs(at.get(i).x() - at.get(i - 1).x()) > turn ? 0 : next != 0 ? next : heading;
                leg(way.joined(List.of(from, moved(at.get(i - 1), aside), moved(at.get(i), aside))), path.get(i - 1), marks);
            }
            PaperPoint here = view.at(moved(at.get(i), aside));
            if (path.get(i).failure()) {
                cross(here, marks);
            }
            if (i == 0 || i == at.size() - 1) {
                marks.add(new Halo(WaterSigns.drop(here, 1.2), Tone.WHITE, 0.9));
                marks.add(WaterSigns.drop(here, 1.2));
            }
            out.add(Group.of(marks).withClass("leg").withData("i", Integer.toString(i)));
        }
        return out;
    }

    private static Point moved(Point p, long aside) {
        return new Point(p.x() + aside, p.y());
    }

    /** @param from the step after which the water runs along this line */
    private void leg(List<PaperPoint> line, Step from, List<Mark> out) {
        for (int k = 0; k + 1 < line.size(); k++) {
            PaperPoint a = line.get(k), b = line.get(k + 1);
            double length = a.distance(b);
            if (length >= SHORTEST) {
                out.add(new Halo(Polyline.of(FRONT, a, b), Tone.WHITE, 1.1));
                stretches(new Segment(view.onWall(a), view.onWall(b)), from, out);
                drops(a, b, length, out);
            }
        }
        int last = line.size() - 1;
        if (last > 0 && line.get(last - 1).distance(line.get(last)) > LEAST_FOR_ARROW) {
            out.add(WaterSigns.arrow(line.get(last), line.get(last - 1)));
        }
    }

    private static void drops(PaperPoint a, PaperPoint b, double length, List<Mark> out) {
        int drops = b.y() > a.y() && length > 0.6 * DROPS_APART ? (int) Math.max(1, Math.round(length / DROPS_APART)) : 0;
        for (int d = 0; d < drops; d++) {
            out.add(WaterSigns.drop(a.towards(b, (d + 0.5) / drops), 1));
        }
    }

    private void stretches(Segment s, Step from, List<Mark> out) {
        Intervals whole = Intervals.of(0, EdgeFrame.of(s).length()), behind = behind(s, from);
        add(s, whole.minus(behind), FRONT, out);
        add(s, behind, BEHIND, out);
    }

    private void add(Segment s, Intervals where, Edge edge, List<Mark> out) {
        Visibility.parts(s, where).stream().map(view::segment).forEach(p -> out.add(Polyline.of(edge, p.from(), p.to())));
    }

    /** Where pieces lie over the surface that the water is on. */
    private Intervals behind(Segment s, Step on) {
        EdgeFrame e = EdgeFrame.of(s);
        if (!on.on().isWall()) {
            return isBehindOnReveal(s, on) ? Intervals.of(0, e.length()) : Intervals.NONE;
        }
        Intervals out = Intervals.NONE;
        for (Face f : evidence.stack().meeting(Surface.WALL, s.box())) {
            out = liesOver(f, on) ? out.union(f.across(e, 0, e.length())) : out;
        }
        return out;
    }

    private boolean isBehindOnReveal(Segment s, Step on) {
        Opening o = evidence.elevation().findOpening(on.on().opening()).orElseThrow();
        Point middle = o.toSurface(on.on().side(), new Point((s.a().x() + s.b().x()) / 2, (s.a().y() + s.b().y()) / 2));
        return evidence.stack().on(on.on()).stream().anyMatch(f -> liesOver(f, on) && f.region().covers(middle.x(), middle.y()));
    }

    private boolean liesOver(Face f, Step on) {
        return on.layer().equals(Step.FRAME) || numbers.containsKey(on.layer())
                && evidence.stack().order().isOutside(f.number(), numbers.get(on.layer())) && f.number() != numbers.get(on.layer());
    }

    private static void cross(PaperPoint at, List<Mark> out) {
        for (int way : new int[] {1, -1}) {
            Polyline stroke = Polyline.of(CROSS, at.plus(-CROSS_HALF, -way * CROSS_HALF), at.plus(CROSS_HALF, way * CROSS_HALF));
            out.add(new Halo(stroke, Tone.WHITE, 0.9));
            out.add(stroke);
        }
    }
}
