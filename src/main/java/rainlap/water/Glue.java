package rainlap.water;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import rainlap.geom.Box;
import rainlap.wall.Opening;
import rainlap.wall.Side;

/**
 * Joins the cells of the wall to those of an opening's reveal, along the opening's edges, and a reveal's cells to one another. What borders on what is found opening by opening,
 * whoever looks; the cells, which may lie between two openings, are told of it after that.
 */
final class Glue {
    private final Box rect;
    private final Map<Side, Rim.Cut> reveal;
    private final List<Crossing> found = new ArrayList<>();

    /** @param reveal by side, as they were cut */
    Glue(Opening opening, Map<Side, Rim.Cut> reveal) {
        this.rect = opening.rect();
        this.reveal = reveal;
    }

    /** @param wall what of the wall borders on this opening, by sides of that */
    Glue find(Map<Side, List<Rim>> wall) {
        meeting(wall.getOrDefault(Side.HEAD, List.of()), reveal.get(Side.HEAD).top(), rect.minX(), (c, h, from, to) ->
                seams(c.column(), h.column(), from, to, -rect.minX(), c.inFront()));
        meeting(wall.getOrDefault(Side.SILL, List.of()), reveal.get(Side.SILL).bottom(), rect.minX(), (c, s, from, to) ->
                seams(s.column(), c.column(), from - rect.minX(), to - rect.minX(), rect.minX(), null));
        meeting(wall.getOrDefault(Side.LEFT, List.of()), reveal.get(Side.LEFT).left(), rect.minY(), (c, j, from, to) -> flanks(c, j, true, from, to));
        meeting(wall.getOrDefault(Side.RIGHT, List.of()), reveal.get(Side.RIGHT).left(), rect.minY(), (c, j, from, to) -> flanks(c, j, false, from, to));
        ontoSill(reveal.get(Side.LEFT), reveal.get(Side.SILL).left());
        ontoSill(reveal.get(Side.RIGHT), reveal.get(Side.SILL).right());
        return this;
    }

    /** Tells the cells. */
    void join() {
        found.forEach(c -> c.cell.add(c));
    }

    private interface Meeting {
        void of(Rim a, Rim b, double from, double to);
    }

    /** Of two borders, the second of which is shifted, what lies next to one another. */
    private static void meeting(List<Rim> first, List<Rim> second, long shift, Meeting meeting) {
        for (Rim a : first) {
            for (Rim b : second) {
                double from = Math.max(a.from(), b.from() + shift), to = Math.min(a.to(), b.to() + shift);
                if (from < to) {
                    meeting.of(a, b, from, to);
                }
            }
        }
    }

    /** @param shift what is added to x above to get that below */
    private void seams(Column high, Column low, double from, double to, long shift, Pile inFront) {
        long a = Math.round(from), b = Math.round(to);
        for (int gap = 0; gap < high.cells().length; gap++) {
            found.add(new Seam.Moved(high, gap, low, false, a, b, shift, inFront));
        }
        for (int gap = 0; gap < low.cells().length; gap++) {
            found.add(new Seam.Moved(low, gap, high, true, a + shift, b + shift, -shift, null));
        }
    }

    private void flanks(Rim wall, Rim jamb, boolean right, double from, double to) {
        Column c = wall.column(), j = jamb.column();
        for (int gap = 0; gap < c.cells().length; gap++) {
            found.add(new Flank.Moved(c, gap, j, right, false, from, to, -rect.minY(), wall.inFront()));
        }
        for (int gap = 0; gap < j.cells().length; gap++) {
            found.add(new Flank.Moved(j, gap, c, false, right, from - rect.minY(), to - rect.minY(), rect.minY(), null));
        }
    }

    private void ontoSill(Rim.Cut jamb, List<Rim> sill) {
        meeting(jamb.bottom(), sill, 0, (j, s, from, to) -> {
            long a = Math.round(from), b = Math.round(to);
            for (int gap = 0; gap < j.column().cells().length; gap++) {
                found.add(new Seam(j.column(), gap, s.column(), false, a, b, true, null));
            }
            for (int gap = 0; gap < s.column().cells().length; gap++) {
                found.add(new Seam(s.column(), gap, j.column(), true, a, b, true, null));
            }
        });
    }

    static List<Ground> reveals(Opening o, Coat coat, boolean isFine) {
        List<Ground> out = new ArrayList<>();
        if (o.reveal() > 0) {
            for (Side s : new Side[] {Side.SILL, Side.LEFT, Side.RIGHT, Side.HEAD}) {
                out.add(Ground.ofReveal(o, s, coat, isFine));
            }
        }
        return out;
    }
}
