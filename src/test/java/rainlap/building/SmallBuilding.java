package rainlap.building;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import rainlap.file.ElevationFile;
import rainlap.file.Reading;
import rainlap.wall.EdgeRole;
import rainlap.wall.Elevation;

/** Small walls in a row, written as pieces in JSON; each 3000 wide and 2400 high with external corners at both ends unless said otherwise. */
public final class SmallBuilding {
    private final List<Building.Wall> walls = new ArrayList<>();
    private EdgeRole left = EdgeRole.EXTERNAL_CORNER;
    private EdgeRole right = EdgeRole.EXTERNAL_CORNER;

    /** What stands at both ends of the walls that follow, or at their left and right ends. */
    public SmallBuilding corners(EdgeRole... roles) {
        left = roles[0];
        right = roles[roles.length - 1];
        return this;
    }

    public SmallBuilding wall(String id, String... pieces) {
        return wallOf(id, 2400, pieces);
    }

    public SmallBuilding wallOf(String id, int height, String... pieces) {
        walls.add(new Building.Wall(id, elevation(id, height, pieces)));
        return this;
    }

    public Building open() {
        return new Building("small", walls, false);
    }

    public Building closed() {
        return new Building("small", walls, true);
    }

    private Elevation elevation(String id, int height, String... pieces) {
        String text = "{ \"rainlap\": 1, \"name\": \"" + id + "\", \"exposure\": { \"wind_m_s\": 20, \"rain_mm_h\": 20 }, \"wall\": { \"outline\":"
                + " [[0, 0], [3000, 0], [3000, " + height + "], [0, " + height + "]], \"edges\": [\"base\", \"" + right.word() + "\", \"eave\", \"" + left.word() + "\"] },"
                + " \"pieces\": [" + String.join(",", pieces) + "] }";
        Reading r = ElevationFile.read(id, text.getBytes(StandardCharsets.UTF_8));
        return r.elevation().orElseThrow(() -> new AssertionError(r.problems().stream().flatMap(p -> p.lines().stream()).toList().toString()));
    }

    /** A sheet of membrane from one place along the wall to another, from foot to head. */
    public static String sheet(String id, int from, int to, int foot, int head) {
        return "{ \"id\": \"" + id + "\", \"material\": \"foil-membrane\", \"rect\": [" + from + ", " + foot + ", " + (to - from) + ", " + (head - foot) + "] }";
    }

    /** Tape 100 wide up a line. */
    public static String tape(String id, int x, int foot, int head) {
        return "{ \"id\": \"" + id + "\", \"material\": \"foil-tape-100\", \"line\": [[" + x + ", " + foot + "], [" + x + ", " + head + "]] }";
    }
}
