package rainlap.file;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Good files damaged at random: whatever comes of it, it is an elevation or problems with a place, and the same every time. */
class RandomDamageTest {
    private static final ElevationSchema SCHEMA = ElevationSchema.named("elevation.schema.json");
    private static final Path GOOD = Path.of("src/test/resources/cases/good/everything.json");

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4})
    void damagedBytesGiveProblemsNeverExceptions(long seed) throws IOException {
        byte[] good = Files.readAllBytes(GOOD);
        Random random = new Random(seed);
        for (int round = 0; round < 500; round++) {
            byte[] bad = damaged(good, random);
            String about = "seed " + seed + ", round " + round + ":\n" + new String(bad, StandardCharsets.UTF_8);
            assertSane(bad, about);
        }
    }

    private static byte[] damaged(byte[] good, Random random) {
        byte[] b = good.clone();
        for (int n = 1 + random.nextInt(3); n > 0; n--) {
            int at = random.nextInt(b.length), length = 1 + random.nextInt(random.nextInt(10) == 0 ? 200 : 3);
            b = switch (random.nextInt(5)) {
                case 0 -> join(b, at, new byte[0], Math.min(b.length, at + length));
                case 1 -> join(b, at, token(random), at);
                case 2 -> join(b, at, token(random), Math.min(b.length, at + length));
                case 3 -> join(b, at, new byte[] {(byte) random.nextInt(256)}, at + 1);
                default -> random.nextInt(20) == 0 ? java.util.Arrays.copyOf(b, at + 1)
                        : join(b, at, java.util.Arrays.copyOfRange(good, Math.min(at, good.length), Math.min(good.length, at + length)), at);
            };
        }
        return b;
    }

    private static byte[] token(Random random) {
        String[] tokens = {"{", "}", "[", "]", ",", ":", "\"", "\\", "\\u12", "/", "//", "/*", "*/", "null", "true", "NaN", "-Infinity", "1e400",
            "-", "0.", "01", "\"under\"", "\"id\": \"M1\",", "\n", "\r", "\t", "\u0000", "\uFEFF", "艇", "'", "#", "[[0,0],[1,1]]", "99999999999"};
        return tokens[random.nextInt(tokens.length)].getBytes(StandardCharsets.UTF_8);
    }

    private static byte[] join(byte[] b, int to, byte[] middle, int from) {
        byte[] out = new byte[to + middle.length + b.length - from];
        System.arraycopy(b, 0, out, 0, to);
        System.arraycopy(middle, 0, out, to, middle.length);
        System.arraycopy(b, from, out, to + middle.length, b.length - from);
        return out;
    }

    private static void assertSane(byte[] bytes, String about) {
        Reading reading = ElevationFile.read("x.json", bytes);
        assertEquals(reading.elevation().isEmpty(), !reading.problems().isEmpty(), about);
        for (Problem p : reading.problems()) {
            assertTrue(p.place().isPresent() && p.line() >= 1 && p.column() >= 1, about);
            assertEquals(3, p.lines().size(), about);
            String all = String.join(" ", p.lines().get(0), p.hint());
            assertFalse(all.contains("Exception") || all.contains("jackson") || all.contains("java.") || all.contains("null,"), () -> all + "\n" + about);
            assertFalse(p.what().equals("this cannot be read as JSON"), () -> "a fault without a name: " + p.lines() + "\n" + about);
        }
        assertEquals(reading.problems(), ElevationFile.read("x.json", bytes).problems(), about);
    }

    /** The reader may be stricter than the schema (it sees geometry and references), never laxer. */
    @ParameterizedTest
    @ValueSource(longs = {11, 12, 13})
    void whateverTheReaderAcceptsTheSchemaAccepts(long seed) throws IOException {
        Random random = new Random(seed);
        int accepted = 0;
        for (int round = 0; round < 250; round++) {
            JsonNode tree = ElevationSchema.LENIENT.readTree(Files.readAllBytes(GOOD));
            String done = change(tree, random);
            byte[] json = ElevationSchema.LENIENT.writeValueAsBytes(tree);
            String about = "seed " + seed + ", round " + round + ": " + done;
            assertSane(json, about);
            if (ElevationFile.read("x.json", json).elevation().isPresent()) {
                accepted++;
                assertEquals(List.of(), SCHEMA.complaints(tree), about);
            }
        }
        assertTrue(accepted > 10, "some changes are harmless, else this test says nothing: " + accepted);
    }

    private static String change(JsonNode tree, Random random) throws IOException {
        List<JsonNode> containers = new ArrayList<>();
        collect(tree, containers);
        JsonNode at = containers.get(random.nextInt(containers.size()));
        String[] values = {"0", "-1", "12.5", "1e9", "\"\"", "\" \"", "\"none\"", "\"left\"", "\"x\"", "\"W1.sill\"", "true", "null", "[]", "{}", "[0, 0]",
            "[[0, 0], [9, 0], [9, 9]]", "[1, 2, 3]", "[1, 2, 3, 4]", "\"a\\u0007\"", "[\"top\"]", "\"full\"", "200", "90", "0.5"};
        JsonNode value = ElevationSchema.LENIENT.readTree(values[random.nextInt(values.length)]);
        if (at instanceof ObjectNode object) {
            List<String> names = new ArrayList<>();
            object.fieldNames().forEachRemaining(names::add);
            String[] others = {"on", "width", "under", "bond", "holes", "reveal", "reason", "drip", "return", "name", "colour", "neighbour", "metal"};
            String name = names.isEmpty() || random.nextInt(3) == 0 ? others[random.nextInt(others.length)] : names.get(random.nextInt(names.size()));
            if (random.nextInt(3) == 0) {
                object.remove(name);
                return "removed " + name + " from " + object;
            }
            object.set(name, value);
            return "set " + name + " in " + object;
        }
        ArrayNode list = (ArrayNode) at;
        if (list.size() > 0 && random.nextBoolean()) {
            list.remove(random.nextInt(list.size()));
        } else {
            list.insert(random.nextInt(list.size() + 1), value);
        }
        return "changed " + list;
    }

    private static void collect(JsonNode node, List<JsonNode> into) {
        if (node.isContainerNode()) {
            into.add(node);
            node.forEach(child -> collect(child, into));
        }
    }
}
