package rainlap.stack;

import java.util.function.Supplier;

/** Something to be found out by whichever thread of a {@link Crew} comes to it, and known from then on. */
public final class Found<T> implements Supplier<Object> {
    private final Supplier<T> work;
    private T found;

    public Found(Supplier<T> work) {
        this.work = work;
    }

    @Override
    public Object get() {
        found = work.get();
        return found;
    }

    /** What was found; null before. */
    public T found() {
        return found;
    }
}
