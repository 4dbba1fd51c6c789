package rainlap.check;

import java.util.Comparator;
import rainlap.geom.Box;
import rainlap.rule.Finding;

/**
 * A finding with the box of its place, which every comparison asks for.
 *
 * @param wall the number of the wall it lies on, from 0; 0 for an elevation alone
 */
record Ranked(int wall, Finding finding, Box box) {
    /** Fewest defences first, then most litres, then rule id, then wall, then place. */
    static final Comparator<Ranked> ORDER = Comparator.comparingInt((Ranked r) -> r.finding.defences())
            .thenComparing(r -> r.finding.litresPerHour().orElse(0), Comparator.reverseOrder())
            .thenComparing(r -> r.finding.rule()).thenComparingInt(Ranked::wall).thenComparing(r -> r.finding.where().surface())
            .thenComparing(r -> r.box.minY(), Comparator.reverseOrder()).thenComparingLong(r -> r.box.minX())
            .thenComparing(r -> r.finding.where().wkt()).thenComparing(r -> String.join(" ", r.finding.pieces()));

    Ranked(int wall, Finding finding) {
        this(wall, finding, finding.where().box());
    }
}
