package rainlap.joint;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import rainlap.geom.Box;
import rainlap.geom.Region;
import rainlap.geom.Slabs;
import rainlap.stack.Face;
import rainlap.stack.Stack;
import rainlap.wall.Opening;
import rainlap.wall.Side;
import rainlap.wall.Surface;

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

    /** Lower left, lower right, upper left, upper right of every opening with a reveal, in the file's order. */
    public static List<OpeningCorner> of(Stack stack) {
        List<OpeningCorner> out = new ArrayList<>();
        for (Opening o : stack.elevation().openings()) {
            for (Side level : List.of(Side.SILL, Side.HEAD)) {
                for (Side jamb : List.of(Side.LEFT, Side.RIGHT)) {
                    if (o.reveal() > 0) {
                        out.add(of(stack, o, level, jamb));
                    }
                }
            }
        }
        return out;
    }

    private static OpeningCorner of(Stack stack, Opening o, Side level, Side jamb) {
        Surface a = new Surface(o.id(), level), b = new Surface(o.id(), jamb);
        Box onA = square(o, level, jamb == Side.LEFT), onB = square(o, jamb, level == Side.SILL);
        List<Face> overA = coverers(stack, a, onA), overB = coverers(stack, b, onB);
        List<String> pieces = Stream.concat(overA.stream(), overB.stream())
                .sorted(java.util.Comparator.comparingInt(Face::number)).map(f -> f.piece().id()).distinct().toList();
        return new OpeningCorner(o, level, jamb, bare(onA, overA), bare(onB, overB), pieces);
    }

    /** The square at one end of a surface, as deep as the reveal. */
    private static Box square(Opening o, Side side, boolean atStart) {
        long along = o.along(side), deep = Math.min(o.reveal(), along / 2);
        return new Box(atStart ? 0 : along - deep, 0, atStart ? deep : along, o.reveal());
    }

    private static List<Face> coverers(Stack stack, Surface s, Box square) {
        return stack.on(s).stream().filter(f -> f.box().overlaps(square) && Sheets.covers(f)).toList();
    }

    private static List<Region> bare(Box square, List<Face> coverers) {
        List<Region> over = coverers.stream().map(Face::region).toList();
        boolean whole = over.stream().anyMatch(r -> r.isBox() && r.box().contains(square));
        return whole ? List.of() : new Slabs(square, over).uncovered();
    }
}
