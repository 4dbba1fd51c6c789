package rainlap.paper;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.StringReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class PngWriterTest {

    private static final int DPI = 127;
    private static final double PIXELS_PER_MM = DPI / 25.4;

    @TempDir
    private Path folder;

    @Test
    void theScaleIsTrue() throws Exception {
        BufferedImage picture = paint(new Sheet(SheetSize.A3, "t", "en",
                List.of(Area.filled(PaperRegion.of(new PaperBox(100, 50, 200, 80)), Tone.of("#000000")))), DPI);
        assertEquals(2100, picture.getWidth());
        assertEquals(1485, picture.getHeight());
        assertEquals(0xFFFFFF, rgb(picture, 99.7, 60));
        assertEquals(0x000000, rgb(picture, 100.3, 60));
        assertEquals(0x000000, rgb(picture, 199.7, 79.7));
        assertEquals(0xFFFFFF, rgb(picture, 200.3, 80.3));
    }

    @Test
    void textIsPaintedInTheEmbeddedTypefaceAsWideAsMeasured() throws Exception {
        for (Weight weight : Weight.values()) {
            Text text = Text.of(50, 100, "H reversed lap 100, ticks point uphill H", TextStyle.of(7).with(weight));
            BufferedImage picture = paint(new Sheet(SheetSize.A3, "t", "en", List.of(text)), DPI);
            PaperBox ink = ink(picture);
            double bearing = 0.09 * 10;
            assertEquals(50 + bearing, ink.left(), 0.4, weight.toString());
            assertEquals(50 + text.width() - bearing, ink.right(), 0.4, weight.toString());
            assertEquals(text.box().top(), ink.top(), 0.3);
            assertEquals(text.box().bottom(), ink.bottom(), 0.3);
        }
    }

    @Test
    void lettersTheTypefaceLacksAreNotLeftOut() throws Exception {
        Text text = Text.of(50, 100, "Ж", TextStyle.of(7));
        PaperBox ink = ink(paint(new Sheet(SheetSize.A3, "t", "en", List.of(text)), DPI));
        assertTrue(ink.width() > 2 && text.box().grown(1).holds(ink), ink.toString());
    }

    @Test
    void nothingIsTakenFromFilesOrRunAsScript() throws Exception {
        Path secret = folder.resolve("secret.png");
        BufferedImage black = new BufferedImage(40, 40, BufferedImage.TYPE_INT_RGB);
        ImageIO.write(black, "png", secret.toFile());
        String head = "<svg xmlns=\"http://www.w3.org/2000/svg\" xmlns:xlink=\"http://www.w3.org/1999/xlink\""
                + " width=\"420mm\" height=\"297mm\" viewBox=\"0 0 420 297\">";
        String image = head + "<image x=\"10\" y=\"10\" width=\"100\" height=\"100\" xlink:href=\"" + secret.toUri() + "\"/></svg>";
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        assertThrows(IOException.class, () -> PngWriter.write(new StringReader(image), SheetSize.A3, DPI, out));
        assertEquals(0, out.size(), "nothing is written when a drawing is refused");
        String script = head + "<script type=\"text/ecmascript\">throw 1</script><rect width=\"5\" height=\"5\"/></svg>";
        PngWriter.write(new StringReader(script), SheetSize.A3, DPI, out);
        assertTrue(out.size() > 0);
    }

    @Test
    void picturesTooLargeAreRefusedWithWhatWouldFit() throws Exception {
        long memory = 512L << 20;
        PngWriter.TooLarge refusal = assertThrows(PngWriter.TooLarge.class, () -> PngWriter.requireRoom(SheetSize.A3, 800, memory));
        int fits = Integer.parseInt(refusal.getMessage().replaceAll(".*at most (\\d+) dpi fits", "$1"));
        PngWriter.requireRoom(SheetSize.A3, fits, memory);
        assertThrows(PngWriter.TooLarge.class, () -> PngWriter.requireRoom(SheetSize.A3, fits + 1, memory));
        assertThrows(PngWriter.TooLarge.class, () -> PngWriter.requireRoom(SheetSize.A3, 2803, Long.MAX_VALUE / 4));
        assertThrows(IllegalArgumentException.class, () -> PngWriter.requireRoom(SheetSize.A3, 0, memory));
    }

    private static BufferedImage paint(Sheet sheet, int dpi) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        PngWriter.write(sheet, dpi, out);
        return ImageIO.read(new ByteArrayInputStream(out.toByteArray()));
    }

    private static int rgb(BufferedImage picture, double xMm, double yMm) {
        return picture.getRGB((int) (xMm * PIXELS_PER_MM), (int) (yMm * PIXELS_PER_MM)) & 0xFFFFFF;
    }

    /** The box of all that is darker than mid grey, in millimetres. */
    private static PaperBox ink(BufferedImage picture) {
        int left = Integer.MAX_VALUE;
        int top = Integer.MAX_VALUE;
        int right = -1;
        int bottom = -1;
        for (int y = 0; y < picture.getHeight(); y++) {
            for (int x = 0; x < picture.getWidth(); x++) {
                if ((picture.getRGB(x, y) & 0xFF) < 128) {
                    left = Math.min(left, x);
                    right = Math.max(right, x + 1);
                    top = Math.min(top, y);
                    bottom = Math.max(bottom, y + 1);
                }
            }
        }
        return new PaperBox(left / PIXELS_PER_MM, top / PIXELS_PER_MM, right / PIXELS_PER_MM, bottom / PIXELS_PER_MM);
    }
}
