package rainlap.drawing;

import java.util.ArrayList;
import java.util.List;
import rainlap.geom.Box;
import rainlap.geom.Point;
import rainlap.geom.Segment;
import rainlap.paper.PaperPoint;
import rainlap.rule.Place;
import rainlap.wall.Elevation;
import rainlap.wall.Surface;
import rainlap.water.Step;

/** One line for a way of water, whose steps are each known to cross a whole stretch. */
final class WayPoints {
    /** How far beside an edge water is drawn that is driven over it sideways, printed mm. */
    private static final double ASIDE = 2.5;
    private final Elevation elevation;
    private final View view;

    WayPoints(Elevation elevation, View view) {
        this.elevation = elevation;
        this.view = view;
    }

    /**
     * A place for each step, back from the last one: each where its line comes nearest to the one after it.
     *
     * @param surface that the last step's line lies on
     * @param near the way ends by this place where it can
     * @param share how far along its last line it ends
     */
    List<Point> points(List<Step> path, Surface surface, Box near, double share) {
        List<List<Point>> lines = path.stream().map(s -> Place.line(elevation, s.on(), s.where()).line()).toList();
        List<Point> at = new ArrayList<>();
        Point p = along(Place.line(elevation, surface, path.get(path.size() - 1).where()).line(), near, share);
        for (int i = lines.size() - 1; i >= 0; i--) {
            p = i == lines.size() - 1 ? p : nearest(lines.get(i), p);
            at.add(0, p);
        }
        return fromAside(at, lines.get(0));
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

    /** On paper: water runs plumb, then goes across. */
    List<PaperPoint> joined(List<Point> at) {
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
