package rainlap.paper;

/**
 * How a line of text looks.
 *
 * @param capHeight height of the capitals in millimetres; size of the font is this by 0.70
 * @param rotation degrees clockwise about the text's point; -90 reads upwards, from the right of the sheet
 */
public record TextStyle(double capHeight, Weight weight, Anchor anchor, Tone tone, double rotation) {

    public TextStyle {
        if (!(capHeight > 0)) {
            throw new IllegalArgumentException("text needs a height above 0, not " + capHeight);
        }
    }

    /** Regular, dark, from its start. */
    public static TextStyle of(double capHeight) {
        return new TextStyle(capHeight, Weight.REGULAR, Anchor.START, Tone.INK, 0);
    }

    public TextStyle with(Weight other) {
        return new TextStyle(capHeight, other, anchor, tone, rotation);
    }

    public TextStyle with(Anchor other) {
        return new TextStyle(capHeight, weight, other, tone, rotation);
    }

    public TextStyle with(Tone other) {
        return new TextStyle(capHeight, weight, anchor, other, rotation);
    }

    public TextStyle rotated(double degrees) {
        return new TextStyle(capHeight, weight, anchor, tone, degrees);
    }

    public TextStyle medium() {
        return with(Weight.MEDIUM);
    }

    public TextStyle bold() {
        return with(Weight.SEMIBOLD);
    }

    public TextStyle grey() {
        return with(Tone.GREY);
    }

    public TextStyle middle() {
        return with(Anchor.MIDDLE);
    }

    public TextStyle end() {
        return with(Anchor.END);
    }

    /** Size of the font in millimetres. */
    public double fontSize() {
        return capHeight / TextMetrics.CAP_SHARE;
    }
}
