package rainlap.file;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import rainlap.material.Bond;
import rainlap.material.Catalogue;
import rainlap.material.Durability;
import rainlap.material.Edge;
import rainlap.material.EndDams;
import rainlap.material.Material;
import rainlap.material.MaterialKind;
import rainlap.material.Profile;
import rainlap.material.Sizes;
import rainlap.material.Substance;
import rainlap.material.TemperatureRange;

/** Reads {@code materials}, and the keys of a material that a piece may carry. */
final class MaterialForm {
    static final List<String> PROFILE_KEYS = List.of("depth", "fall_deg", "upstand", "end_dams", "end_dam", "drip", "hem", "turn_down");
    static final List<String> KEYS = Stream.concat(Stream.of("id", "is", "name", "roll_width", "roll_length_m", "width",
            "cover_width", "side_lap", "metal", "substance", "uv_days", "service_c", "mesh", "rots", "bond"), PROFILE_KEYS.stream()).toList();
    static final List<String> KINDS = Stream.of(MaterialKind.values()).map(MaterialKind::word).toList();
    private static final List<String> DAMS = Stream.of(EndDams.values()).map(EndDams::word).toList();
    private static final List<String> EDGES = Stream.of(Edge.values()).map(Edge::word).toList();
    private static final Range WIDTH = Range.above(0, 100_000);
    private static final Range SERVICE = Range.between(-273, 2_000);

    private MaterialForm() {}

    /** The materials of the file; built-in ids are taken. */
    static Ids<Material> read(List<Value> values, Problems problems) {
        Ids<Material> ids = new Ids<>("material");
        for (int i = 0; i < values.size(); i++) {
            Fields.of(values.get(i), ids.label(values.get(i), i + 1), KEYS, problems)
                    .ifPresent(f -> material(f, ids).ifPresent(m -> ids.put(m.id(), m)));
        }
        return ids;
    }

    private static Optional<Material> material(Fields f, Ids<Material> ids) {
        Optional<String> id = ids.claim(f);
        if (id.isPresent() && Catalogue.builtIn().find(id.get()).isPresent()) {
            f.wrong(f.find("id").orElseThrow().at(), "the built-in catalogue has a material of this id",
                    "use that one, or give yours another id, such as " + Quoted.text("our-" + id.get()));
        }
        Optional<MaterialKind> kind = f.required("is", "\"membrane\"").flatMap(v -> f.word(v, "is", MaterialKind::find, KINDS));
        Optional<String> name = f.text("name");
        Sizes sizes = new Sizes(f.number("roll_width", WIDTH), f.number("roll_length_m", Range.above(0, 10_000)),
                f.number("width", WIDTH), f.number("cover_width", WIDTH), f.number("side_lap", WIDTH));
        Profile profile = profile(f);
        Durability durability = new Durability(f.text("metal"), f.word("substance", Substance::find, Substance.words()), f.number("uv_days", Range.above(0, 36_500)),
                f.find("service_c").flatMap(v -> service(f, v)), f.flag("mesh"), f.flag("rots"));
        Optional<Bond> bond = f.find("bond").flatMap(v -> bond(f, v));
        return id.isEmpty() || kind.isEmpty() ? Optional.empty() : Optional.of(new Material(id.get(), kind.get(),
                name.orElse(id.get()), sizes, profile, durability, bond.orElse(kind.get().defaultBond()), Map.of()));
    }

    static Profile profile(Fields f) {
        OptionalDouble depth = f.number("depth", Range.DEPTH), fall = f.number("fall_deg", Range.ANGLE),
                upstand = f.number("upstand", Range.DEPTH);
        Optional<EndDams> dams = f.word("end_dams", EndDams::find, DAMS);
        return new Profile(depth, fall, upstand, dams, f.number("end_dam", Range.DEPTH), f.number("drip", Range.DEPTH),
                f.number("hem", Range.DEPTH), f.number("turn_down", Range.DEPTH));
    }

    private static Optional<TemperatureRange> service(Fields f, Value v) {
        Optional<double[]> n = f.numbers(v, "service_c", "[lowest, highest]", SERVICE, SERVICE);
        if (n.isPresent() && n.get()[0] >= n.get()[1]) {
            f.wrong(v.at(), "\"service_c\" must run from the lowest to the highest", "write [lowest, highest]");
            return Optional.empty();
        }
        return n.map(d -> new TemperatureRange(d[0], d[1]));
    }

    static Optional<Bond> bond(Fields f, Value v) {
        if (!(v instanceof Value.Items list)) {
            return f.word(v, "bond", w -> switch (w) {
                case "full" -> Optional.of(Bond.FULL);
                case "loose" -> Optional.of(Bond.LOOSE);
                default -> Optional.empty();
            }, List.of("full", "loose", "or a list of sealed edges"));
        }
        if (list.items().isEmpty()) {
            f.wrong(v.at(), "\"bond\" lists no edge", "write \"loose\", or the sealed edges: [\"top\", \"left\"]");
            return Optional.empty();
        }
        List<Edge> edges = Fields.each(f.list(v, "bond", 4), e -> f.word(e, "bond", Edge::find, EDGES));
        if (edges.size() == list.items().size() && edges.stream().distinct().count() < edges.size()) {
            f.wrong(v.at(), "\"bond\" names an edge twice", "name it once");
        }
        return edges.isEmpty() ? Optional.empty() : Optional.of(Bond.sealedAt(edges));
    }
}
