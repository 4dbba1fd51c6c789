package rainlap.rule.material;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import rainlap.material.GalvanicTable;
import rainlap.material.Metal;
import rainlap.material.NamedPair;
import rainlap.source.Source;

/**
 * What two different metals do to one another in the wet. Each table is read by itself; where one forbids what the other allows the pair is refused, and
 * the words say that they disagree.
 *
 * @param first one metal
 * @param second the other
 * @param named the text that speaks of this pair by name, before any table
 */
record Verdict(Metal first, Metal second, Optional<NamedPair> named) {
    static Verdict of(Metal first, Metal second) {
        return new Verdict(first, second, NamedPair.find(first.word(), second.word()));
    }

    private static boolean isTooFar(OptionalInt difference) {
        return difference.isPresent() && Math.abs(difference.getAsInt()) > GalvanicTable.ALLOWED_MV;
    }

    private OptionalInt difference(GalvanicTable t) {
        return t.readier(first, second);
    }

    /** Whether neither a text nor a table knows the two. */
    boolean isUnknown() {
        return named.isEmpty() && GalvanicTable.ALL.stream().allMatch(t -> difference(t).isEmpty());
    }

    /** The metal that corrodes where the two touch; empty where they may touch. */
    Optional<Metal> corrodes() {
        if (named.isPresent()) {
            return named.get().harmless() ? Optional.empty() : Optional.of(named.get().attacks(first.word(), second.word()) ? first : second);
        }
        return GalvanicTable.ALL.stream().map(this::difference).filter(Verdict::isTooFar).findFirst()
                .map(d -> d.getAsInt() > 0 ? first : second);
    }

    /** Whether two tables forbid the pair and each names the other metal as the one that corrodes. */
    boolean victimsDiffer() {
        return named.isEmpty() && GalvanicTable.ALL.stream().map(this::difference).filter(Verdict::isTooFar)
                .map(d -> Integer.signum(d.getAsInt())).distinct().count() > 1;
    }

    /** Whether water from the first eats the second: only the nobler above the readier does. */
    boolean drainsHarmfully() {
        return named.isPresent() ? named.get().runOff() && corrodes().filter(second::equals).isPresent()
                : GalvanicTable.ALL.stream().map(this::difference).anyMatch(d -> isTooFar(d) && d.getAsInt() < 0);
    }

    /** Who says so: the text that names the pair, or the first table that forbids it. */
    Source source() {
        return named.map(NamedPair::source).orElseGet(() -> GalvanicTable.ALL.stream().filter(t -> isTooFar(difference(t)))
                .map(GalvanicTable::source).findFirst().orElse(GalvanicTable.ALLOWED));
    }

    /** The greatest difference that forbids the pair, in millivolts. */
    OptionalInt worstMv() {
        return GalvanicTable.ALL.stream().map(this::difference).filter(Verdict::isTooFar).mapToInt(d -> Math.abs(d.getAsInt())).max();
    }

    /** What the tables say, as sentences; that they disagree where they do. */
    String tables() {
        List<String> parts = new ArrayList<>();
        for (GalvanicTable t : GalvanicTable.ALL) {
            OptionalInt d = difference(t);
            parts.add(t.name() + (d.isEmpty() ? " does not list both" : " has them " + volts(Math.abs(d.getAsInt())) + " V apart"));
        }
        String all = String.join(" and ", parts);
        return all.substring(0, 1).toUpperCase(Locale.ROOT) + all.substring(1) + "; outdoors " + volts(GalvanicTable.ALLOWED_MV) + " V is allowed."
                + (victimsDiffer() ? " The tables disagree on which of the two corrodes."
                        : disagree() ? " The tables disagree: only one of them forbids the pair." : "");
    }

    private boolean disagree() {
        List<OptionalInt> known = GalvanicTable.ALL.stream().map(this::difference).filter(OptionalInt::isPresent).toList();
        return known.stream().anyMatch(Verdict::isTooFar) && !known.stream().allMatch(Verdict::isTooFar);
    }

    static String volts(int mv) {
        BigDecimal v = BigDecimal.valueOf(mv, 3);
        return (v.remainder(new BigDecimal("0.01")).signum() == 0 ? v.setScale(2) : v).toPlainString();
    }
}
