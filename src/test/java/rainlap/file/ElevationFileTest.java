package rainlap.file;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import org.junit.jupiter.api.Test;
import rainlap.geom.Box;
import rainlap.geom.Point;
import rainlap.material.Bond;
import rainlap.wall.CutPattern;
import rainlap.wall.EdgeRole;
import rainlap.wall.Elevation;
import rainlap.wall.Opening;
import rainlap.wall.Surface;

/** A sound file becomes an elevation, key by key. */
class ElevationFileTest {
    static final String HUT = """
            {
              "rainlap": 1, // the form's version
              "name": "Estuary hut, north side",
              "practice": "au-abcb-2022",
              "exposure": { "wind_m_s": 26, "rain_mm_h": 75 },
              "wall": {
                "outline": [[0, 0], [3600, 0], [3600, 2400], [0, 2400]],
                "edges": ["base", "external-corner", "eave", { "role": "external-corner", "neighbour": "west.json" }],
                "ground": -450
              },
              "openings": [ { "id": "W1", "kind": "window", "rect": [1200, 900, 1200, 1000], "reveal": 90 } ],
              "penetrations": [ { "id": "P1", "kind": "duct", "circle": [3000, 1700, 62] } ],
              "materials": [ { "id": "foil", "is": "membrane", "roll_width": 1350, "roll_length_m": 30, "uv_days": 28 } ],
              "pieces": [
                { "id": "M1", "material": "foil", "rect": [-300, -40, 4200, 1350], "cuts": [ { "at": "W1", "pattern": "diagonal", "return": 90 } ] },
                { "id": "M2", "material": "foil", "rect": [-300, 1160, 4200, 1350], "cuts": [ { "at": "W1", "pattern": "diagonal", "return": 90 } ] },
                { "id": "T1", "material": "foil-tape-75", "line": [[-300, 1160], [3900, 1160]] },
                { "id": "H1", "material": "head-flashing", "rect": [1050, 1900, 1500, 75], "under": ["M2"] },
              ],
            }
            """;

    static Reading read(String json) {
        return ElevationFile.read("hut.json", json.getBytes(StandardCharsets.UTF_8));
    }

    static Elevation sound(String json) {
        Reading r = read(json);
        assertEquals(List.of(), r.problems().stream().flatMap(p -> p.lines().stream()).toList());
        return r.elevation().orElseThrow();
    }

    @Test
    void wholeFormIsRead() {
        Elevation e = sound(HUT);
        assertEquals("Estuary hut, north side", e.name());
        assertEquals(Optional.of("au-abcb-2022"), e.practice());
        assertEquals(26, e.exposure().windMPerS().orElseThrow());
        assertEquals(OptionalLong.of(-45000), e.outline().ground());
        assertEquals(List.of(EdgeRole.BASE, EdgeRole.EXTERNAL_CORNER, EdgeRole.EAVE, EdgeRole.EXTERNAL_CORNER),
                e.outline().edges().stream().map(s -> s.role()).toList());
        assertEquals(Optional.of("west.json"), e.outline().edges().get(3).neighbour());
        assertEquals(new Opening("W1", Opening.Kind.WINDOW, Box.ofMm(1200, 900, 1200, 1000), 9000, Optional.empty(),
                OptionalLong.empty(), OptionalLong.empty()), e.openings().get(0));
        assertEquals("duct", e.penetrations().get(0).kind());
        assertEquals(1350, e.materials().find("foil").orElseThrow().sizes().rollWidthMm().orElseThrow());
        assertTrue(e.materials().find("finishing-bead").isPresent(), "built-in materials stay");
        assertEquals(List.of("M1", "M2", "T1", "H1"), e.pieces().stream().map(p -> p.id()).toList());
    }

    @Test
    void piecesCarryShapeCutTuckAndBond() {
        Elevation e = sound(HUT);
        var m1 = e.pieces().get(0);
        assertEquals(Box.ofMm(-300, -40, 4200, 1350), m1.wallBox().orElseThrow());
        assertEquals(CutPattern.DIAGONAL, m1.cuts().get(0).pattern());
        assertEquals(9000, m1.cuts().get(0).returned());
        assertEquals(Bond.LOOSE, m1.bond());
        var t1 = e.pieces().get(2);
        assertEquals(Box.ofMm(-300, 1122.5, 4200, 75), t1.wallBox().orElseThrow(), "width comes from the material");
        assertEquals(List.of(Point.ofMm(-300, 1160), Point.ofMm(3900, 1160)), t1.shapes().get(0).run());
        assertEquals(Bond.FULL, t1.bond());
        assertEquals(Surface.WALL, t1.shapes().get(0).on());
        assertEquals(List.of("M2"), e.pieces().get(3).under());
    }

    @Test
    void placesOfPiecesAndPointersAreKnown() {
        Reading r = read(HUT);
        assertEquals(Optional.of(new Place(15, 13)), r.places().ofPiece("M1"));
        assertEquals(Optional.of(new Place(18, 90)), r.places().ofPointer("/pieces/3/under/0"));
        assertEquals(Optional.of(new Place(1, 1)), r.places().ofPointer(""));
        assertEquals(Optional.empty(), r.places().ofPointer("/pieces/4"));
        assertEquals(Optional.empty(), r.places().ofPiece("M3"));
    }

    @Test
    void digestIsOfTheBytes() {
        assertEquals("44136fa355b3678a1146ad16f7e8649e94fb4fc21fe77e8310c060f61caaff8a", read("{}").sha256());
    }
}
