package rainlap.stack;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import java.util.concurrent.PriorityBlockingQueue;
import java.util.concurrent.ThreadPoolExecutor;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicLong;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.stream.IntStream;

/**
 * How many threads share the work of a check. Results come in the order of the parts, whoever did them and whenever: one thread and
 * several give the same. The parts must not depend on one another.
 */
public final class Crew {
    /** Everything on the caller's own thread. */
    public static final Crew ALONE = new Crew(1, null, 0);
    /** Below this many pieces, starting threads costs more than it saves. */
    private static final int WORTH_SHARING = 20_000;
    /** Parts a thread: enough that none waits long for another. */
    private static final int PARTS = 16;
    /** How long who waits may not see that what he waits for is done. */
    private static final long IDLE_NANOS = 50_000;
    /** How long a thread with nothing to do lives on. */
    private static final long KEPT_SECONDS = 5;

    /** Parts that come first are begun first. */
    private static final AtomicLong HANDED_OUT = new AtomicLong();

    private final int threads;
    /** All but the caller's own thread; null where there is no other. */
    private final ThreadPoolExecutor others;
    /** Who hands out parts that can wait comes after who does not. */
    private final int after;

    private Crew(int threads, ThreadPoolExecutor others, int after) {
        this.threads = threads;
        this.others = others;
        this.after = after;
    }

    private static Crew of(int threads) {
        ThreadPoolExecutor others = new ThreadPoolExecutor(threads - 1, threads - 1, KEPT_SECONDS, TimeUnit.SECONDS, new PriorityBlockingQueue<>(), Crew::helper);
        others.allowCoreThreadTimeOut(true);
        return new Crew(threads, others, 0);
    }

    /** The same for work that can wait: its parts are done where nobody has others to do, as while one thread joins what several found. */
    public Crew aside() {
        return threads == 1 ? this : new Crew(threads, others, after + 1);
    }

    /** A part of somebody's work. */
    private static final class Part<T> extends FutureTask<T> implements Comparable<Part<?>> {
        private final int after;
        private final long number;

        Part(Supplier<? extends T> work, int after, long number) {
            super(work::get);
            this.after = after;
            this.number = number;
        }

        @Override
        public int compareTo(Part<?> o) {
            return after != o.after ? Integer.compare(after, o.after) : Long.compare(number, o.number);
        }
    }

    private static Thread helper(Runnable work) {
        Thread t = new Thread(work, "crew");
        t.setDaemon(true);
        return t;
    }

    /** Of at most so many threads, for a wall of so many pieces. */
    public static Crew of(int threads, int pieces) {
        return threads < 2 || pieces < WORTH_SHARING ? ALONE : of(threads);
    }

    /** Does every part; a part may hand out parts of its own. */
    public <T> List<T> all(List<? extends Supplier<? extends T>> parts) {
        if (threads == 1) {
            return parts.stream().<T>map(Supplier::get).toList();
        }
        List<Part<T>> all = parts.stream().map(p -> new Part<T>(p, after, HANDED_OUT.getAndIncrement())).toList();
        all.forEach(others::execute);
        return all.stream().map(this::done).toList();
    }

    /** Who waits for one part does others meanwhile, also those that somebody hands out then: a thread that only waited would be lost for as long as they take. */
    private <T> T done(FutureTask<T> part) {
        try {
            while (!part.isDone()) {
                Runnable other = others.getQueue().poll(IDLE_NANOS, TimeUnit.NANOSECONDS);
                if (other != null) {
                    other.run();
                }
            }
            return part.get();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException("somebody broke off the work", e);
        } catch (ExecutionException e) {
            if (e.getCause() instanceof Error error) {
                throw error;
            }
            throw (RuntimeException) e.getCause();
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

    /** The same where several may come of each run: all of them, in the list's order. */
    public <A, B> List<B> gather(List<A> items, Function<List<A>, List<B>> work) {
        return inRuns(items, work).stream().flatMap(List::stream).toList();
    }
}
