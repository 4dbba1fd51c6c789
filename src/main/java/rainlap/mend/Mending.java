package rainlap.mend;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import rainlap.check.Checker;
import rainlap.check.Rules;
import rainlap.check.WeakPoint;
import rainlap.geom.Box;
import rainlap.geom.Grid;
import rainlap.geom.Point;
import rainlap.rule.Evidence;
import rainlap.rule.Finding;
import rainlap.wall.Elevation;
import rainlap.wall.Opening;
import rainlap.wall.Piece;

/** Mends the wall near a weak point, and checks that it is mended. */
public final class Mending {
    /** Pieces that reach nearer than this to the place are looked at: 800 mm. */
    private static final long NEAR = 800 * Grid.MM;
    /** Along the plane of a cut a changed wall may be wrong so far from the place: 200 mm. */
    private static final long ALONG = 200 * Grid.MM;
    private static final long ACROSS = Grid.MM;
    /** A change may bring something else with it, and that another thing. */
    private static final int MOST_STEPS = 4;
    private final Finding wanted;
    private final Box place;

    private Mending(Finding wanted, Point at, boolean plumb) {
        this.wanted = wanted;
        this.place = plumb ? new Box(at.x() - ACROSS, at.y() - ALONG, at.x() + ACROSS, at.y() + ALONG)
                : new Box(at.x() - ALONG, at.y() - ACROSS, at.x() + ALONG, at.y() + ACROSS);
    }

    /**
     * The wall mended where a plane cuts it at a weak point; empty where no rule says how, or where what it says does not mend it.
     *
     * @param at where the plane crosses the weak point's place
     * @param plumb whether the plane stands
     */
    public static Optional<Mended> of(Evidence evidence, Finding finding, Point at, boolean plumb) {
        return Mends.find(finding.rule()).isEmpty() ? Optional.empty()
                : new Mending(finding, at, plumb).mended(near(evidence, Box.of(List.of(at)).grow(NEAR)));
    }

    private Optional<Mended> mended(Evidence drawn) {
        List<Finding> before = here(drawn);
        Optional<Finding> next = before.stream().filter(f -> key(f).equals(key(wanted))).findFirst();
        Set<String> known = new HashSet<>(before.stream().map(Mending::key).toList());
        known.remove(key(wanted));
        List<String> what = new ArrayList<>(), added = new ArrayList<>();
        Evidence now = drawn;
        for (int i = 0; i < MOST_STEPS && next.isPresent(); i++) {
            Optional<Edited> edited = Mends.find(next.get().rule()).isEmpty() ? Optional.empty()
                    : Mends.find(next.get().rule()).get().of(now, next.get());
            if (edited.isEmpty() || edited.get().isImpossible()) {
                return Optional.empty();
            }
            what.addAll(edited.get().what());
            added.addAll(edited.get().added());
            now = Evidence.of(now.elevation().withPieces(edited.get().pieces()), now.stage(), now.practice());
            next = here(now).stream().filter(f -> !known.contains(key(f))).findFirst();
            if (next.isEmpty()) {
                return Optional.of(new Mended(now, what, added));
            }
        }
        return Optional.empty();
    }

    private List<Finding> here(Evidence e) {
        return Checker.check(e, Rules.all()).weakPoints().stream().map(WeakPoint::finding)
                .filter(f -> f.where().box().meets(place)).toList();
    }

    /** The same thing wrong with the same pieces. */
    private static String key(Finding f) {
        return f.rule() + " " + new TreeSet<>(f.pieces());
    }

    /** The wall with the pieces about a place only. */
    private static Evidence near(Evidence e, Box around) {
        Elevation wall = e.elevation();
        List<Piece> kept = wall.pieces().stream().filter(p -> p.shapes().stream().anyMatch(s -> s.on().isWall() ? s.box().meets(around)
                : wall.findOpening(s.on().opening()).map(Opening::rect).filter(r -> r.meets(around)).isPresent())).toList();
        Set<String> ids = new HashSet<>(kept.stream().map(Piece::id).toList());
        return Evidence.of(wall.withPieces(kept.stream().map(p -> new Piece(p.id(), p.material(), p.shapes(),
                p.under().stream().filter(ids::contains).toList(), p.bond(), p.cuts())).toList()), e.stage(), e.practice());
    }
}
