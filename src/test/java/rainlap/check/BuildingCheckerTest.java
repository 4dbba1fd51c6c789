package rainlap.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static rainlap.building.SmallBuilding.sheet;
import static rainlap.building.SmallBuilding.tape;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import rainlap.building.Building;
import rainlap.building.SmallBuilding;
import rainlap.check.BuildingResult.OneWall;
import rainlap.file.BuildingFile;
import rainlap.geom.Box;
import rainlap.practice.Practice;
import rainlap.practice.Practices;
import rainlap.rule.Finding;
import rainlap.rule.RuleInfo;
import rainlap.wall.Changed;
import rainlap.wall.Elevation;
import rainlap.wall.Stage;

class BuildingCheckerTest {
    private static BuildingResult check(Building b) {
        return BuildingChecker.check(b, Stage.WRAP, BuildingCheckerTest::practice, Rules.all(), 1);
    }

    private static Practice practice(Elevation e) {
        return e.practice().flatMap(Practices::find).orElse(Practices.common());
    }

    private static List<Finding> alone(Elevation e) {
        return Checker.check(e, Stage.WRAP, practice(e)).weakPoints().stream().map(WeakPoint::finding).toList();
    }

    /** Findings of a rule as "wall: pieces measured". */
    private static List<String> found(BuildingResult r, String rule) {
        return r.weakPoints().stream().filter(w -> w.point().finding().rule().equals(rule))
                .map(w -> w.wall() + ": " + String.join(", ", w.point().finding().pieces()) + w.point().finding().measured().stream().mapToObj(m -> " " + m).findFirst().orElse(""))
                .toList();
    }

    private static List<String> found(Elevation e, String rule) {
        return alone(e).stream().filter(f -> f.rule().equals(rule)).map(f -> String.join(", ", f.pieces())).toList();
    }

    /** Corner tape at the left end, middle and right end of two walls, so that nothing but what is looked for is found. */
    private static String[] with(String... pieces) {
        return Stream.concat(Stream.of(pieces), Stream.of(tape("CL", 0, -40, 2500), tape("CR", 3000, -40, 2500))).toArray(String[]::new);
    }

    @Test void aSheetRoundACornerIsOneSheet() {
        Building b = new SmallBuilding().wall("a", with(sheet("M1", -300, 3300, -40, 2500))).wall("b", with(sheet("M1", -300, 3300, -40, 2500))).open();
        BuildingResult r = check(b);
        assertEquals(List.of(), r.weakPoints());
        r.walls().forEach(w -> assertEquals(List.of(), w.result().evidence().joints().all(), "no joint within one sheet"));
        assertEquals(3_300_00, Math.round(r.walls().get(0).result().evidence().buildingCorners().get(0).wrap().least()), "to its ends beyond the next corners");
    }

    @Test void twoSheetsThatEndAtTheFoldAreToldOnce() {
        Building b = new SmallBuilding().wall("a", with(sheet("M1", -300, 3000, -40, 2500))).wall("b", with(sheet("M2", 0, 3300, -40, 2500))).open();
        assertEquals(List.of("M1"), found(b.walls().get(0).elevation(), "unwrapped-corner"));
        assertEquals(List.of("M2"), found(b.walls().get(1).elevation(), "unwrapped-corner"));
        assertEquals(List.of("a: M1, b M2 0.0"), found(check(b), "unwrapped-corner"));
        assertEquals(1, check(b).weakPoints().size());
    }

    /** Alone, b's sheet goes 100 round; a's comes 300 onto b. */
    @Test void aWrapIsSatisfiedFromTheOtherSide() {
        Building b = new SmallBuilding().wall("a", with(sheet("M1", -300, 3300, -40, 2500))).wall("b", with(sheet("M2", -100, 3300, -60, 2500))).open();
        assertEquals(List.of("M2"), found(b.walls().get(1).elevation(), "short-corner-wrap"));
        assertEquals(List.of(), found(check(b), "short-corner-wrap"));
    }

