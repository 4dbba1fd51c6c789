package rainlap.stack;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import org.junit.jupiter.api.Test;
import rainlap.file.ElevationFile;
import rainlap.geom.Overlay;
import rainlap.geom.Region;
import rainlap.wall.Elevation;
import rainlap.wall.Opening;
import rainlap.wall.Stage;
import rainlap.wall.Surface;

/** What of a piece is left on the wall beside its openings, against a general overlay. */
class FoldingTest {
    private static final String WALL = """
            {"rainlap":1,"wall":{"outline":[[0,0],[4000,0],[4000,2400],[0,2400]],"edges":["base","free","eave","free"]},
             "openings":[%s],"pieces":[{"id":"M","material":"foil-membrane",%s}]}""";

    private static Stack stack(String openings, String shape) {
        byte[] text = WALL.formatted(openings, shape).getBytes(StandardCharsets.UTF_8);
        Elevation e = ElevationFile.read("wall.json", text).elevation().orElseThrow(() -> new AssertionError(openings + shape));
        return Stack.of(e, Stage.WRAP);
    }

    private static String opening(int number, int x, int y, int width, int height) {
        return String.format(Locale.ROOT, "{\"id\":\"W%d\",\"kind\":\"window\",\"rect\":[%d,%d,%d,%d],\"reveal\":80}", number, x, y, width, height);
    }

    private static List<Region> onWall(Stack s) {
        return s.on(Surface.WALL).stream().map(Face::region).toList();
    }

    /** Round the corner of an opening, as corner pieces are laid: all of it stays on the wall, as it is drawn. */
    @Test void aPieceThatOnlyGoesRoundAnOpeningIsNotFolded() {
        Stack s = stack(opening(1, 1000, 900, 600, 600), "\"ring\":[[925,825],[1115,825],[1115,900],[1000,900],[1000,1015],[925,1015]]");
        assertEquals(s.elevation().pieces().get(0).shapes().get(0).regions(), onWall(s));
        assertEquals(List.of(Surface.WALL), s.surfaces().stream().filter(on -> !s.on(on).isEmpty()).toList());
    }

    @Test void boxesAreCutAsAnOverlayCutsThem() {
        Random random = new Random(5);
        int apart = 0;
        for (int wall = 0; wall < 300; wall++) {
            List<String> openings = new ArrayList<>();
            for (int i = 0; i < 1 + random.nextInt(3); i++) {
                openings.add(opening(i, 200 + 1250 * i + random.nextInt(300), 300 + random.nextInt(900), 300 + random.nextInt(500), 300 + random.nextInt(700)));
            }
            int x = random.nextInt(2500), y = random.nextInt(1500);
            Stack s = stack(String.join(",", openings), "\"rect\":[%d,%d,%d,%d]".formatted(x, y, 100 + random.nextInt(3900 - x), wall % 2 == 0 ? 75 : 100 + random.nextInt(2200 - y)));
            List<Region> drawn = s.elevation().pieces().get(0).shapes().get(0).regions(), cut = s.elevation().openings().stream().map(Opening::rect).map(Region::of).toList();
            List<Region> asked = Overlay.difference(drawn, cut), here = onWall(s);
            assertEquals(asked.size(), here.size(), openings.toString());
            assertTrue(Overlay.difference(asked, here).isEmpty() && Overlay.difference(here, asked).isEmpty(), openings.toString());
            apart += here.size() > 1 ? 1 : 0;
        }
        assertTrue(apart > 10, apart + " walls where openings part the piece");
    }
}
