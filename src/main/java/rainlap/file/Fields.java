package rainlap.file;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalLong;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Supplier;
import rainlap.geom.Grid;

/**
 * The keys of one object of the form. Every getter notes what is wrong with a value, naming the object and the key, and then gives
 * nothing, so that reading goes on.
 */
final class Fields {
    private final Value.Keys keys;
    private final Supplier<String> owner;
    private final Problems problems;
    /** Known keys that misspelt ones most probably meant: they are not reported missing as well. */
    private final Set<String> meant = new HashSet<>();

    private Fields(Value.Keys keys, Supplier<String> owner, Problems problems) {
        this.keys = keys;
        this.owner = owner;
        this.problems = problems;
    }

    /**
     * The object, if the value is one; keys that the form does not know are noted.
     *
     * @param owner what messages call it: {@code piece "M1"}; empty for the file itself
     */
    static Optional<Fields> of(Value value, String owner, List<String> known, Problems problems) {
        return of(value, () -> owner, known, problems);
    }

    /** With a name that is put together only where a message needs it. */
    static Optional<Fields> of(Value value, Supplier<String> owner, List<String> known, Problems problems) {
        if (!(value instanceof Value.Keys keys)) {
            problems.add(value.at(), (owner.get().isEmpty() ? "the file" : owner.get()) + " must be an object, not " + value.what(),
                    "write { \"" + known.get(0) + "\": …");
            return Optional.empty();
        }
        Fields fields = new Fields(keys, owner, problems);
        for (Value.Member m : keys.members()) {
            if (!known.contains(m.name()) && problems.isFull()) {
                problems.countOne();
            } else if (!known.contains(m.name())) {
                Nearest.of(m.name(), known).ifPresent(fields.meant::add);
                fields.wrong(m.at(), "there is no key " + Quoted.text(m.name()) + " here",
                        () -> Nearest.hint(m.name(), known, "known here: " + String.join(", ", known)));
            }
        }
        return Optional.of(fields);
    }

    int at() {
        return keys.at();
    }

    String owner() {
        return owner.get();
    }

    Problems problems() {
        return problems;
    }

    Limits limits() {
        return problems.limits();
    }

    void wrong(int at, String what, String hint) {
        wrong(at, what, () -> hint);
    }

    /** @param what about the object as "it …", or about a part of it */
    void wrong(int at, String what, Supplier<String> hint) {
        String me = owner.get();
        problems.add(at, me.isEmpty() ? what : what.startsWith("it ") ? me + what.substring(2) : me + ": " + what, hint);
    }

    boolean has(String key) {
        return find(key).isPresent();
    }

    Optional<Value> find(String key) {
        for (Value.Member m : keys.members()) {
            if (m.name().equals(key)) {
                return Optional.of(m.value());
            }
        }
        return Optional.empty();
    }

    /** The value; that there is none is noted. */
    Optional<Value> required(String key, String example) {
        Optional<Value> value = find(key);
        if (value.isEmpty() && !meant.contains(key)) {
            wrong(keys.at(), "\"" + key + "\" is missing", "add \"" + key + "\": " + example);
        }
        return value;
    }

    /** Whether a misspelt key most probably meant one of these. */
    boolean means(List<String> anyOf) {
        return anyOf.stream().anyMatch(meant::contains);
    }

    /** The place of a key, or of the object where it has none. */
    int keyAt(String key) {
        return keys.members().stream().filter(m -> m.name().equals(key)).findFirst().map(Value.Member::at).orElse(keys.at());
    }

    private void wrongKind(Value v, String key, String needed, String hint) {
        wrong(v.at(), "\"" + key + "\" must be " + needed + ", not " + v.what(), hint);
    }

    OptionalDouble number(String key, Range range) {
        return find(key).map(v -> number(v, () -> "\"" + key + "\"", range)).orElse(OptionalDouble.empty());
    }

    /** A length in mm as grid units. */
    OptionalLong length(String key, Range range) {
        OptionalDouble mm = number(key, range);
        return mm.isPresent() ? OptionalLong.of(Grid.of(mm.getAsDouble())) : OptionalLong.empty();
    }

    /** @param label what the number is, in words: {@code width in "rect"} */
    private OptionalDouble number(Value v, Supplier<String> label, Range range) {
        if (!(v instanceof Value.Num n)) {
            boolean quoted = v instanceof Value.Text t && t.text().matches("\\s*-?[0-9]+(\\.[0-9]+)?\\s*");
            wrong(v.at(), label.get() + " must be a number, not " + v.what(),
                    quoted ? "write " + ((Value.Text) v).text().strip() + " without quotation marks" : range.words());
            return OptionalDouble.empty();
        }
        double d = n.number();
        if (!Double.isFinite(d)) {
            wrong(v.at(), label.get() + " is no finite number", range.words());
        } else if (!range.holds(d)) {
            wrong(v.at(), label.get() + " must be " + range.words() + ", not " + Quoted.number(d), "");
        } else {
            return OptionalDouble.of(d);
        }
        return OptionalDouble.empty();
    }

