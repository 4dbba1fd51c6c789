package rainlap.joint;

import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import rainlap.geom.Box;
import rainlap.geom.Region;
import rainlap.geom.Slabs;
import rainlap.stack.Face;
import rainlap.wall.Opening;
import rainlap.wall.Side;

/**
 * One corner of an opening, on the two surfaces of the reveal that meet there.
 *
 * @param level {@code SILL} or {@code HEAD}
 * @param jamb {@code LEFT} or {@code RIGHT}
 * @param onLevel what lies bare on sill or head within the square of the reveal's depth at this corner, in that surface's frame
 * @param onJamb the same on the jamb
 * @param pieces ids of what touches the corner square, in laying order
 */
public record OpeningCorner(Opening opening, Side level, Side jamb, List<Region> onLevel, List<Region> onJamb,
        List<String> pieces) {
    public OpeningCorner {
        onLevel = List.copyOf(onLevel);
        onJamb = List.copyOf(onJamb);
        pieces = List.copyOf(pieces);
    }

    public boolean isBare() {
        return !onLevel.isEmpty() || !onJamb.isEmpty();
    }

    /** In words: "lower left corner". */
    public String inWords() {
        return (level == Side.SILL ? "lower " : "upper ") + jamb.word() + " corner";
    }

    static OpeningCorner of(Reveals.One reveal, Side level, Side jamb) {
        Opening o = reveal.opening();
        Box onLevel = square(o, level, jamb == Side.LEFT), onJamb = square(o, jamb, level == Side.SILL);
        List<String> pieces = Stream.concat(covers(reveal, level, onLevel), covers(reveal, jamb, onJamb))
                .sorted(Comparator.comparingInt(Face::number)).map(f -> f.piece().id()).distinct().toList();
        return new OpeningCorner(o, level, jamb, bare(reveal, level, onLevel), bare(reveal, jamb, onJamb), pieces);
    }

    /** The square at one end of a surface, as deep as the reveal. */
    private static Box square(Opening o, Side side, boolean atStart) {
        long along = o.along(side), deep = Math.min(o.reveal(), along / 2);
        return new Box(atStart ? 0 : along - deep, 0, atStart ? deep : along, o.reveal());
    }

    private static Stream<Face> covers(Reveals.One reveal, Side side, Box square) {
        return reveal.on(side).stream().filter(f -> f.box().overlaps(square));
    }

    private static List<Region> bare(Reveals.One reveal, Side side, Box square) {
        return reveal.isWhole(side, square) ? List.of() : new Slabs(square, covers(reveal, side, square).map(Face::region).toList()).uncovered();
    }
}
