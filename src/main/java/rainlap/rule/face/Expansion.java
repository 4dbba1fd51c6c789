package rainlap.rule.face;

import java.util.Locale;
import java.util.Optional;
import rainlap.source.Known;
import rainlap.source.Source;
import rainlap.stack.Face;

/**
 * How a metal grows with heat: steel by 12 millionths a degree, other metals by so many times that.
 *
 * @param timesSteel how many times as much as steel
 */
record Expansion(String metal, double timesSteel) {
    static final Source SOURCE = new Source("NZ Metal Roof and Wall Cladding Code of Practice", "v3", "thermal expansion", Known.PUBLISHED);
    private static final double STEEL = 12e-6;

    /** Of what a sheet's material says it is made of or faced with; empty for what is no metal known here. */
    static Optional<Expansion> of(Face sheet) {
        return sheet.piece().material().durability().metal().flatMap(m -> switch (m.toLowerCase(Locale.ROOT)) {
            case "steel", "carbon steel", "galvanised steel" -> Optional.of(new Expansion("steel", 1));
            case "aluminium", "zinc" -> Optional.of(new Expansion(m, 2));
            case "copper", "stainless steel" -> Optional.of(new Expansion(m, 1.5));
            default -> Optional.<Expansion>empty();
        });
    }

    double perKelvin() {
        return STEEL * timesSteel;
    }

    /** {@code aluminium, 24 millionths a degree}. */
    String words() {
        return metal + ", " + Math.round(timesSteel * 12) + " millionths a degree";
    }
}
