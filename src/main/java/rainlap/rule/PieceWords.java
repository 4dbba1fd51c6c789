package rainlap.rule;

import java.util.List;

/** Pieces in sentences. */
public final class PieceWords {
    private PieceWords() {}

    /** {@code M1}, {@code M1 and M2}, {@code M1, M2 and M3}. */
    public static String list(List<String> ids) {
        int last = ids.size() - 1;
        return last < 1 ? String.join("", ids) : String.join(", ", ids.subList(0, last)) + " and " + ids.get(last);
    }

    /** The ids and what they do: {@code M1 stops}, {@code M1 and M2 stop}. */
    public static String does(List<String> ids, String one, String many) {
        return list(ids) + " " + (ids.size() == 1 ? one : many);
    }
}
