package rainlap.rule.face;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import rainlap.practice.Practices;
import rainlap.rule.Rule;
import rainlap.rule.Written;
import rainlap.wall.Elevation;
import rainlap.wall.Stage;

/** What the rules of the face do not know, and cases beside those of their examples. */
class FaceRulesTest {
    private static final List<Rule> ALL = List.of(new ShortSheetSideLap(), new ShortSheetEndLap(), new LapTowardsWeather(), new OpenFaceJoint(),
            new TrimAgainstFlow(), new NoRoomToMove());

    private static Elevation wall(String exposure, String material, String... pieces) {
        return Written.read("{'rainlap': 1, 'exposure': {" + exposure + "}, 'wall': {'outline': [[0,0],[1800,0],[1800,1600],[0,1600]],"
                + " 'edges': ['free','free','free','free']}, 'materials': [{'id': 'sheet', 'is': 'cladding'" + material + "},"
                + " {'id': 'strip', 'is': 'trim', 'width': 60}], 'pieces': [" + String.join(",\n", pieces) + "]}");
    }

    private static String sheet(String id, double x, double y, double w, double h) {
        return "{'id': '" + id + "', 'material': 'sheet', 'rect': [" + x + "," + y + "," + w + "," + h + "]}";
    }

    private static String said(Rule rule, Elevation e) {
        return Written.said(rule, e, Practices.common(), Stage.FINISHED);
    }

    @Test void noneSpeaksAtTheWrapStage() {
        Elevation e = wall("", "", sheet("C1", 0, 0, 900, 1600), sheet("C2", 900, 0, 900, 1600));
        for (Rule rule : ALL) {
            String said = Written.said(rule, e);
            assertTrue(said.startsWith("not here: ") && said.endsWith(" at this stage"), () -> rule.info().id() + ": " + said);
        }
    }

    @Test void aMaterialWithoutASideLapCannotBeJudgedWhereItStands() {
        assertEquals("cannot tell C2 C1: sheet states no side_lap",
                said(new ShortSheetSideLap(), wall("", "", sheet("C1", 0, 0, 700, 1600), sheet("C2", 600, 0, 700, 1600))));
    }

    @Test void squareSheetsAreNotGuessedAt() {
        assertEquals("cannot tell C2 C1: the sheets are square: it is not known which way they run",
                said(new ShortSheetSideLap(), wall("", "", sheet("C1", 0, 0, 900, 900), sheet("C2", 850, 0, 900, 900))));
    }

    @Test void aSheetCutShorterThanItIsWideStandsStill() {
        String ribbed = ", 'cover_width': 762, 'side_lap': 75";
        Elevation e = wall("", ribbed, sheet("C1", 0, 0, 837, 500), sheet("C2", 0, 400, 837, 1000));
        assertEquals("broken C2 C1 | +400, x 0 to 837 | 100 of 150", said(new ShortSheetEndLap(), e));
        assertEquals("not here: no sheet has a side lap over another", said(new ShortSheetSideLap(), e));
    }

    @Test void theMaterialsOwnLapOfBoardsCountsWhereItIsMore() {
        Elevation e = wall("", ", 'cover_width': 140, 'side_lap': 40", sheet("C1", 0, 0, 1800, 180), sheet("C2", 0, 145, 1800, 180));
        assertEquals("broken C2 C1 | +145, x 0 to 1800 | 35 of 40", said(new ShortSheetSideLap(), e));
    }

    @Test void withoutTemperatureOrMetalItCannotTell() {
        String[] two = {sheet("C1", 0, 0, 900, 1600), sheet("C2", 900, 0, 900, 1600)};
        assertEquals("cannot tell C2 C1: the exposure states no temperature_c", said(new NoRoomToMove(), wall("", ", 'metal': 'steel'", two)));
        assertEquals("cannot tell C2 C1: its material states no metal whose expansion is known",
                said(new NoRoomToMove(), wall("'temperature_c': [-10, 50]", "", two)));
    }

    /** 12 millionths times 60 degrees times 30 m is 21.6, as the code of practice reckons. */
    @Test void thirtyMetresOfSteelMoveAsTheCodeOfPracticeReckons() {
        assertEquals(21.6, new Expansion("steel", 1).perKelvin() * 60 * 30_000, 1e-9);
        assertEquals("steel, 12 millionths a degree", new Expansion("steel", 1).words());
    }

    @Test void wallsWithoutStatedWeatherHaveNoSideLapsToJudge() {
        Elevation e = wall("", "", sheet("C1", 0, 0, 900, 1600), sheet("C2", 800, 0, 900, 1600));
        assertTrue(said(new LapTowardsWeather(), e).startsWith("not here: "));
        assertEquals("broken C2 C1 | x 800, ±0 to +1600 | 100 of -",
                said(new LapTowardsWeather(), wall("'towing_km_h': 80, 'leading': 'left'", "", sheet("C1", 0, 0, 900, 1600), sheet("C2", 800, 0, 900, 1600))));
    }

    @Test void windAndTravelFromOneSideAreOneFindingFromTwoSidesTwo() {
        String[] three = {sheet("C1", 600, 0, 600, 1600), sheet("C2", 0, 0, 700, 1600), sheet("C3", 1100, 0, 600, 1600)};
        assertEquals("broken C3 C1 | x 1100, ±0 to +1600 | 100 of -\nholds C2 C1",
                said(new LapTowardsWeather(), wall("'wind_from': 'left', 'towing_km_h': 80, 'leading': 'left'", "", three)).lines().sorted()
                        .collect(java.util.stream.Collectors.joining("\n")));
        assertEquals(2, said(new LapTowardsWeather(), wall("'wind_from': 'left', 'towing_km_h': 80, 'leading': 'right'", "", three)).lines()
                .filter(l -> l.startsWith("broken")).count());
    }

    @Test void aTrimWhoseUpperEdgeASheetCoversHolds() {
        Elevation e = wall("", "", sheet("C1", 0, 0, 1800, 800), "{'id': 'R1', 'material': 'strip', 'line': [[0, 780], [1800, 780]]}",
                sheet("C2", 0, 790, 1800, 800));
        assertEquals("holds R1", said(new TrimAgainstFlow(), e));
    }
}
