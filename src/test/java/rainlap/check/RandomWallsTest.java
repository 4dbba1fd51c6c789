package rainlap.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import rainlap.joint.Joint;
import rainlap.joint.RandomWall;
import rainlap.practice.Practice;
import rainlap.practice.Practices;
import rainlap.rule.Evidence;
import rainlap.rule.Finding;
import rainlap.rule.Rule;
import rainlap.stack.Crew;
import rainlap.wall.Elevation;
import rainlap.wall.Stage;

/** The whole catalogue on walls that nobody drew: it never fails, never falls silent, and says the same in any order. */
class RandomWallsTest {
    private static final int WALLS = 150;

    @Test
    void theCatalogueStandsAnyWall() {
        Map<String, Integer> found = new TreeMap<>();
        for (long seed = 0; seed < WALLS; seed++) {
            Elevation wall = RandomWall.of(seed).elevation();
            Practice practice = Practices.all().get((int) (seed % Practices.all().size()));
            Evidence e = Evidence.of(wall, Stage.WRAP, practice);
            CheckResult r = Checker.check(e, Rules.all());
            String where = "wall of seed " + seed + " under " + practice;
            assertEquals(List.of(), r.crashes(), where);
            List<Rule> turned = new ArrayList<>(Rules.all());
            Collections.reverse(turned);
            assertEquals(r.weakPoints(), Checker.check(e, turned).weakPoints(), where);
            sameWhenShared(r, wall, practice, where);
            for (Rule rule : Rules.all()) {
                assertTrue(!rule.check(e).toList().isEmpty(), () -> where + ": " + rule.info().id() + " is silent");
            }
            r.weakPoints().forEach(w -> sound(w.finding(), wall, where));
            r.weakPoints().forEach(w -> found.merge(w.finding().rule(), 1, Integer::sum));
        }
        assertTrue(found.size() >= 12, () -> "these walls break too few rules to say anything: " + found);
    }

    private static void sameWhenShared(CheckResult alone, Elevation wall, Practice practice, String where) {
        Crew three = Crew.of(3, 20_000);
        CheckResult shared = Checker.check(Evidence.of(wall, Stage.WRAP, practice, three), Rules.all(), three);
        assertEquals(alone.weakPoints(), shared.weakPoints(), where);
        assertEquals(alone.held(), shared.held(), where);
        assertEquals(alone.unchecked(), shared.unchecked(), where);
        assertEquals(alone.evidence().joints().all().stream().map(Joint::id).toList(),
                shared.evidence().joints().all().stream().map(Joint::id).toList(), where);
    }

    private static void sound(Finding f, Elevation wall, String where) {
        assertTrue(f.measured().isEmpty() || f.required().isEmpty() || !List.of("short-course-lap", "short-end-lap", "narrow-tape-cover",
                "unstaggered-laps", "end-lap-near-opening").contains(f.rule()) || f.measured().getAsDouble() < f.required().getAsDouble(),
                () -> where + ": " + f.rule() + " measured " + f.measured() + " and asked for " + f.required());
        assertTrue(f.where().box().grow(1).meets(wall.outline().box()), () -> where + ": " + f.rule() + " lies off the wall: " + f.where());
        assertTrue(f.where().box().width() + f.where().box().height() > 0, () -> where + ": " + f.rule() + " has no place: " + f.where());
        assertTrue(f.pieces().stream().allMatch(id -> wall.pieces().stream().anyMatch(p -> p.id().equals(id))),
                () -> where + ": " + f.rule() + " names " + f.pieces());
    }
}
