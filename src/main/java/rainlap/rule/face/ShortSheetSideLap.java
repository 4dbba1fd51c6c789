package rainlap.rule.face;

import java.util.Comparator;
import java.util.Optional;
import java.util.stream.Stream;
import rainlap.joint.Joint;
import rainlap.material.Material;
import rainlap.material.Substance;
import rainlap.practice.Limit;
import rainlap.practice.LimitValue;
import rainlap.rule.Evidence;
import rainlap.rule.Outcome;
import rainlap.rule.Rule;
import rainlap.rule.RuleInfo;
import rainlap.source.Known;
import rainlap.source.Source;

/** A sheet or board laps its neighbour, along its run, by less than its material or the practice asks. */
public final class ShortSheetSideLap implements Rule {
    static final RuleInfo INFO = RuleInfo.of("short-sheet-side-lap", "side lap of sheets too short", RuleInfo.Theme.FACE,
            Limit.BOARD_LAP, Limit.FIBRE_CEMENT_LAP, Limit.HARDBOARD_LAP);

    @Override
    public RuleInfo info() {
        return INFO;
    }

    @Override
    public Stream<Outcome> check(Evidence e) {
        return new ShortSheetLap(INFO, true).check(e, (j, run) -> asked(e, j, run));
    }

    /** The greater of what the material states and, for boards laid across, what the practice asks. */
    private static Optional<LimitValue> asked(Evidence e, Joint j, SheetRun run) {
        Stream<LimitValue> practice = run == SheetRun.ACROSS ? Stream.of(e.practice().get(limit(j.outer().piece().material()))) : Stream.empty();
        return Stream.concat(practice, ofMaterial(e, j.outer().piece().material()).stream()).max(Comparator.comparingDouble(LimitValue::value));
    }

    /** By what the board is made of: where nothing is stated it is taken as timber, of which the most is asked. */
    private static Limit limit(Material m) {
        Optional<Substance> of = m.durability().substance();
        return of.filter(s -> s == Substance.FIBRE_CEMENT).isPresent() ? Limit.FIBRE_CEMENT_LAP
                : of.filter(s -> s == Substance.HARDBOARD).isPresent() ? Limit.HARDBOARD_LAP : Limit.BOARD_LAP;
    }

    private static Optional<LimitValue> ofMaterial(Evidence e, Material m) {
        if (m.sizes().sideLapMm().isEmpty()) {
            return Optional.empty();
        }
        Source source = m.originOf("side_lap").orElse(new Source("Material " + m.id(), "", "side_lap", Known.FROM_MEMORY));
        return Optional.of(new LimitValue(Limit.BOARD_LAP, m.sizes().sideLapMm().getAsDouble(), false, source, e.practice().id(), ""));
    }
}
