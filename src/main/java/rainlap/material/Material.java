package rainlap.material;

import java.util.Collections;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;
import rainlap.source.Source;

/**
 * What a piece is made of.
 *
 * @param id the name that pieces use; lower case with hyphens in the built-in catalogue
 * @param kind what it is
 * @param name plain name for lists
 * @param sizes what it is sold or set out in
 * @param profile the shape across it
 * @param durability what wears it
 * @param bond how its pieces hold, where they do not say so themselves
 * @param origins file key to who says that number, sorted by key; empty for materials of a file
 */
public record Material(
        String id,
        MaterialKind kind,
        String name,
        Sizes sizes,
        Profile profile,
        Durability durability,
        Bond bond,
        Map<String, Source> origins) {
    /** @throws IllegalArgumentException if id or name is blank */
    public Material {
        Objects.requireNonNull(kind, "kind");
        Objects.requireNonNull(sizes, "sizes");
        Objects.requireNonNull(profile, "profile");
        Objects.requireNonNull(durability, "durability");
        Objects.requireNonNull(bond, "bond");
        if (id.isBlank() || name.isBlank()) {
            throw new IllegalArgumentException("a material needs an id and a name");
        }
        origins = Collections.unmodifiableMap(new TreeMap<>(origins));
    }

    /** A material of which only the kind is known: its name is its id, it holds as its kind does. */
    public static Material of(String id, MaterialKind kind) {
        return new Material(id, kind, id, Sizes.NONE, Profile.NONE, Durability.NONE, kind.defaultBond(), Map.of());
    }

    /** A copy with another name. */
    public Material withName(String newName) {
        return new Material(id, kind, newName, sizes, profile, durability, bond, origins);
    }

    /** A copy with other sizes. */
    public Material withSizes(Sizes newSizes) {
        return new Material(id, kind, name, newSizes, profile, durability, bond, origins);
    }

    /** A copy with another profile. */
    public Material withProfile(Profile newProfile) {
        return new Material(id, kind, name, sizes, newProfile, durability, bond, origins);
    }

    /** A copy with another durability. */
    public Material withDurability(Durability newDurability) {
        return new Material(id, kind, name, sizes, profile, newDurability, bond, origins);
    }

    /** A copy that holds otherwise. */
    public Material withBond(Bond newBond) {
        return new Material(id, kind, name, sizes, profile, durability, newBond, origins);
    }

    /** A copy whose numbers come from elsewhere. */
    public Material withOrigins(Map<String, Source> newOrigins) {
        return new Material(id, kind, name, sizes, profile, durability, bond, newOrigins);
    }

    /** The barrier its pieces belong to. */
    public Layer layer() {
        return kind.layer();
    }

    /** The width of a run that gives none itself, in mm. */
    public OptionalDouble widthMm() {
        return sizes.widthMm();
    }

    /** Who says the number under a file key such as {@code uv_days}. */
    public Optional<Source> originOf(String key) {
        return Optional.ofNullable(origins.get(key));
    }
}
