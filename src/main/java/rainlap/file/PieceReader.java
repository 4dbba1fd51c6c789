package rainlap.file;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import rainlap.material.Bond;
import rainlap.material.Catalogue;
import rainlap.material.Material;
import rainlap.material.MaterialKind;
import rainlap.wall.Cut;
import rainlap.wall.Opening;
import rainlap.wall.Piece;
import rainlap.wall.Shape;
import rainlap.wall.Surface;

/** Reads {@code pieces}, in laying order. */
final class PieceReader {
    static final List<String> KEYS = Stream.of(List.of("id", "material"), ShapeReader.KEYS,
            List.of("on", "shapes", "under", "bond", "cuts"), MaterialForm.PROFILE_KEYS).flatMap(List::stream).toList();
    static final List<String> SHAPE_KEYS = Stream.concat(ShapeReader.KEYS.stream(), Stream.of("on")).toList();
    private static final Set<MaterialKind> PROFILED = Set.of(MaterialKind.FLASHING, MaterialKind.BATTEN, MaterialKind.TRIM);

    private final Problems problems;
    private final Ids<Material> own;
    private final SurfaceReader surfaces;
    private final CutReader cuts;
    private final Ids<Piece> ids = new Ids<>("piece");
    private final Set<String> allIds = new HashSet<>();

    PieceReader(Problems problems, Ids<Material> own, Ids<Opening> openings) {
        this.problems = problems;
        this.own = own;
        this.surfaces = new SurfaceReader(openings);
        this.cuts = new CutReader(openings);
    }

    /** The pieces that are sound. */
    List<Piece> read(List<Value> values) {
        values.forEach(this::noteId);
        List<Piece> out = new ArrayList<>(values.size());
        for (int i = 0; i < values.size(); i++) {
            Fields.of(values.get(i), ids.label(values.get(i), i + 1), KEYS, problems).flatMap(this::piece).ifPresent(out::add);
        }
        return out;
    }

    Ids<Piece> ids() {
        return ids;
    }

    private void noteId(Value v) {
        if (v instanceof Value.Keys keys) {
            keys.members().stream().filter(m -> m.name().equals("id") && m.value() instanceof Value.Text)
                    .forEach(m -> allIds.add(((Value.Text) m.value()).text()));
        }
    }

    private Optional<Piece> piece(Fields f) {
        List<String> under = under(f);
        Optional<String> id = ids.claim(f);
        Optional<Material> material = f.required("material", "\"…\"").flatMap(v -> f.id(v, "material")).flatMap(t -> material(f, t));
        Optional<Material> made = material.map(m -> withProfile(f, m));
        List<Shape> shapes = shapes(f, material);
        Optional<Bond> bond = f.find("bond").flatMap(v -> MaterialForm.bond(f, v));
        List<Cut> cut = cuts(f, material, shapes);
        if (id.isEmpty() || made.isEmpty() || shapes.isEmpty()) {
            return Optional.empty();
        }
        Piece piece = new Piece(id.get(), made.get(), shapes, under, bond.orElse(made.get().bond()), cut);
        ids.put(id.get(), piece);
        return Optional.of(piece);
    }

    private Optional<Material> material(Fields f, Value.Text t) {
        Optional<Material> found = own.find(t.text()).or(() -> Catalogue.builtIn().find(t.text()));
        if (found.isEmpty() && !own.isKnown(t.text())) {
            f.wrong(t.at(), "there is no material " + Quoted.text(t.text()), () -> Nearest.hint(t.text(), materialIds(),
                    "list it under \"materials\", or choose a built-in one (rainlap materials lists them)"));
        }
        return found;
    }

    private Collection<String> materialIds() {
        Set<String> ids = new TreeSet<>(own.all());
        Catalogue.builtIn().all().forEach(m -> ids.add(m.id()));
        return ids;
    }

