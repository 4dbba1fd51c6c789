package rainlap.rule.edge;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import rainlap.geom.Box;
import rainlap.geom.EdgeFrame;
import rainlap.geom.Intervals;
import rainlap.geom.Profile;
import rainlap.geom.Segment;
import rainlap.joint.BuildingCorner;
import rainlap.joint.Sheets;
import rainlap.measure.LengthText;
import rainlap.practice.Limit;
import rainlap.practice.LimitValue;
import rainlap.rule.Asked;
import rainlap.rule.Evidence;
import rainlap.rule.Finding;
import rainlap.rule.Outcome;
import rainlap.rule.PieceWords;
import rainlap.rule.Place;
import rainlap.rule.Rule;
import rainlap.rule.RuleInfo;
import rainlap.stack.Face;
import rainlap.wall.Surface;

/** A corner of the building that a membrane goes round has no tape over the fold, or too little of it to one side. */
public final class UntapedCorner implements Rule {
    static final RuleInfo INFO = RuleInfo.of("untaped-corner", "corner without tape", RuleInfo.Theme.EDGES, Limit.TAPE_COVER);

    @Override
    public RuleInfo info() {
        return INFO;
    }

    @Override
    public Stream<Outcome> check(Evidence e) {
        LimitValue asked = e.practice().get(Limit.TAPE_COVER);
        return CornerStretch.judge(e, c -> lacking(e, c, asked.hundredths()), s -> broken(s, asked));
    }

    /** Where a corner that is wrapped has no strip, and where every strip runs on past the fold by less than asked to one side. */
    private static List<Intervals> lacking(Evidence e, BuildingCorner c, long least) {
        Intervals taped = Intervals.NONE, enough = Intervals.NONE;
        for (Lying l : lying(e, c)) {
            taped = taped.union(l.where);
            enough = enough.union(l.where.minus(l.inside.below(least)).minus(l.outside.below(least)));
        }
        Intervals wrapped = CornerStretch.wrapped(c);
        return List.of(wrapped.minus(taped), wrapped.intersect(taped).minus(enough));
    }

    /** A strip over part of the fold and how far it runs to each side. */
    private record Lying(Face strip, Intervals where, Profile inside, Profile outside) {}

    private static List<Lying> lying(Evidence e, BuildingCorner c) {
        EdgeFrame fold = CornerStretch.frame(c);
        double length = fold.length();
        Box near = c.edge().line().box();
        List<Lying> out = new ArrayList<>();
        for (Face f : e.stack().meeting(Surface.WALL, near)) {
            Intervals across = Sheets.isStrip(f) ? f.across(fold, 0, length) : Intervals.NONE;
            for (int i = 0; i < across.count(); i++) {
                double a = across.from(i), b = across.to(i);
                out.add(new Lying(f, Intervals.of(a, b), f.runsOn(fold, a, b),
                        f.runsOn(fold.turned(), length - b, length - a).turned(length)));
            }
        }
        return out;
    }

    private static Outcome broken(CornerStretch s, LimitValue asked) {
        Intervals span = Intervals.of(s.from(), s.to());
        List<Lying> strips = lying(s.evidence(), s.corner()).stream().filter(l -> !l.where.intersect(span).isEmpty()).toList();
        boolean taped = !strips.isEmpty();
        long cover = Math.round(strips.stream().mapToDouble(l -> Math.min(l.inside.part(s.from(), s.to()).least(),
                l.outside.part(s.from(), s.to()).least())).max().orElse(0));
        List<String> pieces = new ArrayList<>();
        strips.forEach(l -> pieces.add(l.strip.piece().id()));
        List<String> beads = taped ? List.of() : CornerBeads.of(s.evidence(), s.corner()).stream().filter(b -> !b.bare().intersect(span).isEmpty()).map(b -> b.bead().piece().id()).toList();
        pieces.addAll(beads);
        pieces.addAll(s.pieces());
        String mm = LengthText.mm(cover);
        return Finding.of(INFO, s.place(), pieces.stream().distinct().toList()).asks(asked).measures(cover)
                .reads(taped ? mm + " to one side" : "no tape", asked.number() + " each side").defences(1)
                .says(taped ? "The tape over the " + s.name() + " covers only " + mm + " to one side of the fold" + by(asked)
                        : "The " + s.name() + " has no tape over the fold along " + s.length() + alone(beads) + by(asked),
                        (beads.isEmpty() ? "" : "Cut " + PieceWords.list(beads) + " away and clean the sheet. ") + remedy(s, asked) + (beads.isEmpty() ? "" : " Then run the bead along its edges."));
    }

    private static String alone(List<String> beads) {
        return beads.isEmpty() ? "" : ": " + PieceWords.does(beads, "lies", "lie") + " there alone, and a bead is no tape";
    }

    private static String by(LimitValue asked) {
        return ". Common practice is tape over every corner. " + Asked.sentence(asked, asked.number() + " to each side");
    }

    private static String remedy(CornerStretch s, LimitValue asked) {
        Segment l = s.line();
        return "Stick tape over the fold, " + s.length() + " long (from "
                + Place.level(l.a().y()) + " to " + Place.level(l.b().y()) + "), at least "
                + asked.number() + " to each side; rub it down.";
    }
}
