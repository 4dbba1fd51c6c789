package rainlap.joint;

import java.util.ArrayList;
import java.util.List;
import rainlap.geom.Cuts;
import rainlap.geom.EdgeFrame;
import rainlap.geom.Intervals;
import rainlap.geom.Profile;
import rainlap.stack.Face;
import rainlap.stack.Stack;

/** What adhered strips cover of a stretch of an edge. */
final class TapeCover {
    private final EdgeSweep sweep;
    private final Stack stack;
    private final Face inner;
    private final Profile gap;

    /** @param gap the width of nothing between the edge and the inner piece, along the edge; no stretch at all where it is a lap */
    TapeCover(EdgeSweep sweep, Stack stack, Face inner, Profile gap) {
        this.sweep = sweep;
        this.stack = stack;
        this.inner = inner;
        this.gap = gap;
    }

    /** One strip over one stretch, how far it runs on to each side. */
    private record Lying(Face strip, double from, double to, Profile onOuter, Profile onInner) {
        /** Whether it covers both sides everywhere, and each as far here as there. */
        boolean isEven() {
            return onOuter.count() == 1 && onInner.count() == 1 && Math.min(onOuter.least(), onInner.least()) > 0
                    && onOuter.least() == onOuter.greatest() && onInner.least() == onInner.greatest();
        }

        double worse(double a, double b) {
            return Math.min(onOuter.leastWithin(a, b), onInner.leastWithin(a, b));
        }
    }

    Cover over(double from, double to) {
        List<Lying> lying = new ArrayList<>();
        for (Face t : sweep.strips()) {
            if (stack.isOutside(t, inner)) {
                add(t, from, to, lying);
            }
        }
        return lying.isEmpty() ? Cover.NONE : best(lying, from, to);
    }

    private void add(Face t, double from, double to, List<Lying> lying) {
        EdgeFrame e = sweep.frame();
        Intervals where = t.across(e, from, to);
        double length = e.length();
        for (int i = 0; i < where.count(); i++) {
            double a = where.from(i), b = where.to(i);
            Profile onOuter = t.runsOn(e, a, b);
            Profile beyond = t.runsOn(e.turned(), length - b, length - a).turned(length);
            lying.add(new Lying(t, a, b, onOuter, gap.count() == 0 ? beyond : beyond.minus(gap)));
        }
    }

    /** On each part the strip that covers its worse side best; places from the stretch's first end. */
    private Cover best(List<Lying> lying, double from, double to) {
        if (lying.size() == 1 && lying.get(0).isEven()) {
            Lying l = lying.get(0);
            return new Cover(Intervals.of(l.from, l.to).shifted(-from), l.onOuter.shifted(-from), l.onInner.shifted(-from), List.of(l.strip));
        }
        double[] cuts = cuts(lying, from, to);
        Profile.Builder outer = new Profile.Builder(), inside = new Profile.Builder();
        List<Face> strips = new ArrayList<>();
        Intervals taped = Intervals.NONE;
        for (int i = 0; i + 1 < cuts.length; i++) {
            double a = cuts[i], b = cuts[i + 1];
            Lying l = b - a < 1e-6 ? null : bestOver(lying, a, b);
            if (l != null) {
                outer.add(l.onOuter.part(a, b));
                inside.add(l.onInner.part(a, b));
                taped = taped.union(Intervals.of(a, b));
                if (!strips.contains(l.strip)) {
                    strips.add(l.strip);
                }
            }
        }
        return new Cover(taped.shifted(-from), outer.build().shifted(-from), inside.build().shifted(-from), strips);
    }

    private static double[] cuts(List<Lying> lying, double from, double to) {
        Cuts cuts = new Cuts();
        cuts.add(from);
        cuts.add(to);
        for (Lying l : lying) {
            cuts.addEnds(l.onOuter);
            cuts.addEnds(l.onInner);
        }
        return cuts.sorted();
    }

    /**
     * Null where no strip reaches both pieces. The least over the part counts: a sloped strip that crosses the joint covers nothing where it
     * enters, and takes no part from one that runs along it.
     */
    private static Lying bestOver(List<Lying> lying, double a, double b) {
        Lying best = null;
        double mid = (a + b) / 2;
        for (Lying l : lying) {
            boolean lies = l.from <= mid && mid <= l.to && l.worse(mid, mid) > 0;
            if (lies && (best == null || l.worse(a, b) > best.worse(a, b))) {
                best = l;
            }
        }
        return best;
    }
}
