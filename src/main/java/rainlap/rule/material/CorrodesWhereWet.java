package rainlap.rule.material;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import rainlap.material.Metal;
import rainlap.rule.Evidence;
import rainlap.rule.Finding;
import rainlap.rule.Outcome;
import rainlap.rule.Rule;
import rainlap.rule.RuleInfo;

/** A part is of a metal that rusts or dissolves in rain where nothing covers it. */
public final class CorrodesWhereWet implements Rule {
    static final RuleInfo INFO = RuleInfo.of("corrodes-where-wet", "corrodes in this exposure", RuleInfo.Theme.MATERIALS);

    @Override
    public RuleInfo info() {
        return INFO;
    }

    @Override
    public Stream<Outcome> check(Evidence e) {
        List<Batch> batches = Batch.of(e, m -> m.durability().metal().isPresent());
        if (batches.isEmpty()) {
            return Stream.of(new Outcome.DoesNotApply("no part of metal is drawn at this stage"));
        }
        return batches.stream().map(b -> judge(e, b));
    }

    private static Outcome judge(Evidence e, Batch b) {
        Optional<Metal> metal = Metal.find(b.wear().metal().orElseThrow());
        if (metal.isEmpty()) {
            return new Outcome.CannotTell(b.ids(), "the metal \"" + b.wear().metal().get() + "\" is not known");
        }
        return metal.get().corrodesBare() ? Wet.of(e.elevation().exposure()).judge(b.ids(), () -> broken(e, b, metal.get())) : new Outcome.Holds(b::ids);
    }

    private static Outcome broken(Evidence e, Batch b, Metal metal) {
        return Finding.of(INFO, b.where(e), b.ids()).reads("bare " + metal.word(), "coated, or another metal")
                .says(b.described() + " is bare " + metal.word() + ", which corrodes in rain, and rain of "
                        + Numbers.text(e.elevation().exposure().rainMmPerH().orElseThrow())
                        + " mm/h is stated. Common practice asks for parts that neither corrode nor decay.",
                        "Take the same part in galvanised steel, stainless steel or aluminium, whichever suits the metals it touches (attacking-pair); coat cut edges. "
                        + "They are sharp: wear gloves.");
    }
}
