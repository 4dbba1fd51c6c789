package rainlap.paper;

import java.io.IOException;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import javax.xml.stream.XMLOutputFactory;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamWriter;

/**
 * Writes a sheet as SVG 1.1 in a stream: one unit is one printed millimetre, the fonts used are embedded, nothing is
 * fetched from elsewhere. Same sheet, same bytes.
 */
public final class SvgWriter {

    private static final String SVG = "http://www.w3.org/2000/svg";

    private SvgWriter() {
    }

    /** Writes the sheet in UTF-8; the stream stays open. */
    public static void write(Sheet sheet, OutputStream out) throws IOException {
        Writer encoder = new OutputStreamWriter(out, StandardCharsets.UTF_8);
        write(sheet, encoder);
        encoder.flush();
    }

    /** Writes the sheet as characters, which say of themselves that they are stored as UTF-8. */
    public static void write(Sheet sheet, Writer out) throws IOException {
        write(sheet, sheet.size().sheet(), out);
    }

    /** Writes what a window on the sheet shows, as large as on the sheet. */
    public static void write(Sheet sheet, PaperBox window, Writer out) throws IOException {
        try {
            XMLStreamWriter xml = XMLOutputFactory.newDefaultFactory().createXMLStreamWriter(new UnlockedWriter(out));
            xml.writeStartDocument("UTF-8", "1.0");
            xml.writeCharacters("\n");
            writeRoot(sheet, window, xml);
            new SvgMarks(xml).writeAll(sheet.marks());
            xml.writeEndElement();
            xml.writeCharacters("\n");
            xml.writeEndDocument();
            xml.flush();
        } catch (XMLStreamException e) {
            throw e.getNestedException() instanceof IOException io ? io : new IOException(e.getMessage(), e);
        }
    }

    private static void writeRoot(Sheet sheet, PaperBox window, XMLStreamWriter xml) throws XMLStreamException {
        String left = PaperNumber.of(window.left()), top = PaperNumber.of(window.top());
        String width = PaperNumber.of(window.width()), height = PaperNumber.of(window.height());
        xml.writeStartElement("svg");
        xml.writeDefaultNamespace(SVG);
        xml.writeAttribute("width", width + "mm");
        xml.writeAttribute("height", height + "mm");
        xml.writeAttribute("viewBox", left + " " + top + " " + width + " " + height);
        xml.writeAttribute("font-family", Typeface.FAMILIES);
        xml.writeAttribute("lang", sheet.language());
        xml.writeCharacters("\n");
        xml.writeStartElement("title");
        xml.writeCharacters(PrintableText.of(sheet.title()));
        xml.writeEndElement();
        xml.writeCharacters("\n");
        xml.writeStartElement("style");
        xml.writeCharacters(EmbeddedFonts.css(sheet.marks()));
        xml.writeEndElement();
        xml.writeCharacters("\n");
        xml.writeEmptyElement("rect");
        if (window.left() != 0 || window.top() != 0) {
            xml.writeAttribute("x", left);
            xml.writeAttribute("y", top);
        }
        xml.writeAttribute("width", width);
        xml.writeAttribute("height", height);
        xml.writeAttribute("fill", "#fff");
        xml.writeCharacters("\n");
    }
}
