package rainlap.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import org.junit.jupiter.api.Test;
import rainlap.geom.Region;
import rainlap.material.Catalogue;
import rainlap.material.MaterialKind;
import rainlap.stack.Face;
import rainlap.stack.Stack;
import rainlap.wall.Elevation;
import rainlap.wall.Exposure;
import rainlap.wall.Piece;
import rainlap.wall.Stage;
import rainlap.wall.Surface;

/** What is painted, so that in the end the outermost piece shows everywhere. */
class VisibilityTest {

    @Test
    void aTuckedSheetIsPaintedWithoutWhatLiesOverIt() {
        Stack stack = stack(sheet("A", 0, 0, 1000, 1000), sheet("B", 500, 0, 1000, 1000, "A"));
        Visibility v = new Visibility(stack);
        assertEquals(1_000_000, area(v.painted(face(stack, "A"))));
        assertEquals(500_000, area(v.painted(face(stack, "B"))));
    }

    @Test
    void inARingOfFourFlapsEachShowsWhereItLiesOutside() {
        Stack stack = stack(sheet("N", 0, 600, 1000, 400), sheet("E", 600, 0, 400, 1000), sheet("S", 0, 0, 1000, 400),
                sheet("W", 0, 0, 400, 1000, "N"));
        Visibility v = new Visibility(stack);
        for (Face f : stack.on(Surface.WALL)) {
            assertEquals(400_000 - 160_000, area(v.bare(f)), f.toString());
        }
    }

    @Test
    void aFlashingUnderASheetLosesWhatTheSheetCoversAlthoughItIsPaintedLater() {
        Stack stack = stack(SampleWall.piece("H", MaterialKind.FLASHING, SampleWall.rect(0, 0, 1000, 100), List.of(), List.of()),
                sheet("M", 0, 60, 1000, 900));
        assertEquals(60_000, area(new Visibility(stack).painted(face(stack, "H"))));
    }

    private static double area(List<Region> regions) {
        return regions.stream().mapToDouble(Region::areaMm2).sum();
    }

    private static Face face(Stack stack, String id) {
        return stack.on(Surface.WALL).stream().filter(f -> f.piece().id().equals(id)).findFirst().orElseThrow();
    }

    private static Piece sheet(String id, double x, double y, double w, double h, String... under) {
        return SampleWall.piece(id, MaterialKind.MEMBRANE, SampleWall.rect(x, y, w, h), List.of(under), List.of());
    }

    private static Stack stack(Piece... pieces) {
        return Stack.of(new Elevation("w", Optional.empty(), Exposure.UNSTATED, SampleWall.outline(2000, 1000, OptionalLong.empty()), List.of(),
                List.of(), Catalogue.builtIn(), List.of(pieces), List.of()), Stage.WRAP);
    }
}
