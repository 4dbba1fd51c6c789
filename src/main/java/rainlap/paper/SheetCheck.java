package rainlap.paper;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Lists what a reader would stumble over on a sheet: texts that meet, texts under the least height, marks outside the
 * frame, ids used twice. Widths of lines need no check: {@link Pen} has no others. The frame itself, a group with the id
 * {@link Frame#ID}, may lie outside the frame. Halos are not looked at.
 */
public final class SheetCheck {

    /** Least height of capitals in millimetres. */
    public static final double LEAST_CAP_HEIGHT = 2.5;

    private static final double ROUNDING = 1e-6;

    /** What is wrong. */
    public enum Kind {
        TEXTS_MEET, TEXT_TOO_SMALL, OUTSIDE_FRAME, OUTSIDE_SHEET, ID_TWICE
    }

    /** One violation: what, in words, and where. */
    public record Violation(Kind kind, String words, PaperBox where) {
    }

    private final List<Violation> violations = new ArrayList<>();
    private final List<Text> texts = new ArrayList<>();
    private final Set<String> ids = new HashSet<>();
    private final SheetSize size;

    private SheetCheck(SheetSize size) {
        this.size = size;
    }

    /** All violations on the sheet, in a fixed order; empty when it is sound. */
    public static List<Violation> of(Sheet sheet) {
        SheetCheck check = new SheetCheck(sheet.size());
        check.walk(sheet.marks(), false, Optional.empty());
        check.meetings();
        return List.copyOf(check.violations);
    }

    private void walk(List<Mark> marks, boolean frame, Optional<PaperBox> clip) {
        for (Mark mark : marks) {
            if (mark instanceof Group group) {
                group.id().filter(id -> !ids.add(id))
                        .ifPresent(id -> violate(Kind.ID_TWICE, "id " + id, group.box()));
                walk(group.marks(), frame || group.id().equals(Optional.of(Frame.ID)), clip);
            } else if (mark instanceof Clip inner) {
                walk(inner.marks(), frame, Optional.of(inner.box()));
            } else if (!(mark instanceof Halo) && !(mark instanceof Strokes s && s.segments().isEmpty())) {
                look(mark, frame, clip);
            }
        }
    }

    private void look(Mark mark, boolean frame, Optional<PaperBox> clip) {
        PaperBox box = clip.filter(c -> c.meets(mark.box())).map(c -> cut(mark.box(), c)).orElse(mark.box());
        PaperBox outer = size.sheet().grown(ROUNDING);
        PaperBox inner = size.frame().grown(ROUNDING);
        if (!outer.holds(box)) {
            violate(Kind.OUTSIDE_SHEET, name(mark), box);
        } else if (!frame && !inner.holds(box)) {
            violate(Kind.OUTSIDE_FRAME, name(mark), box);
        }
        if (mark instanceof Text text && !text.text().isEmpty()) {
            texts.add(text);
            if (text.style().capHeight() < LEAST_CAP_HEIGHT - ROUNDING) {
                violate(Kind.TEXT_TOO_SMALL, name(text) + " is " + text.style().capHeight() + " high", box);
            }
        }
    }

    /** Texts from left to right; each is compared with those that begin before it ends. */
    private void meetings() {
        List<PaperBox> boxes = texts.stream().map(t -> t.box().grown(-ROUNDING)).toList();
        List<Integer> order = new ArrayList<>();
        for (int i = 0; i < texts.size(); i++) {
            order.add(i);
        }
        order.sort(Comparator.comparingDouble(i -> boxes.get(i).left()));
        for (int a = 0; a < order.size(); a++) {
            PaperBox box = boxes.get(order.get(a));
            for (int b = a + 1; b < order.size() && boxes.get(order.get(b)).left() < box.right(); b++) {
                if (box.meets(boxes.get(order.get(b)))) {
                    violate(Kind.TEXTS_MEET, name(texts.get(order.get(a))) + " and " + name(texts.get(order.get(b))), box);
                }
            }
        }
    }

    private void violate(Kind kind, String words, PaperBox where) {
        violations.add(new Violation(kind, words, where));
    }

    private static PaperBox cut(PaperBox a, PaperBox b) {
        return new PaperBox(Math.max(a.left(), b.left()), Math.max(a.top(), b.top()),
                Math.min(a.right(), b.right()), Math.min(a.bottom(), b.bottom()));
    }

    private static String name(Mark mark) {
        return mark instanceof Text text ? "\"" + text.text() + "\"" : mark.getClass().getSimpleName();
    }
}
