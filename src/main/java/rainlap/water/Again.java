package rainlap.water;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import rainlap.geom.Box;
import rainlap.stack.Crew;
import rainlap.stack.Stack;
import rainlap.wall.Surface;

/** A wall's cells, to follow more water over them than what was told at first: kept until they are let go, then made again when asked for. */
final class Again {
    private final Stack stack;
    private final Drive drive;
    private Waters waters;
    /** Whether they still know the water that was followed through one failure. */
    private boolean goesOn;

    /** @param wet followed through one failure, and no further yet */
    Again(Stack stack, Drive drive, Waters wet) {
        this.stack = stack;
        this.drive = drive;
        this.waters = wet;
        this.goesOn = true;
    }

    /** Ways through one failure more; see {@link Trace#ofTwoFailures}. */
    synchronized List<Arrival> further(List<Box> near, Crew crew) {
        waters = goesOn ? waters : Waters.toOneFailure(stack, drive, crew, false);
        List<Arrival> ways = waters.further(near, crew);
        dryUp();
        return ways;
    }

    /** One place after the other, whichever thread asks. */
    synchronized Optional<Arrival> worstFrom(Surface surface, Box place, Bounds bounds, Function<List<Arrival>, Optional<Arrival>> among) {
        waters = waters == null ? Waters.dry(stack, drive) : waters;
        if (goesOn) {
            dryUp();
        }
        return waters.worstFrom(surface, place, bounds, among);
    }

    private void dryUp() {
        waters.driedUp();
        goesOn = false;
    }

    synchronized void letGo() {
        if (waters != null) {
            waters.forgetCells();
        }
        waters = null;
        goesOn = false;
    }
}
