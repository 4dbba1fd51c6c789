package rainlap.rule.material;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import rainlap.geom.Box;
import rainlap.geom.Region;
import rainlap.material.GalvanicTable;
import rainlap.material.Metal;
import rainlap.material.NamedPair;
import rainlap.measure.LengthText;
import rainlap.rule.Evidence;
import rainlap.rule.Finding;
import rainlap.rule.Outcome;
import rainlap.rule.Place;
import rainlap.rule.Rule;
import rainlap.rule.RuleInfo;
import rainlap.rule.material.Sides.Meeting;
import rainlap.rule.material.Sides.Stuff;
import rainlap.wall.Piece;
import rainlap.wall.Surface;

/** Two materials touch, or one drains on to the other, and one of them is eaten, softened or made brittle by it. */
public final class AttackingPair implements Rule {
    static final RuleInfo INFO = RuleInfo.of("attacking-pair", "materials that attack each other", RuleInfo.Theme.MATERIALS);
    private static final String CARE = " Cut edges of sheet metal are sharp: wear gloves.";

    @Override
    public RuleInfo info() {
        return INFO;
    }

    @Override
    public Stream<Outcome> check(Evidence e) {
        List<Outcome> out = new ArrayList<>();
        Set<List<Piece>> told = new HashSet<>();
        for (Contacts.Contact c : Contacts.of(e, (a, b) -> !touching(a, b).isEmpty())) {
            told.add(List.of(c.outer(), c.inner()));
            out.add(judge(e, c));
        }
        for (RunOff.Drain d : RunOff.of(e, (a, b) -> !draining(a, b).isEmpty())) {
            if (!told.contains(List.of(d.above(), d.below())) && !told.contains(List.of(d.below(), d.above()))) {
                out.add(judge(e, d));
            }
        }
        return out.isEmpty() ? Stream.of(new Outcome.DoesNotApply("no two materials that may attack each other touch, and none drains on to another"))
                : out.stream();
    }

    private static List<Meeting> touching(Piece outer, Piece inner) {
        return Sides.meetings(Sides.beneath(outer), Sides.outside(inner));
    }

    private static List<Meeting> draining(Piece above, Piece below) {
        return Sides.meetings(Sides.all(above), Sides.all(below)).stream()
                .filter(m -> m.isOfMetals() || NamedPair.find(m.a().word(), m.b().word()).filter(NamedPair::runOff).isPresent()).toList();
    }

    private static Outcome judge(Evidence e, Contacts.Contact c) {
        Place where = Place.area(e.elevation(), c.on(), c.where());
        List<Meeting> all = touching(c.outer(), c.inner());
        Outcome first = Outcome.Holds.of(List.of(c.outer().id(), c.inner().id()));
        for (Meeting m : all) {
            Optional<Harm> harm = Harm.of(m);
            if (harm.isPresent()) {
                return contact(harm.get(), where, c.where(), m);
            }
            first = unknown(m).map(why -> (Outcome) new Outcome.CannotTell(List.of(c.outer().id(), c.inner().id()), why)).orElse(first);
        }
        return first;
    }

    private static Outcome judge(Evidence e, RunOff.Drain d) {
        List<String> ids = List.of(d.above().id(), d.below().id());
        for (Meeting m : draining(d.above(), d.below())) {
            Optional<Harm> harm = Harm.of(m).filter(h -> h.verdict().map(Verdict::drainsHarmfully).orElse(h.attacked() == m.b()));
            if (harm.isPresent()) {
                return runOff(harm.get(), Place.area(e.elevation(), Surface.WALL, d.where()), m);
            }
            if (unknown(m).isPresent()) {
                return new Outcome.CannotTell(ids, unknown(m).get());
            }
        }
        return Outcome.Holds.of(ids);
    }

