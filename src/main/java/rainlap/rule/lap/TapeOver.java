package rainlap.rule.lap;

import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import rainlap.geom.Box;
import rainlap.geom.Region;
import rainlap.joint.Joint;
import rainlap.joint.Sheets;
import rainlap.material.MaterialKind;
import rainlap.rule.Evidence;
import rainlap.rule.PieceWords;
import rainlap.stack.Face;

/**
 * Tape stuck over an edge that is to be drawn out or tucked in: none of that can be done before it is off.
 *
 * @param along what was laid along the edge
 * @param across what only crosses it, such as a jamb tape, and is freed and stuck down again
 */
record TapeOver(List<String> along, List<String> across) {

    static TapeOver of(Evidence e, Joint j, Joint.Stretch s) {
        Box line = Box.of(s.line());
        boolean level = line.width() >= line.height();
        Region near = Region.of(line.grow(1));
        List<Face> over = e.stack().meeting(j.surface(), line.grow(1)).stream().filter(f -> f.kind() == MaterialKind.TAPE && Sheets.isStrip(f))
                .filter(f -> f.region().overlaps(near) && e.stack().isOutside(f, j.outer())).toList();
        List<String> along = ids(over.stream().filter(f -> level == f.box().width() >= f.box().height()));
        return new TapeOver(along, ids(over.stream()).stream().filter(id -> !along.contains(id)).toList());
    }

    private static List<String> ids(Stream<Face> faces) {
        return faces.map(f -> f.piece().id()).distinct().toList();
    }

    /** {@code Take T1 off and draw}, or {@code Draw} where none lies along the edge. */
    String before(String verb) {
        return along.isEmpty() ? verb.substring(0, 1).toUpperCase(Locale.ROOT) + verb.substring(1) : "Take " + PieceWords.list(along) + " off and " + verb;
    }

    /** {@code , under C1}: what crosses the edge comes to lie over what is drawn out. */
    String under() {
        return across.isEmpty() ? "" : ", under " + PieceWords.list(across);
    }

    String tapeJoint() {
        return " Tape the joint" + (along.isEmpty() ? "." : " anew.");
    }
}
