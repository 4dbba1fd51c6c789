package rainlap.building;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static rainlap.building.SmallBuilding.sheet;
import static rainlap.building.SmallBuilding.tape;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import rainlap.check.BuildingChecker;
import rainlap.check.BuildingResult;
import rainlap.check.Rules;
import rainlap.practice.Practices;
import rainlap.wall.EdgeRole;
import rainlap.wall.Elevation;
import rainlap.wall.Stage;

/** Two walls that meet in an internal corner: folded the other way, joined in the same way. Rise 25, creep 150. */
class InternalCornerTest {
    private static BuildingResult check(Building b) {
        return BuildingChecker.check(b, Stage.WRAP, e -> Practices.common(), Rules.all(), 1);
    }

    /** Everything found as "defences wall rule: pieces measured". */
    private static List<String> found(Building b) {
        return check(b).weakPoints().stream().map(w -> w.point().finding().defences() + " " + w.wall() + " " + w.point().finding().rule() + ": "
                + String.join(", ", w.point().finding().pieces()) + w.point().finding().measured().stream().mapToObj(m -> " " + m).findFirst().orElse("")).toList();
    }

    private static boolean leaks(Elevation alone) {
        return rainlap.rule.Evidence.of(alone, Stage.WRAP, Practices.common()).trace().arrivals().stream().anyMatch(a -> a.defences() == 0);
    }

    private static boolean leaks(Building b) {
        return check(b).walls().stream().flatMap(w -> w.result().evidence().trace().arrivals().stream()).anyMatch(a -> a.defences() == 0);
    }

    private static SmallBuilding inner() {
        return new SmallBuilding().corners(EdgeRole.INTERNAL_CORNER);
    }

    private static String[] with(String... pieces) {
        return Stream.concat(Stream.of(pieces), Stream.of(tape("CL", 0, -40, 2500), tape("CR", 3000, -40, 2500))).toArray(String[]::new);
    }

    @Test void aSheetFoldedIntoTheCornerIsOneSheet() {
        Building b = inner().wall("a", with(sheet("M1", -300, 3300, -40, 2500))).wall("b", with(sheet("M1", -300, 3300, -40, 2500))).open();
        assertEquals(List.of(), found(b));
        assertEquals(List.of(List.of("M1", "b M1"), List.of("CR", "b CL")), Unfolded.of(b, 0).together());
        assertEquals(List.of(), check(b).walls().get(0).result().evidence().joints().all(), "no joint within one sheet");
    }

    /** Open at the fold: rain gets in between them, and the tape over it is all that stands before that. */
    @Test void aButtAtTheFoldIsToldOnceAndTapeIsItsOneDefence() {
        Building taped = inner().wall("a", with(sheet("M1", -300, 3000, -40, 2500))).wall("b", with(sheet("M2", 0, 3300, -40, 2500))).open();
        assertEquals(List.of("1 a unwrapped-corner: M1, b M2 0.0"), found(taped));
        assertTrue(!leaks(taped));
        Building open = inner().wall("a", sheet("M1", -300, 3000, -40, 2500), tape("CL", 0, -40, 2500)).wall("b", sheet("M2", 0, 3300, -40, 2500), tape("CR", 3000, -40, 2500)).open();
        assertTrue(leaks(open));
        assertTrue(found(open).contains("0 a unwrapped-corner: M1, b M2 0.0"), found(open).toString());
    }

    /** Each goes round far enough from one side; the shorter one of the two alone would be too short. */
    @Test void theWrapIsMeasuredFromBothSides() {
        Building b = inner().wall("a", with(sheet("M1", -300, 3300, -40, 2500))).wall("b", with(sheet("M2", -100, 3300, -60, 2500))).open();
        assertEquals(List.of(), found(b).stream().filter(f -> f.contains("corner")).toList());
        Building strip = inner().wall("a", with(sheet("M1", -300, 3000, -40, 2500), sheet("S", 2880, 3300, -30, 2500))).wall("b", with(sheet("M2", 0, 3300, -40, 2500))).open();
        assertTrue(found(strip).stream().anyMatch(f -> f.endsWith("a short-corner-wrap: S 120.0")), found(strip).toString());
    }

    @Test void aTapeCountsWhicheverWallDrawsIt() {
        Building b = inner().wall("a", sheet("M1", -300, 3300, -40, 2500), tape("CL", 0, -40, 2500)).wall("b", with(sheet("M1", -300, 3300, -40, 2500))).open();
        assertEquals(List.of(), found(b));
        Building none = inner().wall("a", sheet("M1", -300, 3300, -40, 2500), tape("CL", 0, -40, 2500)).wall("b", sheet("M1", -300, 3300, -40, 2500), tape("CR", 3000, -40, 2500)).open();
        assertEquals(1, found(none).stream().filter(f -> f.contains(" untaped-corner: ")).count(), found(none).toString());
    }

    /** a's sheet comes round by less than wind drives water: it gets in behind on b and onto the frame of a. Neither drawing alone shows it. */
    @Test void waterIsDrivenRoundTheCorner() {
        for (int wrap : new int[] {100, 149, 150}) {
            Building b = inner().wall("a", sheet("M1", -300, 3000 + wrap, -40, 2500)).wall("b", sheet("M2", 0, 3300, -60, 2500)).open();
            b.walls().forEach(w -> assertTrue(!leaks(w.elevation()), "alone nothing leaks"));
            assertEquals(wrap < 150, leaks(b), "wrap " + wrap);
        }
    }

    /** A building that steps in and out again: both kinds of corner on one wall. */
    @Test void anInternalAndAnExternalCornerOnOneWall() {
        Building b = new SmallBuilding().corners(EdgeRole.EXTERNAL_CORNER, EdgeRole.INTERNAL_CORNER).wall("a", sheet("M1", -300, 3100, -40, 2500))
                .corners(EdgeRole.INTERNAL_CORNER, EdgeRole.EXTERNAL_CORNER).wall("b", sheet("M2", 0, 3300, -60, 2500)).open();
        assertTrue(leaks(b));
        assertEquals(List.of(EdgeRole.INTERNAL_CORNER), Unfolded.of(b, 1).corners().stream().map(c -> c.role()).toList());
        Building unlike = new SmallBuilding().corners(EdgeRole.EXTERNAL_CORNER).wall("a", sheet("M1", -300, 3100, -40, 2500))
                .corners(EdgeRole.INTERNAL_CORNER).wall("b", sheet("M2", 0, 3300, -60, 2500)).open();
        assertTrue(unlike.cornerRightOf(0).isEmpty(), "a corner is of one kind");
    }
}
