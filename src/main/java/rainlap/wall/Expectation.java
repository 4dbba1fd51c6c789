package rainlap.wall;

import java.util.List;

/** A finding that a case or lesson must give: the rule's id and the pieces it names, in any order. */
public record Expectation(String rule, List<String> pieces) {
    public Expectation {
        pieces = List.copyOf(pieces);
    }
}
