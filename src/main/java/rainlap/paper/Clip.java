package rainlap.paper;

import java.util.List;

/** Marks of which only what lies inside the region shows. */
public record Clip(PaperRegion region, List<Mark> marks) implements Mark {

    public Clip {
        marks = List.copyOf(marks);
    }

    @Override
    public Clip moved(double dx, double dy) {
        return new Clip(region.moved(dx, dy), marks.stream().map(m -> m.moved(dx, dy)).toList());
    }

    @Override
    public PaperBox box() {
        return region.box();
    }
}
