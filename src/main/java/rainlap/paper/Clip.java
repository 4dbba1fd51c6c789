package rainlap.paper;

import java.util.List;

/** Marks of which only what lies inside the region shows. */
public record Clip(PaperRegion region, List<Mark> marks) implements Mark {

    public Clip {
        marks = List.copyOf(marks);
    }

    @Override
    public PaperBox box() {
        return region.box();
    }
}
