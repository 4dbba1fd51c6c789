package rainlap.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rainlap.check.WeakPoint;
import rainlap.geom.Region;
import rainlap.paper.Area;
import rainlap.paper.Group;
import rainlap.paper.Halo;
import rainlap.paper.Hatch;
import rainlap.paper.Mark;
import rainlap.paper.Occupied;
import rainlap.paper.PaperBox;
import rainlap.paper.PaperPoint;
import rainlap.paper.PaperRegion;
import rainlap.paper.PaperSegment;
import rainlap.paper.Polyline;
import rainlap.paper.Tone;
import rainlap.rule.Place;

/** Weak stretches and areas on the wall, in the colour and weight of their defences. */
final class WeakPlaces {
    private static final double BAR = 1.6;
    private static final double SIDESTEP = 1.5;
    private static final double SHORT = 2.5;
    private final View view;
    private final List<PaperSegment> drawn = new ArrayList<>();

    private final PaperBox window;
    private final boolean close;

    /** @param window what of the wall is shown, on paper */
    WeakPlaces(View view, PaperBox window) {
        this(view, window, false);
    }

    /** @param close whether areas of reveals are large enough for what lies there to be seen */
    WeakPlaces(View view, PaperBox window, boolean close) {
        this.view = view;
        this.window = window.grown(0.01);
        this.close = close;
    }

    /**
     * A weak point's place as drawn.
     *
     * @param sites places where a leader may end, the best first
     */
    record Drawn(WeakPoint point, List<Mark> marks, List<PaperPoint> sites) {}

    /** Draws the places in order of rank; one that would hide another steps aside. */
    List<Drawn> draw(List<WeakPoint> points, Occupied taken) {
        List<Drawn> out = new ArrayList<>();
        for (WeakPoint p : points) {
            Place place = p.finding().where();
            Severity severity = Severity.of(p.finding().defences());
            Drawn one = place.isLine() ? stretch(p, severity, taken) : areas(p, severity, taken);
            out.add(one);
        }
        return out;
    }

    private Drawn stretch(WeakPoint p, Severity severity, Occupied taken) {
        List<PaperPoint> line = aside(view.line(p.finding().where().line()));
        Polyline middle = new Polyline(line, severity.edge());
        List<Mark> lines = new ArrayList<>(List.of(middle, bar(line.get(0), line.get(1), severity),
                bar(line.get(line.size() - 1), line.get(line.size() - 2), severity)));
        List<Mark> out = new ArrayList<>();
        lines.forEach(l -> out.add(new Halo(l, Tone.WHITE, halo(severity))));
        out.addAll(lines);
        lines.forEach(l -> InWindow.of(((Polyline) l).points(), window).parts().forEach(part -> take(new Polyline(part, severity.edge()), severity, taken)));
        InWindow shown = InWindow.of(line, window);
        if (!close) {
            shown.leaving().forEach(h -> out.add(head(h, severity, taken)));
        }
        return new Drawn(p, out, seen(along(shown.longest().orElse(line))));
    }

    /** Where a stretch goes on beyond what is shown its line ends in a head instead of a bar. */
    private static Mark head(PaperSegment outwards, Severity severity, Occupied taken) {
        PaperPoint a = outwards.from(), b = outwards.to();
        Area head = Symbols.arrowHead(b, b.x() - a.x(), b.y() - a.y(), severity.tone());
        taken.add(head.box());
        return head;
    }

    private static double halo(Severity severity) {
        return severity.edge().pen().width() + 1.1;
    }

    /** A line with the room that is kept round it, so that it cuts nothing off a word. */
    private static void take(Polyline line, Severity severity, Occupied taken) {
        taken.add(line);
        List<PaperPoint> apart = new ArrayList<>();
        line.points().stream().filter(p -> apart.isEmpty() || apart.get(apart.size() - 1).distance(p) > 1e-6).forEach(apart::add);
        if (apart.size() > 1) {
            PaperRegion.along(apart, halo(severity)).rings().forEach(ring -> taken.add(closed(ring, severity)));
        }
    }

    private static Mark bar(PaperPoint end, PaperPoint next, Severity severity) {
        double l = Math.max(1e-9, end.distance(next));
        double dx = (next.y() - end.y()) / l * BAR, dy = -(next.x() - end.x()) / l * BAR;
        return Polyline.of(severity.edge(), end.plus(dx, dy), end.plus(-dx, -dy));
    }

    /** A straight stretch moved square to itself as often as it lies over one drawn before. */
    private List<PaperPoint> aside(List<PaperPoint> line) {
        List<PaperPoint> now = line.size() == 1 ? List.of(line.get(0), line.get(0).plus(0.01, 0)) : line;
        for (int i = 0; i < 3 && now.size() == 2 && hides(now); i++) {
            double l = Math.max(1e-9, now.get(0).distance(now.get(1)));
            double dx = (now.get(1).y() - now.get(0).y()) / l * SIDESTEP, dy = -(now.get(1).x() - now.get(0).x()) / l * SIDESTEP;
            now = now.stream().map(q -> q.plus(dx, dy)).toList();
        }
        for (int i = 0; i + 1 < now.size(); i++) {
            drawn.add(new PaperSegment(now.get(i), now.get(i + 1)));
        }
        return now;
    }

