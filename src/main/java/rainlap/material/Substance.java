package rainlap.material;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** What a material that is no metal consists of, or the adhesive of a tape: as far as it matters to what lies against it. */
public enum Substance {
    TIMBER("timber", "timber"),
    COPPER_TREATED_TIMBER("copper-treated-timber", "timber treated with copper"),
    FIBRE_CEMENT("fibre-cement", "fibre-cement"),
    HARDBOARD("hardboard", "hardboard"),
    MORTAR("mortar", "cement mortar or render"),
    BITUMEN("bitumen", "bitumen"),
    RUBBERISED_BITUMEN("rubberised-bitumen", "rubberised bitumen"),
    BUTYL("butyl", "butyl"),
    ACRYLIC("acrylic", "acrylic adhesive"),
    SILICONE("silicone", "silicone"),
    PLASTICISED_SEALANT("plasticised-sealant", "plasticised sealant"),
    EPDM("epdm", "EPDM rubber"),
    SOFT_PVC("soft-pvc", "soft PVC"),
    POLYOLEFIN("polyolefin", "polyolefin"),
    EXTRUDED_POLYSTYRENE("extruded-polystyrene", "extruded polystyrene");

    private final String word;
    private final String inWords;

    Substance(String word, String inWords) {
        this.word = word;
        this.inWords = inWords;
    }

    /** The word in files. */
    public String word() {
        return word;
    }

    /** The name in a sentence. */
    public String inWords() {
        return inWords;
    }

    /** Whether it is wood, whatever it was treated with. */
    public boolean isTimber() {
        return this == TIMBER || this == COPPER_TREATED_TIMBER;
    }

    /** The words in files, in order. */
    public static List<String> words() {
        return Arrays.stream(values()).map(Substance::word).toList();
    }

    /** The substance whose {@link #word()} is exactly {@code word}. */
    public static Optional<Substance> find(String word) {
        return Arrays.stream(values()).filter(s -> s.word.equals(word)).findFirst();
    }
}
