package rainlap.water;

import java.util.List;
import rainlap.geom.Box;
import rainlap.wall.Opening;

/** The edges of openings without reveal: the wall ends there, and what comes to them leaves into the opening. */
final class Flush {
    private final OpeningSides heads = new OpeningSides();
    private final OpeningSides left = new OpeningSides();
    private final OpeningSides right = new OpeningSides();

    Flush(List<Opening> openings) {
        openings.stream().filter(o -> o.reveal() == 0).forEach(o -> {
            Box r = o.rect();
            heads.add(r.maxY(), r.minX(), r.maxX(), o);
            left.add(r.minX(), r.minY(), r.maxY(), o);
            right.add(r.maxX(), r.minY(), r.maxY(), o);
        });
    }

    /** The openings whose heads lie along a part of a line. */
    List<Opening> under(Line line, long from, long to) {
        return !line.isLevel() ? List.of() : heads.touching(line.ay(), from, to).stream()
                .filter(o -> o.rect().minX() < to && from < o.rect().maxX()).toList();
    }

    /** Whether the side of an opening is there. */
    boolean isSide(long x, double y) {
        return !left.touching(x, y, y).isEmpty() || !right.touching(x, y, y).isEmpty();
    }
}
