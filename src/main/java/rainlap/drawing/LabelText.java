package rainlap.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rainlap.check.Rules;
import rainlap.paper.Mark;
import rainlap.paper.PaperPoint;
import rainlap.paper.Text;
import rainlap.paper.TextMetrics;
import rainlap.rule.Finding;

/**
 * The words of a label: the rule above, what is drawn of what is asked beneath it. On top they stand right of the mark, at the sides above
 * it and on its far side.
 *
 * @param titles the rule in words, broken to fit beside the drawing
 * @param figure {@code 90 of 150}, or empty
 * @param beside room at the sides of the drawing, printed mm
 */
record LabelText(List<String> titles, String figure, double beside) {
    static final LabelText NONE = new LabelText(List.of(), "", 0);
    private static final double MARK = 2 * Severity.HALF;
    private static final double GAP = 1;
    private static final double AFTER = 2;
    private static final double LONGEST_FIGURE = 26;

    static LabelText of(Finding f, double beside) {
        String title = Rules.find(f.rule()).map(r -> r.info().title()).orElse(f.rule().replace('-', ' '));
        return new LabelText(TextMetrics.wrap(title, beside, Looks.STRONG), figure(f), beside);
    }

    private static String figure(Finding f) {
        boolean figures = f.measured().isPresent() && f.required().isPresent() && f.drawn().startsWith(number(f.measured().getAsDouble()));
        if (figures) {
            return number(f.measured().getAsDouble()) + " of " + number(f.required().getAsDouble());
        }
        return TextMetrics.width(f.drawn(), Looks.SECOND) <= LONGEST_FIGURE ? f.drawn() : "";
    }

    /** A number without trailing zeros. */
    static String number(double v) {
        return java.math.BigDecimal.valueOf(Math.round(v * 100), 2).stripTrailingZeros().toPlainString();
    }

    private Optional<String> shortFigure() {
        return Optional.of(figure).filter(f -> !f.isBlank()).filter(f -> TextMetrics.width(f, Looks.SECOND) <= beside - MARK - GAP);
    }

    private String title() {
        return String.join(" ", titles);
    }

    double topWidth() {
        return titles.isEmpty() ? MARK : MARK + GAP + Math.max(TextMetrics.width(title(), Looks.STRONG), TextMetrics.width(figure, Looks.SECOND)) + AFTER;
    }

    double topHeight() {
        return MARK;
    }

    double sideWidth() {
        double figures = shortFigure().map(f -> TextMetrics.width(f, Looks.SECOND) + GAP).orElse(0.0);
        return Math.max(MARK + figures, titles.stream().mapToDouble(t -> TextMetrics.width(t, Looks.STRONG)).max().orElse(0));
    }

    /** Even above and below the leader; words stand above only. */
    double sideHeight() {
        return titles.isEmpty() ? MARK : MARK + 2 * (0.5 + titles.size() * Looks.LINE - 1.2);
    }

    List<Mark> marks(PaperPoint mark, boolean top, boolean onLeft) {
        List<Mark> out = new ArrayList<>();
        if (titles.isEmpty()) {
            return out;
        }
        if (top) {
            double x = mark.x() + Severity.HALF + GAP;
            out.add(Text.of(x, mark.y() - 0.6, title(), Looks.STRONG));
            if (!figure.isBlank()) {
                out.add(Text.of(x, mark.y() + 3.3, figure, Looks.SECOND));
            }
            return out;
        }
        double outer = onLeft ? mark.x() + Severity.HALF : mark.x() - Severity.HALF;
        for (int i = 0; i < titles.size(); i++) {
            double y = mark.y() - Severity.HALF - 1 - (titles.size() - 1 - i) * Looks.LINE;
            out.add(Text.of(outer, y, titles.get(i), onLeft ? Looks.STRONG.end() : Looks.STRONG));
        }
        double x = onLeft ? mark.x() - Severity.HALF - GAP : mark.x() + Severity.HALF + GAP;
        shortFigure().ifPresent(f -> out.add(Text.of(x, mark.y() + 1.25, f, onLeft ? Looks.SECOND.end() : Looks.SECOND)));
        return out;
    }
}
