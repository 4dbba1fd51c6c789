package rainlap.paper;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.Function;

/**
 * Marks cut off at the edges of a box, so that nothing of what lies outside is written. Unlike a {@link Clip} what is left needs no name on the sheet, and no
 * line is drawn along the edges of the box. Texts and circles are kept whole, or left out where they reach out of the box.
 */
public final class Crop {
    private final PaperBox box;

    private Crop(PaperBox box) {
        this.box = box;
    }

    /** The marks within a box, in their order. */
    public static List<Mark> to(PaperBox box, List<? extends Mark> marks) {
        return new Crop(box).all(marks);
    }

    private List<Mark> all(List<? extends Mark> marks) {
        List<Mark> out = new ArrayList<>();
        for (Mark m : marks) {
            if (m instanceof Group g) {
                List<Mark> left = all(g.marks());
                if (!left.isEmpty()) {
                    out.add(new Group(g.id(), g.classes(), g.title(), g.data(), left));
                }
            } else if (m instanceof Clip c) {
                out.add(new Clip(c.region(), all(c.marks())));
            } else if (m instanceof Halo h) {
                all(List.of(h.of())).forEach(part -> out.add(new Halo(part, h.ground(), h.width())));
            } else if (m instanceof Area a) {
                area(a, out);
            } else if (m instanceof Polyline line) {
                pieces(line.points()).forEach(p -> out.add(new Polyline(p, line.edge())));
            } else if (m instanceof Strokes s) {
                List<PaperSegment> left = s.segments().stream().flatMap(x -> segment(x).stream()).toList();
                if (!left.isEmpty()) {
                    out.add(new Strokes(left, s.edge()));
                }
            } else if (box.holds(m.box())) {
                out.add(m);
            }
        }
        return out;
    }

    /** The tone as far as the box goes, and only those edges that are the area's own. */
    private void area(Area a, List<Mark> out) {
        if (box.holds(a.box())) {
            out.add(a);
            return;
        }
        List<List<PaperPoint>> rings = a.region().rings().stream().map(this::ring).filter(r -> r.size() > 2).toList();
        if (a.fill().isPresent() && !rings.isEmpty()) {
            out.add(new Area(new PaperRegion(rings), a.fill(), Optional.empty()));
        }
        a.edge().ifPresent(edge -> a.region().rings().forEach(ring -> {
            List<PaperPoint> closed = new ArrayList<>(ring);
            closed.add(ring.get(0));
            pieces(closed).forEach(p -> out.add(new Polyline(p, edge)));
        }));
    }

    /** A ring cut at one side of the box after the other; along them it may run to and fro, which fills nothing. */
    private List<PaperPoint> ring(List<PaperPoint> ring) {
        List<PaperPoint> left = cut(ring, p -> p.x() - box.left());
        List<PaperPoint> right = cut(left, p -> box.right() - p.x());
        List<PaperPoint> top = cut(right, p -> p.y() - box.top());
        List<PaperPoint> all = new ArrayList<>(cut(top, p -> box.bottom() - p.y()));
        while (all.size() > 1 && all.get(0).equals(all.get(all.size() - 1))) {
            all.remove(all.size() - 1);
        }
        return all;
    }

    private static List<PaperPoint> cut(List<PaperPoint> ring, Function<PaperPoint, Double> inside) {
        List<PaperPoint> out = new ArrayList<>();
        for (int i = 0; i < ring.size(); i++) {
            PaperPoint a = ring.get(i), b = ring.get((i + 1) % ring.size());
            double da = inside.apply(a), db = inside.apply(b);
            if (da >= 0) {
                out.add(a);
            }
            if (da > 0 && db < 0 || da < 0 && db > 0) {
                out.add(a.towards(b, da / (da - db)));
            }
        }
        return out;
    }

    /** What of a line lies in the box, piece by piece. */
    private List<List<PaperPoint>> pieces(List<PaperPoint> line) {
        List<List<PaperPoint>> out = new ArrayList<>();
        List<PaperPoint> piece = new ArrayList<>();
        for (int i = 0; i + 1 < line.size(); i++) {
            Optional<PaperSegment> in = segment(new PaperSegment(line.get(i), line.get(i + 1)));
            if (in.isEmpty() || piece.isEmpty() || !piece.get(piece.size() - 1).equals(in.get().from())) {
                close(piece, out);
                piece = new ArrayList<>(in.stream().map(PaperSegment::from).toList());
            }
            if (in.isPresent()) {
                piece.add(in.get().to());
            }
        }
        close(piece, out);
        return out;
    }

    private static void close(List<PaperPoint> piece, List<List<PaperPoint>> out) {
        if (piece.size() > 1) {
            out.add(List.copyOf(piece));
        }
    }

    /** What of a segment lies in the box; empty for none or a point. */
    private Optional<PaperSegment> segment(PaperSegment s) {
        double[] share = {0, 1};
        double dx = s.to().x() - s.from().x(), dy = s.to().y() - s.from().y();
        BiFunction<Double, Double, Boolean> keep = (toward, room) -> {
            if (toward == 0) {
                return room >= 0;
            }
            double at = room / toward;
            share[0] = toward < 0 ? Math.max(share[0], at) : share[0];
            share[1] = toward > 0 ? Math.min(share[1], at) : share[1];
            return true;
        };
        boolean meets = keep.apply(-dx, s.from().x() - box.left()) && keep.apply(dx, box.right() - s.from().x())
                && keep.apply(-dy, s.from().y() - box.top()) && keep.apply(dy, box.bottom() - s.from().y());
        if (!meets || share[0] >= share[1]) {
            return Optional.empty();
        }
        PaperPoint from = share[0] == 0 ? s.from() : s.from().towards(s.to(), share[0]), to = share[1] == 1 ? s.to() : s.from().towards(s.to(), share[1]);
        return Optional.of(new PaperSegment(from, to));
    }
}
