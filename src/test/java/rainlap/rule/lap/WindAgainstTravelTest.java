package rainlap.rule.lap;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import rainlap.rule.Finding;
import rainlap.rule.Written;
import rainlap.wall.Elevation;

/** Wind from the left, travel to the right: of an end lap either way round one of the two rules speaks until tape closes it, and neither sends back to the other. */
class WindAgainstTravelTest {
    private static final String A = "{'id': 'A', 'material': 'foil-membrane', 'rect': [0,-40,1200,2540]}", B = "{'id': 'B', 'material': 'foil-membrane', 'rect': [1000,-40,1400,2540]}";

    @Test void anEdgeThatLooksToTheWindIsTapedAndNotTurned() {
        assertEquals(List.of("Tape the edge, at least 25 to each side of it. Leave B over A: turned round the edge would look to the right, the way the building travels."), told(A, B));
        assertEquals(List.of(), told(A, B, tape(1000)));
    }

    @Test void anEdgeThatLooksTheWayOfTravelIsTurnedAndTaped() {
        assertEquals(List.of("Lay B over A instead, from the rear forwards, so that the edge looks to the left; keep the lap's width and tape the edge, at least 25 to each side,"
                + " for it then looks to the prevailing wind. Work at height from a platform, and fix every loose edge before towing."), told(B, A));
        assertEquals(List.of("Lay B over A instead, from the rear forwards, so that the edge looks to the left; keep the lap's width and tape it again with new tape,"
                + " for it then looks to the prevailing wind. Work at height from a platform, and fix every loose edge before towing."), told(B, A, tape(1200)));
    }

    private static String tape(int x) {
        return "{'id': 'T', 'material': 'foil-tape-75', 'line': [[%d,-40],[%d,2500]]}".formatted(x, x);
    }

    private static List<String> told(String... pieces) {
        Elevation wall = Written.read("{'rainlap': 1, 'exposure': {'wind_m_s': 20, 'towing_km_h': 90, 'leading': 'right', 'wind_from': 'left', 'rain_mm_h': 25},"
                + "'wall': {'outline': [[0,0],[2400,0],[2400,2400],[0,2400]], 'edges': ['base','free','eave','free']}, 'pieces': [" + String.join(",", pieces) + "]}");
        return Stream.of(new LapTowardsWind(), new LapTowardsTravel()).flatMap(r -> Written.findings(r, wall).stream()).map(Finding::remedy).toList();
    }
}