    Optional<Boolean> flag(String key) {
        Optional<Value> v = find(key);
        if (v.isPresent() && !(v.get() instanceof Value.Flag)) {
            wrongKind(v.get(), key, "true or false", "");
        }
        return v.filter(Value.Flag.class::isInstance).map(f -> ((Value.Flag) f).on());
    }

    Optional<String> text(String key) {
        return find(key).flatMap(v -> text(v, key, limits().textLength())).map(Value.Text::text);
    }

    /** A text that is not blank, not too long and free of control characters. */
    Optional<Value.Text> text(Value v, String label, int longest) {
        if (!(v instanceof Value.Text t)) {
            wrongKind(v, label, "a text", v instanceof Value.Num ? "put it in quotation marks" : "");
            return Optional.empty();
        }
        String s = t.text();
        if (s.isBlank()) {
            wrong(v.at(), "\"" + label + "\" is empty", "write something");
        } else if (s.codePointCount(0, s.length()) > longest) {
            wrong(v.at(), "\"" + label + "\" has " + s.codePointCount(0, s.length()) + " characters", "at most " + longest);
        } else if (s.codePoints().anyMatch(Fields::isUnprintable)) {
            wrong(v.at(), "\"" + label + "\" holds a control character", "take it out");
        } else {
            return Optional.of(t);
        }
        return Optional.empty();
    }

    /** What no XML may hold, what breaks a line, and what turns the direction of the text around it. */
    private static boolean isUnprintable(int c) {
        return switch (Character.getType(c)) {
            case Character.CONTROL, Character.SURROGATE, Character.LINE_SEPARATOR, Character.PARAGRAPH_SEPARATOR -> true;
            default -> c == 0xFFFE || c == 0xFFFF || c >= 0x202A && c <= 0x202E || c >= 0x2066 && c <= 0x2069;
        };
    }

    /** The name of something, or a reference to one. */
    Optional<Value.Text> id(Value v, String label) {
        Optional<Value.Text> t = text(v, label, limits().idLength());
        if (t.isPresent() && !t.get().text().equals(t.get().text().strip())) {
            wrong(v.at(), "\"" + label + "\" begins or ends with a blank", "write " + Quoted.text(t.get().text().strip()));
            return Optional.empty();
        }
        return t;
    }

    /** One of a closed set of words. */
    <T> Optional<T> word(String key, Function<String, Optional<T>> meaning, List<String> words) {
        return find(key).flatMap(v -> word(v, key, meaning, words));
    }

    <T> Optional<T> word(Value v, String label, Function<String, Optional<T>> meaning, List<String> words) {
        String all = words.size() == 1 ? "write " + Quoted.text(words.get(0)) : "one of " + String.join(", ", words);
        if (!(v instanceof Value.Text t)) {
            wrongKind(v, label, "a word", all);
            return Optional.empty();
        }
        Optional<T> found = meaning.apply(t.text());
        if (found.isEmpty()) {
            wrong(v.at(), "\"" + label + "\" cannot be " + Quoted.text(t.text()), () -> Nearest.hint(t.text(), words, all));
        }
        return found;
    }

    /** The entries of a list; none when the key is absent. */
    List<Value> list(String key, int most) {
        return find(key).map(v -> list(v, key, most)).orElse(List.of());
    }

    List<Value> list(Value v, String label, int most) {
        if (!(v instanceof Value.Items list)) {
            wrongKind(v, label, "a list", "write [ … ]");
            return List.of();
        }
        if (list.items().size() > most) {
            wrong(v.at(), "\"" + label + "\" has " + list.items().size() + " entries", "at most " + most);
            return List.of();
        }
        return list.items();
    }

    /**
     * A list of exactly so many numbers, each with its range; empty and noted otherwise.
     *
     * @param form the list as messages show it, which names the numbers: {@code [x, y, radius]}
     */
    Optional<double[]> numbers(Value v, String label, String form, Range... ranges) {
        if (!(v instanceof Value.Items list) || list.items().size() != ranges.length) {
            String found = v instanceof Value.Items l ? "a list of " + l.items().size() : v.what();
            wrong(v.at(), "\"" + label + "\" must be " + form + ", not " + found, "");
            return Optional.empty();
        }
        double[] out = new double[ranges.length];
        boolean sound = true;
        for (int i = 0; i < ranges.length; i++) {
            int number = i;
            OptionalDouble d = number(list.items().get(i), () -> nameIn(form, number) + " in \"" + label + "\"", ranges[i]);
            sound &= d.isPresent();
            out[i] = d.orElse(0);
        }
        return sound ? Optional.of(out) : Optional.empty();
    }

    private static String nameIn(String form, int number) {
        return form.substring(1, form.length() - 1).split(", ")[number];
    }

    /** Each entry of a list turned into something, those that are wrong left out. */
    static <T> List<T> each(List<Value> values, Function<Value, Optional<T>> turn) {
        List<T> out = new ArrayList<>(values.size());
        values.forEach(v -> turn.apply(v).ifPresent(out::add));
        return out;
    }
}
