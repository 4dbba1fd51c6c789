package rainlap.file;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Stream;
import rainlap.practice.Limit;
import rainlap.practice.LimitValue;
import rainlap.practice.Practice;
import rainlap.practice.Practices;
import rainlap.source.Known;
import rainlap.source.Source;

/**
 * Reads a practice of the user's own: a name, the built-in practice it is based on, and the limits it sets itself. Where it is silent its base speaks, and
 * where that is silent {@code common} does. Whatever is wrong with a file comes back as problems.
 */
public final class PracticeFile {
    static final List<String> KEYS = List.of("rainlap", "practice", "base", "title", "about", "limits", "$schema");
    static final List<String> LIMIT_KEYS = List.of("limit", "value", "never", "strict", "or_taped", "document", "edition", "clause", "known", "note");
    private static final List<String> LIMITS = Stream.of(Limit.values()).map(Limit::id).toList();
    private static final List<String> KNOWN = Stream.of(Known.values()).map(Known::text).toList();
    private static final Range VALUE = Range.above(0, 100_000);

    private final Problems problems;
    private final Set<Limit> seen = EnumSet.noneOf(Limit.class);
    private String id = "";

    private PracticeFile(Problems problems) {
        this.problems = problems;
    }

    /** Reads a file; problems name it as the path was given. */
    public static PracticeReading read(Path path) {
        FileBytes file = FileBytes.of(path, "practice", Limits.STATED.bytes());
        return file.bytes().map(b -> read(path.toString(), b)).orElseGet(() -> new PracticeReading(Optional.empty(), file.problem().stream().toList()));
    }

    /** @param displayName what problems call the file */
    public static PracticeReading read(String displayName, byte[] bytes) {
        SourceText source = new SourceText(displayName, bytes.clone());
        Problems problems = new Problems(source, Limits.STATED);
        Optional<Value> root = Encoding.isSound(source, problems) ? TreeReader.read(source, problems) : Optional.empty();
        Optional<Practice> practice = root.flatMap(new PracticeFile(problems)::read);
        return new PracticeReading(problems.isEmpty() ? practice : Optional.empty(), problems.sorted());
    }

    private Optional<Practice> read(Value root) {
        Optional<Fields> fields = Fields.of(root, "", KEYS, problems);
        if (fields.isEmpty()) {
            return Optional.empty();
        }
        Fields f = fields.get();
        ElevationReader.version(f);
        f.text("$schema");
        Optional<Value.Text> name = f.required("practice", "\"our-crew\"").flatMap(v -> f.id(v, "practice"));
        name.ifPresent(n -> named(f, n));
        Optional<Practice> base = f.required("base", "\"common\"").flatMap(v -> f.word(v, "base", Practices::find, Practices.ids()));
        String title = f.text("title").orElse(id), about = f.text("about").orElse("A practice of your own.");
        List<LimitValue> values = Fields.each(f.required("limits", "[ … ]").map(v -> f.list(v, "limits", LIMITS.size())).orElse(List.of()), this::value);
        return problems.isEmpty() ? Optional.of(Practice.own(id, title, about, values, base.orElseThrow())) : Optional.empty();
    }

    private void named(Fields f, Value.Text name) {
        id = name.text();
        if (!id.matches("[a-z0-9]+(-[a-z0-9]+)*")) {
            f.wrong(name.at(), "\"practice\" must be lower-case letters, digits and hyphens, not " + Quoted.text(id), "write \"our-crew\"");
        } else if (Practices.find(id).isPresent()) {
            f.wrong(name.at(), Quoted.text(id) + " is a practice of the product", "choose a name of your own, and put " + Quoted.text(id) + " behind \"base\"");
        }
    }

    private Optional<LimitValue> value(Value v) {
        return Fields.of(v, "limits", LIMIT_KEYS, problems).flatMap(f -> {
            Optional<Limit> limit = f.required("limit", "\"course-lap\"").flatMap(w -> f.word(w, "limit", Limit::find, LIMITS));
            limit.filter(l -> !seen.add(l)).ifPresent(l -> f.wrong(f.keyAt("limit"), Quoted.text(l.id()) + " stands here twice", "keep one of them"));
            boolean never = f.flag("never").orElse(false);
            OptionalDouble number = f.number("value", VALUE);
            if (never == f.has("value")) {
                f.wrong(f.at(), never ? "\"value\" and \"never\" exclude each other" : "\"value\" is missing", never ? "keep one of them" : "add \"value\": 150");
            }
            Source source = source(f);
            String note = f.text("note").orElse("");
            boolean taped = f.flag("or_taped").orElse(false), strict = f.flag("strict").orElse(false);
            double value = never ? Double.POSITIVE_INFINITY : number.orElse(1);
            return limit.map(l -> new LimitValue(l, value, taped, source, id.isEmpty() ? "own" : id, note, strict));
        });
    }

    /** Who says it: a document, or else the crew itself, and then it is common practice. */
    private static Source source(Fields f) {
        Optional<Known> known = f.word("known", Known::find, KNOWN);
        Optional<String> document = f.text("document");
        List<String> parts = new ArrayList<>();
        Stream.of("edition", "clause", "known").filter(f::has).forEach(parts::add);
        if (document.isEmpty()) {
            if (!parts.isEmpty() && !f.has("document")) {
                f.wrong(f.keyAt(parts.get(0)), Quoted.text(parts.get(0)) + " belongs to a document, and none is named", "add \"document\": …, or take it out");
            }
            return Source.commonPractice();
        }
        String edition = f.text("edition").orElse(""), clause = f.text("clause").orElse("");
        if (!f.has("known")) {
            f.wrong(f.at(), "it does not say how well its value is known", "add \"known\": \"published\" if you read it there yourself, else \"from memory\"");
        }
        return known.filter(k -> k != Known.COMMON_PRACTICE).map(k -> new Source(document.get(), edition, clause, k)).orElse(Source.commonPractice());
    }
}
