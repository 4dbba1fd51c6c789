package rainlap.water;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Predicate;
import rainlap.geom.Box;

/**
 * A part of one gap: a trapezoid between two plumb lines and two edges, all of whose places have the same layers next to that gap, on either side.
 * Its own frame is the one of its {@link Ground}: down is to lower y. It holds its water itself.
 */
final class Cell extends Pool {
    final Ground ground;
    final int x0;
    int x1;
    final Line lower;
    final Line upper;
    /** The piece its water lies on, or -1 for the frame. */
    final int on;
    /** The piece that lies over its water, or -1 where that is in the open. */
    final int over;
    /** How high its highest place is, as it compares with those of other surfaces, rounded up. */
    int height;
    /** The number of a pipe it borders, or -1, and where it does: along its lower line, its upper one, or at these edges. */
    int pipe = -1;
    boolean overPipe;
    boolean underPipe;
    List<PipeEdge> atPipe = List.of();
    /** Who follows its water, and its number there, from the top down. */
    int strip;
    int number;
    /** Whether it borders on something that does not know it from the other side. */
    boolean hasOddSide;
    /** Whether water may get from here to the frame without a further failure, or somebody asks for all that comes here. */
    boolean leads;
    /** Whether somebody asks for ways of most failures here. */
    boolean isAsked;
    /** Whether water begins anew here, once it leads where it did not before. */
    boolean beginsAgain;
    Seam[] up = Neighbours.NO_SEAMS;
    Seam[] down = Neighbours.NO_SEAMS;
    /** Where a jamb stands on it. */
    Seam[] feet = Neighbours.NO_SEAMS;
    Flank[] flanks = Neighbours.NO_FLANKS;
    /** Whether anything begins at its borders under which its water can be driven. */
    private boolean hasDrives;
    /** Whether water that falls gets anywhere from here but into the open, where rain is already. */
    private boolean letsDown;
    /** The rain that all that follows came with. */
    private int turn;
    /** At which costs water has settled on the frame: a bit each. */
    private byte onFrame;
    private Been been;
    private List<Wet> entries;
    private Wet rain;
    /** What runs here and has not run on yet. */
    List<Stream> flows = List.of();
    /** Whether its own rain has not run off yet. */
    boolean isDry = true;

    Cell(Ground ground, long x0, long x1, Line lower, Line upper, int on, int over) {
        this.ground = ground;
        this.x0 = Math.toIntExact(x0);
        this.x1 = Math.toIntExact(x1);
        this.lower = lower;
        this.upper = upper;
        this.on = on;
        this.over = over;
    }

    boolean isOpen() {
        return over < 0;
    }

    boolean isOnFrame() {
        return on < 0;
    }

    /** How far its upper line is above its lower one. */
    double heightAt(long x) {
        return upper.at(x) - lower.at(x);
    }

    /** The nearest x to this one between its ends. */
    long within(long x) {
        return Math.max(x0, Math.min(x1, x));
    }

    /** Whether it shares an area with a box of the wall. */
    boolean isIn(Box place) {
        long a = Math.max(x0, place.minX()), b = Math.min(x1, place.maxX());
        return ground.isWall() && a < b && Math.min(lower.at(a), lower.at(b)) < place.maxY() && place.minY() < Math.max(upper.at(a), upper.at(b));
    }

    /** It borders on something more. */
    void add(Crossing c) {
        if (c instanceof Seam s) {
            add(s);
        } else if (c instanceof Flank f) {
            hasDrives |= f.begins(0);
            flanks = Neighbours.with(flanks, f);
        }
    }

    /** A level line below is passed downwards only. */
    private void add(Seam s) {
        hasDrives |= s.begins(0) && (s.up || !lower.isLevel());
        if (s.up && s.ontoSill) {
            feet = Neighbours.with(feet, s);
        } else if (s.up) {
            up = Neighbours.with(up, s);
        } else {
            letsDown |= !s.to(0).isOpen();
            down = Neighbours.with(down, s);
        }
    }

