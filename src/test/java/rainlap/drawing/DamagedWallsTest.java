package rainlap.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import rainlap.Shipped;
import rainlap.check.CheckResult;
import rainlap.check.Checker;
import rainlap.geom.Box;
import rainlap.geom.Overlay;
import rainlap.geom.Region;
import rainlap.wall.Elevation;
import rainlap.wall.Piece;
import rainlap.wall.Shape;
import rainlap.wall.Stage;

/**
 * Shipped walls with one or two random faults: a piece left out, cut short, holed, or laid at another time. Wherever that wets the frame of the wall a weak point says so. In reveals the
 * frame may lie bare and wet without one, deeper than any return that is asked for.
 */
class DamagedWallsTest {
    private static final int WALLS = 400;
    private static final long[] SIZES = {500, 2000, 6000, 9000, 12000, 30000};
    private static final long LEAST_RETURN = 5000;

    @Test
    void noWetFrameIsPassedOver() {
        List<Shipped> all = Shipped.all().stream().filter(s -> s.wall().pieces().size() < 150).toList();
        List<String> passedOver = new ArrayList<>();
        int wetter = 0;
        for (int seed = 0; seed < WALLS; seed++) {
            Random random = new Random(seed * 0x9E3779B97F4A7C15L);
            Shipped s = all.get(random.nextInt(all.size()));
            StringBuilder what = new StringBuilder(s.file());
            Elevation damaged = s.wall();
            for (int i = random.nextInt(2); i >= 0; i--) {
                damaged = damage(damaged, random, what);
            }
            CheckResult r = Checker.check(damaged, Stage.WRAP, s.result().evidence().practice());
            assertEquals(List.of(), r.crashes(), seed + ": " + what);
            wetter += r.weakPoints().stream().anyMatch(p -> p.finding().defences() == 0) ? 1 : 0;
            passedOver.addAll(passedOver(r, seed + ": " + what));
        }
        assertEquals(List.of(), passedOver);
        assertTrue(wetter > WALLS / 3, "only " + wetter + " walls leak");
    }

    private static List<String> passedOver(CheckResult r, String what) {
        List<String> out = new ArrayList<>();
        WetPlaces wet = WetPlaces.of(r);
        if (wet.any() && r.weakPoints().stream().noneMatch(p -> p.finding().defences() == 0)) {
            out.add(what + " is painted wet without a weak point");
        }
        wet.leftOut().forEach(p -> p.area().stream().filter(g -> !Overlay.vanishes(g, 51)).filter(g -> p.surface().isWall() || !isDeep(r, p.surface().opening(), g))
                .forEach(g -> out.add(what + " wets " + p.inWords())));
        return out;
    }

    /** Laid flat, a reveal lies inside its opening. */
    private static boolean isDeep(CheckResult r, String opening, Region g) {
        Box all = r.evidence().elevation().findOpening(opening).orElseThrow().rect();
        return all.grow(-LEAST_RETURN).contains(g.box());
    }

    private static Elevation damage(Elevation e, Random random, StringBuilder what) {
        List<Piece> pieces = new ArrayList<>(e.pieces());
        Piece p = pieces.get(random.nextInt(pieces.size()));
        int at = pieces.indexOf(p);
        switch (random.nextInt(4)) {
            case 0 -> {
                what.append(", no ").append(p.id());
                pieces.remove(at);
                pieces.replaceAll(o -> with(o, o.shapes(), o.under().stream().filter(u -> !u.equals(p.id())).toList()));
            }
            case 1 -> {
                pieces.remove(at);
                pieces.add(random.nextInt(pieces.size() + 1), with(p, p.shapes(), List.of()));
                what.append(", ").append(p.id()).append(" laid as number ").append(1 + indexOf(pieces, p.id()));
            }
            case 2 -> pieces.set(at, cut(p, random, what, DamagedWallsTest::side));
            default -> pieces.set(at, cut(p, random, what, DamagedWallsTest::anywhere));
        }
        return e.withPieces(pieces);
    }

    private static int indexOf(List<Piece> pieces, String id) {
        return pieces.stream().map(Piece::id).toList().indexOf(id);
    }

    private interface Where {
        Box cut(Box of, Random random);
    }

    private static Box side(Box b, Random random) {
        long d = SIZES[random.nextInt(4)];
        return switch (random.nextInt(4)) {
            case 0 -> new Box(b.minX(), b.minY(), b.minX() + d, b.maxY());
            case 1 -> new Box(b.maxX() - d, b.minY(), b.maxX(), b.maxY());
            case 2 -> new Box(b.minX(), b.minY(), b.maxX(), b.minY() + d);
            default -> new Box(b.minX(), b.maxY() - d, b.maxX(), b.maxY());
        };
    }

    private static Box anywhere(Box b, Random random) {
        long w = SIZES[random.nextInt(SIZES.length)], h = SIZES[random.nextInt(SIZES.length)];
        long x = b.minX() - w + (long) (random.nextDouble() * (b.width() + w)), y = b.minY() - h + (long) (random.nextDouble() * (b.height() + h));
        return new Box(x, y, x + w, y + h);
    }

    private static Piece cut(Piece p, Random random, StringBuilder what, Where where) {
        Shape s = p.shapes().get(random.nextInt(p.shapes().size()));
        Box away = where.cut(s.box(), random);
        List<Region> left = Overlay.difference(s.regions(), List.of(Region.of(away)));
        if (left.isEmpty()) {
            return p;
        }
        what.append(", ").append(away).append(" cut off ").append(p.id()).append(" on ").append(s.on());
        List<Shape> shapes = new ArrayList<>(p.shapes());
        shapes.set(shapes.indexOf(s), new Shape(s.on(), left));
        return with(p, shapes, p.under());
    }

    private static Piece with(Piece p, List<Shape> shapes, List<String> under) {
        return new Piece(p.id(), p.material(), shapes, under, p.bond(), p.cuts());
    }
}