    private static Material withProfile(Fields f, Material m) {
        Optional<String> first = MaterialForm.PROFILE_KEYS.stream().filter(f::has).findFirst();
        if (first.isEmpty()) {
            return m;
        }
        if (!PROFILED.contains(m.kind())) {
            f.wrong(f.keyAt(first.get()), "\"" + first.get() + "\" belongs to a flashing, batten or trim; " + Quoted.text(m.id())
                    + " is a " + m.kind().word(), "take it out");
            return m;
        }
        return m.withProfile(MaterialForm.profile(f).or(m.profile()));
    }

    private List<Shape> shapes(Fields f, Optional<Material> material) {
        OptionalDouble width = material.map(Material::widthMm).orElse(OptionalDouble.of(1));
        if (!f.has("shapes")) {
            return shape(f, width).map(List::of).orElse(List.of());
        }
        SHAPE_KEYS.stream().filter(f::has).findFirst().ifPresent(k -> f.wrong(f.keyAt(k),
                "\"" + k + "\" cannot stand beside \"shapes\"", "move it into an entry of \"shapes\""));
        List<Value> values = f.list("shapes", f.limits().holes());
        if (values.isEmpty() && f.find("shapes").orElseThrow() instanceof Value.Items) {
            f.wrong(f.keyAt("shapes"), "\"shapes\" is empty", "list one shape for each surface");
        }
        List<Shape> out = new ArrayList<>();
        for (int i = 0; i < values.size(); i++) {
            int number = i + 1;
            Fields.of(values.get(i), () -> f.owner() + ", shape " + number, SHAPE_KEYS, problems)
                    .flatMap(s -> shape(s, width)).ifPresent(out::add);
        }
        return out.size() == values.size() ? out : List.of();
    }

    private Optional<Shape> shape(Fields f, OptionalDouble width) {
        Optional<Surface> on = surfaces.read(f);
        Optional<ShapeReader.Drawn> drawn = ShapeReader.read(f, ShapeReader.SHAPES, width);
        if (on.isEmpty() || drawn.isEmpty()) {
            return Optional.empty();
        }
        surfaces.refuseLeaving(f, on.get(), drawn.get());
        return Optional.of(new Shape(on.get(), drawn.get().regions(), drawn.get().run()));
    }

    private List<String> under(Fields f) {
        List<String> out = new ArrayList<>();
        for (Value v : f.list("under", f.limits().tucks())) {
            f.id(v, "under").ifPresent(t -> tuck(f, t, out));
        }
        return out;
    }

    private void tuck(Fields f, Value.Text t, List<String> out) {
        String name = Quoted.text(t.text());
        String self = f.find("id").filter(Value.Text.class::isInstance).map(v -> ((Value.Text) v).text()).orElse("");
        if (t.text().equals(self)) {
            f.wrong(t.at(), "a piece cannot be tucked under itself", "name the piece that lies over it");
        } else if (!allIds.contains(t.text())) {
            f.wrong(t.at(), "it is tucked under " + name + ", which is not in this file", () -> Nearest.hint(t.text(), ids.all(),
                    "name a piece that is laid before it"));
        } else if (!ids.isKnown(t.text())) {
            f.wrong(t.at(), "it is tucked under " + name + ", which is laid after it",
                    "a later piece lies outside by itself: take it out, or list " + name + " earlier");
        } else if (out.contains(t.text())) {
            f.wrong(t.at(), name + " is named twice", "name it once");
        } else {
            out.add(t.text());
        }
    }

    private List<Cut> cuts(Fields f, Optional<Material> material, List<Shape> shapes) {
        List<Value> values = f.list("cuts", f.limits().tucks());
        if (!values.isEmpty() && material.filter(m -> !m.kind().folds()).isPresent()) {
            f.wrong(f.keyAt("cuts"), "a " + material.get().kind().word() + " is not cut and folded into an opening",
                    "draw it with the opening left out, as a \"ring\" with \"holes\"");
        }
        List<Cut> out = new ArrayList<>();
        for (Value v : values) {
            cuts.read(v, f, shapes).ifPresent(c -> {
                if (out.stream().anyMatch(o -> o.opening().equals(c.opening()))) {
                    f.wrong(v.at(), "it is cut twice at opening " + Quoted.text(c.opening()), "keep one cut for each opening");
                }
                out.add(c);
            });
        }
        return out;
    }
}