    @Test void aCornerIsWrappedWhereOnlyTheNeighbourDrawsIt() {
        Building b = new SmallBuilding().wall("a", with(sheet("M1", -300, 3000, -40, 2500))).wall("b", with(sheet("M2", -300, 3300, -40, 2500))).open();
        assertEquals(List.of("M1"), found(b.walls().get(0).elevation(), "unwrapped-corner"));
        assertEquals(List.of(), found(check(b), "unwrapped-corner"));
    }

    /** A strip over the corner, 300 beyond it and only 120 before it. */
    @Test void aStripIsMeasuredToBothSides() {
        Building b = new SmallBuilding().wall("a", with(sheet("M1", -300, 3000, -40, 2500), sheet("S", 2880, 3300, -30, 2500)))
                .wall("b", with(sheet("M2", 0, 3300, -40, 2500))).open();
        assertEquals(List.of(), found(b.walls().get(0).elevation(), "short-corner-wrap"));
        assertEquals(List.of("a: S 120.0"), found(check(b), "short-corner-wrap"));
    }

    @Test void tapeOverTheCornerCountsWhicheverWallDrawsIt() {
        Building b = new SmallBuilding().wall("a", sheet("M1", -300, 3300, -40, 2500), tape("CL", 0, -40, 2500)).wall("b", with(sheet("M1", -300, 3300, -40, 2500))).open();
        assertEquals(List.of("M1"), found(b.walls().get(0).elevation(), "untaped-corner"));
        assertEquals(List.of(), found(check(b), "untaped-corner"));
        Building none = new SmallBuilding().wall("a", sheet("M1", -300, 3300, -40, 2500), tape("CL", 0, -40, 2500))
                .wall("b", sheet("M1", -300, 3300, -40, 2500), tape("CR", 3000, -40, 2500)).open();
        assertEquals(1, found(check(none), "untaped-corner").size(), "told once");
    }

    /** a's sheet comes 100 onto b, where b's sheet ends at the fold: wind drives water round it onto a's side, and neither drawing alone shows it. */
    @Test void waterIsDrivenRoundTheCorner() {
        for (int wrap : new int[] {100, 160}) {
            Building b = new SmallBuilding().wall("a", sheet("M1", -300, 3000 + wrap, -40, 2500)).wall("b", sheet("M2", 0, 3300, -60, 2500)).open();
            List<OneWall> walls = check(b).walls();
            b.walls().forEach(w -> assertTrue(Checker.check(w.elevation(), Stage.WRAP, Practices.common()).evidence().trace().arrivals().stream()
                    .noneMatch(a -> a.defences() == 0), "alone nothing leaks"));
            boolean leaks = walls.stream().flatMap(w -> w.result().evidence().trace().arrivals().stream()).anyMatch(a -> a.defences() == 0);
            assertEquals(wrap == 100, leaks, "the creep is 150");
        }
    }

    /**
     * What the rules of dimensions find on each wall alone they find in the building, and the other way round, but near the corners. What the trace finds
     * may have come another way, round a corner, and be said already by a finding on that way.
     */
    @ParameterizedTest
    @ValueSource(strings = {"estuary-hut", "bakery-trailer"})
    void awayFromTheCornersTheListsAreEqual(String name) {
        Building b = BuildingFile.read(Path.of("elevations/buildings/" + name + ".json")).building().orElseThrow();
        int compared = 0;
        for (OneWall w : check(b).walls()) {
            Elevation e = w.wall().elevation();
            Set<String> together = new TreeSet<>(), alone = new TreeSet<>();
            w.result().weakPoints().stream().map(WeakPoint::finding).filter(f -> isInside(e, f)).forEach(f -> together.add(text(f, false)));
            alone(e).stream().filter(f -> isInside(e, f)).forEach(f -> alone.add(text(f, false)));
            assertEquals(alone, together, w.wall().id());
            compared += alone.size();
        }
        assertTrue(compared > 8, compared + " compared");
    }

