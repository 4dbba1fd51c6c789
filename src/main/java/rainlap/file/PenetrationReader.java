package rainlap.file;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import rainlap.geom.BoxTree;
import rainlap.geom.Overlay;
import rainlap.geom.Region;
import rainlap.wall.Opening;
import rainlap.wall.Outline;
import rainlap.wall.Penetration;

/** Reads {@code penetrations}. */
final class PenetrationReader {
    static final List<String> KEYS = List.of("id", "kind", "rect", "ring", "holes", "wkt", "circle");

    private static final List<String> SHAPES = List.of("rect", "ring", "wkt", "circle");

    private final Optional<Outline> outline;
    private final List<Opening> openings;
    private final BoxTree tree;
    private final Ids<Penetration> ids = new Ids<>("penetration");

    private PenetrationReader(Optional<Outline> outline, List<Opening> openings) {
        this.outline = outline;
        this.openings = openings;
        this.tree = new BoxTree(openings.stream().map(Opening::rect).toList());
    }

    static List<Penetration> read(List<Value> values, Problems problems, Optional<Outline> outline, List<Opening> openings) {
        PenetrationReader reader = new PenetrationReader(outline, openings);
        List<Penetration> out = new ArrayList<>();
        for (int i = 0; i < values.size(); i++) {
            Fields.of(values.get(i), reader.ids.label(values.get(i), i + 1), KEYS, problems)
                    .flatMap(reader::penetration).ifPresent(out::add);
        }
        return out;
    }

    private Optional<Penetration> penetration(Fields f) {
        Optional<String> id = ids.claim(f);
        Optional<String> kind = f.required("kind", "\"pipe\"").flatMap(v -> f.id(v, "kind")).map(Value.Text::text);
        Optional<ShapeReader.Drawn> drawn = ShapeReader.read(f, SHAPES, OptionalDouble.empty());
        if (drawn.isEmpty()) {
            return Optional.empty();
        }
        int at = drawn.get().at();
        if (drawn.get().regions().size() > 1) {
            f.wrong(at, "a penetration is one polygon", "list the others as penetrations of their own");
        }
        Region region = drawn.get().regions().get(0);
        if (outline.isPresent() && !OpeningReader.isInside(List.of(region), outline.get())) {
            f.wrong(at, "the penetration reaches outside the wall's outline", "the outline is "
                    + OpeningReader.extent(outline.get().box()));
        }
        refuseInOpening(f, at, region);
        return id.isPresent() && kind.isPresent() ? Optional.of(new Penetration(id.get(), kind.get(), region)) : Optional.empty();
    }

    private void refuseInOpening(Fields f, int at, Region region) {
        List<Integer> near = new ArrayList<>();
        tree.query(region.box(), near::add);
        near.stream().sorted().map(openings::get)
                .filter(o -> !Overlay.intersection(List.of(region), List.of(Region.of(o.rect()))).isEmpty()).findFirst()
                .ifPresent(o -> f.wrong(at, "it reaches into opening " + Quoted.text(o.id()), "a penetration passes the wall itself"));
    }
}
