package rainlap.file;

/**
 * What a file may hold at most. The limits keep a hostile or runaway file from filling memory; real walls stay far below them.
 * Coordinates have a limit of their own, {@link rainlap.geom.Grid#LIMIT_MM}.
 *
 * @param bytes size of the file
 * @param depth objects and lists inside one another; the form itself needs 8
 * @param values texts, numbers, lists and so on in the whole file
 * @param pieces pieces of one elevation
 * @param layers pieces on one spot; more is a mistake, and would take work that grows with the square
 * @param points points of one ring
 * @param linePoints points of one line; the work of a wild one grows with the square
 * @param holes holes of one ring, polygons of one well-known text, shapes of one piece
 * @param tucks pieces that one piece is tucked beneath
 * @param idLength characters of an id
 * @param textLength characters of a name, a reason or another text
 * @param wktLength characters of a well-known text
 * @param problems problems listed in one run; what is beyond is counted
 */
public record Limits(int bytes, int depth, int values, int pieces, int layers, int points, int linePoints, int holes, int tucks, int idLength, int textLength,
        int wktLength, int problems) {
    /** The limits that hold. */
    public static final Limits STATED = new Limits(64 << 20, 32, 12_000_000, 1_000_000, 10_000, 20_000, 200, 10_000, 1_000, 100,
            1_000, 4_000_000, 100);
}
