package rainlap.practice;

import java.util.Collection;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** A named set of limits. Immutable. */
public final class Practice {
    private final String id;
    private final String title;
    private final String about;
    private final List<String> facts;
    private final Map<Limit, LimitValue> own;
    private final Optional<Practice> fallback;

    private Practice(Text text, Collection<LimitValue> values, Optional<Practice> fallback) {
        this.id = text.id();
        this.title = text.title();
        this.about = text.about();
        this.facts = text.facts();
        this.own = byLimit(values);
        this.fallback = fallback;
    }

    /** The words about a practice, apart from its values. */
    record Text(String id, String title, String about, List<String> facts) {
        Text {
            if (id.isBlank() || title.isBlank() || about.isBlank()) {
                throw new IllegalArgumentException("a practice needs an id, a title and a word about it");
            }
            facts = List.copyOf(facts);
        }
    }

    /**
     * The practice that others fall back on.
     *
     * @throws IllegalArgumentException if a limit has no value or two
     */
    static Practice complete(Text text, Collection<LimitValue> values) {
        Practice practice = new Practice(text, values, Optional.empty());
        String missing = Stream.of(Limit.values()).filter(practice::isSilentOn).map(Limit::id).collect(Collectors.joining(", "));
        if (!missing.isEmpty()) {
            throw new IllegalArgumentException(text.id() + " says nothing on " + missing);
        }
        return practice;
    }

    /**
     * A practice that may be silent on some limits.
     *
     * @throws IllegalArgumentException if a limit has two values
     */
    static Practice of(Text text, Collection<LimitValue> values, Practice fallback) {
        return new Practice(text, values, Optional.of(fallback));
    }

    /**
     * A practice of the user's own, which says what it differs in from another.
     *
     * @throws IllegalArgumentException if a limit has two values
     */
    public static Practice own(String id, String title, String about, Collection<LimitValue> values, Practice base) {
        return new Practice(new Text(id, title, about, List.of()), values, Optional.of(base));
    }

    private static Map<Limit, LimitValue> byLimit(Collection<LimitValue> values) {
        Map<Limit, LimitValue> map = new EnumMap<>(Limit.class);
        for (LimitValue value : values) {
            if (map.put(value.limit(), value) != null) {
                throw new IllegalArgumentException(value.limit().id() + " is given twice");
            }
        }
        return map;
    }

    /** The name in files and on the command line: {@code au-abcb-2022}. */
    public String id() {
        return id;
    }

    /** The document's name with edition, for a heading. */
    public String title() {
        return title;
    }

    /** One or two sentences: what it holds and where it stops. */
    public String about() {
        return about;
    }

    /** What builders hold to whatever the numbers: common practice without a source. Empty for most practices. */
    public List<String> facts() {
        return facts;
    }

    /** What is asked for a limit: by this practice, or by {@code common} where it is silent. */
    public LimitValue get(Limit limit) {
        LimitValue value = own.get(limit);
        return value != null ? value : fallback.orElseThrow().get(limit);
    }

    /** Whether this practice itself says nothing on a limit. */
    public boolean isSilentOn(Limit limit) {
        return !own.containsKey(limit);
    }

    /** What this practice itself says, in the order of {@link Limit}. */
    public List<LimitValue> ownValues() {
        return List.copyOf(own.values());
    }

    @Override
    public String toString() {
        return id;
    }
}
