package rainlap.joint;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import rainlap.geom.Point;
import rainlap.stack.Face;

/** Joins the runs of one face's boundary that have the same partner and kind and meet end to end. */
final class Chain {
    private final Face outer;
    private final Sink sink;
    private final Map<Link, List<Run>> runs = new LinkedHashMap<>();

    /** What the runs of one joint have in common. */
    record Link(Face inner, JointKind kind, boolean sealed) {}

    /** Takes the finished chains. */
    interface Sink {
        void add(Face outer, Link link, List<Run> runs);
    }

    Chain(Face outer, Sink sink) {
        this.outer = outer;
        this.sink = sink;
    }

    void add(Link link, Run run) {
        runs.computeIfAbsent(link, l -> new ArrayList<>()).add(run);
    }

    void close() {
        runs.forEach((link, parts) -> joined(parts).forEach(chain -> sink.add(outer, link, chain)));
    }

    private static List<List<Run>> joined(List<Run> parts) {
        Map<Point, List<Run>> byStart = new LinkedHashMap<>();
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
