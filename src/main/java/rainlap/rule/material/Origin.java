package rainlap.rule.material;

import java.util.Optional;
import rainlap.material.Material;
import rainlap.source.Known;
import rainlap.source.Source;

/** Who gives a figure of a material. */
final class Origin {
    private Origin() {}

    /** The source for a finding: the figure's own; for a figure of the file only that keeping to it is common practice can be said. */
    static Source of(Material m, String key) {
        return m.originOf(key).orElse(Source.commonPractice());
    }

    /** After a figure: {@code (the file's own figure)}, {@code (from memory)}. */
    static String inWords(Material m, String key) {
        Optional<Source> s = m.originOf(key);
        return s.isEmpty() ? "the file's own figure" : s.get().known() == Known.FROM_MEMORY ? "a figure from memory: put the maker's into the file"
                : s.get().text();
    }
}
