package rainlap.rule.cavity;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Stream;
import rainlap.geom.Box;
import rainlap.geom.EdgeFrame;
import rainlap.geom.Grid;
import rainlap.geom.Intervals;
import rainlap.geom.Point;
import rainlap.geom.Segment;
import rainlap.material.Edge;
import rainlap.material.MaterialKind;
import rainlap.rule.Cladding;
import rainlap.rule.Evidence;
import rainlap.rule.Outcome;
import rainlap.rule.Place;
import rainlap.stack.Face;
import rainlap.wall.EdgeRole;
import rainlap.wall.Opening;
import rainlap.wall.OutlineEdge;
import rainlap.wall.Surface;

/**
 * A stretch of the foot of the cladding.
 *
 * @param low the lowest level along it, grid units; the same as {@code high} where it is level
 * @param from its left end
 * @param sheets whose lower edge it is, in laying order
 */
record Foot(long low, long high, double from, double to, List<Face> sheets) {
    /** Cladding that begins again this near below goes on there: 100 mm, as for gaps between sheets. Our own choice. */
    private static final long GOES_ON = Grid.of(100);
    /** A base edge this near above or below is the one that the foot belongs to: 300 mm. Our own choice. */
    private static final long BASE = Grid.of(300);
    /** An opening's head this near below is what the foot stands over. Our own choice. */
    private static final long HEAD = Grid.of(100);
    /** What lies behind the foot within this height decides whether it is open: 150 mm. Our own choice. */
    private static final long BEHIND = Grid.of(150);
    /** What lies this near to the edge lies at it: 10 mm. Our own choice. */
    private static final long AT = Grid.of(10);

    /** Judges each foot of an elevation; says so where there is nothing to judge. */
    static Stream<Outcome> each(Evidence e, Function<Foot, Stream<Outcome>> judge) {
        if (Cladding.sheets(e).isEmpty()) {
            return Stream.of(Cladding.none());
        }
        List<Foot> feet = of(e);
        return feet.isEmpty() ? Stream.of(new Outcome.DoesNotApply("the cladding has no foot on this wall")) : feet.stream().flatMap(judge);
    }

    /** All of an elevation, from the top down and from left to right. */
    static List<Foot> of(Evidence e) {
        List<Foot> out = new ArrayList<>();
        for (Face sheet : Cladding.sheets(e)) {
            for (Segment edge : sheet.freeEdges()) {
                if (edge.b().x() - edge.a().x() > Math.abs(edge.b().y() - edge.a().y())) {
                    open(e, sheet, edge, out);
                }
            }
        }
        out.sort(Comparator.comparingLong(Foot::low).reversed().thenComparing(Foot::from).thenComparing(Foot::to));
        return joined(out);
    }

    private static void open(Evidence e, Face sheet, Segment edge, List<Foot> out) {
        Box b = edge.box(), below = new Box(b.minX(), b.minY() - GOES_ON, b.maxX(), b.minY());
        Intervals left = outside(e, edge);
        for (Face other : e.stack().meeting(Surface.WALL, below)) {
            if (Cladding.is(other) && other.number() != sheet.number()) {
                left = left.minus(Cladding.across(other, below));
            }
        }
        for (int i = 0; i < left.count(); i++) {
            out.add(new Foot(b.minY(), b.maxY(), left.from(i), left.to(i), List.of(sheet)));
        }
    }

    /** Where, along x, the wall is that the edge drains to: its base, an opening below, or the wall itself. */
    private static Intervals outside(Evidence e, Segment edge) {
        Box b = edge.box();
        EdgeFrame frame = EdgeFrame.of(edge);
        Intervals wall = frame.inside(e.elevation().outline().region(), -frame.side());
        List<Intervals> out = new ArrayList<>();
        for (int i = 0; i < wall.count(); i++) {
            out.add(Intervals.of(frame.at(wall.from(i)).x(), frame.at(wall.to(i)).x()));
        }
        for (OutlineEdge o : e.elevation().outline().edges()) {
            if (o.role() == EdgeRole.BASE && o.line().box().grow(BASE).meets(b)) {
                out.add(Intervals.of(o.line().box().minX(), o.line().box().maxX()));
            }
        }
        Intervals in = Intervals.NONE;
        for (Opening o : e.elevation().openings()) {
            boolean heads = o.rect().maxY() <= b.minY() && b.minY() - o.rect().maxY() <= HEAD;
            in = heads ? in : in.union(Intervals.of(o.rect().minX(), o.rect().maxX()).intersect(isWithin(o, b)));
        }
        return Intervals.unionOf(out).minus(in).intersect(Intervals.of(b.minX(), b.maxX()));
    }

