package rainlap.file;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.stream.Stream;
import rainlap.geom.Box;
import rainlap.geom.BoxTree;
import rainlap.geom.Grid;
import rainlap.geom.Overlay;
import rainlap.geom.Region;
import rainlap.wall.Opening;
import rainlap.wall.Outline;

/** Reads {@code openings}. */
final class OpeningReader {
    static final List<String> KEYS = List.of("id", "kind", "rect", "reveal", "head-flashing", "head_flashing", "reason",
            "eave_overhang", "eave_above");
    static final List<String> KINDS = Stream.of(Opening.Kind.values()).map(Opening.Kind::word).toList();

    private final Problems problems;
    private final Optional<Outline> outline;
    private final Ids<Opening> ids = new Ids<>("opening");
    private final List<Fields> read = new ArrayList<>();
    private final List<Opening> openings = new ArrayList<>();

    private OpeningReader(Problems problems, Optional<Outline> outline) {
        this.problems = problems;
        this.outline = outline;
    }

    static Ids<Opening> read(List<Value> values, Problems problems, Optional<Outline> outline, List<Opening> into) {
        OpeningReader reader = new OpeningReader(problems, outline);
        for (int i = 0; i < values.size(); i++) {
            Fields.of(values.get(i), reader.ids.label(values.get(i), i + 1), KEYS, problems).ifPresent(reader::opening);
        }
        reader.refuseOverlaps();
        into.addAll(reader.openings);
        return reader.ids;
    }

    private void opening(Fields f) {
        Optional<String> id = ids.claim(f);
        Optional<Opening.Kind> kind = f.required("kind", "\"window\"").flatMap(v -> f.word(v, "kind", Opening.Kind::find, KINDS));
        Optional<Box> rect = f.required("rect", "[x, y, width, height]").flatMap(v -> ShapeReader.rect(f, v));
        f.required("reveal", "90");
        OptionalLong reveal = f.length("reveal", Range.DEPTH);
        OptionalLong overhang = f.length("eave_overhang", Range.DEPTH), above = f.length("eave_above", Range.DEPTH);
        Optional<String> none = noHeadFlashing(f, f.has("eave_overhang") && f.has("eave_above"));
        rect.ifPresent(r -> refuseOutside(f, r));
        if (id.isPresent() && kind.isPresent() && rect.isPresent() && reveal.isPresent()) {
            Opening o = new Opening(id.get(), kind.get(), rect.get(), reveal.getAsLong(), none, overhang, above);
            ids.put(o.id(), o);
            openings.add(o);
            read.add(f);
        }
    }

    /** The stated reason why there is no head flashing. */
    private Optional<String> noHeadFlashing(Fields f, boolean underEave) {
        if (f.has("head-flashing") && f.has("head_flashing")) {
            f.wrong(f.keyAt("head_flashing"), "\"head-flashing\" and \"head_flashing\" are one key", "keep one of them");
        }
        String key = f.has("head_flashing") ? "head_flashing" : "head-flashing";
        Optional<String> none = f.word(key, w -> Optional.of(w).filter("none"::equals), List.of("none"));
        Optional<String> reason = f.text("reason");
        if (f.has("reason") && !f.has(key)) {
            f.wrong(f.keyAt("reason"), "\"reason\" says why there is no head flashing, but it is not said that there is none",
                    "add \"head-flashing\": \"none\"");
        }
        if (none.isPresent() && !f.has("reason") && !underEave) {
            f.wrong(f.keyAt(key), "that there is no head flashing needs a reason",
                    "add \"eave_overhang\" and \"eave_above\" for a deep eave, or a \"reason\"");
        }
        return none.map(n -> reason.orElse("under the eave"));
    }

    private void refuseOutside(Fields f, Box rect) {
        if (outline.isPresent() && !isInside(List.of(Region.of(rect)), outline.get())) {
            f.wrong(f.find("rect").orElseThrow().at(), "the opening reaches outside the wall's outline", "the outline is "
                    + extent(outline.get().box()));
        }
    }

    static boolean isInside(List<Region> regions, Outline outline) {
        if (outline.region().isBox()) {
            return regions.stream().allMatch(r -> outline.box().contains(r.box()));
        }
        return Overlay.difference(regions, List.of(outline.region())).isEmpty();
    }

    /** {@code x from 0 to 3600, y from 0 to 2400}. */
    static String extent(Box b) {
        return "x from " + mm(b.minX()) + " to " + mm(b.maxX()) + ", y from " + mm(b.minY()) + " to " + mm(b.maxY());
    }

    static String mm(long units) {
        return Quoted.number(Grid.mm(units));
    }

    private void refuseOverlaps() {
        BoxTree tree = new BoxTree(openings.stream().map(Opening::rect).toList());
        for (int i = 0; i < openings.size() && !problems.isFull(); i++) {
            int me = i;
            List<Integer> near = new ArrayList<>();
            tree.query(openings.get(i).rect(), near::add);
            near.stream().filter(j -> j < me && openings.get(j).rect().overlaps(openings.get(me).rect())).min(Integer::compare).ifPresent(j -> read.get(me).wrong(read.get(me).find("rect").orElseThrow().at(),
                    "it overlaps opening " + Quoted.text(openings.get(j).id()), "openings lie apart, or touch at most"));
        }
    }
}
