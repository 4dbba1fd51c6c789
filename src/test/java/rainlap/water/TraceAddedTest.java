package rainlap.water;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import rainlap.geom.Box;
import rainlap.geom.Overlay;
import rainlap.geom.Region;
import rainlap.joint.Joint;
import rainlap.joint.JointKind;
import rainlap.joint.Joints;
import rainlap.material.Bond;
import rainlap.material.Material;
import rainlap.material.MaterialKind;
import rainlap.stack.Face;
import rainlap.stack.Stack;
import rainlap.wall.Elevation;
import rainlap.wall.Piece;
import rainlap.wall.Shape;
import rainlap.wall.Surface;

/** A tape added, a lap made wider: nothing gets wetter but where water that was on its way out is turned in. */
class TraceAddedTest {
    private static final Material TAPE = Material.of("tape", MaterialKind.TAPE);

    private static Stream<Walls> walls() {
        return Stream.concat(Walls.upright(80), Walls.shipped());
    }

    private static Piece tape(Box b) {
        return new Piece("added", TAPE, List.of(new Shape(Surface.WALL, List.of(Region.of(b)))), List.of(), Bond.FULL, List.of());
    }

    private static Elevation with(Elevation e, Piece last) {
        List<Piece> all = new ArrayList<>(e.pieces());
        all.add(last);
        return e.withPieces(all);
    }

    /**
     * A tape, laid last, turns water inwards only by closing a way out: where the foot of a piece lies under it, or touches it, water that came down behind
     * that piece can no longer leave there, runs along and comes down elsewhere. So a tape that no foot lies under wets nothing; and what another wets lies
     * lower than the highest foot under it, but for the rise, for the stream one grid unit high that runs along that foot, and, when a thing fails, for a lap
     * that is overrun from there up to the top of the lower sheet.
     */
    @Test void aTapeWetsNothingButBelowAnEdgeThatItCloses() {
        AtomicInteger turned = new AtomicInteger(), harmless = new AtomicInteger();
        Walls.all(walls(), (e, w) -> {
            Random random = w.random();
            Wetted before = w.wetted(e);
            StringBuilder wrong = new StringBuilder();
            for (Box b : tapes(e, w, random)) {
                List<Wetted.Excess> newly = w.wetted(with(e, tape(b))).beyond(before, w.tolerance());
                (newly.isEmpty() ? harmless : turned).incrementAndGet();
                List<Foot> closed = feet(e, w, b);
                wrong.append(Wetted.told("tape " + b + " closes " + closed + " and makes ", newly.stream().filter(n -> closed.stream().noneMatch(f -> f.explains(n, w))).toList()));
            }
            return wrong.toString();
        });
        assertTrue(turned.get() > 10 && harmless.get() > 100, () -> turned + " tapes turn water inwards, " + harmless + " do not");
    }

    /** One anywhere, one over a joint, one over a level joint from end to end of the wall. */
    private static List<Box> tapes(Elevation e, Walls w, Random random) {
        Box wall = e.outline().box();
        long x = wall.minX() + random.nextInt((int) wall.width()), y = wall.minY() + random.nextInt((int) wall.height());
        List<Box> out = new ArrayList<>(List.of(new Box(x, y, x + 5000 + random.nextInt(200_000), y + 7500)));
        Stack stack = Stack.of(e, w.stage());
        List<Joint> joints = Joints.of(stack).all().stream().filter(j -> j.surface().isWall()).toList();
        if (!joints.isEmpty()) {
            Box line = Box.of(joints.get(random.nextInt(joints.size())).line());
            out.add(line.grow(3750));
            out.add(new Box(wall.minX() - 10_000, line.minY() - 3750, wall.maxX() + 10_000, line.minY() + 3750));
        }
        return out;
    }

    /**
     * A level or sloped edge under a tape.
     *
     * @param top of the highest sheet beneath it: so far up a lap is overrun from there, if one thing more fails
     */
    private record Foot(Box line, long top) {
        boolean explains(Wetted.Excess n, Walls w) {
            long to = Math.max(line.maxY() + Math.max(w.drive().rise(), 1), n.defences() > 0 ? top : Long.MIN_VALUE);
            return n.where().box().maxY() <= to + w.tolerance();
        }
    }

    private static List<Foot> feet(Elevation e, Walls w, Box tape) {
        List<Foot> out = new ArrayList<>();
        Stack stack = Stack.of(e, w.stage());
        for (Face f : stack.meeting(Surface.WALL, tape)) {
            f.freeEdges().stream().filter(s -> !s.isPlumb() && s.box().grow(1).meets(tape)).forEach(s -> out.add(new Foot(s.box(),
                    stack.meeting(Surface.WALL, s.box()).stream().mapToLong(g -> g.box().maxY()).max().orElseThrow())));
        }
        return out;
    }

    /**
     * The foot of a sheet is drawn further down over a sheet that lies whole beneath, and nothing else is there: then no place of the frame, above the former
     * foot or below it, has fewer defences than before.
     */
    @Test void aWiderLapLowersDefencesNowhere() {
        AtomicInteger widened = new AtomicInteger();
        Walls.all(walls(), (e, w) -> {
            StringBuilder wrong = new StringBuilder();
            for (Joint j : Joints.of(Stack.of(e, w.stage())).all()) {
                wider(e, w, j).ifPresent(other -> {
                    widened.incrementAndGet();
                    wrong.append(Wetted.told("with the foot of " + j.outer().piece().id() + " further down, ",
                            w.wetted(other).beyond(w.wetted(e), w.tolerance())));
                });
            }
            return wrong.toString();
        });
        assertTrue(widened.get() > 60, () -> "only " + widened + " laps were widened");
    }

    private static Optional<Elevation> wider(Elevation e, Walls w, Joint j) {
        Piece upper = j.outer().piece();
        Region own = upper.shapes().get(0).regions().get(0);
        if (j.kind() != JointKind.COURSE_LAP || !j.surface().isWall() || upper.shapes().size() > 1 || upper.shapes().get(0).regions().size() > 1
                || !own.isBox() || j.outer().number() < j.inner().number()) {
            return Optional.empty();
        }
        Box b = own.box(), more = new Box(b.minX(), b.minY() - 500 - new Random(w.seed()).nextInt(6000), b.maxX(), b.minY());
        List<Face> there = Stack.of(e, w.stage()).meeting(Surface.WALL, more).stream().filter(f -> f.box().overlaps(more)).toList();
        boolean alone = there.size() == 1 && there.get(0).piece().equals(j.inner().piece())
                && Overlay.difference(List.of(Region.of(more)), List.of(there.get(0).region())).isEmpty();
        boolean bare = e.openings().stream().noneMatch(o -> o.rect().meets(more)) && e.penetrations().stream().noneMatch(p -> p.region().box().meets(more));
        if (!alone || !bare) {
            return Optional.empty();
        }
        List<Piece> all = new ArrayList<>(e.pieces());
        all.replaceAll(p -> p.equals(upper) ? new Piece(p.id(), p.material(), List.of(new Shape(Surface.WALL, List.of(Region.of(b.join(more))))), p.under(),
                p.bond(), p.cuts()) : p);
        return Optional.of(e.withPieces(all));
    }
}
