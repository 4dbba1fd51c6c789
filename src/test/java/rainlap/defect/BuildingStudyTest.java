package rainlap.defect;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static rainlap.building.SmallBuilding.sheet;
import static rainlap.building.SmallBuilding.tape;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import rainlap.building.Building;
import rainlap.building.SmallBuilding;
import rainlap.building.Unfolded;
import rainlap.practice.Practices;
import rainlap.report.DefectTable;
import rainlap.rule.Evidence;
import rainlap.stack.Crew;
import rainlap.wall.EdgeRole;
import rainlap.wall.Stage;

/** Holes in the walls of a building, their water followed round the corner. Creep 150. */
class BuildingStudyTest {
    /** a's sheet comes round onto b over b's sheet, which ends at the fold; tape covers its edge there. */
    private static Building wrapped(EdgeRole role, int wrap) {
        return new SmallBuilding().corners(role).wall("a", sheet("M1", -300, 3000 + wrap, -40, 2500))
                .wall("b", sheet("M2", 0, 3300, -60, 2500), tape("T", wrap, -40, 2500)).open();
    }

    private static Study study(Building b, int wall, int first) {
        Unfolded u = Unfolded.of(b, wall);
        return Study.ofWall(Evidence.ofWall(u, Stage.WRAP, Practices.common(), Crew.ALONE), u, first);
    }

    private static List<Study.Followed> throughTape(Study s) {
        return s.holes().stream().filter(h -> h.hole().piece().id().equals("T")).toList();
    }

    /** Through the tape water is pushed in behind a's sheet, and if that reaches less than the creep, onto the frame of a. */
    @ParameterizedTest
    @EnumSource(value = EdgeRole.class, names = {"EXTERNAL_CORNER", "INTERNAL_CORNER"})
    void theWaterOfAHoleGoesRoundTheCorner(EdgeRole role) {
        for (int wrap : new int[] {100, 149, 150}) {
            Study s = study(wrapped(role, wrap), 1, 5);
            List<Study.Followed> holes = throughTape(s);
            assertEquals(1, holes.size());
            Result own = holes.get(0).results().get(1);
            assertEquals(wrap < 150, own.frame().isPresent(), "wrap " + wrap);
            own.frame().ifPresent(place -> assertTrue(s.isRound(place), place.inWords()));
            assertFalse(own.asDrawn(), "without the hole the tape keeps it out");
        }
    }

    /** Alone b draws nothing of a's sheet: there is no such joint and no such hole. */
    @Test void aloneThereIsNoSuchHole() {
        Building b = wrapped(EdgeRole.EXTERNAL_CORNER, 100);
        assertEquals(List.of(), throughTape(Study.of(Evidence.of(b.walls().get(1).elevation(), Stage.WRAP, Practices.common()))));
    }

    @Test void theHolesOfAllWallsAreOneList() {
        Building b = wrapped(EdgeRole.EXTERNAL_CORNER, 100);
        Study a = study(b, 0, 1), other = study(b, 1, a.holes().size() + 1);
        Map<String, Study> walls = new LinkedHashMap<>();
        walls.put("a", a);
        walls.put("b", other);
        String text = String.join(" ", DefectTable.lines(walls)).replaceAll("\\s+", " ");
        assertEquals(a.holes().size() + 1, other.holes().get(0).number());
        assertTrue(text.contains("b, " + other.holes().size() + " hole"), text);
        assertTrue(text.contains("the walls beside it"), text);
        assertEquals(1, text.split("hole at of place ", -1).length - 1, text);
    }
}
