package rainlap.water;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import rainlap.wall.Opening;

/** The edges of openings without reveal: the wall ends there, and what comes to them leaves into the opening. */
final class Flush {
    private final Map<Long, List<Opening>> byHead = new HashMap<>();
    private final Map<Long, List<Opening>> bySide = new HashMap<>();

    Flush(List<Opening> openings) {
        openings.stream().filter(o -> o.reveal() == 0).forEach(o -> {
            byHead.computeIfAbsent(o.rect().maxY(), y -> new ArrayList<>(1)).add(o);
            bySide.computeIfAbsent(o.rect().minX(), x -> new ArrayList<>(1)).add(o);
            bySide.computeIfAbsent(o.rect().maxX(), x -> new ArrayList<>(1)).add(o);
        });
    }

    /** The openings whose heads lie along a part of a line. */
    List<Opening> under(Line line, long from, long to) {
        return !line.isLevel() ? List.of() : byHead.getOrDefault(line.ay(), List.of()).stream()
                .filter(o -> o.rect().minX() < to && from < o.rect().maxX()).toList();
    }

    /** Whether the side of an opening is there. */
    boolean isSide(long x, double y) {
        return bySide.getOrDefault(x, List.of()).stream().anyMatch(o -> o.rect().minY() <= y && y <= o.rect().maxY());
    }
}
