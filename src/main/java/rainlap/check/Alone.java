package rainlap.check;

import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import java.util.function.Supplier;
import java.util.stream.Stream;
import rainlap.geom.Box;
import rainlap.geom.Grid;
import rainlap.rule.Evidence;
import rainlap.rule.Finding;
import rainlap.rule.Place;
import rainlap.stack.Crew;
import rainlap.stack.Stack;
import rainlap.wall.Elevation;
import rainlap.wall.Piece;
import rainlap.wall.Side;
import rainlap.wall.Surface;
import rainlap.water.Arrival;
import rainlap.water.Inflow;

/**
 * What a place lets in by itself. Where water of another leak runs by, it wets what the place would let in only after some failure, and so the place's own way does not show: then
 * the water is followed once more, with rain at the place alone, over the part of the wall round it. So it is, too, where a rule reckons with few failures and no way tells of
 * them: of several ways round one pipe only one is told.
 */
final class Alone {
    /** So much of the wall is looked at to each side and above, and so much below: ways to the frame that lead further are not told. */
    private static final long BESIDE = 3_000 * Grid.MM, BELOW = 9_000 * Grid.MM;
    /** Where the part that is looked at ends, what lies beyond it is missing: what comes onto the frame so near to it is not told. */
    private static final long BORDER = 500 * Grid.MM;
    /** It rains so far to both sides of the place: what is stuck over it ends within that, and lets water in by its edges. */
    private static final long RAIN = 120 * Grid.MM;
    /** It does not rain so near to the ends of a line: what is stuck over what lies there is left out. */
    private static final long ENDS = 60 * Grid.MM;

    private final Evidence evidence;
    private final Passing through;
    private final Passing by;
    /** How many pieces are looked at in this stage. */
    private final long count;

    Alone(Evidence evidence, Crew crew) {
        this.evidence = evidence;
        this.count = evidence.elevation().pieces().stream().filter(p -> evidence.stage().sees(p.material().layer())).count();
        List<Arrival> ways = evidence.trace().arrivals();
        List<Passing> both = crew.all(List.<Supplier<Passing>>of(() -> Passing.through(evidence.elevation(), ways), () -> Passing.by(evidence.elevation(), ways)));
        this.through = both.get(0);
        this.by = both.get(1);
    }

    /** The worst way by which water gets in where a finding lies. */
    Optional<Arrival> worst(Finding f) {
        Optional<Arrival> own = through.worst(f.where(), f.pieces(), f.joint().isPresent());
        int least = own.map(Arrival::defences).orElse(Finding.MANY);
        boolean hidden = least > 0 && by.worst(f.where(), f.pieces(), false).filter(a -> a.defences() < least).isPresent();
        boolean untold = own.isEmpty() && f.defences() < Finding.MANY;
        return hidden || untold ? rainedOn(f).filter(a -> a.defences() < least).or(() -> own) : own;
    }

    private Optional<Arrival> rainedOn(Finding f) {
        Elevation all = evidence.elevation();
        Box place = rained(f.where(), Math.max(RAIN, Passing.near(all, f.where())));
        Box round = new Box(place.minX() - BESIDE, place.minY() - BELOW, place.maxX() + BESIDE, place.maxY() + BESIDE);
        Elevation part = all.part(pieces(round), round);
        Box told = part.openings().size() == all.openings().size() && part.pieces().size() == count ? all.outline().box().grow(BESIDE) : round.grow(-BORDER);
        List<Arrival> ways = Inflow.waysFrom(Stack.of(part, evidence.stage()), evidence.trace().drive(), f.where().surface(), place).stream()
                .filter(a -> told.contains(Place.line(all, a.surface(), a.where()).box())).toList();
        return Passing.through(all, ways).worst(f.where(), f.pieces(), f.joint().isPresent());
    }

    /** What lies in a part of the wall and in the reveals there. */
    private List<Piece> pieces(Box round) {
        TreeSet<Integer> found = new TreeSet<>();
        evidence.stack().meeting(Surface.WALL, round, face -> found.add(face.number()));
        evidence.elevation().openings().stream().filter(o -> o.rect().meets(round))
                .forEach(o -> Stream.of(Side.SILL, Side.LEFT, Side.RIGHT, Side.HEAD).flatMap(s -> evidence.stack().on(new Surface(o.id(), s)).stream()).forEach(f -> found.add(f.number())));
        return found.stream().map(evidence.elevation().pieces()::get).toList();
    }

    private static Box rained(Place where, long beside) {
        Box b = where.box();
        long x = where.isLine() && b.width() > b.height() ? -Math.min(ENDS, b.width() / 4) : beside;
        long y = where.isLine() && b.height() > b.width() ? -Math.min(ENDS, b.height() / 4) : beside;
        return new Box(b.minX() - x, b.minY() - y, b.maxX() + x, b.maxY() + y);
    }
}
