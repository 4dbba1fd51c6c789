package rainlap.rule.cavity;

import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import rainlap.geom.Grid;
import rainlap.geom.Intervals;
import rainlap.measure.LengthText;
import rainlap.practice.Limit;
import rainlap.practice.LimitValue;
import rainlap.rule.Asked;
import rainlap.rule.Evidence;
import rainlap.rule.Finding;
import rainlap.rule.HeadFlashings;
import rainlap.rule.Outcome;
import rainlap.rule.PieceWords;
import rainlap.stack.Face;
import rainlap.wall.Opening;

/** Above a head flashing the cladding stands clear of the part that slopes outwards, so that the cavity drains over it. */
final class HeadClearance {
    private HeadClearance() {}

    static Stream<Outcome> judge(Evidence e, Foot foot) {
        return e.elevation().openings().stream().flatMap(o -> HeadFlashings.of(e, o).stream()
                .filter(h -> isAt(foot, o, h) && isBehind(e, foot, h) && !over(foot, o, h).isEmpty()).map(h -> judge(e, foot, o, h)));
    }

    /** Whether the foot is that of the cladding above the opening. */
    static boolean isAt(Foot foot, Opening o, Face flashing) {
        return foot.low() < flashing.box().maxY() && foot.low() > o.rect().maxY() - HeadFlashings.NEAR_HEAD;
    }

    private static boolean isBehind(Evidence e, Foot foot, Face flashing) {
        return foot.sheets().stream().anyMatch(s -> e.stack().isOutside(s, flashing));
    }

    private static Intervals over(Foot foot, Opening o, Face flashing) {
        return foot.whole().intersect(Intervals.of(o.rect().minX(), o.rect().maxX()))
                .intersect(Intervals.of(flashing.box().minX(), flashing.box().maxX()));
    }

    /** How far above the foot of its upstand the cladding ends. */
    static long clear(Foot foot, Face flashing) {
        OptionalDouble upstand = flashing.piece().material().profile().upstandMm();
        long bottom = flashing.box().minY(), top = flashing.box().maxY();
        return foot.low() - (upstand.isEmpty() ? bottom : Math.max(bottom, top - Grid.of(upstand.getAsDouble())));
    }

    private static Outcome judge(Evidence e, Foot foot, Opening o, Face flashing) {
        LimitValue asked = e.practice().get(Limit.CLEAR_OF_FLASHING);
        long clear = clear(foot, flashing);
        Intervals where = over(foot, o, flashing);
        double from = where.from(0), to = where.to(where.count() - 1);
        List<String> sheets = foot.sheetsAlong(from, to);
        String h = flashing.piece().id();
        if (clear >= asked.hundredths()) {
            return Outcome.Holds.of(Stream.concat(Stream.of(h), sheets.stream()).toList());
        }
        String stands = clear > 0 ? "ends only " + LengthText.mmBeside(clear, asked.hundredths()) + " above" : clear == 0 ? "stands on" : "runs down in front of";
        return Finding.of(ClosedCavity.INFO, foot.place(e, from, to), Stream.concat(sheets.stream(), Stream.of(h)).toList())
                .asks(asked).measures(clear).reads(LengthText.mm(clear) + " clear", asked.number() + " clear")
                .says(PieceWords.list(sheets) + " " + stands + " the sloping part of " + h + " above " + o.id()
                        + ": the cavity cannot drain over the flashing. " + Asked.sentence(asked),
                        "Cut the foot of " + PieceWords.list(sheets) + " off by " + LengthText.mmUp(asked.hundredths() - clear) + " above " + o.id()
                                + ", so that it ends at least " + asked.number() + " above the slope of " + h + ". Mind sheet edges; wear eye protection when cutting.");
    }
}
