package rainlap.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import rainlap.geom.Box;
import rainlap.geom.Region;
import rainlap.joint.Drawn;
import rainlap.material.EndDams;
import rainlap.material.Material;
import rainlap.material.MaterialKind;
import rainlap.material.Profile;
import rainlap.practice.Practices;
import rainlap.rule.Evidence;
import rainlap.rule.Finding;
import rainlap.wall.CutPattern;
import rainlap.wall.EdgeRole;
import rainlap.wall.Elevation;
import rainlap.wall.Exposure;
import rainlap.wall.Shape;
import rainlap.wall.Stage;
import rainlap.wall.Surface;
import rainlap.water.Balance;

/**
 * The litres of a finding are those that meet the place it names, reckoned by hand on a wall of two metres square in one litre on a square metre
 * an hour: half of 2 mm/h. Rise and creep 150.
 */
class PlaceLitresTest {
    private static final double EXACT = 1e-6;

    private static Drawn wall() {
        return Drawn.wall().outline(0, 0, 2000, 2000, EdgeRole.FREE);
    }

    private static List<Finding> found(Drawn wall) {
        return Checker.check(wet(wall), Stage.WRAP, Practices.common()).weakPoints().stream().map(WeakPoint::finding).toList();
    }

    private static Elevation wet(Drawn wall) {
        Elevation e = wall.elevation();
        Exposure u = e.exposure();
        Exposure rain = new Exposure(u.windMPerS(), u.pressurePa(), u.windFrom(), OptionalDouble.of(2), u.towingKmPerH(), u.leading(), u.temperatureC(),
                u.sunDays(), u.road());
        return new Elevation(e.name(), e.practice(), rain, e.outline(), e.openings(), e.penetrations(), e.materials(), e.pieces(), e.expected());
    }

    /** U laps L by 20: wind lifts what runs down over it that far and further, and the balance that counts 0 says so on its own line. */
    @Test void aDryBalanceSaysThatDrivenWaterComesBesides() {
        Elevation lifted = wet(wall().sheet("L", -50, -50, 2100, 590).sheet("U", -50, 520, 2100, 1530));
        Balance.Share frame = frame(lifted);
        assertEquals(0, frame.litresPerHour(), EXACT);
        assertEquals("running rain alone; water that is not counted comes there besides: driven by wind", frame.besides());
        assertEquals("", frame(wet(wall().sheet("M", -50, -50, 2100, 2100))).besides());
    }

    private static Balance.Share frame(Elevation e) {
        return Evidence.of(e, Stage.WRAP, Practices.common()).trace().shares().stream().filter(s -> s.name().equals("frame")).findFirst().orElseThrow();
    }

    private static OptionalDouble litres(Drawn wall, String rule) {
        List<Finding> all = found(wall);
        List<Finding> of = all.stream().filter(f -> f.rule().equals(rule)).toList();
        assertEquals(1, of.size(), () -> rule + " among " + all);
        return of.get(0).litresPerHour();
    }

    private static void is(double litres, Drawn wall, String rule) {
        OptionalDouble found = litres(wall, rule);
        assertTrue(found.isPresent(), rule + " has no litres");
        assertEquals(litres, found.getAsDouble(), EXACT, rule);
    }

    /** A metre of wall above a lap whose tape leaves out 600: 0.6 by 1.0, and not the 2.0 of the whole lap. */
    @Test void aStretchOfALapMeetsWhatFallsAboveThatStretch() {
        Drawn missed = wall().sheet("M1", -50, -50, 2100, 1100).sheet("M2", -50, 1000, 2100, 1050)
                .tape("T1", -50, 975, 750, 50).tape("T2", 1300, 975, 750, 50);
        is(0.6, missed, "tape-missed");
        is(2.0, wall().sheet("M1", -50, -50, 2100, 1100).sheet("M2", -50, 1000, 2100, 1050), "short-course-lap");
    }

    private static Drawn window(double head) {
        return wall().window("W1", 500, 600, 1000, head - 600, 0);
    }

    private static Drawn flashing(Drawn wall, double x, double y, double width, double height) {
        Profile p = new Profile(OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.of(60), Optional.of(EndDams.BOTH), OptionalDouble.empty(),
                OptionalDouble.of(10), OptionalDouble.empty(), OptionalDouble.empty());
        return wall.add("H1", Material.of("flashing", MaterialKind.FLASHING).withProfile(p),
                List.of(new Shape(Surface.WALL, List.of(Region.of(Box.ofMm(x, y, width, height))))), List.of());
    }

    /** 1.1 wide and 0.425 high of wall lie above its upper edge at 1575. */
    @Test void aHeadFlashingMeetsAllThatDrainsOntoIt() {
        Drawn inFront = flashing(window(1500).cutSheet("M", -50, -50, 2100, 2100, "W1", CutPattern.FLUSH, 0), 450, 1500, 1100, 75);
        is(1.1 * 0.425, inFront, "flashing-in-front");
    }

    /** The same upper edge, 20 behind the sheet: the water runs over it on that sheet. */
    @Test void anUpstandBehindTheSheetMeetsWhatRunsOverIt() {
        Drawn behind = flashing(window(1500).cutSheet("M1", -50, -50, 2100, 1600, "W1", CutPattern.FLUSH, 0), 450, 1500, 1100, 75)
                .sheet("M2", -50, 1555, 2100, 500);
        is(1.1 * 0.425, behind, "short-upstand");
    }

    /** Half a metre of wall above a head one metre wide. */
    @Test void aHeadWithoutFlashingMeetsWhatRunsOverItsEdge() {
        is(0.5, window(1500).cutSheet("M", -50, -50, 2100, 2100, "W1", CutPattern.FLUSH, 0), "missing-head-flashing");
        is(0.5, wall().window("W1", 500, 600, 1000, 900, 90).cutSheet("M", -50, -50, 2100, 2100, "W1", CutPattern.DIAGONAL, 90), "missing-head-flashing");
        is(0.5, wall().window("W1", 500, 600, 1000, 900, 90).cutSheet("M", -50, -50, 2100, 2100, "W1", CutPattern.I, 90), "missing-head-flashing");
    }

    /** A hole 400 wide and 200 high, its upper edge at 1200: 0.4 by 0.8 runs in over that edge and 0.4 by 0.2 falls into it. */
    @Test void bareWallMeetsWhatRunsInAboveAndWhatFallsOnIt() {
        Drawn hole = wall().sheet("M1", -50, -50, 850, 2100).sheet("M2", 800, 1200, 400, 850).sheet("M3", 800, -50, 400, 1050).sheet("M4", 1200, -50, 850, 2100);
        is(0.4 * 1.0, hole, "bare-wall");
    }

    /** A butt from +500 to +1500 under tape, beside which 150 to each side run down from the top: at its foot, 1500 below the top. */
    @Test void anUprightEdgeMeetsWhatRunsWithinTheCreepOfIt() {
        Drawn butt = wall().sheet("M1", -50, -50, 1050, 2100).sheet("M2", 1000, -50, 1050, 2100);
        is(2 * 0.15 * 2.0, butt, "butt-joint");
    }

    /** Its lower half is taped: what is named ends at +1000, where a metre of wall has run down beside it. */
    @Test void ofAnUprightEdgeOnlyWhatIsNamedCounts() {
        Drawn half = wall().sheet("M1", -50, -50, 1150, 2100).sheet("M2", 1000, -50, 1050, 2100).tape("T1", 975, -50, 50, 1050);
        is(2 * 0.15 * 1.0, half, "tape-missed");
    }
}
