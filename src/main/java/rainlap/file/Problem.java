package rainlap.file;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Something a file has wrong, as data.
 *
 * @param file the name to show
 * @param place where, unless it is about the file as a whole (it cannot be opened)
 * @param what what is wrong, in words for the person who wrote the file
 * @param hint what would be right; empty where nothing can be proposed
 * @param excerpt the line of the file with the place marked, if there is a place
 */
public record Problem(String file, Optional<Place> place, String what, String hint, Optional<Excerpt> excerpt)
        implements Comparable<Problem> {
    private static final Comparator<Problem> BY_PLACE = Comparator
            .comparing((Problem p) -> p.place.orElse(new Place(0, 0))).thenComparing(Problem::what)
            .thenComparing(Problem::hint);

    /** A problem with the file as a whole. */
    static Problem ofFile(String file, String what, String hint) {
        return new Problem(file, Optional.empty(), what, hint, Optional.empty());
    }

    /** Line, from 1; 0 for a problem with the file as a whole. */
    public int line() {
        return place.map(Place::line).orElse(0);
    }

    /** Column in characters, from 1; 0 for a problem with the file as a whole. */
    public int column() {
        return place.map(Place::column).orElse(0);
    }

    /** The problem for a terminal: what and where, the source line, and a caret with the hint. */
    public List<String> lines() {
        List<String> out = new ArrayList<>();
        out.add(file + place.map(p -> ":" + p.line() + ":" + p.column()).orElse("") + ": " + what);
        if (excerpt.isPresent()) {
            String number = line() + " | ";
            out.add((number + excerpt.get().text()).stripTrailing());
            String caret = " ".repeat(number.length() + excerpt.get().caretAt()) + "^";
            out.add(hint.isEmpty() ? caret : caret + " " + hint);
        } else if (!hint.isEmpty()) {
            out.add("  " + hint);
        }
        return List.copyOf(out);
    }

    @Override
    public int compareTo(Problem o) {
        return BY_PLACE.compare(this, o);
    }
}
