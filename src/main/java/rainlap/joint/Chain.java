package rainlap.joint;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import rainlap.geom.Point;
import rainlap.stack.Face;

/** Joins the runs of one face's boundary that have the same partner and kind and meet end to end. */
final class Chain {
    /** In the order in which they came; a face has few. */
    private final List<Linked> all = new ArrayList<>();

    /** What the runs of one joint have in common. */
    record Link(Face inner, JointKind kind, boolean sealed) {}

    private record Linked(Link link, List<Run> runs) {}

    /** Takes the finished chains. */
    interface Sink {
        void add(Link link, List<Run> runs);
    }

    void add(Link link, Run run) {
        for (Linked l : all) {
            if (l.link.equals(link)) {
                l.runs.add(run);
                return;
            }
        }
        List<Run> runs = new ArrayList<>(2);
        runs.add(run);
        all.add(new Linked(link, runs));
    }

    void close(Sink sink) {
        all.forEach(l -> joined(l.runs).forEach(chain -> sink.add(l.link, chain)));
    }

    private static List<List<Run>> joined(List<Run> parts) {
        if (parts.size() == 1) {
            return List.of(parts);
        }
        Map<Point, List<Run>> byStart = new HashMap<>();
        List<List<Run>> out = new ArrayList<>();
        for (Run r : parts) {
            List<Run> before = out.stream().filter(c -> c.get(c.size() - 1).line().b().equals(r.line().a())).findFirst()
                    .orElse(null);
            if (before != null) {
                before.add(r);
            } else {
                out.add(new ArrayList<>(List.of(r)));
            }
        }
        out.forEach(c -> byStart.put(c.get(0).line().a(), c));
        for (List<Run> c : List.copyOf(out)) {
            List<Run> next = byStart.get(c.get(c.size() - 1).line().b());
            if (next != null && next != c && out.contains(next)) {
                c.addAll(next);
                out.remove(next);
            }
        }
        return out;
    }
}
