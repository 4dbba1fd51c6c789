package rainlap.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import rainlap.geom.Intervals;
import rainlap.rule.Evidence;
import rainlap.wall.Piece;

/**
 * How far from the frame each piece stands at each place of a cut, in pieces: one further out than the outermost of those beneath it. A stiff piece runs
 * straight, so it stands off everywhere by the most that lies beneath any of it, and so do pieces that lie on it.
 */
final class CutLevels {
    private final List<Integer> pieces;
    private final List<Double> cuts;
    /** By piece and stretch between two cuts; -1 where the piece does not lie. */
    private final int[][] level;
    private final boolean[] stiff;
    private final boolean[][] outside;

    /** @param straight whether stiff pieces keep straight; those turned round an edge are folded */
    CutLevels(Evidence evidence, Map<Integer, Intervals> all, boolean straight) {
        pieces = List.copyOf(new TreeSet<>(all.keySet()));
        TreeSet<Double> ends = new TreeSet<>();
        all.values().forEach(i -> {
            for (int k = 0; k < i.count(); k++) {
                ends.add(i.from(k));
                ends.add(i.to(k));
            }
        });
        cuts = List.copyOf(ends);
        int n = pieces.size(), stretches = Math.max(0, cuts.size() - 1);
        level = new int[n][stretches];
        stiff = new boolean[n];
        outside = new boolean[n][n];
        for (int p = 0; p < n; p++) {
            stiff[p] = straight && isStiff(evidence.elevation().pieces().get(pieces.get(p)));
            for (int s = 0; s < stretches; s++) {
                level[p][s] = all.get(pieces.get(p)).contains((cuts.get(s) + cuts.get(s + 1)) / 2) ? 0 : -1;
            }
            for (int q = 0; q < n; q++) {
                outside[p][q] = p != q && evidence.stack().order().isOutside(pieces.get(p), pieces.get(q));
            }
        }
        int rounds = 0;
        while (raise() && rounds < 2 * n) { // pieces may lie in a ring along the cut: then it stops here
            rounds++;
        }
    }

    private static boolean isStiff(Piece p) {
        return switch (p.material().kind()) {
            case FLASHING, BATTEN, CLADDING, TRIM, FRAME -> true;
            default -> false;
        };
    }

    /** Raises what lies too low; returns whether anything did. */
    private boolean raise() {
        boolean raised = false;
        for (int p = 0; p < level.length; p++) {
            for (int s = 0; s < level[p].length; s++) {
                int wanted = level[p][s] < 0 ? -1 : Math.max(above(p, s), stiff[p] ? most(p, s) : 0);
                raised |= wanted > level[p][s];
                level[p][s] = Math.max(level[p][s], wanted);
            }
        }
        return raised;
    }

    /** One further out than the outermost beneath. */
    private int above(int p, int s) {
        int out = 0;
        for (int q = 0; q < level.length; q++) {
            if (outside[p][q] && level[q][s] >= 0) {
                out = Math.max(out, level[q][s] + 1);
            }
        }
        return out;
    }

    /** The furthest out of a piece's run without a break about a stretch. */
    private int most(int p, int s) {
        int out = 0;
        for (int i = s; i >= 0 && level[p][i] >= 0; i--) {
            out = Math.max(out, level[p][i]);
        }
        for (int i = s; i < level[p].length && level[p][i] >= 0; i++) {
            out = Math.max(out, level[p][i]);
        }
        return out;
    }

    /** A piece's stretches, those of one level joined. */
    List<CutStack.Step> steps(int number) {
        int p = pieces.indexOf(number);
        List<CutStack.Step> out = new ArrayList<>();
        for (int s = 0; p >= 0 && s < level[p].length; s++) {
            if (level[p][s] >= 0) {
                add(out, new CutStack.Step(cuts.get(s), cuts.get(s + 1), level[p][s]));
            }
        }
        return List.copyOf(out);
    }

    private static void add(List<CutStack.Step> out, CutStack.Step s) {
        CutStack.Step last = out.isEmpty() ? null : out.get(out.size() - 1);
        if (last != null && last.to() == s.from() && last.level() == s.level()) {
            out.set(out.size() - 1, new CutStack.Step(last.from(), s.to(), s.level()));
        } else {
            out.add(s);
        }
    }
}
