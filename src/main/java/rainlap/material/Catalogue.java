package rainlap.material;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** Materials by id. Immutable. */
public final class Catalogue {
    private final Map<String, Material> byId;

    private Catalogue(Map<String, Material> byId) {
        this.byId = Collections.unmodifiableMap(byId);
    }

    /** Loads on first use; a fault in the shipped data stops the program at once. */
    private static final class Shipped {
        static final Catalogue BUILT_IN = of(MaterialReader.readAll());
    }

    /** The generic materials that ship with the product. */
    public static Catalogue builtIn() {
        return Shipped.BUILT_IN;
    }

    /**
     * A catalogue of exactly these materials.
     *
     * @throws IllegalArgumentException if two share an id
     */
    public static Catalogue of(Collection<Material> materials) {
        return new Catalogue(Map.of()).with(List.copyOf(materials));
    }

    /**
     * This catalogue and more, such as the materials of a file.
     *
     * @throws IllegalArgumentException if an id is taken already; ask {@link #find} first for a better message
     */
    public Catalogue with(List<Material> more) {
        Map<String, Material> all = new TreeMap<>(byId);
        for (Material material : more) {
            if (all.put(material.id(), material) != null) {
                throw new IllegalArgumentException("the material \"" + material.id() + "\" is there already");
            }
        }
        return new Catalogue(all);
    }

    /** The material with exactly this id. */
    public Optional<Material> find(String id) {
        return Optional.ofNullable(byId.get(id));
    }

    /** All of them, sorted by id. */
    public List<Material> all() {
        return List.copyOf(byId.values());
    }

    /** All of one kind, sorted by id. */
    public List<Material> ofKind(MaterialKind kind) {
        List<Material> found = new ArrayList<>();
        for (Material material : byId.values()) {
            if (material.kind() == kind) {
                found.add(material);
            }
        }
        return List.copyOf(found);
    }
}
