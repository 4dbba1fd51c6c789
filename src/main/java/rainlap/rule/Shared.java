package rainlap.rule;

import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Supplier;

/** What several rules work out from the same evidence: found once, by whichever of them asks first. */
public final class Shared {
    private final Map<Object, Answer> known = new ConcurrentHashMap<>();

    /** What was found, null before. Whoever asks meanwhile waits for this one alone, so that finding it may ask for something else that is shared. */
    private static final class Answer {
        private Object found;

        synchronized Object or(Supplier<?> find) {
            if (found == null) {
                found = find.get();
            }
            return found;
        }
    }

    /**
     * @param what one key for one thing: who asks with it is given what was found first
     * @param find does not ask for that same thing, itself or by asking for another
     */
    @SuppressWarnings("unchecked")
    public <T> T of(Object what, Supplier<T> find) {
        return (T) known.computeIfAbsent(what, k -> new Answer()).or(find);
    }
}
