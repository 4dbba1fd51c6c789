package rainlap.water;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.List;
import java.util.PriorityQueue;
import java.util.Queue;

/**
 * What is still to be done at one cost in one strip of a wall: tier by tier from the top down, so that what belongs together is done together, and in each
 * the gaps to which water has come before the drives.
 */
final class Agenda {
    private final List<Tier> tiers = new ArrayList<>();
    private int top;
    private long count;

    private static final class Tier {
        private final Queue<Due> pools = new PriorityQueue<>();
        private final Queue<Driven> drives = new ArrayDeque<>();
    }

    /** A gap that water has come to; higher ones are looked at first, so that most of what comes to a gap has come by then. */
    private record Due(double height, long number, Pool pool) implements Comparable<Due> {
        @Override
        public int compareTo(Due o) {
            int byHeight = Double.compare(o.height, height);
            return byHeight != 0 ? byHeight : Long.compare(number, o.number);
        }
    }

    void add(Pool pool) {
        Cell c = pool.cell;
        tier(c).pools.add(new Due(c.height(), count++, pool));
    }

    void add(Driven drive) {
        tier(drive.cell()).drives.add(drive);
    }

    private Tier tier(Cell c) {
        while (tiers.size() <= c.tier) {
            tiers.add(new Tier());
        }
        top = Math.min(top, c.tier);
        return tiers.get(c.tier);
    }

    /** Goes on to the highest tier where something waits; false if there is none. */
    boolean goesOn() {
        while (top < tiers.size() && tiers.get(top).pools.isEmpty() && tiers.get(top).drives.isEmpty()) {
            top++;
        }
        return top < tiers.size();
    }

    /** The highest gap of this tier that water has come to, or null. */
    Pool nextPool() {
        Due due = tiers.get(top).pools.poll();
        return due == null ? null : due.pool;
    }

    Driven nextDrive() {
        return tiers.get(top).drives.remove();
    }
}
