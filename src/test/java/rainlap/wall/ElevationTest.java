package rainlap.wall;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.Random;
import org.junit.jupiter.api.Test;
import rainlap.Shipped;
import rainlap.geom.Box;
import rainlap.geom.Region;

/** What lies near a place, found by an index, against looking at every one. */
class ElevationTest {
    @Test void openingsAndPipesNearAPlaceAreThoseThatMeetIt() {
        Elevation empty = Shipped.all().get(0).wall();
        int openings = 0, pipes = 0;
        for (int seed = 0; seed < 40; seed++) {
            Random random = new Random(seed);
            Elevation e = with(empty, random);
            for (int i = 0; i < 20; i++) {
                Box place = box(random, 20_000);
                List<Opening> met = e.openingsMeeting(place);
                assertEquals(e.openings().stream().filter(o -> o.rect().meets(place)).toList(), met, "seed " + seed + " at " + place);
                assertEquals(e.penetrations().stream().filter(p -> p.region().box().meets(place)).toList(), e.penetrationsMeeting(place));
                openings += met.size();
                pipes += e.penetrationsMeeting(place).size();
            }
        }
        assertTrue(openings > 300 && pipes > 300, openings + ", " + pipes);
    }

    private static Elevation with(Elevation e, Random random) {
        List<Opening> openings = new ArrayList<>();
        List<Penetration> pipes = new ArrayList<>();
        for (int i = 0; i < random.nextInt(60); i++) {
            openings.add(new Opening("W" + i, Opening.Kind.WINDOW, box(random, 5_000), 0, Optional.empty(), OptionalLong.empty(), OptionalLong.empty()));
            pipes.add(new Penetration("P" + i, "pipe", Region.of(box(random, 2_000))));
        }
        return new Elevation(e.name(), e.practice(), e.exposure(), e.outline(), openings, pipes, e.materials(), List.of(), List.of());
    }

    /** On a coarse grid, so that some only touch. */
    private static Box box(Random random, int size) {
        long x = 500L * random.nextInt(200), y = 500L * random.nextInt(100);
        return new Box(x, y, x + size, y + size / 2);
    }
}
