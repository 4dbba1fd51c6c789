package rainlap.rule.material;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import rainlap.material.Material;
import rainlap.material.MaterialKind;
import rainlap.rule.Evidence;
import rainlap.rule.Finding;
import rainlap.rule.Outcome;
import rainlap.rule.Rule;
import rainlap.rule.RuleInfo;

/** A batten or another part behind the cladding rots when it stays wet, and the exposure is wet. */
public final class RotsWhereWet implements Rule {
    static final RuleInfo INFO = RuleInfo.of("rots-where-wet", "rots in this exposure", RuleInfo.Theme.MATERIALS);

    @Override
    public RuleInfo info() {
        return INFO;
    }

    @Override
    public Stream<Outcome> check(Evidence e) {
        List<Batch> batches = Batch.of(e, RotsWhereWet::isLookedAt);
        if (batches.isEmpty()) {
            return Stream.of(new Outcome.DoesNotApply("no batten is drawn, and no other part but sheets and cladding is said to rot"));
        }
        return batches.stream().map(b -> judge(e, b));
    }

    /** Battens, and other parts that say they rot. Sheets and boards that rot are laid so that they dry: that is what laps and cavity are for. */
    private static boolean isLookedAt(Material m) {
        MaterialKind kind = m.kind();
        boolean sheds = kind == MaterialKind.MEMBRANE || kind == MaterialKind.CLADDING;
        return kind == MaterialKind.BATTEN || !sheds && m.durability().rots().filter(r -> r).isPresent();
    }

    private static Outcome judge(Evidence e, Batch b) {
        Optional<Boolean> rots = b.wear().rots().or(() -> b.wear().metal().map(m -> false));
        if (rots.isEmpty()) {
            return new Outcome.CannotTell(b.ids(), b.material().id() + " does not say whether it rots");
        }
        return rots.get() ? Wet.of(e.elevation().exposure()).judge(b.ids(), () -> broken(e, b)) : new Outcome.Holds(b::ids);
    }

    private static Outcome broken(Evidence e, Batch b) {
        return Finding.of(INFO, b.where(e), b.ids()).reads("rots", "does not rot")
                .says(b.described() + " rots when it stays wet, and rain of " + Numbers.text(e.elevation().exposure().rainMmPerH().orElseThrow())
                        + " mm/h is stated: behind the cladding it gets wet and nobody sees it. Common practice asks for parts that neither corrode nor decay.",
                        "Take treated timber, plastic or metal battens of the same size instead, and seal the cut ends of treated timber. Wear gloves for metal: cut edges are sharp.");
    }
}
