package rainlap.material;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import rainlap.source.Known;
import rainlap.source.Source;

/**
 * Two materials of which a text says by name what happens where they touch; it goes before the galvanic tables. Stated once, holds both ways.
 *
 * @param attacked words of the metal or substance that suffers, or of the one side where none does
 * @param by words of the other
 * @param harmless whether they may touch
 * @param runOff whether water from the other does the same
 * @param says what happens, after "and": "the zinc is eaten"
 */
public record NamedPair(Set<String> attacked, Set<String> by, boolean harmless, boolean runOff, String says, Source source) {
    private static final Source ROOF_CODE = new Source("NZ Metal Roof and Wall Cladding Code of Practice", "", "4.9", Known.PUBLISHED);
    private static final Source TAPES = new Source("JLC, article on flexible flashings", "June 2001", "", Known.PUBLISHED_SECONDARY);
    private static final String[] ZINCS = {"zinc", "galvanised steel", "aluminium-zinc coated steel"};

    /** Those that touch without harm though the tables forbid it come first. */
    public static final List<NamedPair> ALL = List.of(
            harmless("hard-anodised aluminium", "", "hard-anodised aluminium may touch any metal",
                    new Source("MIL-DTL-14072F", "", "3.13.1", Known.PUBLISHED)),
            harmless("galvanised steel", "aluminium", "galvanised steel and aluminium are normally satisfactory together",
                    new Source("Galvanizing design manual", "", "bimetallic contact", Known.PUBLISHED_SECONDARY)),
            harmless("galvanised steel", "lead", "lead is the accepted companion of a plain zinc coating",
                    new Source("NZ Metal Roof and Wall Cladding Code of Practice", "", "4.9", Known.PUBLISHED_SECONDARY)),
            harm("aluminium-zinc coated steel", words("lead"), true, "lead must not touch the aluminium-zinc coating", ROOF_CODE),
            harm(words(ZINCS), words("stainless steel", "stainless steel 316"), false, "stainless steel harms the zinc coating", ROOF_CODE),
            harm(words("aluminium", "zinc", "galvanised steel", "aluminium-zinc coated steel", "lead"), words("mortar"), true,
                    "the alkali of cement eats the metal", Source.commonPractice()),
            harm(words("aluminium", "zinc", "galvanised steel"), words("copper-treated-timber"), false,
                    "the copper salts of the treatment eat the metal", new Source("Trade data", "", "", Known.FROM_MEMORY)),
            harm(words("soft-pvc"), words("bitumen", "rubberised-bitumen"), false,
                    "plasticiser moves from one into the other: the PVC turns brittle and the bitumen runs", TAPES),
            harm(words("rubberised-bitumen"), words("epdm", "plasticised-sealant"), false,
                    "oils move into the bitumen, which turns soft and bleeds, the faster the hotter it is", TAPES),
            harm(words("soft-pvc"), words("extruded-polystyrene"), false, "plasticiser moves into the polystyrene and the PVC turns brittle",
                    new Source("Pedrosa, del R\u00edo and Fonseca, Materiales de Construcci\u00f3n", "", "", Known.PUBLISHED_SECONDARY)));

    public NamedPair {
        attacked = Set.copyOf(attacked);
        by = Set.copyOf(by);
    }

    private static Set<String> words(String... all) {
        return Set.copyOf(Arrays.asList(all));
    }

    private static NamedPair harmless(String one, String other, String says, Source source) {
        return new NamedPair(words(one), other.isEmpty() ? Set.of() : words(other), true, true, says, source);
    }

    private static NamedPair harm(Set<String> attacked, Set<String> by, boolean runOff, String says, Source source) {
        return new NamedPair(attacked, by, false, runOff, says, source);
    }

    private static NamedPair harm(String attacked, Set<String> by, boolean runOff, String says, Source source) {
        return harm(words(attacked), by, runOff, says, source);
    }

    /** Whether the first of two words is the attacked one here; with no other named, any metal is the other. */
    public boolean attacks(String first, String second) {
        return attacked.contains(first) && (by.isEmpty() ? Metal.find(second).isPresent() : by.contains(second));
    }

    /** The pair that these two words make, either way round. */
    public static Optional<NamedPair> find(String one, String other) {
        return ALL.stream().filter(p -> p.attacks(one, other) || p.attacks(other, one)).findFirst();
    }
}
