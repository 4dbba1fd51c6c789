package rainlap.rule;

import java.util.stream.Stream;
import rainlap.geom.Grid;
import rainlap.geom.Point;
import rainlap.joint.Joint;
import rainlap.material.MaterialKind;
import rainlap.measure.LengthText;
import rainlap.practice.Limit;
import rainlap.water.Step;

/**
 * How large things are made where a place is mended, grid units, whole millimetres: as practice asks, and no less than wind drives water there. The words of a
 * remedy and the cut that is drawn of it both ask here, so that they say one size.
 */
public final class MendSizes {
    private MendSizes() {}

    /** How far an upper sheet laps a lower one where nothing shelters it. */
    public static long lap(Evidence e) {
        return up(Math.max(asked(e, Limit.COURSE_LAP), e.trace().drive().rise()));
    }

    /** How far a lap reaches where it is mended: as asked, grid units, and of two sheets no less than wind lifts water there, or pushes it. */
    public static long lap(Evidence e, Joint j, long asked, boolean upwards) {
        if (Stream.of(j.outer(), j.inner()).anyMatch(f -> f.kind() != MaterialKind.MEMBRANE)) {
            return asked;
        }
        Point a = j.line().get(0), b = j.line().get(j.line().size() - 1);
        long lift = Shelter.lift(e, j.surface(), new Point((a.x() + b.x()) / 2, (a.y() + b.y()) / 2 + 1), j.inner().piece().id());
        return up(Math.max(asked, upwards ? lift : e.trace().drive().creep()));
    }

    /** How far the piece that water is lifted or pushed under laps what lies beneath. */
    public static long lap(Evidence e, Step driven) {
        return up(Math.max(asked(e, driven.kind() == Step.Kind.LIFT_UNDER ? Limit.COURSE_LAP : Limit.END_LAP), driven(e, driven)));
    }

    /** How far wind drives water in a step, in whole millimetres. */
    public static long driven(Evidence e, Step driven) {
        return up(driven.kind() == Step.Kind.LIFT_UNDER ? Shelter.lift(e, driven) : e.trace().drive().creep());
    }

    /** How far sheets lap beside one another. */
    public static long side(Evidence e) {
        return up(Math.max(asked(e, Limit.END_LAP), e.trace().drive().creep()));
    }

    /** How far membrane is laid down over the upstand of a head flashing that is set anew. */
    public static long overUpstand(Evidence e) {
        return up(Math.max(asked(e, Limit.HEAD_UPSTAND), e.trace().drive().rise()));
    }

    /** How far a strip that is turned into a head runs up the frame behind the sheet: from within an opening water is driven both ways. */
    public static long upFromHead(Evidence e) {
        return up(Math.max(e.trace().drive().rise(), e.trace().drive().creep()));
    }

    /** How far a collar runs on under its pipe. */
    public static long collarFoot(Evidence e) {
        return up(Math.max(asked(e, Limit.TAPE_COVER), e.trace().drive().rise()));
    }

    /** {@code 25 flat all round and 118 beneath}: no less than wind lifts water. */
    public static String collarFlat(Evidence e) {
        long cover = asked(e, Limit.TAPE_COVER), foot = collarFoot(e);
        return LengthText.mm(cover) + " flat all round" + (foot > cover ? " and " + LengthText.mm(foot) + " beneath" : "");
    }

    /** A length in whole millimetres, rounded up. */
    public static long up(long units) {
        return -Math.floorDiv(-units, Grid.MM) * Grid.MM;
    }

    private static long asked(Evidence e, Limit limit) {
        return e.practice().get(limit).hundredths();
    }
}
