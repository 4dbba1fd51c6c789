package rainlap.rule.transport;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rainlap.rule.Finding;
import rainlap.rule.Rule;
import rainlap.rule.Written;
import rainlap.source.Known;
import rainlap.source.Source;
import rainlap.wall.Elevation;

class TransportRulesTest {
    private static Elevation wall(int width, int height, String ground, String exposure) {
        return Written.read("{'rainlap': 1, 'exposure': {" + exposure + "}, 'wall': {'outline': [[0,0],[" + width + ",0],[" + width + "," + height + "],[0," + height
                + "]], 'edges': ['free', 'free', 'free', 'free']" + ground + "}, 'pieces': [{'id': 'M1', 'material': 'foil-membrane', 'rect': [0, 0, " + width + ", " + height + "]}]}");
    }

    private static String said(Rule rule, int width, int height, String ground, String exposure) {
        return Written.said(rule, wall(width, height, ground, exposure));
    }

    /** What each law allows and just not, above a road 500 below; how well it is known; who is named. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            'road': 'eu'       | 4000 | Directive 96/53/EC
            'road': 'EU'       | 4000 | Directive 96/53/EC
            'road': 'au'       | 4300 | ACT Road Transport Regulations
            'road': 'nz'       | 4300 | Road law
            'road': 'uk'       | 4000 | Common practice
            'road': 'us'       | 4000 | Common practice
            'road': 'any'      | 4000 | Directive 96/53/EC
            'towing_km_h': 80  | 4000 | Common practice
            """)
    void heightIsAllowedUpToExactlyTheGreatest(String road, int most, String document) {
        assertEquals("holds", said(new OverHeight(), 2400, most - 500, ", 'ground': -500", road));
        Finding f = Written.findings(new OverHeight(), wall(2400, most - 499, ", 'ground': -500", road)).get(0);
        assertEquals(document, f.source().document());
        assertEquals(most + 1, f.measured().orElseThrow());
        assertEquals(most, f.required().orElseThrow());
        assertTrue(f.says().contains(most + " is the most"), f.says());
    }

    @ParameterizedTest
    @CsvSource({"eu, 2550, PUBLISHED_SECONDARY", "us, 2590, PUBLISHED_SECONDARY", "au, 2500, PUBLISHED", "uk, 2550, FROM_MEMORY", "nz, 2550, FROM_MEMORY", "any, 2500, PUBLISHED"})
    void widthIsAllowedUpToExactlyTheGreatest(String road, int most, Known known) {
        assertEquals("holds", said(new OverWidth(), most, 2000, "", "'road': '" + road + "'"));
        Finding f = Written.findings(new OverWidth(), wall(most + 1, 2000, "", "'road': '" + road + "'")).get(0);
        assertEquals(known, f.source().known());
        assertTrue(f.remedy().startsWith("Make it 1 narrower"), f.remedy());
    }

    @Test
    void whatStaysIsNotJudgedAndWhatIsNotStatedIsSaid() {
        assertEquals("not here: " + Travel.STAYS, said(new OverHeight(), 9000, 9000, "", "'wind_m_s': 20"));
        assertEquals("not here: " + Travel.STAYS, said(new OverWidth(), 9000, 9000, "", "'towing_km_h': 0"));
        assertEquals("cannot tell: wall.ground is not stated: the level of the road under the wheels, against y = 0",
                said(new OverHeight(), 2400, 3000, "", "'road': 'eu'"));
        assertEquals("cannot tell: the road \"mars\" is not known; known are eu, uk, us, au, nz, any", said(new OverHeight(), 2400, 3000, "", "'road': 'mars'"));
        assertEquals("cannot tell: the exposure names no road, and common practice knows no width", said(new OverWidth(), 2400, 3000, "", "'towing_km_h': 80"));
        assertEquals("not here: this side travels along the road (leading): its length is not the building's width",
                said(new OverWidth(), 6000, 3000, "", "'towing_km_h': 80, 'leading': 'left', 'road': 'eu'"));
    }

    @Test
    void aWallThatIsTooHighAloneIsTooHighOnAnyRoad() {
        assertEquals("broken | +4100, x 0 to 2400 | 4100 of 4000", said(new OverHeight(), 2400, 4100, "", "'road': 'eu'").replace("broken  |", "broken |"));
    }

    /** Common practice, no source: a building for the road is at most 4 m high. */
    @Test
    void fourMetresAreCommonPracticeWithoutASource() {
        assertEquals(new Road.Most(4000, Source.commonPractice()), Road.COMMON_HEIGHT);
        Road.ALL.forEach(r -> assertTrue(r.height().stream().allMatch(m -> m.mm() >= 4000) && r.width().isPresent(), r::name));
    }
}
