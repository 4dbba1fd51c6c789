package rainlap.drawing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.PriorityQueue;
import java.util.Set;
import rainlap.geom.Overlay;
import rainlap.geom.Region;
import rainlap.stack.Face;
import rainlap.stack.Stack;
import rainlap.wall.Surface;

/**
 * The faces of a surface from the innermost outwards, so that each may be painted over those before it and taken away again without leaving
 * a hole in them. Where tucked pieces lie over one another in a ring there is no such order: the ring is opened at its earliest piece, and
 * each of the others is painted without what lies over it and came before.
 */
final class LaidFaces {
    private final Stack stack;
    private final List<Face> order = new ArrayList<>();
    private final Map<Face, Integer> place = new HashMap<>();

    LaidFaces(Stack stack, Surface surface) {
        this.stack = stack;
        sort(stack.on(surface));
    }

    List<Face> innermostFirst() {
        return List.copyOf(order);
    }

    /** What is painted of a face: all of it, but in a ring. */
    List<Region> painted(Face f) {
        List<Region> over = meeting(f).stream().filter(g -> stack.isOutside(g, f) && place.get(g) < place.get(f)).map(Face::region).toList();
        return over.isEmpty() ? List.of(f.region()) : Overlay.difference(List.of(f.region()), over);
    }

    private List<Face> meeting(Face f) {
        return stack.meeting(f.surface(), f.box()).stream().filter(g -> g != f && g.box().overlaps(f.box())).toList();
    }

    private void sort(List<Face> faces) {
        Map<Face, Integer> index = new HashMap<>();
        faces.forEach(f -> index.put(f, index.size()));
        Map<Face, Integer> beneath = new HashMap<>();
        faces.forEach(f -> beneath.put(f, (int) meeting(f).stream().filter(g -> stack.isOutside(f, g)).count()));
        PriorityQueue<Face> next = new PriorityQueue<>(Comparator.comparingInt(index::get));
        faces.stream().filter(f -> beneath.get(f) == 0).forEach(next::add);
        Set<Face> open = new HashSet<>(faces);
        int earliest = 0;
        while (!open.isEmpty()) {
            Face f = next.poll();
            if (f == null) {
                while (!open.contains(faces.get(earliest))) {
                    earliest++;
                }
                f = faces.get(earliest);
            }
            if (open.remove(f)) {
                take(f, beneath, next);
            }
        }
    }

    private void take(Face f, Map<Face, Integer> beneath, PriorityQueue<Face> next) {
        place.put(f, order.size());
        order.add(f);
        for (Face g : meeting(f)) {
            if (stack.isOutside(g, f) && beneath.merge(g, -1, Integer::sum) == 0) {
                next.add(g);
            }
        }
    }
}
