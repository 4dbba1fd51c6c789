package rainlap.drawing;

import java.util.ArrayList;
import java.util.List;
import rainlap.geom.Box;
import rainlap.geom.Grid;
import rainlap.geom.Point;
import rainlap.geom.Region;
import rainlap.geom.Ring;
import rainlap.geom.Segment;
import rainlap.paper.PaperBox;
import rainlap.paper.PaperPoint;
import rainlap.paper.PaperRegion;
import rainlap.paper.PaperSegment;

/**
 * From the wall to paper.
 *
 * @param scale the number after 1 to
 * @param originX where x = 0 of the wall stands on paper, in printed mm
 * @param originY where y = 0 stands
 */
record View(int scale, double originX, double originY) {

    double x(double units) {
        return originX + length(units);
    }

    double y(double units) {
        return originY - length(units);
    }

    /** A length of the wall in printed mm. */
    double length(double units) {
        return units / Grid.MM / scale;
    }

    /** A printed length in grid units of the wall. */
    double units(double printedMm) {
        return printedMm * scale * Grid.MM;
    }

    PaperPoint at(Point p) {
        return new PaperPoint(x(p.x()), y(p.y()));
    }

    /** The place on the wall under a point of the sheet, rounded to the grid. */
    Point onWall(PaperPoint p) {
        return new Point(Math.round(units(p.x() - originX)), Math.round(units(originY - p.y())));
    }

    List<PaperPoint> line(List<Point> line) {
        return line.stream().map(this::at).toList();
    }

    PaperSegment segment(Segment s) {
        return new PaperSegment(at(s.a()), at(s.b()));
    }

    PaperBox box(Box b) {
        return new PaperBox(x(b.minX()), y(b.maxY()), x(b.maxX()), y(b.minY()));
    }

    PaperRegion region(Region r) {
        List<List<PaperPoint>> rings = new ArrayList<>();
        rings.add(line(r.shell().points()));
        for (Ring hole : r.holes()) {
            rings.add(line(hole.points()));
        }
        return new PaperRegion(rings);
    }
}
