package rainlap.rule.tape;

import rainlap.geom.Point;
import rainlap.joint.Direction;
import rainlap.joint.Joint;
import rainlap.joint.Run;
import rainlap.measure.LengthText;
import rainlap.practice.Limit;
import rainlap.practice.LimitValue;
import rainlap.practice.Practice;
import rainlap.wall.Side;

/** Words that the rules of tape share. */
final class TapeWords {
    private TapeWords() {}

    /**
     * How to tape something.
     *
     * @param gap width of nothing under the tape, grid units
     */
    static String cover(Practice practice, String what, long gap) {
        LimitValue cover = practice.get(Limit.TAPE_COVER);
        return "Cover " + what + " with tape at least " + LengthText.mmUp(2 * cover.hundredths() + gap) + " wide, centred on it, "
                + cover.number() + " to each side, and run it on by " + cover.number() + " past both ends.";
    }

    /** On which side of a joint the outer or the inner piece lies: {@code above}, {@code to the left}; on a reveal only the piece. */
    static String side(Joint j, Run r, boolean outer) {
        String piece = (outer ? j.outer() : j.inner()).piece().id();
        if (j.surface().side() != Side.WALL) {
            return "on " + piece;
        }
        Direction d = r.faces();
        boolean level = Math.abs(d.down()) >= Math.abs(d.across());
        if (level) {
            return (d.down() > 0 == outer ? "above" : "below") + " it, on " + piece;
        }
        return "to the " + (d.across() > 0 == outer ? "left" : "right") + " of it, on " + piece;
    }

    /** The run of a joint on which a stretch begins. */
    static Run runOf(Joint j, Joint.Stretch s) {
        Point start = s.line().get(0);
        return j.runs().stream().filter(r -> r.line().box().grow(1).contains(start) && !r.line().b().equals(start)).findFirst()
                .orElse(j.runs().get(0));
    }
}
