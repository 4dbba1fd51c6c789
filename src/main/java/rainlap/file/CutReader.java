package rainlap.file;

import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.stream.Stream;
import rainlap.geom.Overlay;
import rainlap.geom.Region;
import rainlap.wall.Cut;
import rainlap.wall.CutPattern;
import rainlap.wall.Opening;
import rainlap.wall.Shape;

/** Reads one entry of {@code cuts}. */
final class CutReader {
    static final List<String> KEYS = List.of("at", "pattern", "return");
    static final List<String> PATTERNS = Stream.of(CutPattern.values()).map(CutPattern::word).toList();
    private final Ids<Opening> openings;

    CutReader(Ids<Opening> openings) {
        this.openings = openings;
    }

    /** @param shapes of the piece; empty where they are wrong themselves */
    Optional<Cut> read(Value v, Fields piece, List<Shape> shapes) {
        Optional<Fields> fields = Fields.of(v, () -> piece.owner() + ", cut", KEYS, piece.problems());
        if (fields.isEmpty()) {
            return Optional.empty();
        }
        Fields f = fields.get();
        Optional<Value.Text> at = f.required("at", "\"W1\"").flatMap(a -> f.id(a, "at"));
        at.ifPresent(a -> check(f, a, shapes));
        Optional<CutPattern> pattern = f.required("pattern", "\"diagonal\"")
                .flatMap(p -> f.word(p, "pattern", CutPattern::find, PATTERNS));
        OptionalLong returned = f.length("return", Range.DEPTH);
        if (pattern.filter(CutPattern.FLUSH::equals).isPresent() && returned.orElse(0) > 0) {
            f.wrong(f.find("return").orElseThrow().at(), "a sheet cut flush leaves nothing to return",
                    "take \"return\" out, or choose another pattern");
        }
        Optional<Opening> opening = at.flatMap(a -> openings.find(a.text()));
        if (opening.isEmpty() || pattern.isEmpty()) {
            return Optional.empty();
        }
        long untrimmed = pattern.get() == CutPattern.FLUSH ? 0 : opening.get().reveal();
        return Optional.of(new Cut(opening.get().id(), pattern.get(), returned.orElse(untrimmed)));
    }

    private void check(Fields f, Value.Text at, List<Shape> shapes) {
        if (!openings.isKnown(at.text())) {
            f.wrong(at.at(), "there is no opening " + Quoted.text(at.text()),
                    () -> Nearest.hint(at.text(), openings.all(), openings.all().isEmpty() ? "the file has no openings" : ""));
        }
        Optional<Opening> opening = openings.find(at.text());
        if (opening.isPresent() && !shapes.isEmpty() && !reachInto(shapes, opening.get())) {
            f.wrong(at.at(), "the piece does not reach into opening " + Quoted.text(at.text()) + ", so it cannot be cut there",
                    "the opening is " + OpeningReader.extent(opening.get().rect()));
        }
    }

    private static boolean reachInto(List<Shape> shapes, Opening opening) {
        return shapes.stream().filter(s -> s.on().isWall()).flatMap(s -> s.regions().stream())
                .filter(r -> r.box().overlaps(opening.rect()))
                .anyMatch(r -> r.isBox() || !Overlay.intersection(List.of(r), List.of(Region.of(opening.rect()))).isEmpty());
    }
}
