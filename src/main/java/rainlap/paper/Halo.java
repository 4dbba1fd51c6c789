package rainlap.paper;

/**
 * Room kept round a line or text that crosses a drawing: the same shape in the tone of the ground, wider by its
 * margin, drawn before what it frees. It is its own element, for renderers without a paint order.
 *
 * @param of a polyline, strokes, disc, area or text
 * @param width full width of the stroke in millimetres: 0.9 to 1.1 round lines
 */
public record Halo(Mark of, Tone ground, double width) implements Mark {

    public Halo {
        if (of instanceof Halo || of instanceof Group || of instanceof Clip) {
            throw new IllegalArgumentException("a halo goes round a line, an area or a text");
        }
        if (!(width > 0)) {
            throw new IllegalArgumentException("a halo needs a width above 0, not " + width);
        }
    }

    public static Halo of(Mark mark) {
        return new Halo(mark, Tone.WHITE, 1.1);
    }

    @Override
    public Halo moved(double dx, double dy) {
        return new Halo(of.moved(dx, dy), ground, width);
    }

    @Override
    public PaperBox box() {
        return of.box();
    }
}
