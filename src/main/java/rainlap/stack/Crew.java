package rainlap.stack;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ForkJoinPool;
import java.util.concurrent.ForkJoinTask;
import java.util.concurrent.RecursiveTask;
import java.util.concurrent.locks.LockSupport;
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
        return ForkJoinTask.getPool() == pool ? shared(parts) : pool.submit(() -> Crew.<T>shared(parts)).join();
    }

    private static <T> List<T> shared(List<? extends Supplier<? extends T>> parts) {
        List<Part<T>> all = parts.stream().map(p -> new Part<T>(p)).toList();
        all.forEach(Part::fork);
        all.forEach(Part::await);
        return all.stream().map(Part::join).toList();
    }

    /** Who waits for one does others meanwhile, those too that it hands out: a thread that only waited would be lost for as long as they take. */
    private static final class Part<T> extends RecursiveTask<T> {
        private static final long serialVersionUID = 1;
        /** How long there may be something to do that nobody has looked for. */
        private static final long IDLE_NANOS = 50_000;

        private final transient Supplier<? extends T> work;

        Part(Supplier<? extends T> work) {
            this.work = work;
        }

        @Override
        protected T compute() {
            return work.get();
        }

        void await() {
            while (!isDone()) {
                ForkJoinTask<?> other = pollTask();
                if (other == null) {
                    LockSupport.parkNanos(IDLE_NANOS);
                } else {
                    other.quietlyInvoke();
                }
            }
        }
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
