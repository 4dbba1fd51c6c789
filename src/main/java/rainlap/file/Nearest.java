package rainlap.file;

import java.util.Collection;
import java.util.Comparator;
import java.util.Locale;
import java.util.Optional;

/** The known word that a misspelt one most probably meant. */
public final class Nearest {
    private static final int LONGEST = 100;

    private Nearest() {}

    /** A candidate and how many letters it differs by. */
    private record Near(String word, int distance) {}

    /**
     * The candidate with the fewest letters to change, add, drop or swap, where that is at most a third of the word's letters (one
     * at least). Of equals the one that begins with the same letter, then the one whose number is nearest ({@code M7}: {@code M6}
     * before {@code M2}), then the first in alphabetical order.
     */
    public static Optional<String> of(String word, Collection<String> candidates) {
        int allowed = Math.max(1, word.length() / 3);
        if (word.isEmpty() || word.length() > LONGEST) {
            return Optional.empty();
        }
        String folded = fold(word);
        return candidates.stream().filter(c -> Math.abs(c.length() - word.length()) <= allowed)
                .map(c -> new Near(c, distance(folded, fold(c)))).filter(n -> n.distance <= allowed)
                .min(Comparator.comparingInt(Near::distance).thenComparing(n -> n.word.charAt(0) != word.charAt(0))
                        .thenComparing(n -> Math.abs(number(n.word) - number(word))).thenComparing(Near::word))
                .map(Near::word);
    }

    /** {@code did you mean "x"?} or, where nothing is near, another hint. */
    static String hint(String word, Collection<String> candidates, String otherwise) {
        return of(word, candidates).map(c -> "did you mean " + Quoted.text(c) + "?").orElse(otherwise);
    }

    /** The number a word ends in, 0 without one. */
    private static long number(String word) {
        int from = word.length();
        while (from > 0 && word.length() - from < 9 && word.charAt(from - 1) >= '0' && word.charAt(from - 1) <= '9') {
            from--;
        }
        return from == word.length() ? 0 : Long.parseLong(word.substring(from));
    }

    /** Case, and whether words are parted by hyphen, underscore or blank, is no difference worth a letter. */
    private static String fold(String s) {
        return s.toLowerCase(Locale.ROOT).replace('_', '-').replace(' ', '-');
    }

    /** Letters to change, add, drop or swap with their neighbour (optimal string alignment). */
    static int distance(String a, String b) {
        int[] beforeLast = new int[b.length() + 1], last = new int[b.length() + 1], row = new int[b.length() + 1];
        for (int j = 0; j <= b.length(); j++) {
            last[j] = j;
        }
        for (int i = 1; i <= a.length(); i++) {
            row[0] = i;
            for (int j = 1; j <= b.length(); j++) {
                int change = a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1;
                row[j] = Math.min(Math.min(row[j - 1], last[j]) + 1, last[j - 1] + change);
                if (i > 1 && j > 1 && a.charAt(i - 1) == b.charAt(j - 2) && a.charAt(i - 2) == b.charAt(j - 1)) {
                    row[j] = Math.min(row[j], beforeLast[j - 2] + 1);
                }
            }
            int[] free = beforeLast;
            beforeLast = last;
            last = row;
            row = free;
        }
        return last[b.length()];
    }
}
