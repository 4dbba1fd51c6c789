package rainlap.rule.opening;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import rainlap.geom.Box;
import rainlap.geom.Point;
import rainlap.geom.Segment;
import rainlap.material.MaterialKind;
import rainlap.practice.Limit;
import rainlap.practice.LimitValue;
import rainlap.rule.Cappings;
import rainlap.rule.Evidence;
import rainlap.rule.Outcome;
import rainlap.rule.Place;
import rainlap.stack.Face;
import rainlap.wall.Piece;
import rainlap.wall.Surface;

/** The flashings that lie across the wall: at heads, sills and the base, not those that cap a parapet. Those that stand upright, beside a jamb, shed water along themselves. */
final class LevelFlashings {
    /** What rules share: each once, in laying order, and the ids of those at the sills of openings. */
    private record Found(List<Piece> all, Set<String> atSills) {
        static Found of(Evidence e) {
            return e.shared().of(Found.class, () -> new Found(across(e), e.elevation().openings().stream()
                    .flatMap(o -> SillFlashings.of(e, o).stream()).map(f -> f.piece().id()).collect(Collectors.toSet())));
        }
    }

    private LevelFlashings() {}

    /** Judges each once, in laying order, at the sill of an opening by the one limit and elsewhere by the other. */
    static Stream<Outcome> each(Evidence e, Limit atSill, Limit elsewhere, BiFunction<Piece, LimitValue, Outcome> judge) {
        Set<String> sills = Found.of(e).atSills;
        return each(e, p -> judge.apply(p, e.practice().get(sills.contains(p.id()) ? atSill : elsewhere)));
    }

    /** Judges each once, in laying order; without any, one answer that there is none. */
    static Stream<Outcome> each(Evidence e, Function<Piece, Outcome> judge) {
        List<Piece> found = Found.of(e).all;
        return found.isEmpty() ? Stream.of(new Outcome.DoesNotApply("no flashing lies across the wall")) : found.stream().map(judge);
    }

    private static List<Piece> across(Evidence e) {
        Map<String, Piece> found = new LinkedHashMap<>();
        for (Face f : e.onWall(MaterialKind.FLASHING)) {
            Piece p = f.piece();
            if (isLevel(p) && !Cappings.isCapping(e.elevation(), f)) {
                found.putIfAbsent(p.id(), p);
            }
        }
        return List.copyOf(found.values());
    }

    private static boolean isLevel(Piece p) {
        return p.wallBox().filter(b -> b.width() > b.height()).isPresent();
    }

    /** Along its lower edge. */
    static Place foot(Evidence e, Piece p) {
        Box b = p.wallBox().orElseThrow();
        return Place.line(e.elevation(), Surface.WALL, new Segment(new Point(b.minX(), b.minY()), new Point(b.maxX(), b.minY())));
    }

    /** What a file may leave open is no zero: nobody can tell. */
    static Outcome notStated(Piece p, String what, String key) {
        return new Outcome.CannotTell(List.of(p.id()), "neither " + p.id() + " nor its material " + p.material().id() + " states " + what + " (" + key + ")");
    }
}
