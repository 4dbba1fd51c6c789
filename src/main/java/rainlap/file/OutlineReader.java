package rainlap.file;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import rainlap.geom.Box;
import rainlap.geom.Grid;
import rainlap.geom.Point;
import rainlap.geom.Region;
import rainlap.geom.Segment;
import rainlap.wall.EdgeRole;
import rainlap.wall.Outline;
import rainlap.wall.OutlineEdge;

/** Reads {@code wall}. */
final class OutlineReader {
    static final List<String> KEYS = List.of("outline", "edges", "ground", "ground_is", "abutting");
    static final List<String> EDGE_KEYS = List.of("role", "neighbour");
    static final List<String> ROLES = Stream.of(EdgeRole.values()).map(EdgeRole::word).toList();

    /** No wall is narrower or lower than this: 50 mm. Our own choice, to catch lengths given in metres. */
    private static final long LEAST_WALL = 50 * Grid.MM;

    private OutlineReader() {}

    /** Role and neighbour of one side, as listed. */
    private record Side(EdgeRole role, Optional<String> neighbour) {}

    static Optional<Outline> read(Value value, Problems problems) {
        return Fields.of(value, "wall", KEYS, problems).flatMap(OutlineReader::read);
    }

    private static Optional<Outline> read(Fields f) {
        Optional<Value> drawn = f.required("outline", "[[0, 0], [3600, 0], [3600, 2400], [0, 2400]]");
        List<Point> corners = drawn.map(v -> RingReader.ring(f, v, "outline")).orElse(List.of());
        Optional<Region> region = corners.isEmpty() ? Optional.empty()
                : RingReader.region(f, drawn.orElseThrow().at(), "outline", corners, List.of());
        Optional<Value> roles = f.required("edges", "[\"base\", \"external-corner\", \"eave\", \"external-corner\"]");
        List<Value> listed = roles.map(v -> f.list(v, "edges", f.limits().points())).orElse(List.of());
        List<Side> sides = Fields.each(listed, v -> side(f, v));
        var ground = f.length("ground", Range.PLACE);
        var cover = GroundReader.cover(f);
        var abutting = GroundReader.abutting(f, region.map(Region::box));
        if (region.isEmpty() || roles.isEmpty() || sides.size() < listed.size()) {
            return Optional.empty();
        }
        if (sides.size() != corners.size()) {
            f.wrong(roles.get().at(), "\"edges\" names " + sides.size() + " sides, but \"outline\" has " + corners.size(),
                    "name one role for each side, beginning with the side from the first point to the second");
            return Optional.empty();
        }
        warnOfMetres(f, drawn.orElseThrow(), region.get().box());
        return distinct(f, drawn.orElseThrow(), corners) ? Optional.of(new Outline(region.get(), edges(corners, sides), ground, cover, abutting))
                : Optional.empty();
    }

    /** A wall a few millimetres wide was meant in metres or inches. */
    private static void warnOfMetres(Fields f, Value drawn, Box wall) {
        if (wall.width() < LEAST_WALL || wall.height() < LEAST_WALL) {
            f.wrong(drawn.at(), "the wall is only " + OpeningReader.mm(wall.width()) + " by " + OpeningReader.mm(wall.height()) + " mm",
                    "lengths are in millimetres: 3.6 m is 3600; a wall is at least 50 wide and high");
        }
    }

    private static boolean distinct(Fields f, Value drawn, List<Point> corners) {
        for (int i = 0; i < corners.size(); i++) {
            if (corners.get(i).equals(corners.get((i + 1) % corners.size()))) {
                f.wrong(((Value.Items) drawn).items().get(i).at(), "a side of \"outline\" has no length", "take this point out");
                return false;
            }
        }
        return true;
    }

    private static Optional<Side> side(Fields f, Value v) {
        if (!(v instanceof Value.Keys)) {
            return f.word(v, "edges", EdgeRole::find, ROLES).map(r -> new Side(r, Optional.empty()));
        }
        return Fields.of(v, "wall", EDGE_KEYS, f.problems()).flatMap(e -> {
            Optional<EdgeRole> role = e.required("role", "\"external-corner\"").flatMap(r -> e.word(r, "role", EdgeRole::find, ROLES));
            Optional<String> neighbour = e.text("neighbour");
            return role.map(r -> new Side(r, neighbour));
        });
    }

    /** Side i runs from point i to the next; an outline listed clockwise is turned, each side keeping its role. */
    private static List<OutlineEdge> edges(List<Point> corners, List<Side> sides) {
        List<OutlineEdge> out = new ArrayList<>();
        boolean turned = isClockwise(corners);
        for (int i = 0; i < corners.size(); i++) {
            Segment line = new Segment(corners.get(i), corners.get((i + 1) % corners.size()));
            out.add(new OutlineEdge(turned ? line.reversed() : line, sides.get(i).role(), sides.get(i).neighbour()));
        }
        if (turned) {
            Collections.reverse(out);
        }
        return out;
    }

    private static boolean isClockwise(List<Point> p) {
        double twice = 0;
        for (int i = 0; i < p.size(); i++) {
            Point a = p.get(i), b = p.get((i + 1) % p.size()), o = p.get(0);
            twice += (double) (a.x() - o.x()) * (b.y() - o.y()) - (double) (b.x() - o.x()) * (a.y() - o.y());
        }
        return twice < 0;
    }
}
