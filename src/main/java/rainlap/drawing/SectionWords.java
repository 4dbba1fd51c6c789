package rainlap.drawing;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import rainlap.paper.TextMetrics;
import rainlap.rule.Finding;

/** What stands beside a section: the finding's words as far as there is room for whole clauses of them, and notes. */
final class SectionWords {
    /** Before a clause that only explains what stands before it. */
    private static final List<String> EXPLAINS = List.of(": ", "; ", ", so ");

    private SectionWords() {}

    /**
     * What a finding says as far as notes leave room, and the notes, all of them and always a whole clause.
     *
     * @param spare notes that are left out where there is no room, the last first
     */
    static List<String> told(Finding f, List<String> notes, List<String> spare, double width, int most) {
        List<String> lines = lines(notes, width), first = new ArrayList<>();
        for (String note : spare) {
            List<String> more = lines(List.of(note), width);
            first.addAll(first.size() + more.size() + lines.size() + shortest(f, width).size() <= most ? more : List.of());
        }
        List<String> out = new ArrayList<>(sentence(f, width, most - lines.size() - first.size()));
        out.addAll(first);
        out.addAll(lines);
        return out;
    }

    /** How much higher a cell must be than for so many lines, so that a whole clause and all notes find room. */
    static double more(Finding f, List<String> notes, double width, int lines) {
        return more(Stream.concat(shortest(f, width).stream(), lines(notes, width).stream()).toList(), lines);
    }

    /** The same for what is said of the mended place. */
    static double more(List<String> what, double width, int lines) {
        return more(TextMetrics.wrap(String.join(" ", what), width, Looks.PLAIN), lines);
    }

    private static double more(List<String> needed, int lines) {
        return Math.max(0, needed.size() - lines) * Words.pitch(needed);
    }

    private static List<String> lines(List<String> notes, double width) {
        return notes.stream().flatMap(n -> TextMetrics.wrap(n, width, Looks.PLAIN).stream()).toList();
    }

    private static List<String> shortest(Finding f, double width) {
        List<String> all = shortenings(f.says());
        return TextMetrics.wrap(all.get(all.size() - 1), width, Looks.PLAIN);
    }

    /** The longest that fits so many lines, or the shortest there is. */
    private static List<String> sentence(Finding f, double width, int most) {
        return shortenings(f.says()).stream().map(s -> TextMetrics.wrap(s, width, Looks.PLAIN)).filter(lines -> lines.size() <= most).findFirst()
                .orElseGet(() -> shortest(f, width));
    }

    /** All that is said, its first sentence, and what of that stands alone without the clauses that explain it: the longest first. */
    static List<String> shortenings(String says) {
        Set<String> out = new LinkedHashSet<>(List.of(says));
        int stop = says.indexOf(". ");
        String sentence = stop < 0 ? says : says.substring(0, stop + 1);
        out.add(sentence);
        IntStream.range(1, sentence.length()).filter(end -> explains(sentence, end) && !isInBrackets(sentence, end)).findFirst()
                .ifPresent(end -> out.add(sentence.substring(0, end) + "."));
        return List.copyOf(out);
    }

    /** Whether the least that is told of a finding names a piece. */
    static boolean names(Finding f, String piece) {
        List<String> all = shortenings(f.says());
        return Pattern.compile("(?<![\\p{L}\\p{N}])" + Pattern.quote(piece) + "(?![\\p{L}\\p{N}])").matcher(all.get(all.size() - 1)).find();
    }

    private static boolean explains(String sentence, int at) {
        return EXPLAINS.stream().anyMatch(e -> sentence.startsWith(e, at));
    }

    private static boolean isInBrackets(String sentence, int at) {
        String before = sentence.substring(0, at);
        return before.chars().filter(c -> c == '(').count() > before.chars().filter(c -> c == ')').count();
    }
}
