package rainlap.joint;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import rainlap.geom.Point;
import rainlap.geom.Segment;
import rainlap.stack.Crew;
import rainlap.stack.Face;
import rainlap.stack.Stack;
import rainlap.wall.Surface;

/** All joints of an elevation at a stage, by surface and place. */
public final class Joints {
    private static final Comparator<Placed> BY_PLACE = Comparator.comparing(Placed::surface).thenComparing(Placed::start).thenComparing(p -> p.joint.id());

    private final List<Joint> all;
    private final List<Open> open;

    Joints(List<Joint> all, List<Open> open) {
        this.all = all.stream().map(j -> new Placed(j.surface(), j.start(), j)).sorted(BY_PLACE).map(Placed::joint).toList();
        this.open = List.copyOf(open);
    }

    /** With what it is put in order by, which is dear to ask a joint for again and again. */
    private record Placed(Surface surface, Point start, Joint joint) {}

    /** A stretch of a sheet's edge beside which nothing lies, bare side on the right. */
    record Open(Surface surface, Segment line) {}

    public static Joints of(Stack stack) {
        return of(stack, Crew.ALONE);
    }

    public static Joints of(Stack stack, Crew crew) {
        Ground ground = new Ground(stack.elevation());
        List<Joint> joints = new ArrayList<>();
        List<Open> open = new ArrayList<>();
        List<Face> faces = new ArrayList<>();
        stack.surfaces().forEach(s -> faces.addAll(stack.on(s)));
        for (JointFinder f : crew.inRuns(faces, run -> new JointFinder(stack, ground).find(run))) {
            joints.addAll(f.joints());
            open.addAll(f.open());
        }
        return new Joints(Naming.apart(joints), open);
    }

    public List<Joint> all() {
        return all;
    }

    public Stream<Joint> ofKind(JointKind kind) {
        return all.stream().filter(j -> j.kind() == kind);
    }

    List<Open> open() {
        return open;
    }

    /** The middle of a polyline by length. */
    static Point middle(List<Point> line) {
        double half = 0;
        for (int i = 0; i + 1 < line.size(); i++) {
            half += new Segment(line.get(i), line.get(i + 1)).lengthMm() / 2;
        }
        for (int i = 0; i + 1 < line.size(); i++) {
            double length = new Segment(line.get(i), line.get(i + 1)).lengthMm();
            if (half <= length) {
                double f = half / length;
                Point a = line.get(i), b = line.get(i + 1);
                return new Point(Math.round(a.x() + f * (b.x() - a.x())), Math.round(a.y() + f * (b.y() - a.y())));
            }
            half -= length;
        }
        return line.get(line.size() - 1);
    }
}