    private static Intervals isWithin(Opening o, Box edge) {
        return o.rect().minY() < edge.maxY() && edge.minY() < o.rect().maxY() ? Intervals.of(edge.minX(), edge.maxX()) : Intervals.NONE;
    }

    /** Those that go on from one another at one level as one. */
    private static List<Foot> joined(List<Foot> sorted) {
        List<Foot> out = new ArrayList<>();
        for (Foot f : sorted) {
            Foot last = out.isEmpty() ? null : out.get(out.size() - 1);
            if (last != null && last.low == f.low && last.low == last.high && f.low == f.high && f.from <= last.to) {
                List<Face> sheets = new ArrayList<>(last.sheets);
                sheets.addAll(f.sheets);
                sheets.sort(Comparator.comparingInt(Face::number));
                out.set(out.size() - 1, new Foot(f.low, f.high, last.from, Math.max(last.to, f.to), sheets.stream().distinct().toList()));
            } else {
                out.add(f);
            }
        }
        return out;
    }

    /** What lies behind the cladding just above the foot. */
    private Box band() {
        return new Box(Math.round(Math.floor(from)), low, Math.round(Math.ceil(to)), high + BEHIND);
    }

    private Box atEdge() {
        return new Box(band().minX(), low - AT, band().maxX(), high + AT);
    }

    Intervals whole() {
        return Intervals.of(from, to);
    }

    /** Battens behind the foot. */
    List<Face> battens(Evidence e) {
        return e.stack().meeting(Surface.WALL, band()).stream().filter(f -> Cladding.isOf(f, MaterialKind.BATTEN) && f.box().overlaps(band())
                && sheets.stream().anyMatch(s -> e.stack().isOutside(s, f) && s.region().overlaps(f.region()))).toList();
    }

    /** Between its upright battens. */
    Intervals bays(Evidence e) {
        return whole().minus(Intervals.unionOf(battens(e).stream().filter(Battens::isUpright).map(b -> Cladding.across(b, band())).toList()));
    }

    /** What closes it: battens that lie along it, beads of sealant at it, and sheets sealed along their lower edge. */
    List<Face> closers(Evidence e) {
        List<Face> out = new ArrayList<>(battens(e).stream().filter(b -> !Battens.isUpright(b) && !Battens.isMesh(b)).toList());
        e.stack().meeting(Surface.WALL, atEdge()).stream()
                .filter(f -> Cladding.isOf(f, MaterialKind.SEALANT) && f.box().overlaps(atEdge())).forEach(out::add);
        sheets.stream().filter(s -> s.piece().bond().seals(Edge.BOTTOM)).forEach(out::add);
        return out;
    }

    /** Where, along x, one of the closers closes it. */
    Intervals closedBy(Face closer) {
        return Cladding.across(closer, Cladding.isOf(closer, MaterialKind.SEALANT) ? atEdge() : band()).intersect(whole());
    }

    Intervals closed(Evidence e) {
        return Intervals.unionOf(closers(e).stream().map(this::closedBy).toList());
    }

    /** Where, along x, mesh lies across it. */
    Intervals meshed(Evidence e) {
        Box near = new Box(band().minX(), low - AT, band().maxX(), band().maxY());
        return Intervals.unionOf(e.stack().meeting(Surface.WALL, near).stream()
                .filter(f -> Battens.isMesh(f) && !Cladding.is(f)).map(f -> Cladding.across(f, near)).toList());
    }

    /** Ids of the sheets that lie along a part of it. */
    List<String> sheetsAlong(double a, double b) {
        return sheets.stream().filter(s -> s.box().minX() < b && a < s.box().maxX()).map(s -> s.piece().id()).distinct().toList();
    }

    Place place(Evidence e, double a, double b) {
        return Place.line(e.elevation(), Surface.WALL, new Segment(new Point(Math.round(a), low), new Point(Math.round(b), low)));
    }
}