    private boolean hides(List<PaperPoint> line) {
        PaperBox box = PaperBox.of(line).grown(0.4);
        return drawn.stream().anyMatch(d -> PaperBox.of(List.of(d.from(), d.to())).grown(0.4).meets(box) && parallel(d, line));
    }

    private static boolean parallel(PaperSegment d, List<PaperPoint> line) {
        PaperPoint a = line.get(0), b = line.get(1);
        double cross = (d.to().x() - d.from().x()) * (b.y() - a.y()) - (d.to().y() - d.from().y()) * (b.x() - a.x());
        return Math.abs(cross) < 0.02 * d.length() * Math.max(1e-9, a.distance(b));
    }

    private Drawn areas(WeakPoint p, Severity severity, Occupied taken) {
        List<Mark> out = new ArrayList<>();
        List<PaperPoint> sites = new ArrayList<>();
        boolean solid = !close && !p.finding().where().surface().isWall();
        for (Region r : p.finding().where().area()) {
            PaperRegion region = view.region(r);
            PaperBox b = region.box();
            if (solid) {
                out.add(Area.of(region, severity.tone(), rainlap.paper.Edge.of(rainlap.paper.Pen.THIN, Tone.WHITE)));
            } else {
                region.rings().forEach(ring -> out.add(new Halo(closed(ring, severity), Tone.WHITE, halo(severity))));
                boolean small = Math.min(b.width(), b.height()) < SHORT;
                out.add(small ? Area.of(region, Tone.WHITE, severity.edge()) : Area.edged(region, severity.edge()));
                if (!small) {
                    out.add(Hatch.of(region, 135, 2.4, rainlap.paper.Edge.of(rainlap.paper.Pen.THIN, severity.tone())));
                }
            }
            taken.add(solid ? b : b.grown(halo(severity) / 2));
            sites.add(inside(region));
            shown(b).filter(m -> !window.holds(inside(region)) && region.holds(m)).ifPresent(sites::add);
        }
        return new Drawn(p, out, seen(sites));
    }

    /** The middle of what is shown of a box. */
    private Optional<PaperPoint> shown(PaperBox b) {
        return !window.meets(b) ? Optional.empty() : Optional.of(new PaperBox(Math.max(b.left(), window.left()), Math.max(b.top(), window.top()),
                Math.min(b.right(), window.right()), Math.min(b.bottom(), window.bottom())).middle());
    }

    /** Room is kept round the edge alone: what lies in the area stays to be seen. */
    private static Polyline closed(List<PaperPoint> ring, Severity severity) {
        List<PaperPoint> line = new ArrayList<>(ring);
        line.add(ring.get(0));
        return new Polyline(line, severity.edge());
    }

    /** A point inside a region: the middle of its box, or of its widest level cut at half height. */
    static PaperPoint inside(PaperRegion region) {
        PaperPoint m = region.box().middle();
        if (region.holds(m)) {
            return m;
        }
        List<PaperSegment> cuts = Hatch.lines(region, 0, Math.max(0.02, region.box().height() / 9));
        return cuts.stream().max(java.util.Comparator.comparingDouble(PaperSegment::length)).map(s -> s.from().towards(s.to(), 0.5)).orElse(m);
    }

    /** The sites that are shown, all when none is. */
    private List<PaperPoint> seen(List<PaperPoint> sites) {
        List<PaperPoint> in = sites.stream().filter(window::holds).toList();
        return in.isEmpty() ? sites : in;
    }

    /** Points along a line: the middle first, then towards the ends, clear of the end bars. */
    private static List<PaperPoint> along(List<PaperPoint> line) {
        double total = 0;
        for (int i = 0; i + 1 < line.size(); i++) {
            total += line.get(i).distance(line.get(i + 1));
        }
        List<PaperPoint> out = new ArrayList<>();
        for (double share : new double[] {0.5, 0.35, 0.65, 0.2, 0.8, 0.08, 0.92}) {
            if (share == 0.5 || total * Math.min(share, 1 - share) > 1.2) {
                out.add(at(line, total * share));
            }
        }
        return out;
    }

    private static PaperPoint at(List<PaperPoint> line, double distance) {
        double left = distance;
        for (int i = 0; i + 1 < line.size(); i++) {
            double l = line.get(i).distance(line.get(i + 1));
            if (left <= l && l > 0) {
                return line.get(i).towards(line.get(i + 1), left / l);
            }
            left -= l;
        }
        return line.get(line.size() - 1);
    }

    /** Areas, which water runs into. */
    static Group areas(List<Drawn> drawn) {
        return group("weak-areas", drawn.stream().filter(d -> !d.point().finding().where().isLine()).toList());
    }

    /** Stretches, which lie over all else. */
    static Group stretches(List<Drawn> drawn) {
        return group("weak-points", drawn.stream().filter(d -> d.point().finding().where().isLine()).toList());
    }

    private static Group group(String id, List<Drawn> drawn) {
        List<Mark> out = new ArrayList<>();
        drawn.forEach(d -> out.add(Group.of("place-" + d.point().number(), d.marks()).withClass("weak")
                .withData("weak", Integer.toString(d.point().number()))));
        return Group.of(id, out).withClass("layer");
    }
}
