package rainlap.file;

import java.util.Collection;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;

/** The ids of one list of the file, each once, with what they name. */
final class Ids<T> {
    private final String noun;
    private final Map<String, Integer> places = new LinkedHashMap<>();
    private final Map<String, T> things = new LinkedHashMap<>();

    /** @param noun what the list holds: {@code piece} */
    Ids(String noun) {
        this.noun = noun;
    }

    /** What messages call an entry: by its id if it has one, else by its number. */
    Supplier<String> label(Value v, int number) {
        return () -> {
            if (v instanceof Value.Keys keys) {
                for (Value.Member m : keys.members()) {
                    if (m.name().equals("id") && m.value() instanceof Value.Text t && !t.text().isBlank()) {
                        return noun + " " + Quoted.text(t.text());
                    }
                }
            }
            return noun + " " + number;
        };
    }

    /** Reads and claims the id of an entry. */
    Optional<String> claim(Fields f) {
        Optional<Value.Text> id = f.required("id", "\"…\"").flatMap(v -> f.id(v, "id"));
        if (id.isEmpty()) {
            return Optional.empty();
        }
        Integer first = places.putIfAbsent(id.get().text(), id.get().at());
        if (first != null) {
            f.wrong(id.get().at(), "this id is taken", "the other is on " + f.problems().line(first) + "; every " + noun
                    + " has an id of its own");
            return Optional.empty();
        }
        return Optional.of(id.get().text());
    }

    /** Says what a claimed id names. */
    void put(String id, T thing) {
        things.put(id, thing);
    }

    /** Whether the id stands in the file, be it that what it names is wrong. */
    boolean isKnown(String id) {
        return places.containsKey(id);
    }

    Optional<T> find(String id) {
        return Optional.ofNullable(things.get(id));
    }

    Collection<String> all() {
        return Collections.unmodifiableSet(places.keySet());
    }

    Map<String, Integer> places() {
        return places;
    }
}
