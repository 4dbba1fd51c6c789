package rainlap.material;

import com.fasterxml.jackson.core.JacksonException;
import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.MapperFeature;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.List;

/** Reads {@code /materials/<kind>.json}. The files are our own: any fault in one is ours and stops the program. */
final class MaterialReader {
    private static final JsonMapper MAPPER = JsonMapper.builder()
            .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
            .enable(DeserializationFeature.FAIL_ON_UNKNOWN_PROPERTIES, DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
            .disable(MapperFeature.ALLOW_COERCION_OF_SCALARS)
            .build();

    private MaterialReader() {}

    /** A whole file. */
    private record Sheet(List<MaterialEntry> materials) {}

    static List<Material> readAll() {
        List<Material> all = new ArrayList<>();
        for (MaterialKind kind : MaterialKind.values()) {
            all.addAll(read(kind, bytes(kind)));
        }
        return all;
    }

    /** @throws IllegalArgumentException if the bytes are not a list of materials of this kind */
    static List<Material> read(MaterialKind kind, byte[] json) {
        String file = kind.word() + ".json";
        try {
            Sheet sheet = MAPPER.readValue(json, Sheet.class);
            if (sheet.materials() == null) {
                throw new IllegalArgumentException(file + " has no list of materials");
            }
            return sheet.materials().stream().map(entry -> entry.toMaterial(kind)).toList();
        } catch (JacksonException e) {
            throw new IllegalArgumentException(file + ": " + e.getOriginalMessage(), e);
        } catch (IOException e) {
            throw new IllegalArgumentException(file + " cannot be read", e);
        }
    }

    private static byte[] bytes(MaterialKind kind) {
        String name = "/materials/" + kind.word() + ".json";
        try (InputStream in = MaterialReader.class.getResourceAsStream(name)) {
            if (in == null) {
                throw new IllegalStateException(name + " is missing from the product");
            }
            return in.readAllBytes();
        } catch (IOException e) {
            throw new IllegalStateException(name + " cannot be read", e);
        }
    }
}
