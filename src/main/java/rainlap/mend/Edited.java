package rainlap.mend;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import rainlap.geom.Box;
import rainlap.geom.Overlay;
import rainlap.geom.Region;
import rainlap.material.Profile;
import rainlap.measure.LengthText;
import rainlap.wall.LayingOrder;
import rainlap.wall.Piece;
import rainlap.wall.Shape;
import rainlap.wall.Surface;

/** The pieces of a wall while they are changed, and what was changed in words. */
final class Edited {
    private final List<Piece> pieces;
    private final List<String> what = new ArrayList<>();
    private final List<String> added = new ArrayList<>();

    Edited(List<Piece> pieces) {
        this.pieces = new ArrayList<>(pieces);
    }

    List<Piece> pieces() {
        return List.copyOf(pieces);
    }

    List<String> what() {
        return what;
    }

    List<String> added() {
        return added;
    }

    void say(String sentence) {
        what.add(sentence);
    }

    /** How far one piece laps another now, and what else there is between them. */
    void sayLap(long lap, String outer, String inner, String more) {
        say("Lap " + LengthText.mm(lap) + ", " + outer + " over " + inner + more + ".");
    }

    int number(String id) {
        return IntStream.range(0, pieces.size()).filter(i -> pieces.get(i).id().equals(id)).findFirst().orElse(-1);
    }

    void change(String id, UnaryOperator<Piece> how) {
        pieces.set(number(id), how.apply(pieces.get(number(id))));
    }

    /** Lets a piece run on over an area of a surface that it lies on. */
    void extend(String id, Surface on, List<Region> by) {
        change(id, p -> {
            List<Shape> shapes = new ArrayList<>(p.shapes());
            int i = IntStream.range(0, shapes.size()).filter(k -> shapes.get(k).on().equals(on)).findFirst().orElseThrow();
            List<Region> all = new ArrayList<>(shapes.get(i).regions());
            all.addAll(by);
            shapes.set(i, new Shape(on, Overlay.union(all)));
            return with(p, shapes, p.under());
        });
    }

    /** The same piece folded or made otherwise. */
    void profile(String id, UnaryOperator<Profile> how) {
        change(id, p -> new Piece(p.id(), p.material().withProfile(how.apply(p.material().profile())), p.shapes(), p.under(), p.bond(), p.cuts()));
    }

    /** Slits a sheet along a level line between two places; what lies beneath the slit becomes a piece of its own, laid as the sheet was. */
    String slit(String id, long level, long from, long to) {
        Piece p = pieces.get(number(id));
        Box b = p.wallBox().orElseThrow();
        List<Region> beneath = List.of(Region.of(new Box(from, Math.min(b.minY(), level) - 1, to, level)));
        List<Shape> lower = on(p, beneath);
        String name = free(id + " below");
        takeOff(id, Surface.WALL, beneath);
        int at = number(id);
        pieces.add(Math.max(0, at), new Piece(name, p.material(), lower, p.under(), p.bond(), p.cuts()));
        pieces.replaceAll(o -> o.under().contains(id) ? with(o, o.shapes(), Stream.concat(o.under().stream(), Stream.of(name)).toList()) : o);
        return name;
    }

    /** Whether a sheet goes on below a level line between two places. */
    boolean reachesBelow(String id, long level, long from, long to) {
        Piece p = pieces.get(number(id));
        long foot = p.wallBox().orElseThrow().minY();
        return foot < level && !on(p, List.of(Region.of(new Box(from, foot, to, level)))).isEmpty();
    }

    /** What of a piece lies on an area of the wall. */
    private static List<Shape> on(Piece p, List<Region> area) {
        return p.shapes().stream().filter(s -> s.on().isWall()).map(s -> Overlay.intersection(s.regions(), area)).filter(r -> !r.isEmpty()).map(r -> new Shape(Surface.WALL, r)).toList();
    }

    /** Takes a piece off an area; all of it where nothing is left. */
    void takeOff(String id, Surface on, List<Region> area) {
        Piece p = pieces.get(number(id));
        List<Shape> shapes = new ArrayList<>();
        for (Shape s : p.shapes()) {
            List<Region> left = s.on().equals(on) ? Overlay.difference(s.regions(), area) : s.regions();
            if (!left.isEmpty()) {
                shapes.add(s.on().equals(on) ? new Shape(on, left) : s);
            }
        }
        if (shapes.isEmpty()) {
            pieces.remove(p);
            pieces.replaceAll(o -> with(o, o.shapes(), o.under().stream().filter(u -> !u.equals(id)).toList()));
        } else {
            pieces.set(number(id), with(p, shapes, p.under()));
        }
    }

    /** Brings one piece outside another. */
    void bringOutside(String outer, String inner) {
        if (new LayingOrder(pieces).isOutside(number(outer), number(inner))) {
            return;
        }
        boolean later = number(outer) > number(inner);
        change(later ? outer : inner, p -> {
            List<String> under = new ArrayList<>(p.under());
            if (later) {
                under.remove(inner);
            } else {
                under.add(outer);
            }
            return with(p, p.shapes(), under);
        });
    }

    /** Turns two pieces round that overlap; what lay between them comes outside both. */
    void turn(String outer, String inner) {
        between(outer, inner).forEach(id -> bringOutside(id, inner));
        bringOutside(outer, inner);
    }

    /** Brings a piece outside another and outside all that lay between them. */
    void draw(String outer, String inner) {
        between(outer, inner).forEach(id -> bringOutside(outer, id));
        bringOutside(outer, inner);
    }

    private List<String> between(String outer, String inner) {
        LayingOrder order = new LayingOrder(pieces);
        return pieces.stream().map(Piece::id).filter(id -> !id.equals(outer) && !id.equals(inner))
                .filter(id -> order.isOutside(number(id), number(outer)) && order.isOutside(number(inner), number(id))).filter(id -> meet(id, inner)).toList();
    }

    private boolean meet(String a, String b) {
        Optional<Box> one = pieces.get(number(a)).wallBox(), other = pieces.get(number(b)).wallBox();
        return one.isPresent() && other.isPresent() && one.get().overlaps(other.get());
    }

    /** Lays a new piece on just after others. */
    void layAfter(List<String> others, Piece p) {
        int last = others.stream().mapToInt(this::number).max().orElse(pieces.size() - 1);
        pieces.add(last + 1, p);
        added.add(p.id());
    }

    /** Lays a new piece before all others. */
    void layFirst(Piece p) {
        pieces.add(0, p);
        added.add(p.id());
    }

    /** A name that no piece has yet. */
    String free(String name) {
        String free = name;
        for (int i = 2; number(free) >= 0; i++) {
            free = name + " (" + i + ")";
        }
        return free;
    }

    /** Whether pieces would lie in a circle at one point. */
    boolean isImpossible() {
        return new LayingOrder(pieces).findKnot(i -> IntStream.range(0, pieces.size()).boxed().toList()).isPresent();
    }

    private static Piece with(Piece p, List<Shape> shapes, List<String> under) {
        return new Piece(p.id(), p.material(), shapes, under, p.bond(), p.cuts());
    }
}
