package rainlap.water;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import rainlap.geom.Box;
import rainlap.geom.Region;
import rainlap.joint.Drawn;
import rainlap.material.Bond;
import rainlap.material.Edge;
import rainlap.material.MaterialKind;
import rainlap.stack.Stack;
import rainlap.wall.Elevation;
import rainlap.wall.Opening;
import rainlap.wall.Penetration;
import rainlap.wall.Shape;
import rainlap.wall.Stage;
import rainlap.wall.Surface;

/** Square ducts through a random wall, from a seed: bare, under a sheet, with a collar that is loose, sealed at some edges, or adhered, and a patch over it. */
final class RandomDucts {
    private RandomDucts() {}

    static Stack in(Drawn d, long seed) {
        Random random = new Random(seed * 0x9E3779B97F4A7C15L + 7);
        List<Penetration> pipes = new ArrayList<>();
        for (int i = 1 + random.nextInt(2); i > 0; i--) {
            Box duct = Box.ofMm(300 + random.nextInt(3000), 200 + random.nextInt(1800), 40 + random.nextInt(160), 40 + random.nextInt(160));
            boolean clear = d.elevation().openings().stream().map(Opening::rect).noneMatch(r -> r.overlaps(duct.grow(15_000)))
                    && pipes.stream().map(p -> p.region().box()).noneMatch(b -> b.overlaps(duct.grow(15_000)));
            if (clear) {
                pipes.add(new Penetration("P" + i, "duct", Region.of(duct)));
                collar(d, i, duct, random);
            }
        }
        Elevation e = d.elevation();
        return Stack.of(new Elevation(e.name(), e.practice(), e.exposure(), e.outline(), e.openings(), pipes, e.materials(), e.pieces(), List.of()), Stage.WRAP);
    }

    private static void collar(Drawn d, int i, Box duct, Random random) {
        int kind = random.nextInt(6);
        if (kind > 0) {
            long by = (20 + random.nextInt(120)) * 100;
            d.piece("collar" + i, kind == 1 ? MaterialKind.MEMBRANE : MaterialKind.COLLAR, new Shape(Surface.WALL, List.of(Region.of(duct.grow(by)))));
            d.bond(switch (kind) {
                case 2 -> Bond.FULL;
                case 3 -> Bond.sealedAt(Edge.TOP);
                case 4 -> Bond.sealedAt(Edge.TOP, Edge.LEFT, Edge.RIGHT);
                default -> Bond.LOOSE;
            });
        }
        if (random.nextInt(3) == 0) {
            d.sheet("patch" + i, duct.minX() / 100.0 - 30 - random.nextInt(100), duct.minY() / 100.0 - random.nextInt(100), 300, 100 + random.nextInt(300));
        }
    }
}
