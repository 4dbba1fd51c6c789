package rainlap.rule.cavity;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.Set;
import java.util.stream.Stream;
import rainlap.measure.AngleText;
import rainlap.measure.LengthText;
import rainlap.practice.Limit;
import rainlap.practice.LimitValue;
import rainlap.rule.Asked;
import rainlap.rule.Cladding;
import rainlap.rule.Evidence;
import rainlap.rule.Finding;
import rainlap.rule.Outcome;
import rainlap.rule.Place;
import rainlap.rule.Rule;
import rainlap.rule.RuleInfo;
import rainlap.stack.Face;
import rainlap.wall.Surface;

/** A batten lies across the cavity where the practice allows none, or with too little fall or room at its ends. */
public final class LevelBatten implements Rule {
    static final RuleInfo INFO = RuleInfo.of("level-batten", "batten across the cavity", RuleInfo.Theme.CAVITY, Limit.BATTEN_FALL, Limit.BATTEN_GAP);

    @Override
    public RuleInfo info() {
        return INFO;
    }

    @Override
    public Stream<Outcome> check(Evidence e) {
        if (Cladding.sheets(e).isEmpty()) {
            return Stream.of(Cladding.none());
        }
        List<LyingBatten> all = LyingBatten.of(e);
        Set<Face> atFoot = new HashSet<>();
        Foot.of(e).forEach(f -> atFoot.addAll(f.closers(e)));
        return all.isEmpty() ? Stream.of(new Outcome.DoesNotApply("no batten lies across the cavity"))
                : all.stream().map(b -> atFoot.contains(b.face()) ? atFoot(b) : judge(e, b));
    }

    private static Outcome atFoot(LyingBatten b) {
        return new Outcome.DoesNotApply(id(b) + " lies at the foot of the cladding: closed-cavity judges it");
    }

    private static String id(LyingBatten b) {
        return b.face().piece().id();
    }

    private static Outcome judge(Evidence e, LyingBatten b) {
        LimitValue fall = e.practice().get(Limit.BATTEN_FALL), gap = e.practice().get(Limit.BATTEN_GAP);
        if (b.excuses(e).findAny().isPresent()) {
            return Outcome.Holds.of(id(b));
        }
        if (fall.isNever()) {
            return finding(e, b).asks(fall).reads("across the cavity", "none")
                    .says(id(b) + " lies across the cavity, against what is behind it. " + Asked.sentence(fall, "a cavity that no batten obstructs"), remedy(b, Optional.empty()));
        }
        if (b.hasLowPlace() || !fall.isMetBy(b.fallDeg())) {
            return flat(e, b, fall, gap);
        }
        OptionalLong least = b.gap(e, Math.min(gap.hundredths(), e.elevation().outline().box().width()));
        return least.isPresent() && least.getAsLong() < gap.hundredths() ? tight(e, b, least.getAsLong(), fall, gap) : Outcome.Holds.of(id(b));
    }

    private static Finding.Builder finding(Evidence e, LyingBatten b) {
        return Finding.of(INFO, Place.area(e.elevation(), Surface.WALL, List.of(b.face().region())), List.of(id(b)));
    }

    private static Outcome flat(Evidence e, LyingBatten b, LimitValue fall, LimitValue gap) {
        String drawn = b.hasLowPlace() ? "falls to a place between its ends" : b.fallDeg() == 0 ? "level" : "falls " + AngleText.deg(b.fallDeg());
        String says = b.hasLowPlace() ? drawn : b.fallDeg() == 0 ? "lies level" : "falls by only " + AngleText.deg(b.fallDeg());
        return finding(e, b).asks(fall).degrees(b.hasLowPlace() ? 0 : b.fallDeg()).reads(drawn, fall.number() + "° to its ends")
                .says(id(b) + " lies across the cavity and " + says + ": it holds up what runs down behind the cladding. "
                        + Asked.sentence(fall, "a fall of " + fall.number() + "° to open ends"), remedy(b, Optional.of(slope(fall, gap))));
    }

    private static Outcome tight(Evidence e, LyingBatten b, long least, LimitValue fall, LimitValue gap) {
        String mm = LengthText.mmBeside(least, gap.hundredths());
        return finding(e, b).asks(gap).measures(least).reads(mm + " at an end", gap.number() + " at both ends")
                .says(id(b) + " falls, but " + (least == 0 ? "its end stands against the next batten" : "keeps only " + mm + " from the next batten at an end")
                        + ": water finds no room to leave there. " + Asked.sentence(gap, "a gap of " + gap.number() + " at each end"),
                        remedy(b, Optional.of(slope(fall, gap))));
    }

    private static String slope(LimitValue fall, LimitValue gap) {
        long rise = (long) Math.ceil(100_000 * Math.tan(Math.toRadians(fall.value())));
        return "let it fall to its ends by " + LengthText.mmUp(rise) + " in each metre, and cut it back to stop at least " + gap.number() + " short of the battens beside it";
    }

    private static String remedy(LyingBatten b, Optional<String> other) {
        return "Take the cladding off there, and stand the batten upright or set " + id(b) + " on upright ones"
                + other.map(o -> "; or " + o).orElse("") + ". Sheet edges cut: wear gloves; work at height from a scaffold or platform.";
    }
}
