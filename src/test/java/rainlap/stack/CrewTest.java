package rainlap.stack;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.locks.LockSupport;
import java.util.function.Supplier;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class CrewTest {
    private static final Crew TWO = Crew.of(2, 20_000);

    @Test void runsComeBackInTheOrderOfTheList() {
        List<Integer> items = IntStream.range(0, 1_001).boxed().toList();
        for (Crew crew : List.of(Crew.ALONE, TWO)) {
            assertEquals(items, crew.inRuns(items, List::copyOf).stream().flatMap(List::stream).toList());
            assertEquals(List.of(), crew.inRuns(List.<Integer>of(), List::copyOf).stream().flatMap(List::stream).toList());
            assertEquals(items.stream().filter(i -> i % 3 == 0).toList(), crew.gather(items, run -> run.stream().filter(i -> i % 3 == 0).toList()));
        }
    }

    @Test void twoThreadsWorkAtOnce() {
        Supplier<Boolean> waitsForTheOther = meeting(20_000);
        assertEquals(List.of(true, true), TWO.all(List.of(waitsForTheOther, waitsForTheOther)));
    }

    /** Whichever of them handed out both, and also when he has been waiting for long. Often, for a pool that lets a thread sleep on does so once in some hundred times. */
    @Test void whoIsDoneHelpsWithThePartsOfTheOther() {
        for (int i = 0; i < 300; i++) {
            CountDownLatch begun = new CountDownLatch(1);
            Supplier<Boolean> waitsForTheOther = meeting(5_000);
            Supplier<Boolean> quick = () -> comes(begun, 5_000);
            Supplier<Boolean> handsOut = () -> {
                begun.countDown();
                LockSupport.parkNanos(3_000_000);
                return !TWO.all(List.of(waitsForTheOther, waitsForTheOther)).contains(false);
            };
            assertEquals(List.of(true, true), TWO.all(i % 2 == 0 ? List.of(quick, handsOut) : List.of(handsOut, quick)), "round " + i);
        }
    }

    /** A part that two threads must do at once: false where nobody else has come in time. */
    private static Supplier<Boolean> meeting(int millis) {
        CountDownLatch both = new CountDownLatch(2);
        return () -> {
            both.countDown();
            return comes(both, millis);
        };
    }

    private static boolean comes(CountDownLatch latch, int millis) {
        try {
            return latch.await(millis, TimeUnit.MILLISECONDS);
        } catch (InterruptedException e) {
            throw new IllegalStateException(e);
        }
    }

    @Test void partsThatHandOutPartsGetNoThreadsOfTheirOwn() {
        Set<Thread> seen = ConcurrentHashMap.newKeySet();
        List<Supplier<Integer>> inner = IntStream.range(0, 40).<Supplier<Integer>>mapToObj(i -> () -> {
            seen.add(Thread.currentThread());
            return i;
        }).toList();
        List<Supplier<List<Integer>>> outer = IntStream.range(0, 40).<Supplier<List<Integer>>>mapToObj(i -> () -> TWO.all(inner)).toList();
        List<Integer> each = IntStream.range(0, 40).boxed().toList();
        TWO.all(outer).forEach(got -> assertEquals(each, got));
        assertTrue(seen.size() <= 2, seen.toString());
    }

    /** One of the two threads waits all the while, so that there is but one order. */
    @Test void whatCanWaitIsDoneAfterWhatCannot() {
        List<String> done = new CopyOnWriteArrayList<>();
        CountDownLatch over = new CountDownLatch(1);
        Supplier<Boolean> begins = () -> done.add("can wait, first") && TWO.all(List.of(() -> done.add("cannot, first"), () -> done.add("cannot, second"))).size() == 2;
        Supplier<Boolean> handsOut = () -> {
            TWO.aside().all(List.of(begins, () -> done.add("can wait, second")));
            over.countDown();
            return true;
        };
        assertEquals(List.of(true, true), TWO.all(List.of(() -> comes(over, 20_000), handsOut)));
        assertEquals(List.of("can wait, first", "cannot, first", "cannot, second", "can wait, second"), done);
        assertSame(Crew.ALONE, Crew.ALONE.aside());
    }

    @Test void aSmallWallIsDoneOnTheCallersThread() {
        assertSame(Crew.ALONE, Crew.of(2, 19_999));
        assertSame(Crew.ALONE, Crew.of(1, 1_000_000));
        assertEquals(List.of(Thread.currentThread()), Crew.ALONE.all(List.of(Thread::currentThread)));
    }

    @Test void aFailureComesBackToTheCaller() {
        Supplier<Integer> fails = () -> {
            throw new IllegalStateException("broken");
        };
        for (Crew crew : List.of(Crew.ALONE, TWO)) {
            RuntimeException e = assertThrows(RuntimeException.class, () -> crew.all(List.of(() -> 1, fails)));
            assertTrue(e.toString().contains("broken"));
        }
    }
}
