package rainlap.rule.cavity;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import rainlap.geom.Grid;
import rainlap.geom.Intervals;
import rainlap.measure.LengthText;
import rainlap.practice.Limit;
import rainlap.practice.LimitValue;
import rainlap.rule.Asked;
import rainlap.rule.Cladding;
import rainlap.rule.Evidence;
import rainlap.rule.Finding;
import rainlap.rule.Outcome;
import rainlap.rule.PieceWords;
import rainlap.rule.Rule;
import rainlap.rule.RuleInfo;
import rainlap.stack.Face;

/** The cavity has no way out at the foot of the cladding, or too narrow a one: at the base, or above a head flashing. */
public final class ClosedCavity implements Rule {
    static final RuleInfo INFO = RuleInfo.of("closed-cavity", "cavity closed at its foot", RuleInfo.Theme.CAVITY,
            Limit.CAVITY_OUTLET, Limit.CLEAR_OF_FLASHING);
    /** Narrower bays, as between doubled battens, are not judged: 50 mm. Our own choice. */
    private static final double LEAST_BAY = Grid.of(50);

    @Override
    public RuleInfo info() {
        return INFO;
    }

    @Override
    public Stream<Outcome> check(Evidence e) {
        return Foot.each(e, f -> Stream.concat(HeadClearance.judge(e, f), judge(e, f)));
    }

    private static Stream<Outcome> judge(Evidence e, Foot foot) {
        List<Face> battens = foot.battens(e);
        List<String> sheets = foot.sheetsAlong(foot.from(), foot.to());
        List<Face> rests = foot.sheets().stream().flatMap(s -> Battens.under(e, s).stream()).distinct().toList();
        if (battens.isEmpty() && rests.isEmpty()) {
            return Stream.of(new Outcome.DoesNotApply("no batten keeps " + PieceWords.list(sheets) + " off the wrap, so there is no cavity"));
        }
        List<OptionalDouble> depths = rests.stream().map(b -> Battens.standOff(e, b)).toList();
        if (depths.stream().anyMatch(OptionalDouble::isEmpty)) {
            return Stream.of(new Outcome.CannotTell(sheets, "the depth of the battens is not stated"));
        }
        double depth = depths.stream().mapToDouble(OptionalDouble::getAsDouble).min().orElse(0);
        List<Outcome> broken = new ArrayList<>();
        narrow(e, foot, depth).forEach(b -> broken.add(broken(e, foot, b, depth)));
        return broken.isEmpty() ? Stream.of(Outcome.Holds.of(sheets)) : broken.stream();
    }

    /** A run of bays that the same pieces close. */
    private record Bays(double from, double to, double open, double length, List<Face> closers) {
        Bays and(Bays next) {
            return new Bays(from, next.to, open + next.open, length + next.length, closers);
        }

        double perMetre(double depthMm) {
            return depthMm * 1000 * open / length;
        }
    }

    private static List<Bays> narrow(Evidence e, Foot foot, double depthMm) {
        LimitValue asked = e.practice().get(Limit.CAVITY_OUTLET);
        Intervals bays = foot.bays(e), open = bays.minus(foot.closed(e));
        List<Face> closers = foot.closers(e);
        List<Bays> out = new ArrayList<>();
        for (int i = 0; i < bays.count(); i++) {
            Intervals bay = Intervals.of(bays.from(i), bays.to(i));
            List<Face> by = closers.stream().filter(c -> !foot.closedBy(c).intersect(bay).isEmpty()).toList();
            Bays b = new Bays(bays.from(i), bays.to(i), open.intersect(bay).total(), bay.total(), by);
            if (bay.total() < LEAST_BAY || asked.isMetBy(b.perMetre(depthMm))) {
                continue;
            }
            Bays last = out.isEmpty() ? null : out.get(out.size() - 1);
            boolean goesOn = last != null && last.closers.equals(by) && i > 0 && last.to == bays.to(i - 1);
            if (goesOn) {
                out.set(out.size() - 1, last.and(b));
            } else {
                out.add(b);
            }
        }
        return out;
    }

    private static Outcome broken(Evidence e, Foot foot, Bays b, double depthMm) {
        LimitValue asked = e.practice().get(Limit.CAVITY_OUTLET);
        List<String> closers = b.closers.stream().map(f -> f.piece().id()).distinct().toList();
        List<String> pieces = Stream.concat(closers.stream(), foot.sheetsAlong(b.from, b.to).stream()).distinct().toList();
        long measured = Math.round(b.perMetre(depthMm));
        String sheets = PieceWords.list(foot.sheetsAlong(b.from, b.to));
        String wide = LengthText.mmUp(Math.round(b.length * asked.value() / 1000 / depthMm));
        boolean sealed = b.closers.stream().anyMatch(Cladding::is);
        return Finding.of(INFO, foot.place(e, b.from, b.to), pieces).asks(asked).figure(measured)
                .reads(measured == 0 ? "closed" : measured + " mm2 a metre open", asked.number() + " mm2 a metre open")
                .says((sealed ? "The foot of " + sheets + " is sealed" : PieceWords.does(closers, "closes", "close") + " the cavity at the foot of " + sheets) + " at "
                        + foot.place(e, b.from, b.to).inWords() + (measured == 0 ? ": what gets behind the cladding stands there. "
                        : ", all but " + measured + " mm2 a metre. ") + Asked.sentence(asked, asked.number() + " mm2 in each metre"),
                        (sealed ? "Cut the seal out along the foot" : "Take " + PieceWords.list(closers) + " out, or set it at least 200 above the foot on upright packers")
                                + " so that at least " + wide + " in all stays open over this length, in every bay; close it with mesh only. "
                                + "Mind sheet edges and knife.");
    }
}
