package rainlap.file;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import rainlap.material.Substance;
import rainlap.practice.Practices;

/** The schema and the reader say the same. */
class SchemaTest {
    private static final ElevationSchema SCHEMA = ElevationSchema.named("elevation.schema.json");

    static List<Path> goodFiles() throws IOException {
        List<Path> out = new ArrayList<>();
        for (Path folder : List.of(Path.of("src/test/resources/cases/good"), Path.of("elevations"))) {
            if (Files.isDirectory(folder)) {
                try (Stream<Path> files = Files.list(folder)) {
                    files.filter(p -> p.toString().endsWith(".json")).sorted().forEach(out::add);
                }
            }
        }
        return out;
    }

    @ParameterizedTest
    @MethodSource("goodFiles")
    void goodFilesAreSoundForBoth(Path file) throws IOException {
        assertEquals(List.of(), ElevationFile.read(file).problems().stream().flatMap(p -> p.lines().stream()).toList());
        assertEquals(List.of(), SCHEMA.complaints(Files.readAllBytes(file)));
    }

    @Test
    void exampleOfTheTestsIsSoundForBoth() throws IOException {
        assertEquals(List.of(), SCHEMA.complaints(ElevationFileTest.HUT.getBytes(StandardCharsets.UTF_8)));
    }

    @Test
    void keysAreTheSame() {
        assertEquals(new TreeSet<>(ElevationReader.KEYS), keys(SCHEMA.json()));
        assertKeys("exposure", ExposureReader.KEYS);
        assertKeys("wall", OutlineReader.KEYS);
        assertKeys("opening", OpeningReader.KEYS);
        assertKeys("penetration", PenetrationReader.KEYS);
        assertKeys("material", MaterialForm.KEYS);
        assertKeys("piece", PieceReader.KEYS);
        assertKeys("shape", PieceReader.SHAPE_KEYS);
        assertKeys("cut", CutReader.KEYS);
        assertKeys("abutting", GroundReader.ABUTTING_KEYS);
        assertKeys("expectation", ElevationReader.EXPECT_KEYS);
    }

    private static void assertKeys(String object, List<String> known) {
        assertEquals(new TreeSet<>(known), keys(SCHEMA.json().at("/$defs/" + object)), object);
    }

    private static Set<String> keys(JsonNode object) {
        Set<String> out = new TreeSet<>();
        object.get("properties").fieldNames().forEachRemaining(out::add);
        return out;
    }

    @Test
    void wordsAreTheSame() {
        assertEquals(Set.copyOf(Practices.ids()), words("/properties/practice/enum"));
        assertEquals(Set.copyOf(OutlineReader.ROLES), words("/$defs/role/enum"));
        assertEquals(Set.copyOf(GroundReader.COVERS), words("/$defs/wall/properties/ground_is/enum"));
        assertEquals(Set.copyOf(GroundReader.KINDS), words("/$defs/abutting/properties/is/enum"));
        assertEquals(Set.copyOf(OpeningReader.KINDS), words("/$defs/opening/properties/kind/enum"));
        assertEquals(Set.copyOf(MaterialForm.KINDS), words("/$defs/material/properties/is/enum"));
        assertEquals(Set.copyOf(Substance.words()), words("/$defs/material/properties/substance/enum"));
        assertEquals(Set.copyOf(CutReader.PATTERNS), words("/$defs/cut/properties/pattern/enum"));
    }

    private static Set<String> words(String pointer) {
        Set<String> out = new TreeSet<>();
        SCHEMA.json().at(pointer).forEach(n -> out.add(n.asText()));
        return Set.copyOf(out);
    }

    @Test
    void everyKeyIsDescribed() {
        List<String> bare = new ArrayList<>();
        SCHEMA.json().get("$defs").fields().forEachRemaining(def -> undescribed(def.getKey(), def.getValue(), bare));
        undescribed("", SCHEMA.json(), bare);
        assertEquals(List.of(), bare);
    }

    private static void undescribed(String owner, JsonNode object, List<String> into) {
        object.path("properties").fields().forEachRemaining(p -> {
            JsonNode said = p.getValue().has("description") ? p.getValue()
                    : SCHEMA.json().at(p.getValue().path("$ref").asText().replace("#", ""));
            if (said.path("description").asText().isBlank()) {
                into.add(owner + "." + p.getKey());
            }
        });
    }

