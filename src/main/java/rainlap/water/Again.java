package rainlap.water;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import rainlap.geom.Box;
import rainlap.stack.Stack;
import rainlap.wall.Surface;

/** A wall's cells, to follow other rain over them: kept from the first time until they are let go, then made again when asked for. */
final class Again {
    private final Stack stack;
    private final Drive drive;
    private Waters waters;

    Again(Stack stack, Drive drive, Waters dry) {
        this.stack = stack;
        this.drive = drive;
        this.waters = dry;
    }

    /** One place after the other, whichever thread asks. */
    synchronized Optional<Arrival> worstFrom(Surface surface, Box place, Bounds bounds, Function<List<Arrival>, Optional<Arrival>> among) {
        waters = waters == null ? Waters.dry(stack, drive) : waters;
        return waters.worstFrom(surface, place, bounds, among);
    }

    synchronized void letGo() {
        if (waters != null) {
            waters.forgetCells();
        }
        waters = null;
    }
}
