package rainlap.file;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import rainlap.material.Catalogue;
import rainlap.material.Material;
import rainlap.practice.Practices;
import rainlap.wall.Elevation;
import rainlap.wall.Expectation;
import rainlap.wall.Exposure;
import rainlap.wall.Opening;
import rainlap.wall.Outline;
import rainlap.wall.Penetration;
import rainlap.wall.Piece;

/** Reads the whole form from a tree. */
final class ElevationReader {
    static final List<String> KEYS = List.of("rainlap", "name", "practice", "exposure", "wall", "openings", "penetrations",
            "materials", "pieces", "expect", "$schema");
    static final List<String> EXPECT_KEYS = List.of("rule", "pieces");
    private static final int VERSION = 1;

    private final Problems problems;
    private Map<String, Integer> piecePlaces = Map.of();

    ElevationReader(Problems problems) {
        this.problems = problems;
    }

    /** What the form says; sound only if no problem was noted. Empty where the outline is missing. */
    Optional<Elevation> read(Value root, String nameless) {
        return Fields.of(root, "", KEYS, problems).flatMap(f -> read(f, nameless));
    }

    private Optional<Elevation> read(Fields f, String nameless) {
        version(f);
        f.text("$schema");
        String name = f.text("name").orElse(nameless);
        Optional<String> practice = f.word("practice", id -> Practices.find(id).map(p -> p.id()), Practices.ids());
        Exposure exposure = f.find("exposure").map(v -> ExposureReader.read(v, problems)).orElse(Exposure.UNSTATED);
        Optional<Outline> outline = f.required("wall", "{ \"outline\": …, \"edges\": … }").flatMap(v -> OutlineReader.read(v, problems));
        List<Opening> openings = new ArrayList<>();
        int most = f.limits().pieces();
        Ids<Opening> openingIds = OpeningReader.read(f.list("openings", most), problems, outline, openings);
        List<Penetration> penetrations = PenetrationReader.read(f.list("penetrations", most), problems, outline, openings);
        Ids<Material> materials = MaterialForm.read(f.list("materials", most), problems);
        PieceReader pieceReader = new PieceReader(problems, materials, openingIds);
        List<Piece> pieces = pieceReader.read(f.list("pieces", most));
        piecePlaces = pieceReader.ids().places();
        List<Expectation> expected = Fields.each(f.list("expect", most), v -> expectation(v, pieceReader.ids()));
        if (problems.isEmpty()) {
            PileFinder.refusePiles(pieces, pieceReader.ids(), problems);
        }
        if (problems.isEmpty()) {
            KnotFinder.refuseKnots(pieces, pieceReader.ids(), problems);
        }
        return outline.filter(o -> problems.isEmpty()).map(o -> new Elevation(name, practice, exposure, o, openings, penetrations,
                catalogue(materials), pieces, expected));
    }

    /** The byte at which each piece's id stands. */
    Map<String, Integer> piecePlaces() {
        return piecePlaces;
    }

    /** The version of a file form. */
    static void version(Fields f) {
        Optional<Value> v = f.required("rainlap", "1");
        if (v.isPresent() && !(v.get() instanceof Value.Num n && n.number() == VERSION)) {
            f.wrong(v.get().at(), "\"rainlap\" is the version of the file form and must be 1", "write \"rainlap\": 1");
        }
    }

    private static Catalogue catalogue(Ids<Material> own) {
        return Catalogue.builtIn().with(own.all().stream().map(id -> own.find(id).orElseThrow()).toList());
    }

    private Optional<Expectation> expectation(Value v, Ids<Piece> pieces) {
        Optional<Fields> fields = Fields.of(v, "expect", EXPECT_KEYS, problems);
        if (fields.isEmpty()) {
            return Optional.empty();
        }
        Fields f = fields.get();
        Optional<String> rule = f.required("rule", "\"reverse-lap\"").flatMap(r -> f.id(r, "rule")).map(Value.Text::text);
        List<String> named = Fields.each(f.list("pieces", f.limits().tucks()), p -> f.id(p, "pieces").filter(t -> {
            if (!pieces.isKnown(t.text())) {
                f.wrong(t.at(), "there is no piece " + Quoted.text(t.text()), () -> Nearest.hint(t.text(), pieces.all(), ""));
            }
            return pieces.isKnown(t.text());
        })).stream().map(Value.Text::text).toList();
        return rule.map(r -> new Expectation(r, named));
    }
}