    /** On both sides of each limit reader and schema must agree; {@code #} stands for the number. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            exposure    | {"wind_m_s": #}                                     | 0      | -0.01 | 120     | 120.01
            exposure    | {"pressure_pa": #}                                  | 0      | -1    | 10000   | 10001
            exposure    | {"rain_mm_h": #}                                    | 0      | -1    | 2000    | 2001
            exposure    | {"towing_km_h": #}                                  | 0      | -1    | 200     | 201
            exposure    | {"temperature_c": [#, 200]}                         | -100   | -101  | 199     | 201
            exposure    | {"sun_days": #}                                     | 0      | -1    | 3650    | 3651
            opening     | {"id": "W9", "kind": "vent", "rect": [50, 50, 50, 50], "reveal": #} | 0 | -1 | 10000 | 10001
            opening     | {"id": "W9", "kind": "vent", "rect": [50, 50, 50, 50], "reveal": 1, "head-flashing": "none", "eave_overhang": 600, "eave_above": #} | 0 | -1 | 10000 | 10001
            material    | {"id": "x", "is": "membrane", "roll_width": #}      | 0.01   | 0     | 100000  | 100001
            material    | {"id": "x", "is": "membrane", "roll_length_m": #}   | 0.01   | 0     | 10000   | 10001
            material    | {"id": "x", "is": "tape", "width": #}               | 0.01   | 0     | 100000  | 100001
            material    | {"id": "x", "is": "cladding", "cover_width": #}     | 0.01   | 0     | 100000  | 100001
            material    | {"id": "x", "is": "cladding", "side_lap": #}        | 0.01   | 0     | 100000  | 100001
            material    | {"id": "x", "is": "tape", "uv_days": #}             | 0.5    | 0     | 36500   | 36501
            material    | {"id": "x", "is": "tape", "service_c": [#, 2000]}   | -273   | -274  | 1999    | 2001
            material    | {"id": "x", "is": "flashing", "depth": #}           | 0      | -1    | 10000   | 10001
            material    | {"id": "x", "is": "flashing", "fall_deg": #}        | -89    | -90   | 89      | 90
            piece       | {"id": "x", "material": "head-flashing", "rect": [0, 0, 9, 9], "upstand": #} | 0 | -1 | 10000 | 10001
            piece       | {"id": "x", "material": "head-flashing", "rect": [0, 0, 9, 9], "end_dam": #} | 0 | -1 | 10000 | 10001
            piece       | {"id": "x", "material": "head-flashing", "rect": [0, 0, 9, 9], "drip": #} | 0 | -1 | 10000 | 10001
            piece       | {"id": "x", "material": "head-flashing", "rect": [0, 0, 9, 9], "hem": #} | 0 | -1 | 10000 | 10001
            piece       | {"id": "x", "material": "head-flashing", "rect": [0, 0, 9, 9], "turn_down": #} | 0 | -1 | 10000 | 10001
            piece       | {"id": "x", "material": "foil-tape-60", "rect": [#, 0, 9, 9]} | -10000000 | -10000001 | 9999991 | 10000001
            piece       | {"id": "x", "material": "foil-tape-60", "rect": [-10000000, 0, #, 9]} | 0.01 | 0 | 20000000 | 20000001
            piece       | {"id": "x", "material": "foil-tape-60", "circle": [0, 0, #]} | 0.02 | 0 | 10000000 | 20000001
            piece       | {"id": "x", "material": "foil-tape-60", "line": [[0, 0], [9, 0]], "width": #} | 0.01 | 0 | 100000 | 100001
            piece       | {"id": "x", "material": "foil-membrane", "rect": [1100, 800, 500, 500], "cuts": [{"at": "W1", "pattern": "i", "return": #}]} | 0 | -1 | 10000 | 10001
            """)
    void limitsAreTheSame(String list, String object, String low, String under, String high, String over) throws IOException {
        for (String inside : List.of(low, high)) {
            String json = with(list, object.replace("#", inside));
            assertEquals(List.of(), ElevationFileTest.read(json).problems(), inside);
            assertEquals(List.of(), SCHEMA.complaints(json.getBytes(StandardCharsets.UTF_8)), inside);
        }
        for (String outside : List.of(under, over)) {
            String json = with(list, object.replace("#", outside));
            assertEquals(1, ElevationFileTest.read(json).problems().size(), outside);
            assertEquals(1, Math.min(1, SCHEMA.complaints(json.getBytes(StandardCharsets.UTF_8)).size()), outside);
        }
    }

    private static String with(String list, String object) {
        String hut = ElevationFileTest.HUT;
        return switch (list) {
            case "exposure" -> hut.replace("{ \"wind_m_s\": 26, \"rain_mm_h\": 75 }", object);
            case "opening" -> hut.replace("\"openings\": [", "\"openings\": [ " + object + ", ");
            case "material" -> hut.replace("\"materials\": [", "\"materials\": [ " + object + ", ");
            default -> hut.replace("\"pieces\": [", "\"pieces\": [ " + object + ", ");
        };
    }
}
