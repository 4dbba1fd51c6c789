package rainlap.defect;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import rainlap.geom.Box;
import rainlap.geom.EdgeFrame;
import rainlap.geom.Intervals;
import rainlap.geom.Overlay;
import rainlap.geom.Point;
import rainlap.geom.Region;
import rainlap.geom.Segment;
import rainlap.joint.Joint;
import rainlap.rule.Evidence;
import rainlap.rule.HeadFlashings;
import rainlap.stack.Face;
import rainlap.wall.Opening;
import rainlap.wall.Penetration;
import rainlap.wall.Side;
import rainlap.wall.Surface;

/** Finds where the holes go. */
final class Placing {
    /** How far a hole beside a pipe lies over it, grid units: 1 mm, so that it opens the seal to a round pipe. */
    private static final long OVER_PIPE = 100;

    private final Evidence evidence;
    private final Region followed;
    private final Outermost outermost;
    private final List<Hole> holes = new ArrayList<>();
    private final List<NotPlaced> notPlaced = new ArrayList<>();

    private Placing(Evidence evidence, Region followed) {
        this.evidence = evidence;
        this.followed = followed;
        this.outermost = new Outermost(evidence.stack());
    }

    /** @param followed where water is followed: the wall's outline, or that of the walls laid flat beside it */
    static Placing of(Evidence evidence, Region followed) {
        Placing p = new Placing(evidence, followed);
        List<Opening> openings = evidence.elevation().openings();
        openings.forEach(p::atJambs);
        p.noneIf(openings.isEmpty(), Hole.Kind.JAMB, "no opening is drawn");
        openings.forEach(p::aboveHead);
        p.noneIf(openings.isEmpty(), Hole.Kind.HEAD_FLASHING, "no opening is drawn");
        Set<Joint> here = new HashSet<>(evidence.jointsHere());
        evidence.joints().all().stream().filter(j -> !here.contains(j))
                .forEach(j -> p.not(Hole.Kind.JOINT_SEAL, j.id(), "it lies beyond the outline, on another wall"));
        evidence.jointsHere().forEach(j -> {
            Seal seal = Seal.of(evidence.stack(), j);
            seal.middle().ifPresentOrElse(at -> p.put(Hole.Kind.JOINT_SEAL, j.id(), Hole.around(at)), () -> p.not(Hole.Kind.JOINT_SEAL, j.id(), seal.why()));
        });
        p.noneIf(evidence.joints().all().isEmpty(), Hole.Kind.JOINT_SEAL, "no joint is drawn");
        evidence.elevation().penetrations().forEach(p::atPipe);
        p.noneIf(evidence.elevation().penetrations().isEmpty(), Hole.Kind.PENETRATION, "no penetration is drawn");
        return p;
    }

    List<Hole> holes() {
        return holes;
    }

    List<NotPlaced> notPlaced() {
        return notPlaced;
    }

    private void atJambs(Opening o) {
        Box r = o.rect();
        long y = r.minY() + Math.round(0.75 * r.height()), half = Hole.SIZE / 2;
        put(Hole.Kind.JAMB, new Surface(o.id(), Side.LEFT).name(), Hole.around(new Point(r.minX() - half, y)));
        put(Hole.Kind.JAMB, new Surface(o.id(), Side.RIGHT).name(), Hole.around(new Point(r.maxX() + half, y)));
    }

    private void aboveHead(Opening o) {
        List<Face> flashings = HeadFlashings.of(evidence, o);
        if (flashings.isEmpty()) {
            not(Hole.Kind.HEAD_FLASHING, o.id(), "it has no head flashing");
        }
        for (Face f : flashings) {
            Box b = f.box(), r = o.rect();
            long x = (Math.max(b.minX(), r.minX()) + Math.min(b.maxX(), r.maxX())) / 2;
            put(Hole.Kind.HEAD_FLASHING, f.piece().id(), Hole.around(new Point(x, topOfWhatShows(f, x) + Hole.SIZE + Hole.SIZE / 2)));
        }
    }

    /** At a level line over the flashing: where it shows highest, or else its foot. */
    private long topOfWhatShows(Face f, long x) {
        EdgeFrame up = EdgeFrame.of(new Segment(new Point(x, f.box().minY()), new Point(x, f.box().maxY())));
        Intervals shows = outermost.shows(f, up);
        return shows.isEmpty() ? f.box().minY() : up.at(shows.to(shows.count() - 1)).y();
    }

    private void atPipe(Penetration p) {
        Box b = p.region().box();
        long x = (b.minX() + b.maxX()) / 2, y = b.maxY() - OVER_PIPE + Hole.SIZE / 2;
        put(Hole.Kind.PENETRATION, p.id(), Hole.around(new Point(x, y)));
    }

    private void put(Hole.Kind kind, String of, Box box) {
        Optional<Face> through = outermost.at(box);
        if (!Overlay.difference(List.of(Region.of(box)), List.of(followed)).isEmpty()) {
            not(kind, of, "it lies on the outline, and beyond it water is not followed");
        } else if (through.isEmpty()) {
            not(kind, of, "nothing lies there to make a hole in");
        } else if (!Cutting.leavesSome(through.get().piece(), box)) {
            not(kind, of, through.get().piece().id() + " is no larger than the hole");
        } else {
            holes.add(new Hole(kind, of, box, through.get().piece()));
        }
    }

    private void noneIf(boolean none, Hole.Kind kind, String why) {
        if (none) {
            not(kind, "", why);
        }
    }

    private void not(Hole.Kind kind, String of, String why) {
        notPlaced.add(new NotPlaced(kind, of, why));
    }
}
