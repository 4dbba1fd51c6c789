package rainlap.material;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** The metals that pieces of a wall are made of or faced with. What {@code metal} of a file says is looked up here by its words. */
public enum Metal {
    MAGNESIUM("magnesium"),
    ZINC("zinc"),
    /** Steel with a plain zinc coating: what touches others is the zinc. */
    GALVANISED("galvanised steel", "galvanized steel", "zinc-coated steel"),
    ALUMINIUM_ZINC("aluminium-zinc coated steel", "aluminum-zinc coated steel"),
    CADMIUM("cadmium"),
    ALUMINIUM("aluminium", "aluminum"),
    CAST_ALUMINIUM("cast aluminium", "cast aluminum"),
    HARD_ANODISED("hard-anodised aluminium", "hard-anodized aluminum"),
    STEEL("steel", "carbon steel"),
    IRON("iron"),
    CAST_IRON("cast iron"),
    LEAD("lead"),
    TIN("tin"),
    BRASS("brass"),
    BRONZE("bronze"),
    COPPER("copper"),
    NICKEL("nickel"),
    STAINLESS("stainless steel"),
    STAINLESS_316("stainless steel 316"),
    TITANIUM("titanium"),
    SILVER("silver"),
    GRAPHITE("graphite"),
    GOLD("gold");

    private final String word;
    private final List<String> also;

    Metal(String word, String... also) {
        this.word = word;
        this.also = List.of(also);
    }

    /** The word in files and sentences. */
    public String word() {
        return word;
    }

    /** Whether it rusts or dissolves in rain where nothing covers it. */
    public boolean corrodesBare() {
        return this == STEEL || this == IRON || this == CAST_IRON || this == MAGNESIUM;
    }

    /** The metal of these words, capital letters or not. */
    public static Optional<Metal> find(String words) {
        String plain = words.strip().toLowerCase(Locale.ROOT);
        return Arrays.stream(values()).filter(m -> m.word.equals(plain) || m.also.contains(plain)).findFirst();
    }
}
