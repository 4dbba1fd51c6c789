package rainlap.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import rainlap.geom.Box;
import rainlap.paper.Group;
import rainlap.paper.Mark;
import rainlap.paper.Occupied;
import rainlap.paper.PaperBox;
import rainlap.paper.Polyline;
import rainlap.paper.Text;
import rainlap.rule.Place;
import rainlap.wall.Elevation;
import rainlap.wall.Opening;
import rainlap.wall.Penetration;

/** The chain of dimensions under the wall: openings and penetrations nearest to it, the overall length outside. */
final class Dimensions {
    private final Placing placing;
    private final Occupied taken;
    private final List<Mark> out = new ArrayList<>();

    Dimensions(Placing placing, Occupied taken) {
        this.placing = placing;
        this.taken = taken;
    }

    /** Where a bay is cut off, nothing is dimensioned to the cut, but to the match line: so the bays add up to the wall. */
    Group marks(Elevation e, Bay bay) {
        Box wall = e.outline().box(), shown = bay.extents().wall();
        TreeSet<Long> ends = new TreeSet<>(List.of(wall.minX(), wall.maxX()));
        ends.removeIf(x -> x < shown.minX() || x > shown.maxX());
        bay.matches().forEach(m -> add(ends, m.x(), shown));
        TreeSet<Long> openings = new TreeSet<>(ends);
        for (Opening o : e.openings()) {
            add(openings, o.rect().minX(), shown);
            add(openings, o.rect().maxX(), shown);
        }
        TreeSet<Long> all = new TreeSet<>(openings);
        for (Penetration p : e.penetrations()) {
            add(all, (p.region().box().minX() + p.region().box().maxX()) / 2, shown);
        }
        TreeSet<Long> chain = figures(all, placing.chain()).isPresent() ? all : openings;
        boolean chained = chain.size() > ends.size() && chain.size() > 1;
        if (chained) {
            line(chain, placing.chain(), Optional.empty());
        }
        if (ends.size() == 2) {
            String length = Place.mm(ends.last() - ends.first());
            line(ends, chained ? placing.overall() : placing.chain(), Optional.of(bay.isWhole() ? length : length + " of " + Place.mm(wall.width())));
        }
        return Group.of("dimensions", out);
    }

    private static void add(TreeSet<Long> to, long x, Box shown) {
        if (x > shown.minX() && x < shown.maxX()) {
            to.add(x);
        }
    }

    private void line(TreeSet<Long> at, double y, Optional<String> whole) {
        View view = placing.view();
        double from = view.x(at.first()), to = view.x(at.last());
        out.add(Polyline.line(from - 1.8, y, to + 1.8, y, Looks.THIN));
        for (long x : at) {
            out.add(Polyline.line(view.x(x), y - 6.2, view.x(x), y + 1.6, Looks.THIN));
            out.add(Symbols.stroke(view.x(x), y));
        }
        List<Text> texts = whole.isPresent() ? overall(at, y, whole.get()) : figures(at, y).orElseGet(() -> wideFigures(at, y));
        texts.forEach(t -> taken.add(t.box()));
        out.addAll(texts);
    }

    /** The one figure of an overall length, in the middle or as near to it as is free. */
    private List<Text> overall(TreeSet<Long> at, double y, String length) {
        double from = placing.view().x(at.first()), to = placing.view().x(at.last());
        for (double share : new double[] {0.5, 0.42, 0.58, 0.34, 0.66, 0.26, 0.74, 0.18, 0.82}) {
            Text t = Text.of(from + share * (to - from), y - 0.9, length, Looks.PLAIN.middle());
            if (taken.isFree(t.box())) {
                return List.of(t);
            }
        }
        return List.of(Text.of((from + to) / 2, y + 4.7, length, Looks.PLAIN.middle()));
    }

    /** A figure for each step; empty when one finds no room above or below the line. */
    private Optional<List<Text>> figures(TreeSet<Long> at, double y) {
        List<Text> texts = new ArrayList<>();
        List<PaperBox> boxes = new ArrayList<>();
        for (Text[] pair : candidates(at, y)) {
            Optional<Text> free = java.util.Arrays.stream(pair)
                    .filter(t -> boxes.stream().noneMatch(b -> b.grown(0.3).meets(t.box()))).findFirst();
            if (free.isEmpty()) {
                return Optional.empty();
            }
            texts.add(free.get());
            boxes.add(free.get().box());
        }
        return Optional.of(texts);
    }

    /** The figures that do find room; the others are left to the table of levels and the file. */
    private List<Text> wideFigures(TreeSet<Long> at, double y) {
        List<Text> texts = new ArrayList<>();
        for (Text[] pair : candidates(at, y)) {
            java.util.Arrays.stream(pair).filter(t -> texts.stream().noneMatch(b -> b.box().grown(0.3).meets(t.box())))
                    .findFirst().ifPresent(texts::add);
        }
        return texts;
    }

    /** For each step its figure above the line and, where the step is narrow, below it. */
    private List<Text[]> candidates(TreeSet<Long> at, double y) {
        List<Text[]> all = new ArrayList<>();
        Long last = null;
        for (long x : at) {
            if (last != null) {
                double middle = (placing.view().x(last) + placing.view().x(x)) / 2;
                Text above = Text.of(middle, y - 0.9, Place.mm(x - last), Looks.PLAIN.middle());
                Text below = Text.of(middle, y + 4.7, Place.mm(x - last), Looks.PLAIN.middle());
                boolean wide = above.width() + 1 <= placing.view().length(x - last);
                all.add(new Text[] {wide ? above : below});
            }
            last = x;
        }
        return all;
    }
}
