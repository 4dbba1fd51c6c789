package rainlap.water;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import rainlap.geom.Box;
import rainlap.geom.Point;
import rainlap.wall.Elevation;
import rainlap.wall.Opening;
import rainlap.wall.Surface;

/** How much water meets a place on the wall, litres an hour, on whatever lies outermost there. In reveals nothing is told. */
public final class Litres {
    private final Elevation elevation;
    private final Met met;
    private final Map<String, Integer> numbers = new HashMap<>();

    Litres(Elevation elevation, Met met) {
        this.elevation = elevation;
        this.met = met;
        for (int i = 0; i < elevation.pieces().size(); i++) {
            numbers.put(elevation.pieces().get(i).id(), i);
        }
    }

    /** What meets those edges of some pieces, and of openings, that lie along a line on the wall: over level and sloped ones, beside plumb ones. */
    public double at(Collection<String> pieces, List<Point> line) {
        List<Integer> edges = new ArrayList<>(pieces.stream().filter(numbers::containsKey).map(numbers::get).toList());
        edges.add(Met.OPENING);
        return met.at(edges, line);
    }

    /** What meets the edges of one piece that lie along a line on the wall. */
    double atEdge(String piece, List<Point> line) {
        return met.at(List.of(numbers.get(piece)), line);
    }

    /**
     * What meets the first edge on the wall that a way gets past, as far as that lies above or beside the place the way leads to; what leaves by the end of a ledge where it
     * comes off one; 0 where it gets past none, and where it comes in along a pipe: how much of it gets there is not reckoned.
     *
     * @param flat the place it leads to, laid flat in wall coordinates
     */
    public double of(List<Step> path, Box flat) {
        boolean alongPipe = path.get(path.size() - 1).kind() == Step.Kind.ALONG_A_PIPE;
        for (Step s : alongPipe ? List.<Step>of() : path.subList(1, path.size())) {
            if (!s.piece().isEmpty() && s.on().isWall()) {
                return past(s, flat);
            }
        }
        return 0;
    }

    double of(Arrival a) {
        return of(a.path(), Box.of(a.where().stream().map(p -> flat(a.surface(), p)).toList()));
    }

    private Point flat(Surface on, Point p) {
        return on.isWall() ? p : elevation.findOpening(on.opening()).map((Opening o) -> o.toWall(on.side(), p)).orElseThrow();
    }

    private double past(Step s, Box place) {
        int piece = numbers.get(s.piece());
        double off = s.kind() == Step.Kind.OFF_A_LEDGE ? met.off(piece, s.where().get(0)) : 0;
        if (off > 0) {
            return off;
        }
        double named = met.at(List.of(piece), part(s.where(), place));
        return named > 0 ? named : met.at(List.of(piece), s.where());
    }

    /** What of an edge lies above or beside a place. */
    private static List<Point> part(List<Point> line, Box place) {
        Box edge = Box.of(line);
        if (edge.height() == 0 && place.width() > 1) {
            return List.of(new Point(place.minX(), edge.minY()), new Point(place.maxX(), edge.minY()));
        }
        return edge.width() == 0 && place.height() > 1 ? List.of(new Point(edge.minX(), place.minY()), new Point(edge.minX(), place.maxY())) : line;
    }
}
