package rainlap.file;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.StreamReadConstraints;
import com.fasterxml.jackson.core.json.JsonReadFeature;
import java.io.IOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * One streaming pass from bytes to a tree that knows the place of every value and key. Comments and trailing commas are
 * accepted; NaN and the like are read as numbers and refused where they are used, so that reading goes on.
 */
final class TreeReader {
    private static final JsonFactory JSON = JsonFactory.builder()
            .enable(JsonReadFeature.ALLOW_JAVA_COMMENTS, JsonReadFeature.ALLOW_TRAILING_COMMA,
                    JsonReadFeature.ALLOW_NON_NUMERIC_NUMBERS)
            .streamReadConstraints(StreamReadConstraints.builder().maxStringLength(Integer.MAX_VALUE)
                    .maxNameLength(Integer.MAX_VALUE).maxNestingDepth(1000).maxNumberLength(1000).build())
            .build();
    private static final int FEW = 16;

    private final SourceText source;
    private final Problems problems;
    private int values;

    private TreeReader(SourceText source, Problems problems) {
        this.source = source;
        this.problems = problems;
    }

    /** The tree, or empty where the text is not JSON or leaves a limit; then a problem says where. */
    static Optional<Value> read(SourceText source, Problems problems) {
        TreeReader reader = new TreeReader(source, problems);
        byte[] b = source.bytes();
        try (JsonParser p = JSON.createParser(b, source.start(), b.length - source.start())) {
            if (p.nextToken() == null) {
                problems.add(source.start(), "the file is empty", "an elevation file begins with { \"rainlap\": 1, …");
                return Optional.empty();
            }
            Value root = reader.value(p, 1);
            reader.refuseMore(p);
            return Optional.of(root);
        } catch (BeyondLimit e) {
            return Optional.empty();
        } catch (IOException e) {
            reader.noteFault();
            return Optional.empty();
        }
    }

    private void noteFault() {
        SyntaxFault fault = SyntaxFault.find(source.bytes(), source.start());
        problems.add(fault.at(), fault.what(), fault.hint());
    }

    /** Reading cannot go on; the problem has been noted. */
    private static final class BeyondLimit extends RuntimeException {
        private static final long serialVersionUID = 1;

        BeyondLimit() {
            super(null, null, false, false);
        }
    }

    /** What follows the end does not keep the rest from being read. */
    private void refuseMore(JsonParser p) {
        try {
            if (p.nextToken() != null) {
                problems.add(at(p), "the file goes on after its end", "one file holds one elevation, in one pair of { }");
            }
        } catch (IOException e) {
            noteFault();
        }
    }

    private int at(JsonParser p) {
        return source.start() + (int) p.currentTokenLocation().getByteOffset();
    }

    private Value value(JsonParser p, int depth) throws IOException {
        int at = at(p);
        keepWithin(at, depth);
        JsonToken token = p.currentToken();
        return switch (token) {
            case START_OBJECT -> new Value.Keys(at, members(p, depth));
            case START_ARRAY -> new Value.Items(at, items(p, depth));
            case VALUE_STRING -> new Value.Text(at, p.getText());
            case VALUE_NUMBER_INT, VALUE_NUMBER_FLOAT -> new Value.Num(at, p.getDoubleValue());
            case VALUE_TRUE -> new Value.Flag(at, true);
            case VALUE_FALSE -> new Value.Flag(at, false);
            case VALUE_NULL -> new Value.Nothing(at);
            default -> throw new IllegalStateException("a value cannot begin with " + token);
        };
    }

    private void keepWithin(int at, int depth) {
        Limits limits = problems.limits();
        if (depth > limits.depth()) {
            problems.add(at, "objects and lists stand more than " + limits.depth() + " deep inside one another",
                    "an elevation file needs 8; a bracket is probably missing before this place");
            throw new BeyondLimit();
        }
        if (++values > limits.values()) {
            problems.add(at, "the file holds more than " + limits.values() + " values", "split the wall into several elevations");
            throw new BeyondLimit();
        }
    }

    private List<Value> items(JsonParser p, int depth) throws IOException {
        List<Value> items = new ArrayList<>(4);
        while (p.nextToken() != JsonToken.END_ARRAY) {
            items.add(value(p, depth + 1));
        }
        return items;
    }

    private List<Value.Member> members(JsonParser p, int depth) throws IOException {
        List<Value.Member> members = new ArrayList<>(6);
        Map<String, Integer> many = new HashMap<>();
        while (p.nextToken() != JsonToken.END_OBJECT) {
            int at = at(p);
            String name = p.currentName();
            p.nextToken();
            Value value = value(p, depth + 1);
            int first = members.size() < FEW ? search(members, name) : many.getOrDefault(name, -1);
            if (first >= 0) {
                problems.add(at, "the key " + Quoted.text(name) + " stands twice in one object",
                        "keep one of them; the other is on " + problems.line(first));
                continue;
            }
            members.add(new Value.Member(at, name, value));
            if (members.size() == FEW) {
                members.forEach(m -> many.put(m.name(), m.at()));
            } else if (members.size() > FEW) {
                many.put(name, at);
            }
        }
        return members;
    }

    private static int search(List<Value.Member> members, String name) {
        for (Value.Member m : members) {
            if (m.name().equals(name)) {
                return m.at();
            }
        }
        return -1;
    }
}
