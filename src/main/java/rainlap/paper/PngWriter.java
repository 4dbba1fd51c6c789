package rainlap.paper;

import java.awt.Color;
import java.io.IOException;
import java.io.OutputStream;
import java.io.Reader;
import java.io.StringReader;
import java.io.StringWriter;
import org.apache.batik.bridge.EmbededExternalResourceSecurity;
import org.apache.batik.bridge.ExternalResourceSecurity;
import org.apache.batik.bridge.NoLoadScriptSecurity;
import org.apache.batik.bridge.ScriptSecurity;
import org.apache.batik.bridge.UserAgent;
import org.apache.batik.transcoder.SVGAbstractTranscoder;
import org.apache.batik.transcoder.TranscoderException;
import org.apache.batik.transcoder.TranscoderInput;
import org.apache.batik.transcoder.TranscoderOutput;
import org.apache.batik.transcoder.image.ImageTranscoder;
import org.apache.batik.transcoder.image.PNGTranscoder;
import org.apache.batik.util.ParsedURL;

/** Paints a sheet's SVG as PNG on white, at true scale for the stated resolution. Loads nothing from elsewhere. */
public final class PngWriter {

    /** Dots per inch where none are asked for. */
    public static final int DEFAULT_DPI = 200;

    private static final double MM_PER_INCH = 25.4;
    /** Batik's raster holds four bytes a pixel, and painting needs about as much again. */
    private static final long BYTES_PER_PIXEL = 8;
    private static final long MOST_PIXELS_A_SIDE = 46_340;

    private PngWriter() {
    }

    /** The picture would be too large for the memory at hand; the message says what would fit. */
    public static final class TooLarge extends IOException {

        private static final long serialVersionUID = 1L;

        TooLarge(String message) {
            super(message);
        }
    }

    /**
     * Writes the sheet as PNG; the stream stays open.
     *
     * @param dpi dots per inch, 1 or more
     * @throws TooLarge before anything is written, when the picture would not fit the memory
     */
    public static void write(Sheet sheet, int dpi, OutputStream out) throws IOException {
        requireRoom(sheet.size(), dpi, Runtime.getRuntime().maxMemory());
        StringWriter svg = new StringWriter(1 << 16);
        SvgWriter.write(sheet, svg);
        write(new StringReader(Shown.of(svg.toString())), sheet.size(), dpi, out);
    }

    /** Width of the picture in pixels. */
    public static int pixelsAcross(SheetSize size, int dpi) {
        return Math.toIntExact(Math.round(size.width() / MM_PER_INCH * dpi));
    }

    /** Height of the picture in pixels. */
    public static int pixelsDown(SheetSize size, int dpi) {
        return Math.toIntExact(Math.round(size.height() / MM_PER_INCH * dpi));
    }

    static void requireRoom(SheetSize size, int dpi, long memory) throws TooLarge {
        if (dpi < 1) {
            throw new IllegalArgumentException("dots per inch must be 1 or more, not " + dpi);
        }
        double across = size.width() / MM_PER_INCH * dpi;
        double down = size.height() / MM_PER_INCH * dpi;
        double most = Math.min(MOST_PIXELS_A_SIDE / Math.max(across, down),
                Math.sqrt(memory * 0.6 / (across * down * BYTES_PER_PIXEL)));
        if (most < 1) {
            throw new TooLarge(size.word() + " at " + dpi + " dpi is " + Math.round(across) + " x " + Math.round(down)
                    + " pixels, too large for the memory at hand; at most " + (int) (dpi * most) + " dpi fits");
        }
    }

    static void write(Reader svg, SheetSize size, int dpi, OutputStream out) throws IOException {
        PNGTranscoder transcoder = new SealedTranscoder();
        transcoder.addTranscodingHint(SVGAbstractTranscoder.KEY_PIXEL_UNIT_TO_MILLIMETER, (float) (MM_PER_INCH / dpi));
        transcoder.addTranscodingHint(SVGAbstractTranscoder.KEY_WIDTH, (float) pixelsAcross(size, dpi));
        transcoder.addTranscodingHint(SVGAbstractTranscoder.KEY_HEIGHT, (float) pixelsDown(size, dpi));
        transcoder.addTranscodingHint(SVGAbstractTranscoder.KEY_ALLOW_EXTERNAL_RESOURCES, Boolean.FALSE);
        transcoder.addTranscodingHint(SVGAbstractTranscoder.KEY_EXECUTE_ONLOAD, Boolean.FALSE);
        transcoder.addTranscodingHint(ImageTranscoder.KEY_BACKGROUND_COLOR, Color.WHITE);
        try {
            transcoder.transcode(new TranscoderInput(svg), new TranscoderOutput(out));
            out.flush();
        } catch (TranscoderException e) {
            throw new IOException("the drawing could not be painted: " + e.getMessage(), e);
        } catch (OutOfMemoryError e) {
            throw new TooLarge(size.word() + " at " + dpi + " dpi ran out of memory");
        } catch (LinkageError | InternalError e) {
            throw new IOException("a picture needs the machine's font library (on Linux: fontconfig and freetype): " + e, e);
        }
    }

    /** A transcoder that takes from the document itself only: no file, no network, no script. */
    private static final class SealedTranscoder extends PNGTranscoder {

        @Override
        protected UserAgent createUserAgent() {
            return new SealedAgent();
        }

        private final class SealedAgent extends SVGAbstractTranscoderUserAgent {

            @Override
            public ExternalResourceSecurity getExternalResourceSecurity(ParsedURL resource, ParsedURL document) {
                return new EmbededExternalResourceSecurity(resource);
            }

            @Override
            public ScriptSecurity getScriptSecurity(String type, ParsedURL script, ParsedURL document) {
                return new NoLoadScriptSecurity(type);
            }
        }
    }
}
