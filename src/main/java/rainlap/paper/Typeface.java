package rainlap.paper;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.EnumMap;
import java.util.Map;

/** The typeface that ships: Barlow Semi Condensed, SIL Open Font License 1.1, one TrueType file for each weight. */
final class Typeface {

    /** Our name for the embedded subset: a machine's own copy of the family is never mixed in. */
    static final String EMBEDDED_FAMILY = "Rainlap Sheet";
    /** Name of the family as the fonts themselves give it. */
    static final String FAMILY = "Barlow Semi Condensed";
    /** Value of {@code font-family}: the embedded font, the family where a program ignores embedded fonts, any. */
    static final String FAMILIES = "'" + EMBEDDED_FAMILY + "','" + FAMILY + "',sans-serif";

    private static final Map<Weight, byte[]> FILES = new EnumMap<>(Weight.class);
    private static final Map<Weight, TrueType> FONTS = new EnumMap<>(Weight.class);

    static {
        for (Weight weight : Weight.values()) {
            byte[] bytes = read("/fonts/" + weight.fileName());
            FILES.put(weight, bytes);
            FONTS.put(weight, new TrueType(bytes));
        }
    }

    private Typeface() {
    }

    static TrueType font(Weight weight) {
        return FONTS.get(weight);
    }

    /** The complete font file. */
    static byte[] file(Weight weight) {
        return FILES.get(weight).clone();
    }

    private static byte[] read(String resource) {
        try (InputStream in = Typeface.class.getResourceAsStream(resource)) {
            if (in == null) {
                throw new IllegalStateException("the font " + resource + " is missing from the program");
            }
            return in.readAllBytes();
        } catch (IOException e) {
            throw new UncheckedIOException("the font " + resource + " cannot be read", e);
        }
    }
}
