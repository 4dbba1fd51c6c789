package rainlap.water;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Consumer;
import rainlap.geom.Box;
import rainlap.geom.BoxTree;
import rainlap.geom.Point;

/** How much water runs, on the outermost layer, over and beside each edge of each piece, whether that lies open or under a tape. */
final class Met {
    /** Stands among the pieces for the edges of the openings. */
    static final int OPENING = -1;

    private final Map<Integer, Parts> byPiece = new HashMap<>();
    private final Map<End, Double> ends = new HashMap<>();

    private enum Course {
        OVER, LEFT, RIGHT
    }

    /** @param top of what runs beside a plumb line: how much at its upper end, the litres being at its lower */
    private record Part(Box box, Course course, double litres, double top) {
        private double between(Box line) {
            double a = Math.max(box.minX(), line.minX()), b = Math.min(box.maxX(), line.maxX());
            return a < b ? litres * (b - a) / box.width() : 0;
        }

        /** At the foot of a stretch of it. */
        private double above(long y) {
            return y <= box.minY() ? litres : litres + (top - litres) * (y - box.minY()) / box.height();
        }
    }

    private record End(int piece, long x, long y) {}

    /** What is known of one piece, or of the openings. */
    private static final class Parts {
        private final List<Part> all = new ArrayList<>(2);
        private BoxTree tree;

        void add(Part p) {
            all.add(p);
            tree = null;
        }

        /** In an order that depends on nothing but the drawing: sums of parts are the same to the last digit each time. */
        void collect(Box near, Consumer<Part> out) {
            tree = tree == null ? new BoxTree(all.stream().map(Part::box).toList()) : tree;
            tree.query(near, i -> out.accept(all.get(i)));
        }
    }

    /** Water crosses from one pile to the next below. */
    void add(Pile above, Pile below, long from, long to, Line line, double litres) {
        note(above, below, over(from, to, line, litres));
    }

    /** The same where that is round the edge of an opening: it meets the edges of pieces there and that of the opening, and is yet one. */
    void addRoundOpening(Pile above, Pile below, long from, long to, Line line, double litres) {
        Part p = over(from, to, line, litres);
        note(above, below, p);
        note(OPENING, p);
    }

    /** Water runs over the edge of an opening, whatever goes on round it. */
    void addAtOpening(long from, long to, Line line, double litres) {
        note(OPENING, over(from, to, line, litres));
    }

    private static Part over(long from, long to, Line line, double litres) {
        double y = line.at(from), z = line.at(to);
        return new Part(new Box(from, (long) Math.floor(Math.min(y, z)), to, (long) Math.ceil(Math.max(y, z))), Course.OVER, litres, litres);
    }

    /** Water runs down next to a plumb line between one pile and the next: so much at its foot, so much at its top. */
    void addBeside(Flank f, double foot, double top) {
        Box box = new Box(f.x(), (long) Math.floor(f.from), f.x(), (long) Math.ceil(f.to));
        note(f.here(), f.there(), new Part(box, f.right ? Course.LEFT : Course.RIGHT, foot, top));
    }

    /** Water leaves by an end of a ledge. */
    void addEnd(int piece, Line at, double litres) {
        ends.merge(new End(piece, at.ax(), at.ay()), litres, Double::sum);
    }

    private void note(Pile a, Pile b, Part p) {
        noteEnds(a, b, p);
        noteEnds(b, a, p);
    }

    private void noteEnds(Pile a, Pile b, Part p) {
        for (int i = 0; i < a.depth(); i++) {
            if (!b.holds(a.at(i))) {
                note(a.at(i), p);
            }
        }
    }

    private void note(int piece, Part p) {
        if (p.litres > 0) {
            byPiece.computeIfAbsent(piece, k -> new Parts()).add(p);
        }
    }

    /** What leaves by an end of a ledge; 0 where none does. */
    double off(int piece, Point end) {
        return ends.getOrDefault(new End(piece, end.x(), end.y()), 0.0);
    }

    /**
     * What meets those edges of some pieces that lie along a line, each litre once: all that runs over the line; where it is plumb, the most that runs down beside it, on
     * either side.
     */
    double at(Collection<Integer> pieces, List<Point> line) {
        double over = 0, left = 0, right = 0;
        for (int i = 0; i + 1 < line.size(); i++) {
            Box stretch = Box.of(line.subList(i, i + 2));
            for (Part p : near(pieces, stretch)) {
                if (stretch.width() > 1 && p.course == Course.OVER) {
                    over += p.between(stretch);
                } else if (stretch.width() <= 1 && isBeside(p.box, stretch)) {
                    left = p.course == Course.LEFT ? Math.max(left, p.above(stretch.minY())) : left;
                    right = p.course == Course.RIGHT ? Math.max(right, p.above(stretch.minY())) : right;
                }
            }
        }
        return over + left + right;
    }

    /** More than at an end; a point lies beside what passes it. */
    private static boolean isBeside(Box part, Box stretch) {
        return part.minY() < stretch.maxY() && part.maxY() > stretch.minY();
    }

    /** An edge is noted with each piece that ends there, and yet is one. */
    private List<Part> near(Collection<Integer> pieces, Box stretch) {
        Set<Part> seen = Collections.newSetFromMap(new IdentityHashMap<>());
        List<Part> out = new ArrayList<>();
        for (int piece : pieces) {
            Parts parts = byPiece.get(piece);
            if (parts != null) {
                parts.collect(stretch.grow(1), p -> {
                    if (seen.add(p)) {
                        out.add(p);
                    }
                });
            }
        }
        return out;
    }
}
