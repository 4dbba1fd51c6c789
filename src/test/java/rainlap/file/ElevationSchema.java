package rainlap.file;

import com.fasterxml.jackson.core.json.JsonReadFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.List;

/** A shipped schema under an independent validator, which is handed trees read with comments and trailing commas. */
final class ElevationSchema {
    static final JsonMapper LENIENT = JsonMapper.builder()
            .enable(JsonReadFeature.ALLOW_JAVA_COMMENTS, JsonReadFeature.ALLOW_TRAILING_COMMA).build();

    private final JsonNode json;
    private final Schema schema;

    private ElevationSchema(JsonNode json) {
        this.json = json;
        this.schema = SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12).getSchema(json);
    }

    static ElevationSchema named(String name) {
        try (InputStream in = ElevationSchema.class.getResourceAsStream("/schema/" + name)) {
            return new ElevationSchema(LENIENT.readTree(in));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    JsonNode json() {
        return json;
    }

    /** What the validator says against a document. */
    List<String> complaints(JsonNode document) {
        return schema.validate(document).stream().map(Object::toString).toList();
    }

    List<String> complaints(byte[] document) throws IOException {
        return complaints(LENIENT.readTree(document));
    }
}
