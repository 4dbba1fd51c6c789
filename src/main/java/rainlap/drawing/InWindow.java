package rainlap.drawing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import rainlap.paper.PaperBox;
import rainlap.paper.PaperPoint;
import rainlap.paper.PaperSegment;

/**
 * What a window between two plumb cuts shows of a line.
 *
 * @param parts what lies inside, each as a line
 * @param leaving where the line goes on beyond a cut: segments that end there, pointing outwards
 */
record InWindow(List<List<PaperPoint>> parts, List<PaperSegment> leaving) {
    /** What goes less far than this, printed mm, only touches the cut. */
    private static final double TOUCH = 0.1;

    static InWindow of(List<PaperPoint> line, PaperBox window) {
        List<List<PaperPoint>> parts = new ArrayList<>();
        List<PaperSegment> leaving = new ArrayList<>();
        List<PaperPoint> now = new ArrayList<>();
        for (int i = 0; i + 1 < line.size(); i++) {
            PaperPoint a = line.get(i), b = line.get(i + 1), from = within(a, b, window), to = within(b, a, window);
            if (Math.max(a.x(), b.x()) < window.left() || Math.min(a.x(), b.x()) > window.right()) {
                continue;
            }
            if (now.isEmpty()) {
                now.add(from);
            }
            now.add(to);
            if (!from.equals(a)) {
                leaving.add(new PaperSegment(to, from));
            }
            if (!to.equals(b)) {
                leaving.add(new PaperSegment(from, to));
                parts.add(now);
                now = new ArrayList<>();
            }
        }
        if (!now.isEmpty()) {
            parts.add(now);
        }
        return new InWindow(List.copyOf(parts), leaving.stream().filter(s -> s.length() > TOUCH).toList());
    }

    /** The end itself, or where the segment from it to the other crosses the cut that it lies beyond. */
    private static PaperPoint within(PaperPoint end, PaperPoint other, PaperBox window) {
        double x = Math.max(window.left(), Math.min(window.right(), end.x()));
        return x == end.x() || other.x() == end.x() ? end : end.towards(other, (x - end.x()) / (other.x() - end.x()));
    }

    Optional<List<PaperPoint>> longest() {
        return parts.stream().max(Comparator.comparingDouble(InWindow::length));
    }

    private static double length(List<PaperPoint> line) {
        double out = 0;
        for (int i = 0; i + 1 < line.size(); i++) {
            out += line.get(i).distance(line.get(i + 1));
        }
        return out;
    }
}
