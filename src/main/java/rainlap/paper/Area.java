package rainlap.paper;

import java.util.Optional;

/** A region filled, edged or both. */
public record Area(PaperRegion region, Optional<Fill> fill, Optional<Edge> edge) implements Mark {

    public static Area filled(PaperRegion region, Tone tone) {
        return new Area(region, Optional.of(Fill.of(tone)), Optional.empty());
    }

    public static Area edged(PaperRegion region, Edge edge) {
        return new Area(region, Optional.empty(), Optional.of(edge));
    }

    public static Area of(PaperRegion region, Tone fill, Edge edge) {
        return new Area(region, Optional.of(Fill.of(fill)), Optional.of(edge));
    }

    @Override
    public Area moved(double dx, double dy) {
        return new Area(region.moved(dx, dy), fill, edge);
    }

    @Override
    public PaperBox box() {
        return region.box();
    }
}
