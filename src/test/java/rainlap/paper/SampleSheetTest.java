package rainlap.paper;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;

class SampleSheetTest {

    @Test
    void aSheetWithEveryKindOfMarkIsSound() {
        assertEquals(List.of(), SheetCheck.of(SampleSheet.of()));
    }

    @Test
    void theSameSheetHasTheSameBytesInEveryLocale() throws Exception {
        byte[] first = svg();
        Locale before = Locale.getDefault();
        try {
            Locale.setDefault(Locale.forLanguageTag("ar-EG-u-nu-arab"));
            assertArrayEquals(first, svg());
        } finally {
            Locale.setDefault(before);
        }
    }

    @Test
    void streamAndWriterAgreeAndNothingIsFetched() throws Exception {
        String svg = new String(svg(), StandardCharsets.UTF_8);
        StringWriter out = new StringWriter();
        SvgWriter.write(SampleSheet.of(), out);
        assertEquals(svg, out.toString());
        assertTrue(svg.startsWith("<?xml version=\"1.0\" encoding=\"UTF-8\"?>"), svg.substring(0, 60));
        assertFalse(svg.replace("http://www.w3.org/2000/svg", "").contains("http"));
        assertFalse(svg.contains("href"));
    }

    /** Leaves both files in {@code target/sample}, to be looked at. */
    @Test
    void theSheetIsPainted() throws Exception {
        Path folder = Files.createDirectories(Path.of("target", "sample"));
        Files.write(folder.resolve("sheet.svg"), svg());
        ByteArrayOutputStream png = new ByteArrayOutputStream();
        PngWriter.write(SampleSheet.of(), 150, png);
        Files.write(folder.resolve("sheet.png"), png.toByteArray());
        assertTrue(png.size() > 50_000, "size " + png.size());
    }

    private static byte[] svg() throws Exception {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        SvgWriter.write(SampleSheet.of(), out);
        return out.toByteArray();
    }
}
