package rainlap.water;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Queue;

/**
 * What is still to be done at one cost in one strip of a wall, whose cells have numbers from the top down. Some hundred cells of about one height make a
 * tier. Tiers are done from the top down, so that what belongs together is done together; in each the water that has come, higher cells first, so that most
 * of what comes to a cell has come by then, and after that the drives.
 */
final class Agenda {
    private static final int TIER = 512;

    private final BitSet wetted = new BitSet();
    private final List<Queue<Driven>> drives = new ArrayList<>();
    private int top;

    /** Water has come to a cell. */
    void add(int cell) {
        wetted.set(cell);
        top = Math.min(top, cell / TIER);
    }

    void add(int cell, Driven drive) {
        int tier = cell / TIER;
        while (drives.size() <= tier) {
            drives.add(new ArrayDeque<>(4));
        }
        drives.get(tier).add(drive);
        top = Math.min(top, tier);
    }

    /** The next cell to which water has come before any drive is to be made; -1 if a drive is next, or nothing. */
    int nextCell() {
        int next = wetted.nextSetBit(top * TIER);
        while (top < drives.size() && drives.get(top).isEmpty() && (next < 0 || next / TIER > top)) {
            top++;
        }
        boolean before = next >= 0 && (next / TIER == top || top >= drives.size());
        if (before) {
            top = next / TIER;
            wetted.clear(next);
        }
        return before ? next : -1;
    }

    /** The next drive of this tier; null if nothing waits any more. */
    Driven nextDrive() {
        return top < drives.size() ? drives.get(top).poll() : null;
    }
}
