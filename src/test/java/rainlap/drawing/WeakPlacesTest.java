package rainlap.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.OptionalDouble;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import rainlap.check.WeakPoint;
import rainlap.geom.Box;
import rainlap.geom.Region;
import rainlap.paper.Area;
import rainlap.paper.Halo;
import rainlap.paper.Mark;
import rainlap.paper.Occupied;
import rainlap.paper.PaperBox;
import rainlap.rule.Evidence;
import rainlap.rule.Finding;
import rainlap.rule.Place;
import rainlap.source.Source;
import rainlap.wall.Stage;
import rainlap.wall.Surface;

class WeakPlacesTest {

    /** Cladding goes on over a bare stretch of wall: hatch and edge lie over it, nothing is painted out. */
    @Test
    void anAreaLeavesWhatLiesInItToBeSeen() {
        Evidence e = SampleWall.evidence(Stage.FINISHED);
        Place bare = Place.area(e.elevation(), Surface.WALL, List.of(Region.of(Box.ofMm(2500, 100, 700, 500))));
        Finding f = new Finding("bare-wall", List.of(), bare, OptionalDouble.empty(), OptionalDouble.empty(), "mm", "bare", "covered", Source.commonPractice(),
                Optional.empty(), "It lies bare.", "Wrap it.", 0, Optional.empty(), List.of(), OptionalDouble.empty());
        List<Mark> marks = new WeakPlaces(new View(20, 0, 0), new PaperBox(-500, -500, 500, 500)).draw(List.of(new WeakPoint(1, f)), new Occupied()).get(0).marks();
        assertTrue(marks.size() >= 3, "halo, edge and hatch");
        assertEquals(List.of(), marks.stream().filter(m -> m instanceof Halo h && h.of() instanceof Area || m instanceof Area a && a.fill().isPresent()).toList());
    }
}
