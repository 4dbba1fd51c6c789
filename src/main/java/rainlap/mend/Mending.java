package rainlap.mend;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import rainlap.check.Checker;
import rainlap.check.Rules;
import rainlap.check.WeakPoint;
import rainlap.geom.Box;
import rainlap.geom.Grid;
import rainlap.geom.Point;
import rainlap.rule.Evidence;
import rainlap.rule.Finding;

/** Mends the wall near a weak point, and checks that it is mended. */
public final class Mending {
    /** Pieces that reach nearer than this to the place are looked at: 800 mm. */
    private static final long NEAR = 800 * Grid.MM;
    /** Along the plane of a cut a changed wall may be wrong so far from the place: 200 mm. */
    private static final long ALONG = 200 * Grid.MM;
    private static final long ACROSS = Grid.MM;
    /** In a view from outside it may be wrong nowhere within: 400 mm. */
    private static final long SEEN = 400 * Grid.MM;
    /** A change may bring something else with it, and that another thing. */
    private static final int MOST_STEPS = 4;
    private final Finding wanted;
    private final Box place;
    private Set<String> known = Set.of();
    private String why = "its remedy takes more here than pieces changed or added one by one.";

    private Mending(Finding wanted, Box place) {
        this.wanted = wanted;
        this.place = place;
    }

    /**
     * The wall mended where a plane cuts it at a weak point, or why there is none.
     *
     * @param at where the plane crosses the weak point's place
     * @param plumb whether the plane stands
     */
    public static Answer of(Evidence evidence, Finding finding, Point at, boolean plumb) {
        return answer(evidence, finding, plumb ? new Box(at.x() - ACROSS, at.y() - ALONG, at.x() + ACROSS, at.y() + ALONG)
                : new Box(at.x() - ALONG, at.y() - ACROSS, at.x() + ALONG, at.y() + ACROSS), Box.of(List.of(at)));
    }

    /** The wall mended at a corner of an opening, all of which is looked at. */
    public static Answer ofCorner(Evidence evidence, Finding finding) {
        Box place = finding.where().box().grow(ACROSS);
        return answer(evidence, finding, place, place);
    }

    /** The wall mended about a place that is seen from outside: what is moved is looked at where it comes to lie too. */
    public static Answer ofView(Evidence evidence, Finding finding) {
        Box place = finding.where().box().grow(SEEN);
        return answer(evidence, finding, place, place);
    }

    /**
     * Why no cut shows how what a rule finds is mended; empty where one may.
     *
     * @throws IllegalArgumentException where nobody has said either
     */
    public static Optional<String> why(String rule) {
        if (Mends.of(rule).isEmpty() == Mends.why(rule).isEmpty()) {
            throw new IllegalArgumentException(rule + ": has ways to mend it in rainlap.mend.Mends, or a reason there why no cut shows them");
        }
        return Mends.why(rule);
    }

    private static Answer answer(Evidence evidence, Finding finding, Box place, Box near) {
        Optional<String> refusal = Mends.refusal(evidence, finding);
        if (refusal.isPresent()) {
            return Answer.none(refusal.get());
        }
        Mending mending = new Mending(finding, place);
        Evidence part = Evidence.of(evidence.elevation().near(near.grow(NEAR)), evidence.stage(), evidence.practice());
        Optional<Answer> quick = mending.isThere(part) ? Optional.of(mending.answer(part)).filter(a -> a.mended().isPresent()) : Optional.empty();
        return quick.orElseGet(() -> mending.answer(Evidence.of(evidence.elevation(), evidence.stage(), evidence.practice())));
    }

    /** Whether what is wrong shows in a part of the wall, or comes from further off. */
    private boolean isThere(Evidence part) {
        return here(part).stream().anyMatch(f -> key(f).equals(key(wanted)));
    }

    private Answer answer(Evidence drawn) {
        List<Finding> before = here(drawn);
        Optional<Finding> first = before.stream().filter(f -> key(f).equals(key(wanted))).findFirst();
        known = new HashSet<>(before.stream().map(Mending::key).toList());
        known.remove(key(wanted));
        if (first.isEmpty()) {
            return Answer.none("the water comes from another wall of the building, and walls are mended one by one.");
        }
        return first.flatMap(f -> mended(new Mended(drawn, List.of(), List.of()), f, MOST_STEPS)).map(Answer::of).orElseGet(() -> Answer.none(why));
    }

    /** A way tried, and what is left wrong after it. */
    private record Tried(Mended done, Optional<Finding> left) {}

    /** The first of the ways to mend a finding that brings nothing else with it; or else the first after which nothing is wrong when that is mended too. */
    private Optional<Mended> mended(Mended now, Finding next, int steps) {
        List<Tried> ways = new ArrayList<>();
        for (Mends.Mend mend : steps == 0 ? List.<Mends.Mend>of() : Mends.of(next.rule())) {
            Optional<Tried> tried = mend.of(now.evidence(), next).filter(e -> !e.isImpossible()).map(now::with)
                    .map(done -> new Tried(done, here(done.evidence()).stream().filter(f -> !isKnown(f, done.added())).findFirst()));
            if (tried.filter(t -> t.left().isEmpty()).isPresent()) {
                return tried.map(Tried::done);
            }
            tried.ifPresent(ways::add);
        }
        for (Tried t : ways) {
            leaves(t.left().orElseThrow());
            Optional<Mended> all = t.left().filter(f -> !key(f).equals(key(next))).flatMap(f -> mended(t.done(), f, steps - 1));
            if (all.isPresent()) {
                return all;
            }
        }
        return Optional.empty();
    }

    /** Whether the place has it anyway: what is added may lie beside what was wrong before. */
    private boolean isKnown(Finding f, List<String> added) {
        return known.contains(key(f)) || known.contains(key(f.rule(), f.pieces().stream().filter(p -> !added.contains(p)).toList()));
    }

    private void leaves(Finding left) {
        String what = Rules.find(left.rule()).map(r -> r.info().title()).orElse(left.rule()) + (left.pieces().isEmpty() ? "" : " (" + String.join(", ", left.pieces()) + ")");
        why = "drawn as its rule asks and checked again, the place would " + (key(left).equals(key(wanted)) ? "still have this weak point." : "have another weak point, " + what + ".");
    }

    private List<Finding> here(Evidence e) {
        return Checker.check(e, Rules.all()).weakPoints().stream().map(WeakPoint::finding)
                .filter(f -> f.where().box().meets(place)).toList();
    }

    /** What tells a weak point from others: the same thing wrong with the same pieces, in whatever order. */
    public static String key(Finding f) {
        return key(f.rule(), f.pieces());
    }

    private static String key(String rule, List<String> pieces) {
        return rule + " " + new TreeSet<>(pieces);
    }
}
