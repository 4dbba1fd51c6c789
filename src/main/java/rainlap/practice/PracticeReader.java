package rainlap.practice;

import com.fasterxml.jackson.annotation.JsonProperty;
import com.fasterxml.jackson.core.JacksonException;
import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.MapperFeature;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.List;
import rainlap.source.Known;
import rainlap.source.Source;

/** Reads {@code /practices/<id>.json}. The files are our own: any fault in one is ours and stops the program. */
final class PracticeReader {
    private static final JsonMapper MAPPER = JsonMapper.builder()
            .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
            .enable(DeserializationFeature.FAIL_ON_UNKNOWN_PROPERTIES, DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
            .disable(MapperFeature.ALLOW_COERCION_OF_SCALARS)
            .build();

    private PracticeReader() {}

    /** A whole file. */
    private record Sheet(String practice, String title, String about, List<String> facts, List<Entry> limits) {}

    /** One limit of a file. Either {@code value} with {@code unit}, or {@code never}. */
    private record Entry(
            String limit,
            Double value,
            String unit,
            Boolean never,
            Boolean strict,
            @JsonProperty("or_taped") Boolean orTaped,
            String document,
            String edition,
            String clause,
            String known,
            String note) {}

    static Practice readCommon(String id) {
        return common(id, bytes(id));
    }

    static Practice read(String id, Practice fallback) {
        return withFallback(id, bytes(id), fallback);
    }

    /** @throws IllegalArgumentException if the bytes are not a complete practice of this id */
    static Practice common(String id, byte[] json) {
        Sheet sheet = sheet(id, json);
        return Practice.complete(text(sheet), values(sheet));
    }

    /** @throws IllegalArgumentException if the bytes are not a practice of this id */
    static Practice withFallback(String id, byte[] json, Practice fallback) {
        Sheet sheet = sheet(id, json);
        return Practice.of(text(sheet), values(sheet), fallback);
    }

    private static byte[] bytes(String id) {
        String name = "/practices/" + id + ".json";
        try (InputStream in = PracticeReader.class.getResourceAsStream(name)) {
            if (in == null) {
                throw new IllegalStateException(name + " is missing from the product");
            }
            return in.readAllBytes();
        } catch (IOException e) {
            throw new IllegalStateException(name + " cannot be read", e);
        }
    }

    private static Sheet sheet(String id, byte[] json) {
        Sheet sheet;
        try {
            sheet = MAPPER.readValue(json, Sheet.class);
        } catch (JacksonException e) {
            throw new IllegalArgumentException(id + ".json: " + e.getOriginalMessage(), e);
        } catch (IOException e) {
            throw new IllegalArgumentException(id + ".json cannot be read", e);
        }
        if (!id.equals(sheet.practice())) {
            throw new IllegalArgumentException(id + ".json holds the practice " + sheet.practice());
        }
        return sheet;
    }

    private static Practice.Text text(Sheet sheet) {
        List<String> facts = sheet.facts() == null ? List.of() : sheet.facts();
        return new Practice.Text(sheet.practice(), orEmpty(sheet.title()), orEmpty(sheet.about()), facts);
    }

    private static List<LimitValue> values(Sheet sheet) {
        if (sheet.limits() == null) {
            throw new IllegalArgumentException(sheet.practice() + " has no list of limits");
        }
        List<LimitValue> values = new ArrayList<>();
        for (Entry entry : sheet.limits()) {
            values.add(value(entry, sheet.practice()));
        }
        return values;
    }

    private static LimitValue value(Entry entry, String practice) {
        Limit limit = Limit.find(orEmpty(entry.limit()))
                .orElseThrow(() -> new IllegalArgumentException(practice + ": there is no limit called " + entry.limit()));
        return new LimitValue(
                limit,
                number(entry, limit),
                Boolean.TRUE.equals(entry.orTaped()),
                source(entry, limit),
                practice,
                orEmpty(entry.note()),
                Boolean.TRUE.equals(entry.strict()));
    }

    private static double number(Entry entry, Limit limit) {
        if (Boolean.TRUE.equals(entry.never())) {
            if (entry.value() != null) {
                throw new IllegalArgumentException(limit.id() + " has a value and is never enough: only one can be true");
            }
            return Double.POSITIVE_INFINITY;
        }
        if (entry.value() == null || !Double.isFinite(entry.value())) {
            throw new IllegalArgumentException(limit.id() + " needs a value, or never");
        }
        if (!limit.unit().equals(entry.unit())) {
            throw new IllegalArgumentException(limit.id() + " is given in " + limit.unit() + ", not in " + entry.unit());
        }
        return entry.value();
    }

    private static Source source(Entry entry, Limit limit) {
        Known known = Known.find(orEmpty(entry.known()))
                .orElseThrow(() -> new IllegalArgumentException(limit.id() + " must say how well it is known"));
        if (known == Known.COMMON_PRACTICE) {
            if (entry.document() != null || entry.edition() != null || entry.clause() != null) {
                throw new IllegalArgumentException(limit.id() + " is common practice: it has no document, edition or clause");
            }
            return Source.commonPractice();
        }
        return new Source(orEmpty(entry.document()), orEmpty(entry.edition()), orEmpty(entry.clause()), known);
    }

    private static String orEmpty(String text) {
        return text == null ? "" : text;
    }
}
