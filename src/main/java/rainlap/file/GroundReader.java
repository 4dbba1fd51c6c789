package rainlap.file;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import rainlap.geom.Box;
import rainlap.geom.Point;
import rainlap.geom.Segment;
import rainlap.wall.Abutment;
import rainlap.wall.GroundCover;

/** Reads what lies at the foot of the wall: what the ground is, and the decks and roofs that meet it. */
final class GroundReader {
    static final List<String> ABUTTING_KEYS = List.of("is", "line");
    static final List<String> COVERS = Stream.of(GroundCover.values()).map(GroundCover::word).toList();
    static final List<String> KINDS = Stream.of(Abutment.Kind.values()).map(Abutment.Kind::word).toList();
    /** As many as meet a wall, with room to spare. */
    private static final int MOST = 100;

    private GroundReader() {}

    static GroundCover cover(Fields wall) {
        if (wall.has("ground_is") && !wall.has("ground")) {
            wall.wrong(wall.keyAt("ground_is"), "\"ground_is\" needs \"ground\", the level of that ground", "add \"ground\": -450");
        }
        return wall.word("ground_is", GroundCover::find, COVERS).orElse(GroundCover.SOIL);
    }

    /** @param outline the wall's box; empty where the outline could not be read */
    static List<Abutment> abutting(Fields wall, Optional<Box> outline) {
        return Fields.each(wall.list("abutting", MOST), v -> Fields.of(v, "abutting", ABUTTING_KEYS, wall.problems()).flatMap(f -> one(f, outline)));
    }

    private static Optional<Abutment> one(Fields f, Optional<Box> outline) {
        Optional<Abutment.Kind> kind = f.required("is", "\"deck\"").flatMap(v -> f.word(v, "is", Abutment.Kind::find, KINDS));
        Optional<Segment> line = f.required("line", "[[0, 150], [3600, 150]]").flatMap(v -> line(f, v, outline));
        return kind.flatMap(k -> line.map(l -> new Abutment(k, l)));
    }

    private static Optional<Segment> line(Fields f, Value v, Optional<Box> outline) {
        List<Value> items = f.list(v, "line", 2);
        List<Point> points = items.isEmpty() ? List.of() : RingReader.points(f, v, "line", 2);
        if (v instanceof Value.Items list && list.items().size() < 2) {
            f.wrong(v.at(), "\"line\" has " + list.items().size() + (list.items().size() == 1 ? " point" : " points"), "write its two ends: [[0, 150], [3600, 150]]");
        }
        if (points.size() < 2) {
            return Optional.empty();
        }
        Point a = points.get(0), b = points.get(1);
        Optional<Point> off = points.stream().filter(p -> outline.isPresent() && !outline.get().contains(new Box(p.x(), p.y(), p.x(), p.y()))).findFirst();
        if (off.isPresent()) {
            f.wrong(v.at(), "\"line\" leaves the wall at " + RingReader.place(off.get()), "draw only where it meets this wall");
        } else if (a.x() == b.x()) {
            f.wrong(v.at(), "\"line\" stands plumb", "draw the upper side of the deck or roof from its left to its right end");
        } else {
            return Optional.of(a.x() < b.x() ? new Segment(a, b) : new Segment(b, a));
        }
        return Optional.empty();
    }
}
