package rainlap.building;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import rainlap.building.Sheet.Part;
import rainlap.building.View.Flat;
import rainlap.geom.Box;
import rainlap.wall.Piece;

/** The pieces of a wall and its neighbours in the order in which they went on, those drawn from both sides of a corner as one. */
final class Laying {
    private final View view;
    private final List<String> leftOut = new ArrayList<>();
    private final List<Sheet> order = new ArrayList<>();

    Laying(View view) {
        this.view = view;
        List<List<Part>> drawn = IntStream.range(0, view.flats().size()).mapToObj(this::drawn).toList();
        List<Corner> corners = view.corners();
        int own = view.own();
        List<Sheet> left = own > 0 ? pair(drawn, own - 1, corners) : List.of(), right = own < corners.size() ? pair(drawn, own, corners) : List.of();
        weave(drawn.get(own), left, right);
    }

    /** In laying order. */
    List<Sheet> order() {
        return order;
    }

    /** What the wall itself draws wholly beyond a joined corner. */
    List<String> leftOut() {
        return leftOut;
    }

    private List<Part> drawn(int f) {
        Flat flat = view.flats().get(f);
        List<Part> out = new ArrayList<>();
        for (Piece p : flat.wall().elevation().pieces()) {
            Piece here = new Piece(flat.moved().name().apply(p.id()), p.material(), p.shapes().stream().map(flat.moved()::shape).toList(),
                    p.under(), p.bond(), flat.moved().cuts(p.cuts()));
            Optional<Box> box = here.wallBox().filter(b -> p.shapes().stream().allMatch(s -> s.on().isWall()));
            if (box.filter(flat::isBeyond).isEmpty()) {
                out.add(new Part(f, here));
            } else if (f == view.own()) {
                leftOut.add(here.id());
            }
        }
        return out;
    }

    private List<Sheet> pair(List<List<Part>> drawn, int corner, List<Corner> corners) {
        boolean leftFirst = view.flats().get(corner).wall().id().compareTo(view.flats().get(corner + 1).wall().id()) < 0;
        return new TwoWalls(drawn.get(corner), drawn.get(corner + 1), corners.get(corner).left(), leftFirst).order();
    }

    /** Before each piece of the wall goes what each neighbour lays before it. */
    private void weave(List<Part> own, List<Sheet> left, List<Sheet> right) {
        int l = 0, r = 0;
        for (Part p : own) {
            Sheet sheet = new Sheet(p);
            l = layUntil(p, left, l, sheet);
            r = layUntil(p, right, r, sheet);
            order.add(sheet);
        }
        order.addAll(left.subList(l, left.size()));
        order.addAll(right.subList(r, right.size()));
    }

    /** Lays what comes before a piece of the wall, and takes in what the neighbour draws of that piece; returns where to go on. */
    private int layUntil(Part p, List<Sheet> beside, int from, Sheet into) {
        for (int i = from; i < beside.size(); i++) {
            if (beside.get(i).parts().contains(p)) {
                beside.get(i).parts().stream().filter(o -> o != p).forEach(into::add);
                return i + 1;
            }
            order.add(beside.get(i));
        }
        return from;
    }
}
