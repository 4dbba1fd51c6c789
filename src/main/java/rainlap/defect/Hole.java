package rainlap.defect;

import java.util.List;
import rainlap.geom.Box;
import rainlap.geom.Point;
import rainlap.geom.Region;
import rainlap.rule.Place;
import rainlap.wall.Piece;
import rainlap.wall.Surface;

/**
 * A hole in one piece, on the wall.
 *
 * @param of what it is at: a surface such as {@code W1.left}, the id of a flashing, a joint or a penetration
 * @param piece the outermost piece at its middle, which it goes through
 */
public record Hole(Kind kind, String of, Box box, Piece piece) {
    /** 6 mm, in grid units. */
    public static final long SIZE = 600;

    /** Which of the places it is. */
    public enum Kind {
        JAMB("jamb"), HEAD_FLASHING("head flashing"), JOINT_SEAL("joint seal"), PENETRATION("penetration");

        private final String word;

        Kind(String word) {
            this.word = word;
        }

        public String word() {
            return word;
        }
    }

    public Place place() {
        return new Place(Surface.WALL, List.of(), List.of(Region.of(box)));
    }

    /** Its middle in whole millimetres: {@code +840, x 2250}. */
    public String middleInWords() {
        return Place.level((box.minY() + box.maxY()) / 2) + ", x " + Place.mm((box.minX() + box.maxX()) / 2);
    }

    static Box around(Point middle) {
        return new Box(middle.x() - SIZE / 2, middle.y() - SIZE / 2, middle.x() + SIZE / 2, middle.y() + SIZE / 2);
    }
}
