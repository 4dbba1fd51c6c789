package rainlap.paper;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Lists what a reader would stumble over on a sheet: texts that meet, texts under the least height, marks outside the
 * frame, ids used twice, leaders that cross each other, a text or a label, labels that meet, texts that do not stand out
 * from what lies beneath them, in colour or in grey, or are covered or run through by a circle. Widths of lines need no check: {@link Pen} has no
 * others. The frame itself, a group with the id {@link Frame#ID}, may lie outside the frame. Leaders are the polylines in
 * groups of the class {@link #LEADER}. Halos are not looked at.
 */
public final class SheetCheck {

    /** Least height of capitals in millimetres. */
    public static final double LEAST_CAP_HEIGHT = 2.5;

    /** Class of groups that hold leaders. */
    public static final String LEADER = "leader";

    /** Class of groups that are labels: a mark with its words, from which a leader begins. */
    public static final String LABEL = "label";

    private static final double ROUNDING = 1e-6;
    /** A leader begins in the line of its own label's mark. */
    private static final double OWN = 0.4;

    /** What is wrong. */
    public enum Kind {
        TEXTS_MEET, TEXT_TOO_SMALL, OUTSIDE_FRAME, OUTSIDE_SHEET, ID_TWICE, LEADERS_CROSS, LEADER_OVER_TEXT,
        LABELS_MEET, LEADER_OVER_LABEL, TEXT_FAINT, TEXT_COVERED, CIRCLE_OVER_TEXT
    }

    /** One violation: what, in words, and where. */
    public record Violation(Kind kind, String words, PaperBox where) {
    }

    private final List<Violation> violations = new ArrayList<>();
    private final List<Text> texts = new ArrayList<>();
    private final List<Polyline> leaders = new ArrayList<>();
    private final List<PaperBox> labels = new ArrayList<>();
    private final Set<String> ids = new HashSet<>();
    private final SheetSize size;

    private SheetCheck(SheetSize size) {
        this.size = size;
    }

    /** All violations on the sheet, in a fixed order; empty when it is sound. */
    public static List<Violation> of(Sheet sheet) {
        SheetCheck check = new SheetCheck(sheet.size());
        check.walk(sheet.marks(), new Within(false, false, Optional.empty()));
        check.meetings();
        check.crossings();
        check.labels();
        check.violations.addAll(TextContrast.of(sheet));
        return List.copyOf(check.violations);
    }

    /** What the groups round a mark say of it. */
    private record Within(boolean frame, boolean leader, Optional<PaperBox> clip) {
    }

    private void walk(List<Mark> marks, Within within) {
        for (Mark mark : marks) {
            if (mark instanceof Group group) {
                group.id().filter(id -> !ids.add(id))
                        .ifPresent(id -> violate(Kind.ID_TWICE, "id " + id, group.box()));
                if (group.classes().contains(LABEL)) {
                    labels.add(group.box());
                }
                walk(group.marks(), new Within(within.frame() || group.id().equals(Optional.of(Frame.ID)),
                        within.leader() || group.classes().contains(LEADER), within.clip()));
            } else if (mark instanceof Clip inner) {
                walk(inner.marks(), new Within(within.frame(), within.leader(), Optional.of(inner.box())));
            } else if (!(mark instanceof Halo) && !(mark instanceof Strokes s && s.segments().isEmpty())) {
                look(mark, within);
            }
        }
    }

    private void look(Mark mark, Within within) {
        PaperBox box = within.clip().filter(c -> c.meets(mark.box())).map(c -> cut(mark.box(), c)).orElse(mark.box());
        if (!size.sheet().grown(ROUNDING).holds(box)) {
            violate(Kind.OUTSIDE_SHEET, name(mark), box);
        } else if (!within.frame() && !size.frame().grown(ROUNDING).holds(box)) {
            violate(Kind.OUTSIDE_FRAME, name(mark), box);
        }
        if (within.leader() && mark instanceof Polyline leader) {
            leaders.add(leader);
        }
        if (mark instanceof Text text && !text.text().isEmpty()) {
            texts.add(text);
            if (text.style().capHeight() < LEAST_CAP_HEIGHT - ROUNDING) {
                violate(Kind.TEXT_TOO_SMALL, name(text) + " is " + text.style().capHeight() + " high", box);
            }
        }
    }

    /** Leaders against each other, but for a site that both end at, and against all texts. */
    private void crossings() {
        for (int a = 0; a < leaders.size(); a++) {
            List<PaperSegment> path = leaders.get(a).segments();
            for (int b = a + 1; b < leaders.size(); b++) {
                if (cross(path, leaders.get(b).segments())) {
                    violate(Kind.LEADERS_CROSS, "leaders " + (a + 1) + " and " + (b + 1), leaders.get(a).box());
                }
            }
            for (Text text : texts) {
                if (path.stream().anyMatch(text.box().grown(-ROUNDING)::meets)) {
                    violate(Kind.LEADER_OVER_TEXT, "leader " + (a + 1) + " over " + name(text), text.box());
                }
            }
        }
    }

    private void labels() {
        for (int a = 0; a < labels.size(); a++) {
            PaperBox label = labels.get(a).grown(-ROUNDING);
            for (PaperBox other : labels.subList(a + 1, labels.size())) {
                if (label.meets(other)) {
                    violate(Kind.LABELS_MEET, "two labels", label);
                }
            }
            PaperBox inside = labels.get(a).grown(-OWN);
            if (leaders.stream().anyMatch(l -> l.segments().stream().anyMatch(inside::meets))) {
                violate(Kind.LEADER_OVER_LABEL, "a leader over a label", label);
            }
        }
    }

    private static boolean cross(List<PaperSegment> a, List<PaperSegment> b) {
        PaperPoint end = a.get(a.size() - 1).to();
        boolean shared = end.distance(b.get(b.size() - 1).to()) < ROUNDING;
        for (int i = 0; i < a.size(); i++) {
            for (int k = 0; k < b.size(); k++) {
                PaperSegment s = shared && i == a.size() - 1 ? shorter(a.get(i)) : a.get(i);
                PaperSegment t = shared && k == b.size() - 1 ? shorter(b.get(k)) : b.get(k);
                if (s.meets(t)) {
                    return true;
                }
            }
        }
        return false;
    }

    private static PaperSegment shorter(PaperSegment s) {
        return new PaperSegment(s.from(), s.to().towards(s.from(), Math.min(0.5, 0.001 / s.length())));
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
