package rainlap.rule.tape;

import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import java.util.stream.Stream;
import rainlap.geom.Intervals;
import rainlap.geom.Point;
import rainlap.joint.Joint;
import rainlap.joint.JointKind;
import rainlap.joint.Run;
import rainlap.measure.LengthText;
import rainlap.practice.Limit;
import rainlap.practice.LimitValue;
import rainlap.rule.Asked;
import rainlap.rule.Evidence;
import rainlap.rule.Finding;
import rainlap.rule.HeadFlashings;
import rainlap.rule.JointRule;
import rainlap.rule.MembraneJoints;
import rainlap.rule.Outcome;
import rainlap.rule.Place;
import rainlap.rule.RuleInfo;

/** A tape covers its joint by less than is asked to one side, or to both. */
public final class NarrowTapeCover implements JointRule {
    static final RuleInfo INFO = RuleInfo.of("narrow-tape-cover", "tape cover too narrow", RuleInfo.Theme.TAPE, Limit.TAPE_COVER,
            Limit.TAPE_FREE_LAP);

    @Override
    public RuleInfo info() {
        return INFO;
    }

    @Override
    public String none() {
        return "no joint is taped";
    }

    @Override
    public void judge(Evidence e, Joint j, Consumer<Outcome> tell) {
        if (j.tapedAlong() && isTapeNeeded(e, j)) {
            List<Outcome> narrow = narrow(e, j);
            narrow.forEach(tell);
            if (narrow.isEmpty()) {
                tell.accept(Outcome.Holds.of(j));
            }
        }
    }

    /** Joints of membranes but reverse laps, and open upper edges of other pieces, which tape may close. */
    private static boolean isTapeNeeded(Evidence e, Joint j) {
        boolean reverse = j.kind() == JointKind.REVERSE_LAP;
        return MembraneJoints.isMembrane(j.outer()) ? !reverse && MembraneJoints.isMembrane(j.inner())
                : reverse && HeadFlashings.findOpening(e.elevation(), j.outer()).isEmpty();
    }

    private static List<Outcome> narrow(Evidence e, Joint j) {
        LimitValue limit = e.practice().get(Limit.TAPE_COVER);
        if (isWide(e, j, limit)) {
            return List.of();
        }
        Map<Run, Low> low = new IdentityHashMap<>();
        j.runs().forEach(r -> low.put(r, Low.of(e, j, r, limit)));
        List<Outcome> out = new ArrayList<>();
        MembraneJoints.parts(e, j, r -> low.get(r).outer, r -> r.cover().onOuter())
                .forEach(s -> out.add(broken(e, j, s, oneSide(j, s, true, limit), limit)));
        MembraneJoints.parts(e, j, r -> low.get(r).inner, r -> r.cover().onInner())
                .forEach(s -> out.add(broken(e, j, s, oneSide(j, s, false, limit), limit)));
        List<Joint.Stretch> onOuter = MembraneJoints.parts(e, j, r -> low.get(r).both, r -> r.cover().onOuter());
        List<Joint.Stretch> onInner = MembraneJoints.parts(e, j, r -> low.get(r).both, r -> r.cover().onInner());
        for (int i = 0; i < onOuter.size(); i++) {
            Joint.Stretch a = onOuter.get(i), b = onInner.get(i);
            out.add(broken(e, j, a.least() <= b.least() ? a : b,
                    oneSide(j, a, true, limit) + " and " + oneSide(j, b, false, limit), limit));
        }
        return out;
    }

    /** The common case, told with less ado. */
    private static boolean isWide(Evidence e, Joint j, LimitValue limit) {
        for (Run r : j.runs()) {
            if (!Low.of(e, j, r, limit).isNothing()) {
                return false;
            }
        }
        return true;
    }

    /** Where a run is covered by too little: on the outer piece alone, on the inner one alone, on both. */
    private record Low(Intervals outer, Intervals inner, Intervals both) {
        private static final Low NOTHING = new Low(Intervals.NONE, Intervals.NONE, Intervals.NONE);

        static Low of(Evidence e, Joint j, Run r, LimitValue limit) {
            Intervals lowOuter = r.cover().onOuter().below(limit.hundredths()), lowInner = r.cover().onInner().below(limit.hundredths());
            if (lowOuter.isEmpty() && lowInner.isEmpty()) {
                return NOTHING;
            }
            Intervals asked = j.kind() == JointKind.REVERSE_LAP ? Intervals.of(0, r.length()).minus(r.hidden())
                    : MembraneJoints.tapeAsked(j, r, e.practice());
            Intervals outer = lowOuter.intersect(asked), inner = lowInner.intersect(asked), both = outer.intersect(inner);
            return new Low(outer.minus(both), inner.minus(both), both);
        }

        boolean isNothing() {
            return outer.isEmpty() && inner.isEmpty() && both.isEmpty();
        }
    }

    private static String oneSide(Joint j, Joint.Stretch s, boolean outer, LimitValue limit) {
        return LengthText.mmBeside(s.least(), limit.hundredths()) + " " + TapeWords.side(j, TapeWords.runOf(j, s), outer);
    }

    private static Outcome broken(Evidence e, Joint j, Joint.Stretch s, String sides, LimitValue limit) {
        List<String> strips = stripsAt(j, s);
        List<String> pieces = Stream.concat(strips.stream(), Stream.of(j.outer(), j.inner()).map(f -> f.piece().id())).toList();
        Place where = Place.line(e.elevation(), j.surface(), s.line());
        String joint = j.kind() == JointKind.REVERSE_LAP ? "the upper edge of " + j.outer().piece().id()
                : "the " + j.kind().inWords() + " of " + j.outer().piece().id() + " and " + j.inner().piece().id();
        long wide = 2 * limit.hundredths() + j.gap();
        return Finding.of(INFO, where, pieces).asks(limit).measures(s.least()).reads(sides, Asked.briefly(limit) + " each side")
                .joint(j.id())
                .says(String.join(" and ", strips) + " covers " + joint + " by only " + sides + ", at " + where.inWords() + ". "
                        + Asked.sentence(limit, limit.number() + " to each side"),
                        "Lay a tape at least " + LengthText.mmUp(wide) + " wide over it, centred on the joint, " + limit.number()
                        + " to each side.");
    }

    /** The strips that lie over the middle of the stretch's first part, in laying order. */
    private static List<String> stripsAt(Joint j, Joint.Stretch s) {
        Point a = s.line().get(0), b = s.line().get(1);
        double x = (a.x() + b.x()) / 2.0, y = (a.y() + b.y()) / 2.0;
        return j.strips().stream().filter(t -> t.region().covers(x, y)).map(t -> t.piece().id()).distinct().toList();
    }
}
