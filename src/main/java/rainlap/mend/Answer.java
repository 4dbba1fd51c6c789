package rainlap.mend;

import java.util.Optional;

/**
 * What a weak point's place looks like mended, or why that is not drawn.
 *
 * @param mended empty where there is nothing sound to draw
 * @param why then, in words that go on after a colon, with a full stop; empty otherwise
 */
public record Answer(Optional<Mended> mended, String why) {
    static Answer of(Mended mended) {
        return new Answer(Optional.of(mended), "");
    }

    static Answer none(String why) {
        return new Answer(Optional.empty(), why);
    }

    /** The sentence that stands where a mended cut would; empty where there is one. */
    public Optional<String> sentence() {
        return mended.isPresent() ? Optional.empty() : Optional.of("No mended cut is drawn: " + why);
    }
}
