package rainlap.rule.edge;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import rainlap.geom.Box;
import rainlap.geom.Intervals;
import rainlap.geom.Overlay;
import rainlap.geom.Region;
import rainlap.material.Edge;
import rainlap.material.MaterialKind;
import rainlap.measure.LengthText;
import rainlap.practice.Limit;
import rainlap.practice.LimitValue;
import rainlap.rule.Asked;
import rainlap.rule.Cladding;
import rainlap.rule.Evidence;
import rainlap.rule.Finding;
import rainlap.rule.Outcome;
import rainlap.rule.Rule;
import rainlap.rule.RuleInfo;
import rainlap.stack.Face;
import rainlap.wall.Surface;

/** Where one capping of a parapet goes on as the next they lap by too little, or without sealant between. */
public final class ShortCappingLap implements Rule {
    static final RuleInfo INFO = RuleInfo.of("short-capping-lap", "lap of cappings too short", RuleInfo.Theme.EDGES, Limit.CAPPING_LAP);

    @Override
    public RuleInfo info() {
        return INFO;
    }

    @Override
    public Stream<Outcome> check(Evidence e) {
        return Capped.each(e, p -> {
            List<Outcome> out = new ArrayList<>();
            for (int i = 0; i + 1 < p.cappings().size(); i++) {
                judge(p, p.cappings().get(i), p.cappings().get(i + 1), e.practice().get(Limit.CAPPING_LAP)).forEach(out::add);
            }
            return out.isEmpty() ? Stream.of(new Outcome.DoesNotApply("no capping goes on as another")) : out.stream();
        });
    }

    /** Those that stand apart leave the parapet bare between them: {@link UncappedParapet} tells that. */
    private static Stream<Outcome> judge(Capped p, Face first, Face next, LimitValue asked) {
        Intervals a = p.across(first), b = p.across(next);
        double from = b.from(0), to = a.to(a.count() - 1);
        long lap = Math.round(to - from);
        if (lap < 0) {
            return Stream.empty();
        }
        Lap l = new Lap(first, next, from, lap, isSealed(p.evidence(), first, next));
        return Stream.of(lap >= asked.hundredths() && l.sealed ? Outcome.Holds.of(first.piece().id(), next.piece().id()) : broken(p, l, asked));
    }

    /** How two that follow one another lap, grid units. */
    private record Lap(Face first, Face next, double from, long length, boolean sealed) {}

    /** By a bead or tape that lies on both, or by the end of the outer one. */
    private static boolean isSealed(Evidence e, Face first, Face next) {
        if (first.piece().bond().seals(Edge.RIGHT) || first.piece().bond().seals(Edge.LEFT) || next.piece().bond().seals(Edge.LEFT) || next.piece().bond().seals(Edge.RIGHT)) {
            return true;
        }
        Box both = first.box().join(next.box());
        List<Region> lap = Overlay.intersection(List.of(first.region()), List.of(next.region()));
        return e.stack().meeting(Surface.WALL, both).stream().filter(f -> Cladding.isOf(f, MaterialKind.SEALANT) || Cladding.isOf(f, MaterialKind.TAPE))
                .anyMatch(f -> lap.stream().anyMatch(r -> r.overlaps(f.region())));
    }

    private static Outcome broken(Capped p, Lap l, LimitValue asked) {
        boolean nextIsOuter = p.evidence().stack().isOutside(l.next, l.first);
        String outer = (nextIsOuter ? l.next : l.first).piece().id(), inner = (nextIsOuter ? l.first : l.next).piece().id();
        long lap = l.length;
        String mm = LengthText.mmBeside(lap, asked.hundredths()), how = l.sealed ? "sealed" : "not sealed";
        return Finding.of(INFO, lap == 0 ? p.across(l.from, p.down(l.first).least()) : p.place(l.from, l.from + lap), List.of(outer, inner)).asks(asked).measures(lap).reads(lap == 0 ? "only meet" : mm + ", " + how, asked.number() + ", sealed")
                .says((lap == 0 ? outer + " and " + inner + " only meet" : outer + " laps " + inner + " by " + mm + ", " + how) + ": rain runs in at the joint, onto the parapet's top. "
                        + Asked.sentence(asked, "a lap of " + asked.number() + " with sealant between"),
                        (lap >= asked.hundredths() ? "Lift " + outer + " and run two beads of sealant between them" : "Replace one of " + outer + " and " + inner + " by a longer one, or slip a sleeve beneath both, lapped by at least "
                                + asked.number() + " on each, with sealant between") + ", and fix the lap at its sides. Folded edges cut: wear gloves; work from a platform or scaffold with a rail, not from the roof's edge.");
    }
}
