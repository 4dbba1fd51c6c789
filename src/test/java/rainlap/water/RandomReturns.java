package rainlap.water;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import rainlap.geom.Box;
import rainlap.geom.Region;
import rainlap.joint.Drawn;
import rainlap.material.MaterialKind;
import rainlap.stack.Stack;
import rainlap.wall.Opening;
import rainlap.wall.Shape;
import rainlap.wall.Side;
import rainlap.wall.Surface;

/** Pieces that lie on the sill of a random wall's window and turn up a jamb, from a seed: sheets and adhered strips, of any width, some down the wall too. */
final class RandomReturns {
    private final Opening window;
    private final Random random;

    private RandomReturns(Opening window, Random random) {
        this.window = window;
        this.random = random;
    }

    static Stack in(Drawn d, long seed) {
        Random random = new Random(seed * 0x9E3779B97F4A7C15L + 11);
        d.elevation().openings().forEach(o -> {
            RandomReturns returns = new RandomReturns(o, random);
            for (Side jamb : new Side[] {Side.LEFT, Side.RIGHT}) {
                if (random.nextInt(4) > 0) {
                    d.piece("strip" + jamb, random.nextInt(3) == 0 ? MaterialKind.MEMBRANE : MaterialKind.CORNER_PIECE, returns.strip(jamb));
                }
            }
            for (int i = 1 + random.nextInt(4); i > 0; i--) {
                d.piece("turn" + i, random.nextInt(3) == 0 ? MaterialKind.MEMBRANE : MaterialKind.CORNER_PIECE, returns.shapes());
            }
        });
        return d.stack();
    }

    /** Over the edge of a jamb, from above its head to its foot or not quite. */
    private Shape[] strip(Side jamb) {
        Box r = window.rect();
        double foot = random.nextInt(3) == 0 ? 10 + random.nextInt(100) : 0, high = r.height() / 100.0 - foot;
        double x = jamb == Side.LEFT ? r.minX() / 100.0 - 60 : r.maxX() / 100.0;
        return new Shape[] {on(jamb, foot, 0, high, window.reveal() / 100.0),
            new Shape(Surface.WALL, List.of(Region.of(Box.ofMm(x, r.minY() / 100.0 + foot, 60, high + 40))))};
    }

    private Shape[] shapes() {
        double wide = window.rect().width() / 100.0, deep = window.reveal() / 100.0;
        double out = random.nextInt(3) == 0 ? random.nextInt((int) deep / 2) : 0, in = random.nextInt(3) == 0 ? deep - random.nextInt((int) deep / 3) : deep;
        double along = 60 + random.nextInt(500), up = 20 + random.nextInt(200);
        boolean left = random.nextBoolean();
        List<Shape> all = new ArrayList<>();
        all.add(on(Side.SILL, left ? 0 : wide - along, out, along, in - out));
        if (random.nextInt(5) > 0) {
            all.add(on(left ? Side.LEFT : Side.RIGHT, 0, out, up, in - out));
        }
        if (out == 0 && random.nextBoolean()) {
            double x = window.rect().minX() / 100.0, y = window.rect().minY() / 100.0;
            all.add(new Shape(Surface.WALL, List.of(Region.of(Box.ofMm(left ? x : x + wide - along, y - 75, along, 75)))));
        }
        return all.toArray(Shape[]::new);
    }

    private Shape on(Side side, double u, double v, double w, double h) {
        return new Shape(new Surface(window.id(), side), List.of(Region.of(Box.ofMm(u, v, w, h))));
    }
}
