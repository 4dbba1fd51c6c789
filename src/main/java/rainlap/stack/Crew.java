package rainlap.stack;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ForkJoinPool;
import java.util.concurrent.ForkJoinTask;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.stream.IntStream;

/**
 * How many threads share the work of a check. Results come in the order of the parts, whoever did them and whenever: one thread and
 * several give the same. The parts must not depend on one another.
 */
public final class Crew {
    /** Everything on the caller's own thread. */
    public static final Crew ALONE = new Crew(1);
    /** Below this many pieces, starting threads costs more than it saves. */
    private static final int WORTH_SHARING = 20_000;
    /** Parts a thread: enough that none waits long for another. */
    private static final int PARTS = 16;

    private final int threads;
    /** Its threads end by themselves when nothing has been done for a while. */
    private final ForkJoinPool pool;

    private Crew(int threads) {
        this.threads = threads;
        this.pool = threads == 1 ? null : new ForkJoinPool(threads);
    }

    /** Of at most so many threads, for a wall of so many pieces. */
    public static Crew of(int threads, int pieces) {
        return threads < 2 || pieces < WORTH_SHARING ? ALONE : new Crew(threads);
    }

    /** Does every part; a part may hand out parts of its own. */
    public <T> List<T> all(List<? extends Supplier<? extends T>> parts) {
        if (threads == 1) {
            return parts.stream().<T>map(Supplier::get).toList();
        }
        return ForkJoinTask.getPool() == pool ? shared(parts) : pool.submit(() -> this.<T>shared(parts)).join();
    }

    /** As tasks that are joined one by one: who waits for one helps with the parts it hands out, which a parallel stream's threads do not. */
    private <T> List<T> shared(List<? extends Supplier<? extends T>> parts) {
        List<ForkJoinTask<T>> tasks = parts.stream().map(p -> ForkJoinTask.<T>adapt(p::get)).toList();
        return ForkJoinTask.invokeAll(tasks).stream().map(ForkJoinTask::join).toList();
    }

    /** Cuts a list into runs of neighbours, does each, and hands back what came of them in the list's order. */
    public <A, B> List<B> inRuns(List<A> items, Function<List<A>, B> work) {
        int parts = threads == 1 ? 1 : Math.min(items.size(), PARTS * threads);
        List<Supplier<B>> runs = new ArrayList<>();
        IntStream.range(0, parts).forEach(k -> runs.add(() -> work.apply(
                items.subList((int) ((long) items.size() * k / parts), (int) ((long) items.size() * (k + 1) / parts)))));
        return all(runs);
    }
}
