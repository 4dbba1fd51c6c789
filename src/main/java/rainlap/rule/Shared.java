package rainlap.rule;

import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Supplier;

/** What several rules work out from the same evidence: found once, by whichever of them asks first. */
public final class Shared {
    private final Map<Object, Object> known = new ConcurrentHashMap<>();

    /**
     * @param what one key for one thing: who asks with it is given what was found first
     * @param find does not ask for anything shared itself
     */
    @SuppressWarnings("unchecked")
    public <T> T of(Object what, Supplier<T> find) {
        return (T) known.computeIfAbsent(what, k -> find.get());
    }
}
