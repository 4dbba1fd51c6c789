package rainlap.water;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import rainlap.practice.Limit;
import rainlap.practice.Practice;
import rainlap.practice.Practices;
import rainlap.practice.ShiftedPractice;
import rainlap.source.Known;
import rainlap.source.Source;
import rainlap.wall.Exposure;
import rainlap.wall.Stage;

class DriveTest {
    private static final Practice COMMON = Practices.common();
    private static final Practice HALF = ShiftedPractice.of(COMMON, Limit.DRIVING_SHARE, 0.5);
    private static final double MM_PER_INCH = 25.4;

    private static Drive wrap(Exposure x) {
        return Drive.of(x, COMMON, Stage.WRAP);
    }

    private static String figure(Drive drive, String what) {
        return drive.assumptions().stream().filter(a -> a.what().equals(what)).findFirst().orElseThrow().figure();
    }

    private static boolean says(Drive drive, String what) {
        return drive.assumptions().stream().anyMatch(a -> a.what().equals(what));
    }

    @Test
    void testPressuresOfWindowsLiftThis() {
        // EN 12208 (secondary): class 1 0 Pa, 2 50, 3 100, 4 150, 5 200, 6 250, 7 300, 8 450, 9 600. Heights derived, up to 0.01 mm.
        long[][] classes = {{0, 0}, {50, 510}, {100, 1020}, {150, 1530}, {200, 2040}, {250, 2550}, {300, 3060}, {450, 4589}, {600, 6119}};
        for (long[] row : classes) {
            assertEquals(row[1], wrap(Exposures.pressure(row[0])).rise(), row[0] + " Pa");
        }
        // NCC 2022 Volume Two H2V1: 300 Pa on the wall; 50 Pa after the holes are cut. The same pressures, the same heights.
    }

    @Test
    void pressuresOfWorkedExamplesLiftThis() {
        // EN 1991-1-4 worked examples (secondary): 0.449 and 0.989 kN/m2. Heights derived from the unrounded 449.20 and 988.95 Pa.
        assertEquals(4581, wrap(Exposures.pressure(449.20)).rise());
        assertEquals(10085, wrap(Exposures.pressure(988.95)).rise());
        assertEquals(45.81, Head.mm(449), 0.05);
        assertEquals(100.85, Head.mm(989), 0.05);
    }

    @Test
    void theAmericanExampleLiftsTheSameThroughItsOwnUnits() {
        // ASCE 7 example (secondary): 0.00256 x 0.85 x 1 x 0.85 x 115 mph squared = 24.461 psf; in metric 0.613 takes the place of 0.00256.
        double metricPa = 0.613 * 0.85 * 1 * 0.85 * Math.pow(115 * 0.44704, 2);
        // Building code 1611.1 (published): an inch of rain weighs 5.2 psf.
        double mmThroughPounds = 24.461 / 5.2 * MM_PER_INCH;
        assertEquals(mmThroughPounds, wrap(Exposures.pressure(metricPa)).rise() / 100.0, 0.003 * mmThroughPounds);
    }

    @Test
    void windAndTowingLiftThis() {
        // Derived: 40 m/s is exactly 1000 Pa, 101.972 mm.
        assertEquals(10198, wrap(Exposures.wind(40)).rise());
        assertEquals(1000, wrap(Exposures.wind(40)).pressurePa().orElseThrow(), 1e-9);
        // Derived: 80 km/h 31.4729 mm, 90 km/h with 20 m/s 1265.625 Pa, 129.058 mm.
        assertEquals(3148, wrap(Exposures.towing(80)).rise());
        assertEquals(1265.625, wrap(Exposures.windAndTowing(20, 90)).pressurePa().orElseThrow(), 1e-9);
        assertEquals(12906, wrap(Exposures.windAndTowing(20, 90)).rise());
        assertEquals(0, wrap(Exposures.wind(0)).rise(), "a stated calm drives nothing");
    }

    @Test
    void ofPressureAndTowingTheGreaterDrives() {
        assertEquals(wrap(Exposures.pressure(400)).rise(), wrap(Exposures.pressureAndTowing(400, 90)).rise(), "390.63 Pa is less");
        assertEquals(wrap(Exposures.towing(90)).rise(), wrap(Exposures.pressureAndTowing(390, 90)).rise(), "390.63 Pa is more");
    }

