package rainlap.paper;

import java.io.StringWriter;
import java.util.BitSet;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import javax.xml.stream.XMLOutputFactory;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamWriter;

/** What a page of HTML takes from paper: marks as elements of an SVG inside it, and the typeface. */
public final class PageParts {
    private PageParts() {}

    /** The elements of some marks, to stand inside an {@code svg} element; same marks, same text. */
    public static String svg(List<Mark> marks) {
        StringWriter out = new StringWriter();
        try {
            XMLStreamWriter xml = XMLOutputFactory.newDefaultFactory().createXMLStreamWriter(out);
            new SvgMarks(xml).writeAll(marks);
            xml.flush();
        } catch (XMLStreamException e) {
            throw new IllegalStateException("text takes whatever is written to it", e);
        }
        return out.toString();
    }

    /** Value of {@code viewBox}. */
    public static String viewBox(PaperBox b) {
        return PaperNumber.of(b.left()) + " " + PaperNumber.of(b.top()) + " " + PaperNumber.of(b.width()) + " " + PaperNumber.of(b.height());
    }

    /** A number as SVG has it. */
    public static String number(double v) {
        return PaperNumber.of(v);
    }

    /** Value of {@code font-family}. */
    public static String families() {
        return Typeface.FAMILIES;
    }

    /** Style rules that carry the typeface with a page, in every weight, as far as its text needs it. */
    public static String fonts(String text) {
        BitSet characters = new BitSet();
        text.codePoints().forEach(characters::set);
        Map<Weight, BitSet> used = new EnumMap<>(Weight.class);
        for (Weight weight : Weight.values()) {
            used.put(weight, characters);
        }
        return EmbeddedFonts.css(used);
    }
}
