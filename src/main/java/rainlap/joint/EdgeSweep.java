package rainlap.joint;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import rainlap.geom.Box;
import rainlap.geom.EdgeFrame;
import rainlap.geom.Intervals;
import rainlap.geom.Profile;
import rainlap.geom.Segment;
import rainlap.stack.Face;
import rainlap.stack.Stack;

/** One free edge of a sheet and the pieces beside it. */
final class EdgeSweep {
    private static final double SLIP = 50;

    private final Stack stack;
    private final Face p;
    private final EdgeFrame frame;
    private final Direction faces;
    private final Box box;
    private final JointFinder.Near near;
    private final List<Beside> sheets = new ArrayList<>();

    /** A sheet with the stretches where it lies just inside and just outside the edge. */
    private record Beside(Face face, Intervals in, Intervals out) {}

    /** Told of each stretch beside which no sheet lies. */
    interface Nothing {
        void beside(EdgeSweep sweep, Intervals stretch, Chain chain);
    }

    EdgeSweep(Stack stack, Face p, Segment edge, JointFinder.Near near) {
        this.stack = stack;
        this.p = p;
        this.frame = EdgeFrame.of(edge);
        this.faces = Direction.of(frame, p.surface().side());
        this.box = edge.box().grow(3);
        this.near = near;
        for (Face q : near.sheets()) {
            if (q.box().meets(box)) {
                Intervals in = frame.inside(q.region(), frame.side()), out = frame.inside(q.region(), -frame.side());
                if (!in.isEmpty() || !out.isEmpty()) {
                    sheets.add(new Beside(q, in, out));
                }
            }
        }
    }

    Face piece() {
        return p;
    }

    EdgeFrame frame() {
        return frame;
    }

    Direction faces() {
        return faces;
    }

    /** The strips that lie outside the piece and may lie over the edge. */
    List<Face> strips() {
        List<Face> out = new ArrayList<>(near.strips().size());
        for (Face t : near.strips()) {
            if (stack.isOutside(t, p) && t.box().meets(box)) {
                out.add(t);
            }
        }
        return out;
    }

    /** Hands the stretches that lie on a sheet to the chain, and the others, unless a further sheet hides them, to {@code nothing}. */
    void laps(Chain chain, Nothing nothing) {
        for (Part p : parts()) {
            hand(p.state, p.from, p.to, chain, nothing);
        }
    }

    /** A part of the edge along which the same lies beside it. */
    private record Part(State state, double from, double to) {}

    private List<Part> parts() {
        double[] cuts = cuts();
        List<Part> out = new ArrayList<>();
        for (int i = 0; i + 1 < cuts.length; i++) {
            Part now = new Part(stateAt((cuts[i] + cuts[i + 1]) / 2), cuts[i], cuts[i + 1]);
            Part last = out.isEmpty() ? null : out.get(out.size() - 1);
            if (last != null && (now.state.sameAs(last.state) || isSlip(now, last))) {
                out.set(out.size() - 1, new Part(last.state, last.from, now.to));
            } else if (last != null && isSlip(last, now)) {
                out.set(out.size() - 1, new Part(now.state, last.from, now.to));
            } else {
                out.add(now);
            }
        }
        return out;
    }

    /** Whether a part with nothing beside it is too short to be more than a crossing seen late, beside one that is a lap. */
    private boolean isSlip(Part open, Part lap) {
        return open.state.on == null && !open.state.hidden && lap.state.on != null && open.to - open.from < SLIP
                && !(p.region().isUpright() && lap.state.on.region().isUpright());
    }

    private double[] cuts() {
        int ends = 2;
        for (Beside b : sheets) {
            ends += 2 * (b.in.count() + b.out.count());
        }
        double[] all = new double[ends];
        all[1] = frame.length();
        int n = 2;
        for (Beside b : sheets) {
            n = append(b.out, all, append(b.in, all, n));
        }
        Arrays.sort(all);
        int kept = 1;
        for (int i = 1; i < all.length; i++) {
            if (all[i] - all[kept - 1] >= 0.5 || i == all.length - 1 && kept == 1) {
                all[kept++] = all[i];
            }
        }
        all[kept - 1] = Math.max(all[kept - 1], frame.length());
        return Arrays.copyOf(all, kept);
    }

    /** Adds the ends of stretches behind the first n; hands back how many there are then. */
    private static int append(Intervals stretches, double[] ends, int n) {
        for (int k = 0; k < stretches.count(); k++) {
            ends[n + 2 * k] = stretches.from(k);
            ends[n + 2 * k + 1] = stretches.to(k);
        }
        return n + 2 * stretches.count();
    }

    /** What lies at a place of the edge: the sheet it lies on, or none; and whether a further sheet lies over it. */
    private record State(Face on, boolean hidden) {
        boolean sameAs(State o) {
            return on == o.on && (on != null || hidden == o.hidden);
        }
    }

    private State stateAt(double s) {
        Face on = null;
        boolean hidden = false;
        for (Beside b : sheets) {
            if (b.in.contains(s) && b.out.contains(s)) {
                if (!stack.isOutside(p, b.face)) {
                    hidden = true;
                } else if (on == null || stack.isOutside(b.face, on)) {
                    on = b.face;
                }
            }
        }
        return new State(on, hidden);
    }

    private void hand(State state, double from, double to, Chain chain, Nothing nothing) {
        if (state.on == null) {
            if (!state.hidden) {
                nothing.beside(this, Intervals.of(from, to), chain);
            }
            return;
        }
        JointKind kind = faces.lapKind();
        boolean sealed = Sheets.seals(p, faces.asEdge());
        if (kind == JointKind.REVERSE_LAP ? sealed : Sheets.isLooseTape(p)) {
            return;
        }
        chain.add(new Chain.Link(state.on, kind, sealed), run(from, to, JointFinder.lap(frame, from, to, p, state.on), state.on, kind));
    }

    /** A run over part of the edge, its places counted from the part's own first end. */
    Run run(double from, double to, Profile lap, Face inner, JointKind kind) {
        Cover cover = new TapeCover(this, stack, inner, kind.isLap() ? Profile.NONE : lap).over(from, to);
        Segment line = new Segment(frame.at(from), frame.at(to));
        return new Run(line, lap.shifted(-from), cover, hiddenWithin(from, to), faces);
    }

    private Intervals hiddenWithin(double from, double to) {
        Intervals hidden = Intervals.NONE;
        for (Beside b : sheets) {
            if (!stack.isOutside(p, b.face)) {
                hidden = hidden.union(b.in.intersect(b.out));
            }
        }
        return hidden.intersect(Intervals.of(from, to)).shifted(-from);
    }
}
