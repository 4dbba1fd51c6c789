package rainlap.water;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import rainlap.geom.Box;
import rainlap.wall.Opening;
import rainlap.wall.Side;

/** Joins the cells of the wall to those of an opening's reveal, along the opening's edges, and a reveal's cells to one another. */
final class Glue {
    private final Opening opening;
    private final Box rect;
    private final Map<Side, Ground> reveal = new EnumMap<>(Side.class);

    Glue(Opening opening, List<Ground> sides) {
        this.opening = opening;
        this.rect = opening.rect();
        sides.forEach(g -> reveal.put(g.surface().side(), g));
    }

    /** @param wall the wall's cells with a frame behind them that border on this opening */
    void join(List<Cell> wall) {
        for (Cell c : wall) {
            if (c.lower.isLevel() && c.lower.ay() == rect.maxY()) {
                overHead(c);
            }
            if (c.upper.isLevel() && c.upper.ay() == rect.minY()) {
                underSill(c);
            }
            if (c.x1 == rect.minX()) {
                beside(c, true, reveal.get(Side.LEFT));
            }
            if (c.x0 == rect.maxX()) {
                beside(c, false, reveal.get(Side.RIGHT));
            }
        }
        ontoSill(reveal.get(Side.LEFT), true);
        ontoSill(reveal.get(Side.RIGHT), false);
    }

    private void overHead(Cell c) {
        List<Seam> fronts = c.beside().down.stream().filter(s -> !s.lower().isFramed()).toList();
        for (Cell h : reveal.get(Side.HEAD).cells) {
            long from = Math.max(c.x0, h.x0 + rect.minX()), to = Math.min(c.x1, h.x1 + rect.minX());
            if (h.upper.isLevel() && h.upper.ay() == 0 && from < to) {
                long at = from;
                for (Seam f : fronts) {
                    long a = Math.max(f.from(), at), b = Math.min(f.to(), to);
                    if (a < b) {
                        seam(c, h, at, a, -rect.minX(), null);
                        seam(c, h, a, b, -rect.minX(), f.lower().pile);
                        at = b;
                    }
                }
                seam(c, h, at, to, -rect.minX(), null);
            }
        }
    }

    private void underSill(Cell c) {
        for (Cell s : reveal.get(Side.SILL).cells) {
            long from = Math.max(c.x0 - rect.minX(), s.x0), to = Math.min(c.x1 - rect.minX(), s.x1);
            if (s.lower.isLevel() && s.lower.ay() == 0) {
                seam(s, c, from, to, rect.minX(), null);
            }
        }
    }

    private static void seam(Cell upper, Cell lower, long from, long to, long shift, Pile inFront) {
        if (from < to) {
            Seam s = new Seam(upper, lower, from, to, shift, inFront, false);
            upper.beside().down.add(s);
            lower.beside().up.add(s);
        }
    }

    private void beside(Cell c, boolean right, Ground jamb) {
        List<Flank> fronts = c.beside().flanks.stream().filter(f -> f.aRight() == right && !f.b().isFramed()).toList();
        long x = right ? c.x1 : c.x0;
        for (Cell j : jamb.cells) {
            double from = Math.max(c.lower.at(x), j.lower.at(0) + rect.minY()), to = Math.min(c.upper.at(x), j.upper.at(0) + rect.minY());
            if (j.x0 == 0 && from < to) {
                double at = from;
                for (Flank f : fronts) {
                    double a = Math.max(f.from(), at), b = Math.min(f.to(), to);
                    if (a < b) {
                        flank(c, j, right, at, a, null);
                        flank(c, j, right, a, b, f.b().pile);
                        at = b;
                    }
                }
                flank(c, j, right, at, to, null);
            }
        }
    }

    private void flank(Cell wall, Cell jamb, boolean right, double from, double to, Pile inFront) {
        if (from < to) {
            Flank f = new Flank(wall, jamb, right, false, from, to, -rect.minY(), inFront);
            wall.beside().flanks.add(f);
            jamb.beside().flanks.add(f.turned());
        }
    }

    private void ontoSill(Ground jamb, boolean left) {
        for (Cell j : jamb.cells) {
            if (j.lower.isLevel() && j.lower.ay() == 0) {
                for (Cell s : reveal.get(Side.SILL).cells) {
                    long x = left ? s.x0 : s.x1;
                    long from = Math.max(j.x0, Math.round(s.lower.at(x))), to = Math.min(j.x1, Math.round(s.upper.at(x)));
                    if (x == (left ? 0 : opening.along(Side.SILL)) && from < to) {
                        Seam foot = new Seam(j, s, from, to, 0, null, true);
                        j.beside().down.add(foot);
                        s.beside().feet.add(foot);
                    }
                }
            }
        }
    }

    /** Lets the cells round them forget what stands in front of openings, once it is known from the seams and flanks. */
    static void dropFronts(List<Cell> fronts) {
        for (Cell c : fronts) {
            c.beside().up.forEach(s -> s.upper().beside().down.remove(s));
            c.beside().down.forEach(s -> s.lower().beside().up.remove(s));
            c.beside().flanks.forEach(f -> f.b().beside().flanks.removeIf(o -> o.b() == c));
        }
    }

    static List<Ground> reveals(Opening o) {
        List<Ground> out = new ArrayList<>();
        if (o.reveal() > 0) {
            for (Side s : new Side[] {Side.SILL, Side.LEFT, Side.RIGHT, Side.HEAD}) {
                out.add(Ground.ofReveal(o, s));
            }
        }
        return out;
    }
}
