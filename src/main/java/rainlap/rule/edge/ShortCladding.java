package rainlap.rule.edge;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Stream;
import rainlap.geom.Intervals;
import rainlap.material.MaterialKind;
import rainlap.measure.LengthText;
import rainlap.practice.Limit;
import rainlap.practice.LimitValue;
import rainlap.rule.Asked;
import rainlap.rule.Evidence;
import rainlap.rule.Finding;
import rainlap.rule.Outcome;
import rainlap.rule.PieceWords;
import rainlap.rule.Rule;
import rainlap.rule.RuleInfo;
import rainlap.stack.Face;
import rainlap.wall.EdgeRole;

/** The cladding comes down below the lowest framing by less than asked. */
public final class ShortCladding implements Rule {
    static final RuleInfo INFO = RuleInfo.of("short-cladding", "cladding ends too high", RuleInfo.Theme.EDGES, Limit.CLADDING_BELOW_FRAME);
    /** Cladding that ends up to 300 mm above the base was meant to reach it. Our own choice: common practice, no source. */
    private static final double NEAR = 30_000;
    static final Predicate<Face> CLADDING = f -> f.kind() == MaterialKind.CLADDING;

    @Override
    public RuleInfo info() {
        return INFO;
    }

    @Override
    public Stream<Outcome> check(Evidence e) {
        List<PastEdge> bases = PastEdge.of(e, Set.of(EdgeRole.BASE), CLADDING, NEAR);
        if (bases.isEmpty() || bases.stream().allMatch(b -> b.reached(NEAR / 3, NEAR).isEmpty())) {
            return Stream.of(new Outcome.DoesNotApply(bases.isEmpty() ? "the outline has no base" : "no cladding is drawn at the base at this stage"));
        }
        LimitValue asked = e.practice().get(Limit.CLADDING_BELOW_FRAME);
        return bases.stream().flatMap(b -> judge(e, b, b.reached(NEAR / 3, NEAR), asked));
    }

    private static Stream<Outcome> judge(Evidence e, PastEdge base, Intervals looked, LimitValue asked) {
        return base.judge(looked, looked.minus(base.past(asked.hundredths())), s -> broken(e, s, asked));
    }

    private static Outcome broken(Evidence e, PastEdge.Stretch s, LimitValue asked) {
        List<String> pieces = Stream.of(0.0, NEAR / 3, NEAR).flatMap(t -> s.pieces(t).stream()).distinct().toList();
        long below = s.least();
        String mm = LengthText.mm(below);
        return Finding.of(INFO, s.place(), pieces).asks(asked).measures(below)
                .reads(below == 0 ? "not below the frame" : mm + " below", asked.number() + " below the frame")
                .says(PieceWords.does(pieces, "comes", "come") + (below == 0 ? " down no further than the base" : " only " + mm + " down below the base") + " over " + s.length()
                        + ": rain is driven in under the foot, to the frame. " + Asked.sentence(asked, asked.number() + " below the lowest framing"),
                        remedy(pieces, FootHeights.at(e, s.place().box()), asked));
    }

    private static String remedy(List<String> pieces, Optional<FootHeights> right, LimitValue asked) {
        String hang = "Replace " + PieceWords.list(pieces) + (pieces.size() == 1 ? " by a longer one, or set it lower, " : " by longer ones, or set them lower, ");
        return right.map(r -> r.first() + hang + r.inWords() + ".")
                .orElseGet(() -> hang + "to come down at least " + asked.number() + " below the base, and keep clear of the ground.") + " Wear gloves: sheet edges cut.";
    }
}
