package rainlap.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import rainlap.check.CheckResult;
import rainlap.check.Checker;
import rainlap.check.Rules;
import rainlap.defect.Hole;
import rainlap.defect.Study;
import rainlap.file.ElevationFile;
import rainlap.joint.JointKind;
import rainlap.practice.Practices;
import rainlap.source.Known;
import rainlap.wall.Elevation;
import rainlap.wall.Stage;

/** What is written holds to the schema, and the schema asks for all of what is written. */
class FindingsSchemaTest {
    private static final ObjectMapper JSON = new ObjectMapper();
    private static final JsonNode TEXT = read();
    private static final Schema SCHEMA = SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12).getSchema(TEXT);

    private static JsonNode read() {
        try (InputStream in = FindingsJson.class.getResourceAsStream("/schema/findings.schema.json")) {
            return JSON.readTree(in);
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }

    private static List<String> complaints(JsonNode document) {
        return SCHEMA.validate(document).stream().map(Object::toString).toList();
    }

    private static JsonNode written(CheckResult result) throws IOException {
        return JSON.readTree(FindingsJsonTest.bytes(result));
    }

    @Test void samplesAreValid() throws IOException {
        assertEquals(List.of(), complaints(written(Samples.mixed())));
        assertEquals(List.of(), complaints(written(Samples.sound())));
        assertEquals(List.of(), complaints(written(Samples.rain())));
    }

    /** With holes: everything about them is asked for, and nothing else let in. */
    @Test void holesAreValidAndComplete() throws IOException {
        Elevation e = ElevationFile.read("sample.json", Samples.WALL.getBytes(StandardCharsets.UTF_8)).elevation().orElseThrow();
        for (Stage stage : Stage.values()) {
            CheckResult result = Checker.check(e, stage, Practices.common());
            var out = new ByteArrayOutputStream();
            FindingsJson.write(result, Optional.of(Study.of(result.evidence())), out);
            JsonNode whole = JSON.readTree(out.toByteArray());
            assertEquals(List.of(), complaints(whole));
            String at = "/simulated_defects";
            List<String> open = new ArrayList<>();
            addOpen(open, whole, List.of(at, at + "/source", at + "/pressures/0", at + "/holes/0", at + "/holes/0/results/0", at + "/not_placed/0"));
            assertEquals(List.of(), open);
        }
    }

    @Test void everyExampleOfEveryRuleGivesAValidFile() throws IOException {
        int checked = 0;
        for (var rule : Rules.all()) {
            for (String name : RuleExamples.names(rule.info().id())) {
                Elevation e = ElevationFile.read(name, RuleExamples.bytes(rule.info().id(), name)).elevation().orElseThrow();
                for (Stage stage : Stage.values()) {
                    CheckResult result = Checker.check(e, stage, Practices.find(e.practice().orElse("common")).orElseThrow());
                    assertEquals(List.of(), complaints(written(result)), rule.info().id() + "/" + name);
                    checked++;
                }
            }
        }
        assertFalse(checked == 0 && !Rules.all().isEmpty());
    }

    /** Taking out any one key, or adding one, is refused: the schema leaves nothing open. */
    @Test void everyKeyIsAskedForAndNoOtherIsLetIn() throws IOException {
        List<String> open = new ArrayList<>();
        addOpen(open, written(Samples.rain()), List.of("/rain", "/rain/balance"));
        addOpen(open, written(Samples.mixed()), List.of("", "/joints/0", "/weak_points/0", "/weak_points/0/source", "/unchecked/0", "/failed/0", "/assumptions/0", "/assumptions/0/source", "/reach/0", "/weak_points/0/path/0"));
        assertEquals(List.of(), open);
    }

    private static void addOpen(List<String> open, JsonNode whole, List<String> pointers) {
        for (String pointer : pointers) {
            List<String> names = new ArrayList<>();
            whole.at(pointer).fieldNames().forEachRemaining(names::add);
            for (String name : names) {
                JsonNode without = whole.deepCopy();
                ((ObjectNode) without.at(pointer)).remove(name);
                addIfSilent(open, without, pointer + " without " + name);
            }
            JsonNode with = whole.deepCopy();
            ((ObjectNode) with.at(pointer)).put("surprise", 1);
            addIfSilent(open, with, pointer + " with a surprise");
        }
    }

    private static void addIfSilent(List<String> open, JsonNode document, String what) {
        if (complaints(document).isEmpty()) {
            open.add(what);
        }
    }

    @Test void valuesOfTheWrongKindAreRefused() throws IOException {
        ObjectNode f = (ObjectNode) written(Samples.mixed());
        ((ObjectNode) f.at("/joints/0")).put("kind", "sideways");
        ((ObjectNode) f.at("/joints/1")).set("tape", JSON.createArrayNode().add(1));
        ((ObjectNode) f.at("/weak_points/0")).put("defences", 4).put("where", "POINT (1 1)");
        ((ArrayNode) f.at("/weak_points/1/pieces")).add(7);
        Set<String> places = SCHEMA.validate(f).stream().map(e -> e.getInstanceLocation().toString()).collect(Collectors.toCollection(TreeSet::new));
        assertEquals(new TreeSet<>(Set.of("/joints/0/kind", "/joints/1/tape", "/weak_points/0/defences", "/weak_points/0/where",
                "/weak_points/1/pieces/2")), places);
    }

    @Test void wordsAreThoseOfTheModel() {
        assertEquals(words(Arrays.stream(JointKind.values()).map(JointKind::word)), words("/$defs/joint/properties/kind/enum"));
        assertEquals(words(Arrays.stream(Known.values()).map(Known::text)), words("/$defs/source/properties/known/enum"));
        assertEquals(words(Arrays.stream(Hole.Kind.values()).map(Hole.Kind::word)), words("/$defs/hole-kind/enum"));
        assertEquals(words(Arrays.stream(Stage.values()).map(Stage::word)), words("/properties/stage/enum"));
    }

    private static Set<String> words(Stream<String> words) {
        return words.collect(Collectors.toCollection(TreeSet::new));
    }

    private static Set<String> words(String pointer) {
        Set<String> out = new TreeSet<>();
        TEXT.at(pointer).forEach(n -> out.add(n.asText()));
        return out;
    }
}
