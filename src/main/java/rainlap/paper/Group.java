package rainlap.paper;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Marks that belong together, with what a page needs to find and name them.
 *
 * @param id unique on the sheet, or empty; characters other than letters, digits, hyphen, dot and underscore are written
 *     as {@code _x} and their code, since ids of files may hold anything
 * @param classes style classes, in order, each of letters, digits and hyphens
 * @param title plain text shown on hover and read aloud
 * @param data further attributes, written as {@code data-key}, in order
 */
public record Group(Optional<String> id, List<String> classes, Optional<String> title, List<Datum> data,
        List<Mark> marks) implements Mark {

    /** One {@code data-} attribute: key of lower-case letters, digits and hyphens. */
    public record Datum(String key, String value) {

        public Datum {
            if (!key.matches("[a-z][a-z0-9-]*")) {
                throw new IllegalArgumentException("a data key has lower-case letters, digits, hyphens, not " + key);
            }
        }
    }

    public Group {
        id = id.map(Group::plainId);
        classes = List.copyOf(classes);
        for (String name : classes) {
            if (!name.matches("[A-Za-z][A-Za-z0-9-]*")) {
                throw new IllegalArgumentException("a class has letters, digits, hyphens, not " + name);
            }
        }
        data = List.copyOf(data);
        marks = List.copyOf(marks);
    }

    public static Group of(List<Mark> marks) {
        return new Group(Optional.empty(), List.of(), Optional.empty(), List.of(), marks);
    }

    public static Group of(String id, List<? extends Mark> marks) {
        return new Group(Optional.of(id), List.of(), Optional.empty(), List.of(), List.copyOf(marks));
    }

    public Group withClass(String name) {
        List<String> more = new ArrayList<>(classes);
        more.add(name);
        return new Group(id, more, title, data, marks);
    }

    public Group withTitle(String text) {
        return new Group(id, classes, Optional.of(text), data, marks);
    }

    public Group withData(String key, String value) {
        List<Datum> more = new ArrayList<>(data);
        more.add(new Datum(key, value));
        return new Group(id, classes, title, more, marks);
    }

    private static String plainId(String raw) {
        StringBuilder plain = new StringBuilder();
        raw.codePoints().forEach(c -> {
            boolean kept = c < 128 && (Character.isLetterOrDigit(c) || c == '-' || c == '.' || c == '_');
            plain.append(kept ? Character.toString(c) : "_x" + Integer.toHexString(c) + "_");
        });
        return plain.toString();
    }

    @Override
    public Group moved(double dx, double dy) {
        return new Group(id, classes, title, data, marks.stream().map(m -> m.moved(dx, dy)).toList());
    }

    @Override
    public PaperBox box() {
        return marks.stream().filter(m -> !isBlank(m)).map(Mark::box).reduce(PaperBox::with).orElse(new PaperBox(0, 0, 0, 0));
    }

    /** What draws nothing stands nowhere, not at the sheet's corner. */
    private static boolean isBlank(Mark m) {
        return m instanceof Group g && g.marks.stream().allMatch(Group::isBlank) || m instanceof Strokes s && s.segments().isEmpty();
    }
}