    /**
     * What one stuff does to another.
     *
     * @param says as a sentence's second half
     * @param verdict of the tables, for two metals
     */
    private record Harm(Stuff attacked, String says, Optional<NamedPair> named, Optional<Verdict> verdict) {
        static Optional<Harm> of(Meeting m) {
            Optional<Metal> a = m.a().metal(), b = m.b().metal();
            if (a.isPresent() && b.isPresent()) {
                Verdict v = Verdict.of(a.get(), b.get());
                return v.corrodes().map(c -> new Harm(c == a.get() ? m.a() : m.b(), v.named().map(NamedPair::says).orElse(v.tables()), v.named(), Optional.of(v)));
            }
            return NamedPair.find(m.a().word(), m.b().word()).filter(p -> !p.harmless()).map(p ->
                    new Harm(p.attacks(m.a().word(), m.b().word()) ? m.a() : m.b(), p.says(), Optional.of(p), Optional.empty()));
        }

        /** The tables' figures, or the words of the text that names the pair. */
        Finding.Builder fill(Finding.Builder b, String how) {
            if (named.isPresent()) {
                return b.source(named.get().source()).reads(how, "kept apart");
            }
            int mv = verdict.orElseThrow().worstMv().orElseThrow();
            return b.source(verdict.get().source()).compares(mv / 1000.0, GalvanicTable.ALLOWED_MV / 1000.0, "V")
                    .reads(Verdict.volts(mv) + " V apart", Verdict.volts(GalvanicTable.ALLOWED_MV) + " V or less");
        }

        String because() {
            return named.isPresent() ? "wherever it stays wet or warm " + says + "."
                    : "where it stays wet " + (verdict.filter(Verdict::victimsDiffer).isPresent() ? "one of them" : attacked.of().id()) + " corrodes. " + says;
        }
    }

    /** A metal that is in neither table. */
    private static Optional<String> unknown(Meeting m) {
        if (!m.isOfMetals()) {
            return Optional.empty();
        }
        Optional<String> strange = Stream.of(m.a(), m.b()).filter(s -> s.metal().isEmpty()).map(s -> "the metal \"" + s.word() + "\" is not known").findFirst();
        return strange.isPresent() || !Verdict.of(m.a().metal().orElseThrow(), m.b().metal().orElseThrow()).isUnknown() ? strange
                : Optional.of("no table lists both " + m.a().inWords() + " and " + m.b().inWords());
    }

    private static Outcome contact(Harm harm, Place where, List<Region> touching, Meeting m) {
        Box b = touching.stream().map(Region::box).reduce(Box::join).orElseThrow();
        String size = LengthText.mmUp(b.width()) + " x " + LengthText.mmUp(b.height());
        return harm.fill(Finding.of(INFO, where, List.of(m.a().of().id(), m.b().of().id())), m.a().inWords() + " on " + m.b().inWords())
                .says(m.a().named() + " lies on " + m.b().named() + " at " + where.inWords() + ": " + harm.because(),
                        "Make both of the same, or lay a strip that takes up no water and minds neither between them: over all of " + size
                        + " and 10 past it on every side. Fixings through both need sleeves or washers of the same." + CARE);
    }

    private static Outcome runOff(Harm harm, Place where, Meeting m) {
        String above = m.a().of().id(), below = m.b().of().id();
        return harm.fill(Finding.of(INFO, where, List.of(above, below)), m.a().inWords() + " above " + m.b().inWords())
                .says("Water from " + m.a().named() + " runs on to " + m.b().named() + " at " + where.inWords() + ": it carries what eats " + below + ". "
                        + (harm.named().isPresent() ? capital(harm.says()) + "." : harm.says()
                        + " The nobler metal belongs below (NZ Metal Roof and Wall Cladding Code of Practice, 4.9)."),
                        "Make both of the same, or put the nobler of the two below; or lead the water of " + above + " away so that none comes on to " + below
                        + "." + CARE + " Work at height from a platform.");
    }

    private static String capital(String s) {
        return s.substring(0, 1).toUpperCase(java.util.Locale.ROOT) + s.substring(1);
    }
}
