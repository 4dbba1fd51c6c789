package rainlap.paper;

import java.util.List;

/** Many separate straight strokes with one pen, written as one path: hatching, ticks, ribs. May be empty. */
public record Strokes(List<PaperSegment> segments, Edge edge) implements Mark {

    public Strokes {
        segments = List.copyOf(segments);
    }

    @Override
    public Strokes moved(double dx, double dy) {
        return new Strokes(segments.stream().map(s -> new PaperSegment(s.from().plus(dx, dy), s.to().plus(dx, dy))).toList(), edge);
    }

    @Override
    public PaperBox box() {
        return segments.stream().map(s -> PaperBox.of(List.of(s.from(), s.to()))).reduce(PaperBox::with)
                .orElse(new PaperBox(0, 0, 0, 0));
    }
}
