package rainlap.rule.face;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import rainlap.geom.Intervals;
import rainlap.joint.Joint;
import rainlap.joint.Run;
import rainlap.measure.LengthText;
import rainlap.practice.LimitValue;
import rainlap.rule.Asked;
import rainlap.rule.Evidence;
import rainlap.rule.Finding;
import rainlap.rule.MembraneJoints;
import rainlap.rule.Outcome;
import rainlap.rule.Place;
import rainlap.rule.RuleInfo;

/** What the two rules of short laps of sheets share. */
final class ShortSheetLap {
    private final RuleInfo info;
    private final boolean side;

    /** @param side side laps, else end laps */
    ShortSheetLap(RuleInfo info, boolean side) {
        this.info = info;
        this.side = side;
    }

    /** What is asked of a joint of sheets that run so; empty where nobody says. */
    interface Demand {
        Optional<LimitValue> of(Joint j, SheetRun run);
    }

    Stream<Outcome> check(Evidence e, Demand demand) {
        List<Joint> laps = SheetJoints.laps(e).filter(SheetJoints::isSound).filter(j -> SheetRun.of(j).isEmpty() || concerns(j)).toList();
        return SheetJoints.judge(e, laps, "no sheet has " + (side ? "a side lap" : "an end lap") + " over another", j -> judge(e, j, demand));
    }

    private boolean concerns(Joint j) {
        return j.runs().stream().anyMatch(r -> concerns(r, SheetRun.of(j).orElseThrow()));
    }

    /** Along the run of the sheets the edge of a side lap goes, across it that of an end lap. */
    private boolean concerns(Run r, SheetRun run) {
        return side == (SheetJoints.isPlumb(r) == (run == SheetRun.UPRIGHT));
    }

    private Stream<Outcome> judge(Evidence e, Joint j, Demand demand) {
        List<String> pieces = List.of(j.outer().piece().id(), j.inner().piece().id());
        Optional<SheetRun> run = SheetRun.of(j);
        if (run.isEmpty()) {
            return Stream.of(new Outcome.CannotTell(pieces, "the sheets are square: it is not known which way they run"));
        }
        Optional<LimitValue> asked = demand.of(j, run.get());
        if (asked.isEmpty()) {
            return Stream.of(new Outcome.CannotTell(pieces, j.outer().piece().material().id() + " states no side_lap"));
        }
        List<Joint.Stretch> low = MembraneJoints.parts(e, j, r -> concerns(r, run.get())
                ? r.lap().below(asked.get().hundredths()).minus(r.hidden()) : Intervals.NONE);
        return low.isEmpty() ? Stream.of(SheetJoints.holds(j)) : low.stream().map(s -> broken(e, j, s, asked.get()));
    }

    private Outcome broken(Evidence e, Joint j, Joint.Stretch s, LimitValue asked) {
        String outer = j.outer().piece().id(), inner = j.inner().piece().id();
        Place where = Place.line(e.elevation(), j.surface(), s.line());
        String lap = LengthText.mmBeside(s.least(), asked.hundredths()), missing = LengthText.mmUp(asked.hundredths() - s.least());
        String mend = side ? "Take " + outer + " off and set it " + missing + " further over " + inner + "; the sheets beyond it move too, or a wider one goes in at the end"
                : "Replace " + outer + " by a sheet " + missing + " longer, so that it laps " + inner + " by " + asked.number();
        return Finding.of(info, where, List.of(outer, inner)).asks(asked).measures(s.least()).reads(lap, Asked.briefly(asked)).joint(j.id())
                .says(outer + " laps " + inner + " by " + lap + " at " + where.inWords() + ". " + Asked.sentence(asked),
                        mend + ". Close the old screw holes. Sheet edges cut: wear gloves; work at height from a scaffold or platform.");
    }
}
