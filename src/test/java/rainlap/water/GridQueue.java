package rainlap.water;

import java.util.Arrays;

/** What is still to be followed at one cost: a state, how the water moves, how far it may still be driven. Last in, first out: order does not matter. */
final class GridQueue {
    private int[] states = new int[1024];
    private int[] froms = new int[1024];
    private int[] modes = new int[1024];
    private long[] lefts = new long[1024];
    private int size;

    void add(int state, int from, int mode, long left) {
        if (size == states.length) {
            states = Arrays.copyOf(states, 2 * size);
            froms = Arrays.copyOf(froms, 2 * size);
            modes = Arrays.copyOf(modes, 2 * size);
            lefts = Arrays.copyOf(lefts, 2 * size);
        }
        states[size] = state;
        froms[size] = from;
        modes[size] = mode;
        lefts[size++] = left;
    }

    boolean next() {
        return --size >= 0 || (size = 0) > 0;
    }

    int state() {
        return states[size];
    }

    int from() {
        return froms[size];
    }

    int mode() {
        return modes[size];
    }

    long left() {
        return lefts[size];
    }
}
