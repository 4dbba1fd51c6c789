package rainlap.water;

import java.util.List;
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
    synchronized List<Arrival> waysFrom(Surface surface, Box place, Bounds bounds) {
        waters = waters == null ? Waters.dry(stack, drive) : waters;
        return waters.waysFrom(surface, place, bounds);
    }

    synchronized void letGo() {
        waters = null;
    }
}
