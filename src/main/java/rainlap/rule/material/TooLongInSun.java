package rainlap.rule.material;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import rainlap.material.Layer;
import rainlap.material.Material;
import rainlap.material.MaterialKind;
import rainlap.rule.Evidence;
import rainlap.rule.Finding;
import rainlap.rule.Outcome;
import rainlap.rule.Rule;
import rainlap.rule.RuleInfo;

/** A membrane stands in the sun for longer than its maker allows before the cladding covers it. */
public final class TooLongInSun implements Rule {
    static final RuleInfo INFO = RuleInfo.of("too-long-in-sun", "too long in the sun", RuleInfo.Theme.MATERIALS);
    private static final String KEY = "uv_days";

    @Override
    public RuleInfo info() {
        return INFO;
    }

    @Override
    public Stream<Outcome> check(Evidence e) {
        List<Batch> batches = Batch.of(e, TooLongInSun::isLookedAt);
        if (batches.isEmpty()) {
            return Stream.of(new Outcome.DoesNotApply("no membrane is drawn, and no other part of the wrap has a figure for days in the sun"));
        }
        if (e.elevation().exposure().sunDays().isEmpty()) {
            return Stream.of(new Outcome.CannotTell(List.of(), "the exposure states no sun_days before cladding"));
        }
        double days = e.elevation().exposure().sunDays().getAsDouble();
        List<Outcome> out = new ArrayList<>();
        batches.forEach(b -> out.add(judge(e, b, days)));
        return out.stream();
    }

    /** Every membrane; other parts of the wrap only where they state a figure. */
    private static boolean isLookedAt(Material m) {
        return m.kind() == MaterialKind.MEMBRANE
                || m.layer() == Layer.WRAP && m.durability().uvDays().isPresent();
    }

    private static Outcome judge(Evidence e, Batch b, double days) {
        if (b.wear().uvDays().isEmpty()) {
            return new Outcome.CannotTell(b.ids(), "no document sets a number of days, and " + b.material().id() + " states no uv_days of its own");
        }
        double allowed = b.wear().uvDays().getAsDouble();
        return days <= allowed ? new Outcome.Holds(b::ids) : broken(e, b, days, allowed);
    }

    private static Outcome broken(Evidence e, Batch b, double days, double allowed) {
        String stands = Numbers.text(days), may = Numbers.text(allowed);
        return Finding.of(INFO, b.where(e), b.ids()).compares(days, allowed, "days").source(Origin.of(b.material(), KEY))
                .reads(stands + " days", may + " days or fewer")
                .says(b.described() + " will stand in the sun for " + stands + " days before cladding, but is to be covered within " + may
                        + " (" + Origin.inWords(b.material(), KEY) + "). No standard gives a number of days: the material's own figure holds.",
                        "Clad within " + may + " days, or hang an opaque sheet over it until then; or use a membrane whose own figure is " + stands
                        + " days or more, foil faced where the sun is strong. What has stood too long is to be replaced. "
                        + "Work at height from a platform or scaffold.");
    }
}
