package rainlap.joint;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import rainlap.geom.Point;

/** Names joints by their pieces and their place; of several with one name the second gets {@code #2}, and so on. */
final class Naming {
    private final List<Joint> joints = new ArrayList<>();
    private final Map<String, Integer> ids = new HashMap<>();

    void add(JointFinder.Found f) {
        String base = base(f);
        int nth = ids.merge(base, 1, Integer::sum);
        joints.add(new Joint(nth == 1 ? base : base + "#" + nth, f.link().kind(), f.outer(), f.link().inner(), f.link().sealed(),
                f.runs(), f.tapedAlong()));
    }

    List<Joint> joints() {
        return joints;
    }

    private static String base(JointFinder.Found f) {
        List<Point> line = new ArrayList<>();
        line.add(f.runs().get(0).line().a());
        f.runs().forEach(r -> line.add(r.line().b()));
        Point at = Joints.middle(line);
        return f.outer().piece().id() + "/" + f.link().inner().piece().id() + ":" + f.link().kind().word() + "@"
                + (f.outer().surface().isWall() ? "" : f.outer().surface().name() + ":") + mm(at.x()) + "," + mm(at.y());
    }

    private static long mm(long units) {
        return Math.round(units / 100.0);
    }
}
