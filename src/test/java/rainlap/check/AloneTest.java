package rainlap.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import rainlap.file.ElevationFile;
import rainlap.practice.Practices;
import rainlap.rule.Finding;
import rainlap.wall.Elevation;
import rainlap.wall.Stage;
import rainlap.water.Step;

/** What one leak lets in runs by other places, and is no leak of theirs. */
class AloneTest {
    private static final String WALL = """
            {"rainlap":1,"practice":"uk-nhbc-2021","exposure":{"wind_m_s":26,"rain_mm_h":40},
             "wall":{"outline":[[0,0],[2400,0],[2400,2400],[0,2400]],"edges":["base","free","eave","free"],"ground":-450},
             %s
             "pieces":[%s]}""";
    /** Two lower sheets with a gap between, an upper sheet that laps them by 120, its foot taped. */
    private static final String SHEETS = """
            {"id":"A","material":"breather-membrane","rect":[0,-40,%d,1500]},
            {"id":"B","material":"breather-membrane","rect":[1040,-40,1360,1500]},
            {"id":"U","material":"breather-membrane","rect":[0,1380,2400,1120]},
            {"id":"T1","material":"foil-tape-75","line":[[0,1380],[2400,1380]]}""";
    private static final String PIPE = "\"penetrations\":[{\"id\":\"P1\",\"kind\":\"pipe\",\"circle\":[2000,2000,30]}],";

    private static List<Finding> found(String pipe, int widthOfA) {
        String text = WALL.formatted(pipe, SHEETS.formatted(widthOfA));
        Elevation e = ElevationFile.read("wall.json", text.getBytes(StandardCharsets.UTF_8)).elevation().orElseThrow();
        return Checker.check(e, Stage.WRAP, Practices.find("uk-nhbc-2021").orElseThrow()).weakPoints().stream().map(WeakPoint::finding).toList();
    }

    private static List<String> laps(List<Finding> found) {
        return found.stream().filter(f -> f.pieces().contains("U") && f.joint().isPresent()).map(f -> f.rule() + " " + f.defences()
                + f.path().stream().filter(Step::failure).map(s -> " " + s.kind()).toList()).toList();
    }

    @Test void aTapedLapIsAsSoundBesideAPipeWithoutACollar() {
        assertEquals(laps(found("", 1000)), laps(found(PIPE, 1000)));
        assertEquals(laps(found("", 1190)), laps(found(PIPE, 1190)));
    }

    /** A collar stuck by nothing lets water in by its left and by its right edge alike. */
    @Test void equalPlacesAreToldAlike() {
        String pieces = """
                {"id":"M1","material":"foil-membrane","rect":[0,-40,2400,2540]},{"id":"C","material":"pipe-collar","rect":[1075,475,250,250]}""";
        String pipe = "\"penetrations\":[{\"id\":\"P1\",\"kind\":\"pipe\",\"circle\":[1200,600,50]}],";
        Elevation e = ElevationFile.read("wall.json", WALL.formatted(pipe, pieces).getBytes(StandardCharsets.UTF_8)).elevation().orElseThrow();
        List<String> sides = Checker.check(e, Stage.WRAP, Practices.common()).weakPoints().stream().map(WeakPoint::finding).filter(f -> f.rule().equals("unsealed-collar"))
                .filter(f -> f.where().box().width() == 0).map(f -> f.defences() + " " + f.litresPerHour() + f.path().stream().map(Step::why).toList()).toList();
        assertEquals(2, sides.size());
        assertEquals(sides.get(0), sides.get(1));
        assertTrue(sides.get(0).contains("wind pushes it sideways under C"), sides.get(0));
    }

    /** At the lower right corner of the hut's window W2 another strip, K7, is one failure from the frame: that is no way of the tapes in the wrong order there. */
    @Test void aWayThatOnlyPassesIsNotTakenForOneOfItsOwn() {
        Elevation e = ElevationFile.read(Path.of("elevations/estuary-hut-south.json")).elevation().orElseThrow();
        Finding f = Checker.check(e, Stage.WRAP, Practices.find(e.practice().orElseThrow()).orElseThrow()).weakPoints().stream().map(WeakPoint::finding)
                .filter(w -> w.rule().equals("tape-order") && w.pieces().contains("J6")).findFirst().orElseThrow();
        assertEquals(2, f.defences());
        assertTrue(f.path().stream().anyMatch(s -> f.pieces().contains(s.piece())), f.path().toString());
    }

    @Test void theWorstIsWhereRainComesIn() {
        List<Finding> found = found(PIPE, 1000);
        assertEquals("open-gap", found.get(0).rule());
        assertEquals(List.of("rain wets the frame"), found.get(0).path().stream().map(Step::why).toList());
        Finding pipe = found.stream().filter(f -> f.rule().equals("no-collar")).findFirst().orElseThrow();
        assertTrue(pipe.defences() == 0 && found.stream().filter(f -> f.joint().isPresent() && f.pieces().contains("U")).allMatch(f -> f.defences() > 0));
    }
}