    @Test
    void withoutAPressureTheCourseLapStandsForTheRise() {
        Practice american = Practices.find("us-irc-2015").orElseThrow();
        for (Stage stage : Stage.values()) {
            Drive drive = Drive.of(Exposure.UNSTATED, american, stage);
            assertEquals(5100, drive.rise());
            assertEquals(5100, drive.shelteredRise());
            assertEquals(OptionalDouble.empty(), drive.pressurePa());
            Assumption rise = drive.assumptions().get(0);
            assertEquals("rise 51 mm (" + american.get(Limit.COURSE_LAP).source().text() + "). No wind, towing or pressure is stated: the course lap of "
                    + "us-irc-2015 stands for the rise.", rise.text());
            assertFalse(says(drive, "air density"), "no air went into it");
        }
        assertEquals(OptionalDouble.empty(), Drive.headMm(Exposure.UNSTATED));
    }

    @Test
    void theCreepIsTheEndLap() {
        for (Practice practice : Practices.all()) {
            Drive drive = Drive.of(Exposures.wind(30), practice, Stage.WRAP);
            assertEquals(practice.get(Limit.END_LAP).hundredths(), drive.creep(), practice.id());
            assertTrue(drive.assumptions().stream().anyMatch(a -> a.what().equals("creep") && a.note().contains("No formula")
                    && a.source().equals(Optional.of(practice.get(Limit.END_LAP).source()))), practice.id());
        }
    }

    @Test
    void theShareCountsOnlyBehindCladding() {
        Drive wrap = Drive.of(Exposures.wind(40), HALF, Stage.WRAP);
        assertEquals(wrap.rise(), wrap.shelteredRise(), "nothing shelters before cladding");
        assertFalse(says(wrap, "share behind a drained cladding"));
        Drive finished = Drive.of(Exposures.wind(40), HALF, Stage.FINISHED);
        assertEquals(10198, finished.rise());
        assertEquals(5099, finished.shelteredRise(), "half of 101.9716 mm, up to the grid");
        assertEquals("0.5", figure(finished, "share behind a drained cladding"));
        assertEquals("1", figure(finished, "share in the open"));
    }

    @Test
    void commonTakesNothingOffAndSaysThatNobodyPublishedAShare() {
        Drive finished = Drive.of(Exposures.wind(40), COMMON, Stage.FINISHED);
        assertEquals(finished.rise(), finished.shelteredRise());
        Assumption share = finished.assumptions().stream().filter(a -> a.what().startsWith("share behind")).findFirst().orElseThrow();
        assertEquals(Known.COMMON_PRACTICE, share.source().orElseThrow().known());
        assertTrue(share.note().startsWith("No published share could be found"), share.note());
    }

    @Test
    void aStatedTestPressureIsNotLessened() {
        Drive tested = Drive.of(Exposures.pressure(600), HALF, Stage.FINISHED);
        assertEquals(6119, tested.shelteredRise());
        Drive both = Drive.of(Exposures.pressureAndTowing(300, 100), HALF, Stage.FINISHED);
        assertEquals(4918, both.rise(), "482.25 Pa of towing");
        assertEquals(3060, both.shelteredRise(), "half of it is less than the test's 300 Pa");
    }

    @Test
    void aShareAboveOneCountsAsOne() {
        Drive drive = Drive.of(Exposures.wind(40), ShiftedPractice.of(COMMON, Limit.DRIVING_SHARE, 3), Stage.FINISHED);
        assertEquals(drive.rise(), drive.shelteredRise());
        assertEquals("1", figure(drive, "share behind a drained cladding"));
    }

