package rainlap.paper;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/** A circle, filled, edged or both; radius in millimetres to the middle of its line. */
public record Disc(PaperPoint centre, double radius, Optional<Fill> fill, Optional<Edge> edge) implements Mark {

    public Disc {
        if (!(radius > 0)) {
            throw new IllegalArgumentException("a circle needs a radius above 0, not " + radius);
        }
    }

    public static Disc filled(PaperPoint centre, double radius, Tone tone) {
        return new Disc(centre, radius, Optional.of(Fill.of(tone)), Optional.empty());
    }

    public static Disc ring(PaperPoint centre, double radius, Edge edge) {
        return new Disc(centre, radius, Optional.empty(), Optional.of(edge));
    }

    public static Disc of(PaperPoint centre, double radius, Tone fill, Edge edge) {
        return new Disc(centre, radius, Optional.of(Fill.of(fill)), Optional.of(edge));
    }

    /** So many points of its line, evenly round it. */
    public List<PaperPoint> around(int count) {
        return IntStream.range(0, count).mapToObj(i -> 2 * Math.PI * i / count).map(a -> centre.plus(radius * Math.cos(a), radius * Math.sin(a))).toList();
    }

    @Override
    public Disc moved(double dx, double dy) {
        return new Disc(centre.plus(dx, dy), radius, fill, edge);
    }

    @Override
    public PaperBox box() {
        return PaperBox.around(centre, 2 * radius, 2 * radius);
    }
}
