package rainlap.joint;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import rainlap.wall.CutPattern;
import rainlap.wall.EdgeRole;

/** Walls as crews and beginners lay them, from a seed: courses, end laps, gaps, reversed sheets, patches, slopes, a window, tapes. */
public final class RandomWall {
    private final Random random;
    private final Drawn drawn = Drawn.wall().outline(0, 0, 4000, 2400, EdgeRole.FREE);
    private int count;

    private final boolean sloped;

    /** Small seeds are spread first: the first numbers of java.util.Random are nearly the same for all of them. */
    private RandomWall(long seed, boolean sloped) {
        this.random = new Random(seed * 0x9E3779B97F4A7C15L);
        this.sloped = sloped;
    }

    public static Drawn of(long seed) {
        return new RandomWall(seed, true).build();
    }

    /** Level and plumb edges only: everything is exact. */
    public static Drawn upright(long seed) {
        return new RandomWall(seed, false).build();
    }

    private Drawn build() {
        boolean window = random.nextBoolean();
        if (window) {
            drawn.window("W", 1000 + random.nextInt(800), 600 + random.nextInt(400), 700, 800, 60 + random.nextInt(60));
        }
        List<double[]> sheets = courses();
        while (!sheets.isEmpty()) {
            double[] s = sheets.remove(random.nextInt(4) == 0 ? random.nextInt(sheets.size()) : 0);
            lay(s, window);
        }
        for (int i = random.nextInt(4); i > 0; i--) {
            lay(new double[] {jitter(random.nextInt(3500)), jitter(random.nextInt(2000)), 80 + random.nextInt(700), 60 + random.nextInt(500)},
                    window);
        }
        for (int i = random.nextInt(6); i > 0; i--) {
            drawn.tape("T" + count++, jitter(random.nextInt(3000)), random.nextInt(2300), 300 + random.nextInt(2000), 75);
        }
        return drawn;
    }

    private List<double[]> courses() {
        List<double[]> out = new ArrayList<>();
        double y = -random.nextInt(60);
        while (y < 2400) {
            double height = 500 + random.nextInt(900), x = -random.nextInt(300);
            while (x < 4000) {
                double width = 900 + random.nextInt(2500);
                out.add(new double[] {jitter(x), jitter(y), width, height});
                x += width - step(150);
            }
            y += height - step(100);
        }
        return out;
    }

    /** Mostly a lap near the limit; sometimes nothing, a gap, a hair. */
    private double step(int lap) {
        return switch (random.nextInt(9)) {
            case 0 -> 0;
            case 1 -> -random.nextInt(140);
            case 2 -> 0.01;
            case 3 -> -0.01;
            case 4 -> -1;
            default -> lap - 60 + random.nextInt(120);
        };
    }

    private double jitter(double v) {
        return random.nextBoolean() ? v : Math.round((v + random.nextDouble() * 0.6 - 0.3) * 100) / 100.0;
    }

    private void lay(double[] s, boolean window) {
        String id = "M" + count++;
        double x = s[0], y = s[1], w = s[2], h = s[3];
        switch (sloped ? random.nextInt(6) : 5) {
            case 0 -> drawn.ring(id, x, y, x + w, y + random.nextInt(40), x + w, y + h, x, y + h);
            case 1 -> drawn.ring(id, x, y, x + w, y, x + w + random.nextInt(50), y + h, x, y + h - random.nextInt(40));
            default -> {
                if (window && random.nextBoolean()) {
                    drawn.cutSheet(id, x, y, w, h, "W", CutPattern.values()[random.nextInt(4)], 20 + random.nextInt(80));
                } else {
                    drawn.sheet(id, x, y, w, h);
                }
            }
        }
    }

}
