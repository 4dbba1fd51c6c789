package rainlap.rule.tape;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Consumer;
import java.util.stream.Stream;
import rainlap.geom.Overlay;
import rainlap.geom.Region;
import rainlap.rule.Evidence;
import rainlap.rule.Finding;
import rainlap.rule.OpeningRule;
import rainlap.rule.Outcome;
import rainlap.rule.Place;
import rainlap.rule.RuleInfo;
import rainlap.rule.tape.OpeningStrips.Strip;
import rainlap.source.Known;
import rainlap.source.Source;
import rainlap.stack.Face;
import rainlap.wall.Opening;
import rainlap.wall.Surface;

/** At an opening a strip lies over one that water reaches later: sill over jamb, jamb over head or sill over head. */
public final class TapeOrder implements OpeningRule {
    static final RuleInfo INFO = RuleInfo.of("tape-order", "tapes in the wrong order", RuleInfo.Theme.TAPE);
    private static final Source SOURCE = new Source("EPA Indoor airPLUS technical guidance", "", "1.6", Known.PUBLISHED);

    @Override
    public RuleInfo info() {
        return INFO;
    }

    @Override
    public void judge(Evidence e, Opening o, Consumer<Outcome> tell) {
        List<Strip> strips = OpeningStrips.of(e.stack(), o);
        for (int i = 0; i < strips.size(); i++) {
            for (int k = i + 1; k < strips.size(); k++) {
                judge(e, o, strips.get(i), strips.get(k)).ifPresent(tell);
            }
        }
    }

    @Override
    public Stream<Outcome> atLast(Evidence e, boolean silent) {
        return silent ? Stream.of(new Outcome.DoesNotApply("at no opening do strips of different sides overlap")) : Stream.empty();
    }

    private static Optional<Outcome> judge(Evidence e, Opening o, Strip a, Strip b) {
        if (a.levels().equals(b.levels()) && a.levels().size() == 1) {
            return Optional.empty();
        }
        if (!cross(a, b)) {
            return Optional.empty();
        }
        Strip lower = a.highest().compareTo(b.lowest()) < 0 ? a : b, upper = lower == a ? b : a;
        if (lower.highest().compareTo(upper.lowest()) >= 0) {
            Strip both = a.levels().size() > 1 ? a : b;
            return Optional.of(new Outcome.CannotTell(List.of(a.id(), b.id()), both.id() + " runs along more than one side of " + o.id()));
        }
        boolean right = e.stack().isOutside(upper.faces().get(0), lower.faces().get(0));
        return Optional.of(right ? Outcome.Holds.of(upper.id(), lower.id()) : broken(e, o, lower, upper, crossing(a, b)));
    }

    private static boolean cross(Strip a, Strip b) {
        for (Face f : a.faces()) {
            for (Face g : b.faces()) {
                if (f.box().overlaps(g.box()) && f.surface().equals(g.surface()) && f.region().overlaps(g.region())) {
                    return true;
                }
            }
        }
        return false;
    }

    /** Where two strips lie on one another, by surface. */
    private static Map<Surface, List<Region>> crossing(Strip a, Strip b) {
        Map<Surface, List<Region>> out = new TreeMap<>();
        for (Face f : a.faces()) {
            for (Face g : b.faces()) {
                if (f.surface().equals(g.surface()) && f.box().overlaps(g.box())) {
                    List<Region> both = Overlay.intersection(List.of(f.region()), List.of(g.region()));
                    if (!both.isEmpty()) {
                        out.computeIfAbsent(f.surface(), s -> new ArrayList<>()).addAll(both);
                    }
                }
            }
        }
        return out;
    }

    private static Outcome broken(Evidence e, Opening o, Strip lower, Strip upper, Map<Surface, List<Region>> crossing) {
        Map.Entry<Surface, List<Region>> first = crossing.entrySet().iterator().next();
        Place where = Place.area(e.elevation(), first.getKey(), first.getValue());
        String low = lower.id() + " (" + lower.highest().word() + ")", up = upper.id() + " (" + upper.lowest().word() + ")";
        return Finding.of(INFO, where, List.of(lower.id(), upper.id())).source(SOURCE)
                .reads(lower.highest().word() + " over " + upper.lowest().word(), upper.lowest().word() + " over " + lower.highest().word())
                .says("At " + o.id() + " strip " + low + " lies over strip " + up + ", at " + where.inWords()
                        + ": water that runs down " + upper.id() + " meets the edge of " + lower.id()
                        + ", and only its adhesive keeps it out. "
                        + "Sides go over the sill and the head over the sides (EPA Indoor airPLUS technical guidance, 1.6).",
                        "Free both where they cross and stick them down again, " + lower.id() + " first and " + upper.id()
                        + " over it; use new tape where the adhesive is spent.");
    }
}
