package rainlap.material;

import com.fasterxml.jackson.annotation.JsonProperty;
import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import rainlap.source.Known;
import rainlap.source.Source;

/**
 * One material of a catalogue file, key by key as elevation files spell them. {@code from} gives the source of every number:
 * the words of common practice or of memory alone, or an object where there is a document.
 */
record MaterialEntry(
        String id,
        String is,
        String name,
        @JsonProperty("roll_width") Double rollWidth,
        @JsonProperty("roll_length_m") Double rollLengthM,
        Double width,
        @JsonProperty("cover_width") Double coverWidth,
        @JsonProperty("side_lap") Double sideLap,
        Double depth,
        @JsonProperty("fall_deg") Double fallDeg,
        Double upstand,
        @JsonProperty("end_dams") String endDams,
        @JsonProperty("end_dam") Double endDam,
        Double drip,
        Double hem,
        @JsonProperty("turn_down") Double turnDown,
        String metal,
        String substance,
        @JsonProperty("uv_days") Double uvDays,
        @JsonProperty("service_c") List<Double> serviceC,
        Boolean mesh,
        Boolean rots,
        JsonNode bond,
        Map<String, JsonNode> from) {

    private static final Set<String> SOURCE_KEYS = Set.of("document", "edition", "clause", "known");

    Material toMaterial(MaterialKind kind) {
        if (id == null || !kind.word().equals(is)) {
            throw new IllegalArgumentException(id + " stands in the file of the kind " + kind.word() + " but is a " + is);
        }
        Map<String, Source> origins = origins();
        if (!origins.keySet().equals(numbers())) {
            throw new IllegalArgumentException(id + " has the numbers " + numbers() + " but sources for " + origins.keySet());
        }
        return new Material(id, kind, name == null ? "" : name, sizes(), profile(), durability(), bond(kind), origins);
    }

    private Sizes sizes() {
        return new Sizes(number(rollWidth), number(rollLengthM), number(width), number(coverWidth), number(sideLap));
    }

    private Profile profile() {
        Optional<EndDams> dams = Optional.ofNullable(endDams)
                .map(word -> EndDams.find(word).orElseThrow(() -> wrong("end_dams", word)));
        return new Profile(number(depth), number(fallDeg), number(upstand), dams, number(endDam), number(drip), number(hem),
                number(turnDown));
    }

    private Durability durability() {
        return new Durability(
                Optional.ofNullable(metal), madeOf(), number(uvDays), service(), Optional.ofNullable(mesh), Optional.ofNullable(rots));
    }

    private Optional<Substance> madeOf() {
        return Optional.ofNullable(substance).map(word -> Substance.find(word).orElseThrow(() -> wrong("substance", word)));
    }

    private Optional<TemperatureRange> service() {
        if (serviceC == null) {
            return Optional.empty();
        }
        if (serviceC.size() != 2 || serviceC.contains(null)) {
            throw wrong("service_c", serviceC.toString());
        }
        return Optional.of(new TemperatureRange(serviceC.get(0), serviceC.get(1)));
    }

    private Bond bond(MaterialKind kind) {
        if (bond == null) {
            return kind.defaultBond();
        }
        if (bond.isTextual()) {
            return switch (bond.textValue()) {
                case "full" -> Bond.FULL;
                case "loose" -> Bond.LOOSE;
                default -> throw wrong("bond", bond.toString());
            };
        }
        if (!bond.isArray()) {
            throw wrong("bond", bond.toString());
        }
        List<Edge> edges = new ArrayList<>();
        for (JsonNode edge : bond) {
            edges.add(Edge.find(edge.asText()).orElseThrow(() -> wrong("bond", bond.toString())));
        }
        if (edges.isEmpty()) {
            throw wrong("bond", bond.toString());
        }
        return Bond.sealedAt(edges);
    }

    /** The keys of this entry that hold a number, sorted: each needs a source. */
    private Set<String> numbers() {
        Map<String, Object> all = new TreeMap<>();
        putIfGiven(all, "roll_width", rollWidth);
        putIfGiven(all, "roll_length_m", rollLengthM);
        putIfGiven(all, "width", width);
        putIfGiven(all, "cover_width", coverWidth);
        putIfGiven(all, "side_lap", sideLap);
        putIfGiven(all, "depth", depth);
        putIfGiven(all, "fall_deg", fallDeg);
        putIfGiven(all, "upstand", upstand);
        putIfGiven(all, "end_dam", endDam);
        putIfGiven(all, "drip", drip);
        putIfGiven(all, "hem", hem);
        putIfGiven(all, "turn_down", turnDown);
        putIfGiven(all, "uv_days", uvDays);
        putIfGiven(all, "service_c", serviceC);
        return new TreeSet<>(all.keySet());
    }

    private static void putIfGiven(Map<String, Object> all, String key, Object value) {
        if (value != null) {
            all.put(key, value);
        }
    }

    private Map<String, Source> origins() {
        Map<String, Source> origins = new TreeMap<>();
        if (from != null) {
            from.forEach((key, node) -> origins.put(key, origin(key, node)));
        }
        return origins;
    }

    private Source origin(String key, JsonNode node) {
        if (node.isTextual()) {
            Known known = Known.find(node.textValue()).orElseThrow(() -> wrong("from." + key, node.toString()));
            return switch (known) {
                case COMMON_PRACTICE -> Source.commonPractice();
                case FROM_MEMORY -> new Source("Trade data", "", "", Known.FROM_MEMORY);
                case PUBLISHED, PUBLISHED_SECONDARY, DERIVED -> throw wrong("from." + key, "no document");
            };
        }
        Iterable<String> names = node::fieldNames;
        names.forEach(name -> {
            if (!SOURCE_KEYS.contains(name)) {
                throw wrong("from." + key, name);
            }
        });
        Known known = Known.find(node.path("known").asText()).orElseThrow(() -> wrong("from." + key, "known"));
        return new Source(node.path("document").asText(), node.path("edition").asText(), node.path("clause").asText(), known);
    }

    private IllegalArgumentException wrong(String key, String value) {
        return new IllegalArgumentException(id + ": " + key + " is not understood: " + value);
    }

    private static OptionalDouble number(Double value) {
        return value == null ? OptionalDouble.empty() : OptionalDouble.of(value);
    }
}
