package rainlap.wall;

import java.util.Arrays;
import java.util.Optional;

/** What one side of the wall's outline is. */
public enum EdgeRole {
    BASE("base"), EAVE("eave"), VERGE("verge"), PARAPET("parapet"), EXTERNAL_CORNER("external-corner"),
    INTERNAL_CORNER("internal-corner"), FREE("free");

    private final String word;

    EdgeRole(String word) {
        this.word = word;
    }

    public String word() {
        return word;
    }

    public boolean isCorner() {
        return this == EXTERNAL_CORNER || this == INTERNAL_CORNER;
    }

    public static Optional<EdgeRole> find(String word) {
        return Arrays.stream(values()).filter(r -> r.word.equals(word)).findFirst();
    }
}