    /** Its borders will not change any more. */
    void freeze() {
        up = Neighbours.trimmed(up);
        down = Neighbours.trimmed(down);
        feet = Neighbours.trimmed(feet);
        flanks = Neighbours.trimmed(flanks);
        height = (int) Math.ceil(ground.height(Math.max(upper.at(x0), upper.at(x1))));
    }

    /** Every line it borders on. */
    void eachCrossing(Consumer<Crossing> each) {
        each(up, each);
        each(down, each);
        each(feet, each);
        each(flanks, each);
    }

    private static void each(Crossing[] some, Consumer<Crossing> each) {
        for (Crossing c : some) {
            each.accept(c);
        }
    }

    boolean hasDrives() {
        return hasDrives;
    }

    boolean letsDown() {
        return letsDown;
    }

    /** Whether nothing comes of rain in it: it only runs on into the open. */
    boolean isPassedBy() {
        return isOpen() && !letsDown && !hasDrives && pipe < 0 && !ground.isSill() && !ground.coat().hasLedge(on);
    }

    /** The same cell, which is in the open, as if it bordered on places of one kind alone, as told by what is in the open there; empty if it borders on none. */
    Optional<Cell> towards(Predicate<Cell> kind) {
        Cell c = new Cell(ground, x0, x1, lower, upper, on, over);
        c.strip = strip;
        c.up = Arrays.stream(up).filter(s -> kind.test(s.last())).toArray(Seam[]::new);
        c.down = Arrays.stream(down).filter(s -> kind.test(s.last())).toArray(Seam[]::new);
        c.feet = Arrays.stream(feet).filter(s -> kind.test(s.last())).toArray(Seam[]::new);
        c.flanks = Arrays.stream(flanks).filter(f -> kind.test(f.last())).toArray(Flank[]::new);
        c.hasDrives = hasDrives;
        c.letsDown = letsDown;
        return c.up.length + c.down.length + c.feet.length + c.flanks.length == 0 ? Optional.empty() : Optional.of(c);
    }

    /** Forgets what came with another rain than the one that is followed now. */
    void freshen() {
        if (turn != ground.turn.now) {
            turn = ground.turn.now;
            onFrame = 0;
            empty();
            forgetDrives();
            entries = null;
            flows = List.of();
        }
    }

    /** Forgets which drives have been here: who asks again finds the same water there. */
    void forgetDrives() {
        been = null;
    }

    /** Its water, of the rain that is followed now. */
    Pool pool() {
        freshen();
        return this;
    }

    /** Whether its frame is wet, however many failures that takes; a bare one is. */
    boolean hasWetFrame() {
        return isOnFrame() && (isOpen() || onFrame != 0 && turn == ground.turn.now);
    }

    /** Whether any water has settled on the frame at just this cost. */
    boolean isWetAt(int cost) {
        freshen();
        return (onFrame >> cost & 1) != 0;
    }

    /** Water has settled on the frame. */
    void wetFrame(int cost) {
        onFrame |= (byte) (1 << cost);
    }

    /** What has settled here. */
    @Override
    List<Wet> settled() {
        freshen();
        return super.settled();
    }

    /** The rain, in the open. */
    Wet rain() {
        if (rain == null) {
            rain = Wet.rain(this);
        }
        return rain;
    }

    /** Remembers water that comes onto the frame; whether none has come there in the same way for no more, and as high. */
    boolean isNewEntry(Wet w) {
        freshen();
        entries = entries == null ? new ArrayList<>(1) : entries;
        for (Wet old : entries) {
            if (old.isLike(w) && old.covers(w)) {
                return false;
            }
        }
        return entries.add(w);
    }

    /** The drives that have been here. */
    Been been() {
        freshen();
        been = been == null ? new Been() : been;
        return been;
    }

    /** The drives that have been here; null if none has. */
    Been beenOrNull() {
        freshen();
        return been;
    }
}
