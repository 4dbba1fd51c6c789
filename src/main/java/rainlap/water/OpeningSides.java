package rainlap.water;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.TreeMap;
import rainlap.wall.Opening;

/** One side of each of some openings, by the line it lies on and in order along it. No two of the same side overlap, as openings do not. */
final class OpeningSides {
    private final Map<Long, NavigableMap<Long, Side>> byLine = new HashMap<>();

    private record Side(long to, Opening opening) {}

    void add(long line, long from, long to, Opening o) {
        byLine.computeIfAbsent(line, k -> new TreeMap<>()).put(from, new Side(to, o));
    }

    /** Whose sides lie on a line and touch a part of it, in order along it. */
    List<Opening> touching(long line, double from, double to) {
        NavigableMap<Long, Side> sides = byLine.get(line);
        if (sides == null) {
            return List.of();
        }
        List<Opening> out = new ArrayList<>(1);
        Long first = sides.lowerKey((long) Math.ceil(from));
        for (Map.Entry<Long, Side> e : (first == null ? sides : sides.tailMap(first, true)).entrySet()) {
            if (e.getKey() > to) {
                break;
            }
            if (e.getValue().to() >= from) {
                out.add(e.getValue().opening());
            }
        }
        return out;
    }
}
