package rainlap.rule.lap;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rainlap.geom.Box;
import rainlap.geom.Overlay;
import rainlap.geom.Region;
import rainlap.joint.Bare;
import rainlap.joint.Sheets;
import rainlap.material.MaterialKind;
import rainlap.practice.Limit;
import rainlap.rule.Evidence;
import rainlap.rule.MendSizes;
import rainlap.stack.Face;
import rainlap.wall.Opening;
import rainlap.wall.Surface;

/**
 * The membrane that covers a bare place, laid flat: over what lies below and beside it, in behind what lies above, into the reveal of an opening that stands too near for a lap. Bare
 * places that only a tape parts are covered as one: a sheet over the lower one alone would end behind nothing. The words of the remedy and the cut that is drawn of it both ask here.
 *
 * @param whole the bare place with those that only tape parts from it
 * @param parting the tapes between them, which come off
 * @param left the opening that stands too near to its left, if one does
 */
public record BareCover(Evidence evidence, Box whole, List<String> parting, Optional<Opening> left, Optional<Opening> right) {
    static final long BESIDE = 3;
    /** Two bare places further apart than this are not covered as one: 300 mm. */
    private static final long APART = 30_000;

    public static BareCover of(Evidence e, Box place) {
        Box whole = place;
        List<String> parting = new ArrayList<>();
        for (Bare b : e.bare()) {
            Optional<Box> between = between(b.region().box(), place);
            List<Face> there = between.map(g -> over(e, g)).orElse(List.of());
            if (!there.isEmpty() && there.stream().allMatch(f -> Sheets.isStrip(f) && f.kind() == MaterialKind.TAPE)) {
                whole = whole.join(b.region().box());
                there.stream().map(f -> f.piece().id()).filter(id -> !parting.contains(id)).forEach(parting::add);
            }
        }
        long side = MendSizes.side(e);
        return new BareCover(e, whole, List.copyOf(parting), opening(e, new Box(whole.minX() - side, whole.minY(), whole.minX(), whole.maxY())),
                opening(e, new Box(whole.maxX(), whole.minY(), whole.maxX() + side, whole.maxY())));
    }

    /** What lies between two places one above the other. */
    private static Optional<Box> between(Box a, Box b) {
        long x0 = Math.max(a.minX(), b.minX()), x1 = Math.min(a.maxX(), b.maxX()), y0 = Math.min(a.maxY(), b.maxY()), y1 = Math.max(a.minY(), b.minY());
        return x0 < x1 && y0 < y1 && y1 - y0 <= APART ? Optional.of(new Box(x0, y0, x1, y1)) : Optional.empty();
    }

    private static Optional<Opening> opening(Evidence e, Box beside) {
        return e.elevation().openingsMeeting(beside).stream().filter(o -> o.reveal() > 0 && o.rect().overlaps(beside)).findFirst();
    }

    static List<Face> over(Evidence e, Box place) {
        return e.stack().meeting(Surface.WALL, place).stream().filter(f -> Sheets.covers(f) && f.region().overlaps(Region.of(place))).toList();
    }

    /** How far it is turned into an opening: as asked of the membrane there, no less than makes up the lap over a sheet beside it, and no deeper than the reveal. */
    long into(Opening o) {
        long flat = isLeft(o) ? whole.minX() - o.rect().maxX() : o.rect().minX() - whole.maxX();
        return Math.min(o.reveal(), Math.max(evidence.practice().get(Limit.RETURN_JAMB).hundredths(), MendSizes.side(evidence) - Math.max(0, flat)));
    }

    private boolean isLeft(Opening o) {
        return left.filter(o::equals).isPresent();
    }

    /** Flat on the wall; what of it lies before an opening is turned into that. */
    public Box onWall() {
        long side = MendSizes.side(evidence), lap = MendSizes.lap(evidence);
        long x0 = left.map(o -> o.rect().maxX() - into(o)).orElse(whole.minX() - side), x1 = right.map(o -> o.rect().minX() + into(o)).orElse(whole.maxX() + side);
        return new Box(x0, whole.minY() - lap, x1, whole.maxY() + lap);
    }

    /** What lies directly below it. */
    List<Face> foot() {
        return over(evidence, new Box(whole.minX(), whole.minY() - BESIDE, whole.maxX(), whole.minY() - 1));
    }

    /** What lies directly above it. */
    List<Face> head() {
        return over(evidence, new Box(whole.minX(), whole.maxY() + 1, whole.maxX(), whole.maxY() + BESIDE));
    }

    boolean isBesideSomething(boolean atLeft) {
        long x0 = atLeft ? whole.minX() - BESIDE : whole.maxX() + 1;
        return !over(evidence, new Box(x0, whole.minY(), x0 + BESIDE - 1, whole.maxY())).isEmpty();
    }

    /** Tapes that lie directly above where no sheet does: their far edge is where a sheet may be. */
    List<String> tapesAbove() {
        return head().stream().anyMatch(Sheets::isSheet) ? List.of() : head().stream().map(f -> f.piece().id()).distinct().toList();
    }

    /** The sheets behind which its upper edge goes, as far as they are seen from outside. */
    public List<Face> above() {
        long top = tapesAbove().isEmpty() ? whole.maxY() + BESIDE : head().stream().mapToLong(f -> f.region().box().maxY()).max().orElseThrow();
        Region near = Region.of(new Box(whole.minX(), whole.maxY() + 1, whole.maxX(), top));
        List<Face> sheets = over(evidence, near.box()).stream().filter(Sheets::isSheet).toList();
        return sheets.stream().filter(f -> !Overlay.difference(Overlay.intersection(List.of(f.region()), List.of(near)),
                sheets.stream().filter(g -> g != f && evidence.stack().isOutside(g, f)).map(Face::region).toList()).isEmpty()).toList();
    }

    /** Of those, the ones that go on below, beside the place: they are slit. */
    public List<Face> slit() {
        Region beside = Region.of(new Box(onWall().minX(), onWall().minY(), onWall().maxX(), whole.maxY()));
        return above().stream().filter(f -> f.region().overlaps(beside)).toList();
    }

    /** Tapes along the jamb beside it, which go down over what is turned in there. */
    List<String> jambTapes(Opening o) {
        Box jamb = isLeft(o) ? new Box(o.rect().maxX(), whole.minY(), Math.max(whole.minX(), o.rect().maxX() + 1), whole.maxY())
                : new Box(Math.min(whole.maxX(), o.rect().minX() - 1), whole.minY(), o.rect().minX(), whole.maxY());
        return over(evidence, jamb).stream().filter(f -> f.kind() == MaterialKind.TAPE && Sheets.isStrip(f))
                .filter(f -> 2 * (Math.min(f.box().maxY(), jamb.maxY()) - Math.max(f.box().minY(), jamb.minY())) >= jamb.height()).map(f -> f.piece().id()).distinct().toList();
    }
}
