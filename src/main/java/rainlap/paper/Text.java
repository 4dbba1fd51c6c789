package rainlap.paper;

import java.util.List;

/**
 * One line of text; the point is on its baseline. White space is folded to single spaces, what XML forbids is
 * replaced by U+FFFD, so that what is measured is what is printed.
 */
public record Text(PaperPoint at, String text, TextStyle style) implements Mark {

    public Text {
        text = PrintableText.of(text);
    }

    public static Text of(double x, double y, String text, TextStyle style) {
        return new Text(new PaperPoint(x, y), text, style);
    }

    /** Text whose capitals are centred on a point, both ways, whatever its rotation. */
    public static Text centred(PaperPoint middle, String text, TextStyle style) {
        double angle = Math.toRadians(style.rotation());
        double drop = style.capHeight() / 2;
        return new Text(middle.plus(-Math.sin(angle) * drop, Math.cos(angle) * drop), text, style.middle());
    }

    /** Width along the baseline in millimetres. */
    public double width() {
        return TextMetrics.width(text, style);
    }

    @Override
    public Text moved(double dx, double dy) {
        return new Text(at.plus(dx, dy), text, style);
    }

    /** The box of the advance width and of the ink above and below the baseline, turned with the text. */
    @Override
    public PaperBox box() {
        PaperBox upright = TextMetrics.box(this);
        if (style.rotation() == 0) {
            return upright;
        }
        double angle = Math.toRadians(style.rotation());
        double cos = Math.cos(angle);
        double sin = Math.sin(angle);
        List<PaperPoint> turned = upright.corners().stream().map(p -> {
            double dx = p.x() - at.x();
            double dy = p.y() - at.y();
            return at.plus(dx * cos - dy * sin, dx * sin + dy * cos);
        }).toList();
        return PaperBox.of(turned);
    }
}
