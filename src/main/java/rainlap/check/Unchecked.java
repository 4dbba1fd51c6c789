package rainlap.check;

import java.util.List;

/** Something a rule could not judge, and why. */
public record Unchecked(String rule, List<String> pieces, String why) {
    public Unchecked {
        pieces = List.copyOf(pieces);
    }
}
