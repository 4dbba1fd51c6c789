package rainlap.mend;

import java.util.ArrayList;
import java.util.List;
import rainlap.geom.EdgeFrame;
import rainlap.geom.Overlay;
import rainlap.geom.Point;
import rainlap.geom.Region;
import rainlap.geom.Segment;

/** Strips along a line. */
final class Bands {
    private Bands() {}

    /** Between two distances to the left of a line, grid units; negative to its right. */
    static List<Region> beside(List<Point> line, double from, double to) {
        List<Region> out = new ArrayList<>();
        for (int i = 0; i + 1 < line.size(); i++) {
            EdgeFrame e = EdgeFrame.of(new Segment(line.get(i), line.get(i + 1)));
            out.add(Region.of(List.of(e.at(0, from), e.at(e.length(), from), e.at(e.length(), to), e.at(0, to))));
        }
        return Overlay.union(out);
    }
}
