package rainlap.defect;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import rainlap.geom.Box;
import rainlap.geom.EdgeFrame;
import rainlap.geom.Intervals;
import rainlap.geom.Point;
import rainlap.geom.Region;
import rainlap.joint.Joint;
import rainlap.joint.Run;
import rainlap.joint.Sheets;
import rainlap.material.Layer;
import rainlap.material.MaterialKind;
import rainlap.stack.Face;
import rainlap.stack.Stack;
import rainlap.wall.Opening;
import rainlap.wall.Surface;

/**
 * The seal of a joint, as far as it can be seen: what adhered strips and sealants cover of its line.
 *
 * @param middle of the longest stretch that shows, if any does
 * @param why there is none, if so
 */
record Seal(Optional<Point> middle, String why) {
    static Seal of(Stack stack, Joint joint) {
        if (!joint.surface().isWall()) {
            return new Seal(Optional.empty(), "it lies in a reveal, and holes are put into the wall's face");
        }
        Longest longest = new Longest(stack, joint);
        joint.runs().forEach(longest::add);
        return new Seal(longest.middle, longest.middle.isPresent() ? "" : longest.why());
    }

    /** Looks along a joint, run by run. */
    private static final class Longest {
        private final Stack stack;
        private final Joint joint;
        private final TreeSet<String> hiding = new TreeSet<>();
        private boolean sealed;
        private double length;
        private Optional<Point> middle = Optional.empty();

        Longest(Stack stack, Joint joint) {
            this.stack = stack;
            this.joint = joint;
        }

        void add(Run run) {
            EdgeFrame line = EdgeFrame.of(run.line());
            List<Face> over = stack.meeting(Surface.WALL, run.line().box()).stream()
                    .filter(f -> f.number() != joint.outer().number() && f.number() != joint.inner().number() && stack.isOutside(f, joint.outer())
                            && stack.isOutside(f, joint.inner())).toList();
            List<Intervals> seals = new ArrayList<>(List.of(run.cover().taped())), hidden = new ArrayList<>();
            for (Face f : over) {
                Intervals where = f.across(line, 0, line.length());
                if (f.kind() == MaterialKind.SEALANT) {
                    seals.add(where);
                } else if (!Sheets.isStrip(f) && !where.isEmpty()) {
                    hidden.add(where);
                    hiding.add(f.piece().material().layer() == Layer.WRAP ? f.piece().id() : "the cladding or its battens");
                }
            }
            Intervals all = Intervals.unionOf(seals);
            sealed |= !all.isEmpty();
            take(line, all.minus(Intervals.unionOf(hidden)).intersect(onWall(line, run.line().box())));
        }

        /** Inside the outline and beside the openings. */
        private Intervals onWall(EdgeFrame line, Box near) {
            Intervals wall = line.inside(stack.elevation().outline().region(), line.side());
            for (Opening o : stack.elevation().openings()) {
                if (o.rect().meets(near)) {
                    wall = wall.minus(line.inside(Region.of(o.rect()), line.side()));
                }
            }
            return wall;
        }

        private void take(EdgeFrame line, Intervals shows) {
            for (int i = 0; i < shows.count(); i++) {
                double l = shows.to(i) - shows.from(i);
                if (l >= Hole.SIZE && l > length) {
                    length = l;
                    middle = Optional.of(line.at((shows.from(i) + shows.to(i)) / 2));
                }
            }
        }

        String why() {
            if (!sealed) {
                return "no tape, corner piece, collar or sealant seals it";
            }
            return hiding.isEmpty() ? "less than 6 mm of its seal shows" : "its seal lies behind " + String.join(", ", hiding);
        }
    }
}
