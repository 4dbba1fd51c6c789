package rainlap.rule.cavity;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import rainlap.geom.Grid;
import rainlap.geom.Intervals;
import rainlap.measure.LengthText;
import rainlap.rule.Evidence;
import rainlap.rule.Finding;
import rainlap.rule.HeadFlashings;
import rainlap.rule.Outcome;
import rainlap.rule.PieceWords;
import rainlap.rule.Rule;
import rainlap.rule.RuleInfo;
import rainlap.source.Known;
import rainlap.source.Source;
import rainlap.stack.Face;

/** The foot of the cavity stands open without mesh: insects and mice get in, and what they build in it dams water. */
public final class OpenOutlet implements Rule {
    static final RuleInfo INFO = RuleInfo.of("open-outlet", "outlet without mesh", RuleInfo.Theme.CAVITY);
    private static final Source SLOTS = new Source("E2/AS1, Codewords", "", "9.1.8.3: slots of 3 to 5 mm", Known.PUBLISHED_SECONDARY);
    /** As wide as the widest slot of a closer: 5 mm. */
    private static final long SLOT = Grid.of(5);

    @Override
    public RuleInfo info() {
        return INFO;
    }

    @Override
    public Stream<Outcome> check(Evidence e) {
        return Foot.each(e, f -> Stream.of(judge(e, f)));
    }

    /** One finding for a foot, along all that stands open. */
    private static Outcome judge(Evidence e, Foot foot) {
        List<String> all = foot.sheetsAlong(foot.from(), foot.to());
        if (foot.sheets().stream().allMatch(s -> Battens.under(e, s).isEmpty())) {
            return new Outcome.DoesNotApply("no batten keeps " + PieceWords.list(all) + " off the wrap, so there is no cavity");
        }
        Intervals open = foot.bays(e).minus(foot.closed(e)).minus(foot.meshed(e)).minus(slots(e, foot));
        List<Integer> wide = new ArrayList<>();
        for (int i = 0; i < open.count(); i++) {
            if (open.to(i) - open.from(i) > SLOT) {
                wide.add(i);
            }
        }
        return wide.isEmpty() ? Outcome.Holds.of(all)
                : broken(e, foot, open.from(wide.get(0)), open.to(wide.get(wide.size() - 1)), wide.stream().mapToDouble(i -> open.to(i) - open.from(i)).sum());
    }

    /** Where the gap above a head flashing is itself no more than a slot. */
    private static Intervals slots(Evidence e, Foot foot) {
        List<Intervals> out = new ArrayList<>();
        e.elevation().openings().forEach(o -> HeadFlashings.of(e, o).stream()
                .filter(h -> HeadClearance.isAt(foot, o, h) && HeadClearance.clear(foot, h) <= SLOT)
                .forEach(h -> out.add(Intervals.of(h.box().minX(), h.box().maxX()))));
        return Intervals.unionOf(out);
    }

    private static Outcome broken(Evidence e, Foot foot, double from, double to, double open) {
        List<String> sheets = foot.sheetsAlong(from, to);
        String length = LengthText.mm(Math.round(open / 100) * 100);
        return Finding.of(INFO, foot.place(e, from, to), sheets).source(SLOTS).reads("open, no mesh", "mesh, or slots to 5")
                .says("The cavity behind " + PieceWords.list(sheets) + " stands open at its foot at " + foot.place(e, from, to).inWords() + ", without mesh over " + length
                        + " in all: insects and mice get in, and their nests dam water.",
                        "Fix a strip of mesh or a perforated closer across the foot behind " + PieceWords.list(sheets) + ", " + length
                                + " in all between the battens, with holes no wider than 5; it must let water out. Mind cut edges of mesh.");
    }
}
