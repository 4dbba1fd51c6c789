package rainlap.rule;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import org.junit.jupiter.api.Test;
import rainlap.geom.Box;
import rainlap.geom.Region;
import rainlap.material.Catalogue;
import rainlap.material.Material;
import rainlap.material.MaterialKind;
import rainlap.stack.Stack;
import rainlap.wall.Elevation;
import rainlap.wall.Exposure;
import rainlap.wall.Opening;
import rainlap.wall.Outline;
import rainlap.wall.Piece;
import rainlap.wall.Shape;
import rainlap.wall.Stage;
import rainlap.wall.Surface;

class HeadFlashingsTest {
    private static final Opening W1 = new Opening("W1", Opening.Kind.WINDOW, Box.ofMm(1000, 900, 1200, 1000), 9000,
            Optional.empty(), OptionalLong.empty(), OptionalLong.empty());

    private static List<String> found(MaterialKind kind, Box box) {
        Material m = Material.of("m", kind);
        Piece p = new Piece("H1", m, List.of(new Shape(Surface.WALL, List.of(Region.of(box)))), List.of(), m.bond(), List.of());
        Elevation e = new Elevation("test", Optional.empty(), Exposure.UNSTATED,
                new Outline(Region.of(Box.ofMm(0, 0, 3000, 2400)), List.of(), OptionalLong.empty()), List.of(W1), List.of(),
                Catalogue.builtIn(), List.of(p), List.of());
        Stack stack = Stack.of(e, Stage.WRAP);
        List<String> ids = HeadFlashings.byOpening(e, stack.on(Surface.WALL)).getOrDefault("W1", List.of()).stream().map(f -> f.piece().id()).toList();
        assertEquals(!ids.isEmpty(), HeadFlashings.findOpening(e, stack.on(Surface.WALL).get(0)).isPresent());
        return ids;
    }

    @Test void aFlashingOnTheHeadLineIsOne() {
        assertEquals(List.of("H1"), found(MaterialKind.FLASHING, Box.ofMm(850, 1900, 1500, 75)));
    }

    @Test void upTo100AboveOrBelowTheHeadLineCounts() {
        assertEquals(List.of("H1"), found(MaterialKind.FLASHING, Box.ofMm(850, 2000, 1500, 75)));
        assertEquals(List.of("H1"), found(MaterialKind.FLASHING, Box.ofMm(850, 1800, 1500, 175)));
        assertEquals(List.of(), found(MaterialKind.FLASHING, Box.ofMm(850, 2000.01, 1500, 75)));
        assertEquals(List.of(), found(MaterialKind.FLASHING, Box.ofMm(850, 1799.99, 1500, 175)));
    }

    @Test void oneBesideTheOpeningIsNone() {
        assertEquals(List.of(), found(MaterialKind.FLASHING, Box.ofMm(2200, 1900, 500, 75)));
        assertEquals(List.of("H1"), found(MaterialKind.FLASHING, Box.ofMm(2199.99, 1900, 500, 75)));
    }

    @Test void aMembraneThereIsNone() {
        assertEquals(List.of(), found(MaterialKind.MEMBRANE, Box.ofMm(850, 1900, 1500, 75)));
    }
}