    private static boolean isInside(Elevation e, Finding f) {
        Box wall = e.outline().box(), place = f.where().box();
        return !isTraced(f) && place.minX() > wall.minX() + 45_000 && place.maxX() < wall.maxX() - 45_000;
    }

    private static boolean isTraced(Finding f) {
        return Rules.find(f.rule()).orElseThrow().info().theme() == RuleInfo.Theme.WATER;
    }

    private static String text(Finding f, boolean mirror) {
        Box b = f.where().box();
        return f.rule() + new TreeSet<>(f.pieces()) + " " + mm(mirror ? -b.maxX() : b.minX()) + " " + mm(mirror ? -b.minX() : b.maxX()) + " " + mm(b.minY()) + " " + mm(b.maxY())
                + f.measured().stream().mapToObj(m -> " measured " + Math.round(m)).toList() + f.defences();
    }

    private static long mm(long units) {
        return Math.round(units / 100.0);
    }

    /**
     * Mirrored walls in opposite order give mirrored findings and as much wet frame; all under one practice, since the walls of a corner change sides. Of two
     * ways with equal cost the one found first is told: so the defences told at a place, and the end of a line where water stands, may be the other one's.
     */
    @ParameterizedTest
    @ValueSource(strings = {"estuary-hut", "bakery-trailer"})
    void aMirroredBuildingGivesMirroredFindings(String name) {
        Building b = BuildingFile.read(Path.of("elevations/buildings/" + name + ".json")).building().orElseThrow();
        List<Building.Wall> turned = new ArrayList<>(b.walls().stream().map(w -> new Building.Wall(w.id(), Changed.mirrored(w.elevation()))).toList());
        Collections.reverse(turned);
        Set<String> seen = texts(b, true), mirrored = texts(new Building(b.name(), turned, b.closed()), false);
        assertFalse(seen.isEmpty());
        assertEquals(seen, mirrored);
    }

    private static Set<String> texts(Building b, boolean mirror) {
        Set<String> out = new TreeSet<>();
        for (OneWall w : BuildingChecker.check(b, Stage.WRAP, e -> Practices.common(), Rules.all(), 1).walls()) {
            w.result().weakPoints().stream().map(WeakPoint::finding)
                    .forEach(f -> out.add(w.wall().id() + " " + (isTraced(f) ? f.rule() : text(f, mirror).replaceAll("[0-3]$", ""))));
            w.result().evidence().trace().reach().forEach(r -> out.add(w.wall().id() + " wet " + r.defences() + " "
                    + (mirror ? Changed.mirrored(r.surface()) : r.surface()).name() + " " + Math.round(r.areaMm2())));
        }
        return out;
    }

    /** Cladding that ends at the fold, or is drawn beyond it, is judged by the wall it lies on. */
    @Test void nothingIsToldBeyondACorner() {
        Building b = BuildingFile.read(Path.of("elevations/buildings/estuary-hut.json")).building().orElseThrow();
        for (OneWall w : BuildingChecker.check(b, Stage.FINISHED, BuildingCheckerTest::practice, Rules.all(), 1).walls()) {
            Box wall = w.wall().elevation().outline().box();
            assertEquals(List.of(), w.result().weakPoints().stream().map(p -> p.finding().where().box())
                    .filter(p -> p.maxX() <= wall.minX() || p.minX() >= wall.maxX()).toList());
        }
    }

    @Test void numbersRunOverAllWallsAndWorstComesFirst() {
        BuildingResult r = check(BuildingFile.read(Path.of("elevations/buildings/estuary-hut.json")).building().orElseThrow());
        List<WeakPoint> points = r.weakPoints().stream().map(BuildingResult.Ranking::point).toList();
        assertEquals(IntStream.rangeClosed(1, points.size()).boxed().toList(), points.stream().map(WeakPoint::number).toList());
        List<Integer> defences = points.stream().map(p -> p.finding().defences()).toList();
        assertEquals(defences.stream().sorted().toList(), defences);
        assertTrue(r.weakPoints().stream().map(BuildingResult.Ranking::wall).distinct().count() > 2);
    }
}
