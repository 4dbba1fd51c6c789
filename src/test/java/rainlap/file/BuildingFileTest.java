package rainlap.file;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

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
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class BuildingFileTest {
    private static final ElevationSchema SCHEMA = ElevationSchema.named("building.schema.json");

    @TempDir
    private Path folder;

    @BeforeEach
    void walls() throws IOException {
        wall("a", "\"external-corner\"", "{ \"role\": \"external-corner\", \"neighbour\": \"b.json\" }", "");
        wall("b", "{ \"role\": \"external-corner\", \"neighbour\": \"a.json\" }", "\"external-corner\"", "");
        wall("c", "\"external-corner\"", "\"external-corner\"", "");
        wall("free", "\"free\"", "\"free\"", "");
        wall("inside", "\"internal-corner\"", "\"external-corner\"", "");
        wall("clash", "\"external-corner\"", "\"external-corner\"", "{ \"id\": \"a M1\", \"material\": \"foil-membrane\", \"rect\": [0, 0, 900, 900] }");
        String far = Files.readString(folder.resolve("c.json")).replace("[0, 0], [3000, 0], [3000, 2400], [0, 2400]",
                "[-1e7, 0], [1e7, 0], [1e7, 2400], [-1e7, 2400]");
        Files.writeString(folder.resolve("far.json"), far);
        Files.writeString(folder.resolve("far2.json"), far);
        Files.writeString(folder.resolve("bad.json"), "{ \"rainlap\": 1 }");
    }

    private void wall(String name, String left, String right, String more) throws IOException {
        Files.writeString(folder.resolve(name + ".json"), "{ \"rainlap\": 1, \"wall\": { \"outline\": [[0, 0], [3000, 0], [3000, 2400], [0, 2400]], \"edges\": [\"base\", "
                + right + ", \"eave\", " + left + "] }, \"pieces\": [ { \"id\": \"M1\", \"material\": \"foil-membrane\", \"rect\": [0, 0, 3000, 2400] }"
                + (more.isEmpty() ? "" : ", " + more) + " ] }");
    }

    private static String form(String elevations, boolean closed) {
        return "{ \"rainlap\": 1, \"name\": \"Hut\", \"elevations\": [" + elevations + "], \"closed\": " + closed + " }";
    }

    private static String entry(String name) {
        return "{ \"id\": \"" + name + "\", \"file\": \"" + name + ".json\" }";
    }

    private static String entries(String... names) {
        return String.join(",\n", Stream.of(names).map(BuildingFileTest::entry).toList());
    }

    private BuildingReading read(String text) {
        return BuildingFile.read(folder.resolve("hut.json"), text.getBytes(StandardCharsets.UTF_8));
    }

    private String said(String text) {
        BuildingReading r = read(text);
        assertTrue(r.building().isEmpty());
        return String.join("\n", r.problems().stream().flatMap(p -> p.lines().stream()).toList()).replace(folder.toString() + "/", "");
    }

    @Test void aRingOfThreeIsRead() {
        BuildingReading r = read(form(entries("a", "b", "c"), true));
        assertEquals(List.of(), r.problems());
        assertEquals(List.of("a", "b", "c"), r.building().orElseThrow().walls().stream().map(w -> w.id()).toList());
        assertTrue(r.building().get().closed());
        assertEquals(List.of("a.json", "b.json", "c.json"), r.elevations().stream().map(e -> Path.of(e.file()).getFileName().toString()).toList());
    }

    /** What does not fit is told at its line, with what would be right. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            a         | false | hut.json:1:46: a building joins at least 2 elevations, not 1 | check one elevation by itself
            a,b       | true  | hut.json:2:35: 2 elevations do not close round a plan | write "closed": false
            a,free    | false | hut.json:2:1: "free" has no plumb corner at its left-hand end, where "a" goes on | external-corner or internal-corner
            a,inside  | false | hut.json:2:1: "inside" stands round the right-hand corner of "a", which is an external-corner there and an internal-corner here | give both sides one role
            b,a       | false | hut.json:1:47: "b" names "a.json" as its neighbour on the left, but the building is open there | list the elevations in order
            a,c,b     | false | hut.json:1:47: "a" names "b.json" as its neighbour on the right, but "c" stands there | list the elevations in order round the plan
            a,a       | false | hut.json:2:9: elevation "a": this id is taken | the other is on line 1
            a,clash   | false | hut.json:1:47: "M1" of this elevation is called "a M1" on "clash" | give the elevation another id
            far,far2  | false | hut.json:1:47: "far" and the walls beside it, laid flat, reach further than 20 km from the origin of its drawing | coordinates are in mm
            a,bad     | false | bad.json:1:1: "wall" is missing | -
            a,gone    | false | gone.json: there is no such file | -
            """)
    void whatDoesNotFitIsTold(String names, boolean closed, String what, String hint) {
        String said = said(form(entries(names.split(",")), closed));
        assertTrue(said.contains(what), said);
        assertTrue(hint.equals("-") || said.contains(hint), said);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            "a.json"     | "no th"    | the id of an elevation holds letters, digits, - and _ only
            "/a.json"    | "north"    | starts at the root
            "./b.json"   | "north"    | this file is named twice
            7            | "north"    | "file" must be a text
            "a.json"     | 3          | "id" must be a text
            """)
    void entriesAreRead(String file, String id, String what) {
        String said = said(form(entry("b") + ", { \"id\": " + id + ", \"file\": " + file + " }", false));
        assertTrue(said.contains(what), said);
    }

    @ParameterizedTest
    @ValueSource(strings = {"\"rainlap\": 1", "\"closed\": false", "\"elevations\": ["})
    void unknownAndMissingKeysAreTold(String part) {
        String good = form(entries("a", "b"), false);
        assertEquals(List.of(), read(good).problems());
        assertEquals(List.of(), complaints(good));
        String key = part.substring(1, part.indexOf('"', 1)), other = good.replace("\"" + key + "\"", "\"surprise\"");
        assertTrue(said(other).contains("there is no key \"surprise\" here"), () -> said(other));
        assertTrue(said(other).contains("\"" + key + "\" is missing"), () -> said(other));
        assertFalse(complaints(other).isEmpty());
    }

    private static List<String> complaints(String text) {
        try {
            return SCHEMA.complaints(text.getBytes(StandardCharsets.UTF_8));
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }

    @Test void readerAndSchemaSayTheSame() {
        assertEquals(new TreeSet<>(BuildingReader.KEYS), keys(SCHEMA.json()));
        assertEquals(new TreeSet<>(BuildingReader.ENTRY_KEYS), keys(SCHEMA.json().at("/$defs/elevation")));
        assertEquals(BuildingReader.MOST, SCHEMA.json().at("/properties/elevations/maxItems").asInt());
        assertFalse(complaints(form(entries("a"), false)).isEmpty());
        assertFalse(complaints(form(entries("a", "b"), true)).isEmpty());
        assertFalse(complaints(form(entries("no th", "b"), false)).isEmpty());
        assertEquals(List.of(), complaints(form(entries("a", "b", "c"), true)));
    }

    private static Set<String> keys(JsonNode object) {
        Set<String> out = new TreeSet<>();
        object.get("properties").fieldNames().forEachRemaining(out::add);
        return out;
    }

    @Test void onlyAListOfElevationsIsABuilding() throws IOException {
        Files.writeString(folder.resolve("hut.json"), "// a comment\n" + form(entries("a", "b"), false));
        assertTrue(BuildingFile.isOne(folder.resolve("hut.json")));
        assertFalse(BuildingFile.isOne(folder.resolve("a.json")));
        assertFalse(BuildingFile.isOne(folder.resolve("gone.json")));
        assertFalse(BuildingFile.isOne(folder));
    }

    @Test void shippedBuildingsAreSoundForBoth() throws IOException {
        List<Path> shipped = new ArrayList<>();
        try (Stream<Path> files = Files.list(Path.of("elevations/buildings"))) {
            files.sorted().forEach(shipped::add);
        }
        assertEquals(2, shipped.size());
        for (Path p : shipped) {
            assertTrue(BuildingFile.isOne(p));
            assertEquals(List.of(), BuildingFile.read(p).problems());
            assertEquals(List.of(), SCHEMA.complaints(Files.readAllBytes(p)));
        }
    }

    /** Damaged in any way, it is refused or read, and never fails. */
    @Test void everyCutOffFileIsRefused() {
        String good = form(entries("a", "b"), false);
        for (int i = 0; i < good.length(); i++) {
            assertFalse(read(good.substring(0, i)).problems().isEmpty(), good.substring(0, i));
        }
    }
}
