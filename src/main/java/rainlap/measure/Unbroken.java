package rainlap.measure;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;

/** Where a line of text may be broken: at blanks, but not within a size such as 90 × 120 or a place such as x 450. */
public final class Unbroken {
    private Unbroken() {}

    /**
     * @param fits whether a line has room for a text; what has none is broken after all
     * @return what may stand on lines of its own, in order
     */
    public static List<String> parts(String text, Predicate<String> fits) {
        List<String> out = new ArrayList<>();
        for (String word : text.split(" +")) {
            String last = out.isEmpty() ? "" : out.get(out.size() - 1);
            boolean goesWith = word.equals("×") || last.endsWith("×") || last.equals("x");
            if (goesWith && !last.isEmpty() && fits.test(last + " " + word)) {
                out.set(out.size() - 1, last + " " + word);
            } else {
                out.add(word);
            }
        }
        return out;
    }
}