    @Test
    void everyAssumptionOfAnExampleStandsBesideItsFigure() {
        Drive drive = Drive.of(Exposures.windAndTowing(20, 90), HALF, Stage.FINISHED);
        List<String> figures = drive.assumptions().stream().map(a -> a.what() + " " + a.figure()).toList();
        assertEquals(List.of("wind 20 m/s", "towing 90 km/h", "speed 45 m/s", "air density 1.25 kg/m3", "driving pressure 1265.63 Pa",
                "water density 1000 kg/m3", "gravity 9.80665 m/s2", "share in the open 1", "rise 129.06 mm",
                "share behind a drained cladding 0.5", "rise behind a drained cladding 64.53 mm", "creep 150 mm",
                "height wetted by itself 29.7 mm"), figures);
        List<String> tested = wrap(Exposures.pressure(300)).assumptions().stream().map(a -> a.what() + " " + a.figure()).toList();
        assertEquals(List.of("test pressure 300 Pa", "water density 1000 kg/m3", "gravity 9.80665 m/s2", "share in the open 1",
                "rise 30.6 mm", "creep 150 mm", "height wetted by itself 29.7 mm"), tested);
    }

    @Test
    void aDirectionThatIsNotUsedIsSaidToBeSo() {
        Exposure x = Exposures.windAndTowing(20, 90), aimed = aimed(Exposure.From.RIGHT, Exposure.From.LEFT);
        for (Stage stage : Stage.values()) {
            Drive drive = Drive.of(aimed, COMMON, stage);
            assertEquals("right", figure(drive, "wind from"));
            assertEquals("left", figure(drive, "side that travels first"));
            assertEquals(2, drive.assumptions().stream().filter(a -> a.note().startsWith("Not used")).count());
            assertEquals(Drive.of(x, COMMON, stage).rise(), drive.rise());
        }
    }

    /** Both rules that use the wind's direction are named, and that the worst case overrules it. */
    @Test
    void whatUsesTheDirectionIsNamedAndWhatOverrulesItToo() {
        assertEquals("Not used here: wind is taken to blow straight at every edge. Which way laps open is for rules: side laps of the cladding for lap-towards-weather,"
                + " end laps of the membrane for lap-towards-wind.", note(aimed(Exposure.From.RIGHT, Exposure.From.LEFT), "wind from"));
        assertEquals("The wind is taken to blow against the direction of travel, the worst case, although wind_from states right and leading left.",
                note(aimed(Exposure.From.RIGHT, Exposure.From.LEFT), "speed"));
        assertEquals("The wind is taken to blow against the direction of travel.", note(aimed(Exposure.From.LEFT, Exposure.From.LEFT), "speed"));
    }

    private static String note(Exposure x, String what) {
        return wrap(x).assumptions().stream().filter(a -> a.what().equals(what)).findFirst().orElseThrow().note();
    }

    private static Exposure aimed(Exposure.From wind, Exposure.From leading) {
        Exposure x = Exposures.windAndTowing(20, 90);
        return new Exposure(x.windMPerS(), x.pressurePa(), Optional.of(wind), x.rainMmPerH(), x.towingKmPerH(), Optional.of(leading), x.temperatureC(), x.sunDays(), x.road());
    }

    @Test
    void nothingFromMemoryDrivesWater() {
        Drive drive = Drive.of(Exposures.windAndTowing(20, 90), COMMON, Stage.FINISHED);
        assertTrue(drive.assumptions().stream().flatMap(a -> a.source().stream()).noneMatch(s -> s.known() == Known.FROM_MEMORY));
    }

    @Test
    void shelterNeverDrivesFurtherThanTheOpen() {
        assertThrows(IllegalArgumentException.class, () -> new Drive(100, 0, 101, OptionalDouble.empty(), List.of()));
        assertThrows(IllegalArgumentException.class, () -> new Drive(100, -1, 100, OptionalDouble.empty(), List.of()));
        assertThrows(IllegalArgumentException.class, () -> Assumption.of("rise", "", Source.commonPractice(), ""));
    }

    @Test
    void whatIsStatedToBeNothingDrivesNothing() {
        Drive none = wrap(Exposures.wind(0));
        assertEquals(0, none.rise());
        assertEquals(0, none.creep(), "nothing pushes");
        assertEquals("Nothing pushes", none.assumptions().stream().filter(a -> a.what().equals("creep")).findFirst().orElseThrow().source().orElseThrow().document());
        assertEquals(COMMON.get(Limit.END_LAP).hundredths(), wrap(Exposures.wind(1)).creep());
    }
}
