package rainlap.water;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.function.Supplier;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import rainlap.material.Edge;
import rainlap.stack.Crew;

/**
 * From which cells water may get onto the frame without a further failure: rather a few too many than one too few. Found from the frame backwards, over the lines that the water may have
 * crossed: what parts two cells is known from either side. Water in the open is left out, for rain is there already.
 *
 * <p>Water that took one failure is followed there alone: nobody asks where else it gets. Upwards a cell is crossed by what is driven only, if it is no higher than the rise or something begins
 * above; sideways, if it is no wider than the creep or something begins beside, or along a lower line that holds water, or a ledge. On sills and heads and over sloped lines all of it is taken
 * to pass, and whatever borders on a pipe leads to the frame.
 */
final class Upstream {
    /** Lines are known to within a grid unit. */
    private static final double NEAR = 1;

    private final int strip;
    private final Drive drive;
    private final Deque<Cell> waiting = new ArrayDeque<>();
    /** Of other strips. */
    private final List<Cell> beyond = new ArrayList<>();

    private Upstream(int strip, Drive drive) {
        this.strip = strip;
        this.drive = drive;
    }

    /** Lets each cell know whether it leads to the frame. */
    static void find(Strips strips, Drive drive, Crew crew) {
        List<Upstream> all = IntStream.range(0, strips.count()).mapToObj(i -> new Upstream(i, drive)).toList();
        crew.all(all.stream().<Supplier<Boolean>>map(u -> () -> u.begin(strips.strip(u.strip).atFrame())).toList());
        List<Cell> crossed = all.stream().flatMap(Upstream::crossed).toList();
        while (!crossed.isEmpty()) {
            crossed.forEach(c -> all.get(c.strip).reached(c));
            crew.all(all.stream().<Supplier<Boolean>>map(u -> u::goOn).toList());
            crossed = all.stream().flatMap(Upstream::crossed).toList();
        }
    }

    /** Whether it leads to the frame whatever it borders on. */
    static boolean isAtFrame(Cell c) {
        return c.isOnFrame() || c.pipe >= 0 || c.hasOddSide;
    }

    private boolean begin(List<Cell> atFrame) {
        atFrame.forEach(this::reached);
        return goOn();
    }

    private Stream<Cell> crossed() {
        List<Cell> all = List.copyOf(beyond);
        beyond.clear();
        return all.stream();
    }

    private void reached(Cell c) {
        if (!c.leads && !c.isOpen()) {
            c.leads = true;
            waiting.push(c);
        }
    }

    private boolean goOn() {
        while (!waiting.isEmpty()) {
            waiting.pop().eachCrossing(this::from);
        }
        return true;
    }

    /** From the cells beyond a line, against the water. */
    private void from(Crossing x) {
        for (int i = 0; i < x.count(); i++) {
            Cell c = x.to(i);
            if (c.strip != strip) {
                if (crosses(c, x)) {
                    beyond.add(c);
                }
            } else if (!c.leads && crosses(c, x)) {
                reached(c);
            }
        }
    }

    /** Whether water gets out of a cell for nothing, and into that whose crossing leads back to it. */
    private boolean crosses(Cell c, Crossing back) {
        int over = back.cell.over;
        if (c.isOpen() || c.over != over && back.coat().isAdhered(over)) {
            return false;
        }
        boolean begins = c.over != over && !back.there().holds(over);
        return (begins || passes(c, back)) && isFree(c, back, begins);
    }

    /** Sealed edges cost one: that which it gets under, or the one it leaves by. What is driven over a sloped line may face another edge than what falls. */
    private static boolean isFree(Cell c, Crossing back, boolean begins) {
        Coat coat = back.coat();
        if (back instanceof Seam s && !s.line().isLevel()) {
            return true;
        }
        boolean ends = c.over != back.cell.over && !coat.isAdhered(c.over) && !back.here().holds(c.over);
        Edge facing = back instanceof Flank f ? f.right ? Edge.RIGHT : Edge.LEFT : Crossing.opposite(back.facing());
        return !(begins && !coat.isAdhered(back.cell.over) && coat.seals(back.cell.over, facing)) && !(ends && coat.seals(c.over, Crossing.opposite(facing)));
    }

    /** Whether water runs along the lower line of a cell to one of its ends. */
    private static boolean holdsAt(Cell c, long x) {
        for (Seam s : c.down) {
            if (s.from <= x && x <= s.to && s.isHeld()) {
                return true;
            }
        }
        return false;
    }

    private boolean passes(Cell c, Crossing back) {
        if (c.ground.isSill() || c.ground.isHead()) {
            return true;
        }
        if (back instanceof Flank f) {
            boolean isLevel = c.lower.isLevel() && c.upper.isLevel();
            return !isLevel || c.x1 - c.x0 <= drive.creep() + NEAR || f.coat().hasLedge(c.on) || f.from + f.shift() <= c.lower.ay() + NEAR && holdsAt(c, f.beyondX());
        }
        Seam s = (Seam) back;
        return s.up || !s.line().isLevel() || Math.min(c.heightAt(c.x0), c.heightAt(c.x1)) <= drive.rise() + NEAR;
    }
}
