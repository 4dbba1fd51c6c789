package rainlap.joint;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import rainlap.geom.Point;
import rainlap.stack.Face;

/** Names joints by their pieces and their place; of several with one name the second gets {@code #2}, and so on. */
final class Naming {
    private Naming() {}

    /** What a joint is called as long as no other is called so. */
    static String name(Face outer, Chain.Link link, List<Run> runs) {
        List<Point> line = new ArrayList<>(runs.size() + 1);
        line.add(runs.get(0).line().a());
        runs.forEach(r -> line.add(r.line().b()));
        Point at = Joints.middle(line);
        return outer.piece().id() + "/" + link.inner().piece().id() + ":" + link.kind().word() + "@"
                + (outer.surface().isWall() ? "" : outer.surface().name() + ":") + mm(at.x()) + "," + mm(at.y());
    }

    private static long mm(long units) {
        return Math.round(units / 100.0);
    }

    /** The same joints, no two with one name. */
    static List<Joint> apart(List<Joint> joints) {
        Map<String, Integer> names = new HashMap<>(2 * joints.size());
        List<Joint> out = new ArrayList<>(joints.size());
        for (Joint j : joints) {
            int nth = names.merge(j.id(), 1, Integer::sum);
            out.add(nth == 1 ? j : j.named(j.id() + "#" + nth));
        }
        return out;
    }
}
