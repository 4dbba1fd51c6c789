package rainlap.rule.lap;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static rainlap.rule.Judged.found;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import rainlap.geom.Box;
import rainlap.geom.Region;
import rainlap.geom.Ring;
import rainlap.joint.Drawn;
import rainlap.material.Material;
import rainlap.material.MaterialKind;
import rainlap.measure.LengthText;
import rainlap.wall.EdgeRole;
import rainlap.wall.Shape;
import rainlap.wall.Surface;

class BareHoleTest {
    /** No two sheets face one another in it, so it is no gap, and a hole that is drawn is no misfit. */
    @ParameterizedTest
    @ValueSource(doubles = {0.01, 0.5, 1, 20, 99.99, 100, 100.01, 300})
    void aHoleInASheetIsBareHoweverSmall(double size) {
        String mm = LengthText.mm(Math.round(size * 100));
        assertEquals("M1", found(new BareWall(), holed(size)).split(" ")[0]);
        assertEquals("bare, " + mm + " \u00d7 " + mm + " / covered", found(new BareWall(), holed(size)).split(" \\| ")[2]);
        assertEquals("", found(new BareWall(), holed(size).tape("T1", 450, 450, 1000, 1000)));
    }

    /** What a tape that was cut to fit leaves of one is within tolerance up to 1 mm. */
    @ParameterizedTest
    @ValueSource(doubles = {0, 0.5, 1})
    void aHoleFilledButForAMisfitIsNotBare(double misfit) {
        assertEquals("", found(new BareWall(), holed(100).tape("T1", 500, 500, 100 - misfit, 100)));
    }

    private static Drawn holed(double size) {
        Region sheet = new Region(Ring.of(Box.ofMm(0, 0, 2000, 2000)), List.of(Ring.of(Box.ofMm(500, 500, size, size))));
        return Drawn.wall().outline(0, 0, 2000, 2000, EdgeRole.FREE)
                .add("M1", Material.of("sheet", MaterialKind.MEMBRANE), List.of(new Shape(Surface.WALL, List.of(sheet))), List.of());
    }
}
