package rainlap.cli;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import rainlap.paper.PdfWriter;
import rainlap.paper.PngWriter;
import rainlap.paper.Sheet;
import rainlap.paper.Shown;
import rainlap.paper.SvgWriter;

/** Writes the sheets of drawings: the first to the place that was asked for, further ones beside it, numbered; all of them in one PDF. */
final class SheetFiles {
    static final int LEAST_DPI = 30;
    static final int MOST_DPI = 1200;

    private final OutputFiles outputs;
    private final int dpi;

    /** @param dpi dots per inch of a PNG */
    SheetFiles(OutputFiles outputs, int dpi) {
        this.outputs = outputs;
        this.dpi = dpi;
    }

    /**
     * Writes all sheets of one drawing aside.
     *
     * @param first the place of the first sheet, claimed already
     * @return all their places
     */
    List<Path> write(Path first, List<Sheet> sheets) {
        if (OutputNames.form(first) == OutputNames.Form.PDF) {
            outputs.write(first, out -> PdfWriter.write(sheets, out));
            return List.of(first);
        }
        List<Path> places = new ArrayList<>();
        for (int n = 1; n <= sheets.size(); n++) {
            Path place = OutputNames.sheet(first, n);
            if (n > 1) {
                outputs.claimInNewFolder(place);
            }
            write(place, sheets.get(n - 1));
            places.add(place);
        }
        return places;
    }

    private void write(Path place, Sheet sheet) {
        outputs.write(place, out -> {
            if (OutputNames.form(place) == OutputNames.Form.PNG) {
                ByteArrayOutputStream png = new ByteArrayOutputStream();
                PngWriter.write(sheet, dpi, png);
                out.write(Signature.onPng(png.toByteArray()));
            } else {
                SvgWriter.write(sheet, out);
                out.write(Signature.SVG.getBytes(StandardCharsets.UTF_8));
            }
        });
    }

    /** What a reader of some sheets must know: characters that are not shown, and a sheet left from an earlier run. */
    static List<String> notes(List<Path> written, List<Sheet> sheets) {
        List<String> out = new ArrayList<>();
        String lacking = OutputNames.form(written.get(0)) == OutputNames.Form.SVG ? "" : Shown.lacking(sheets);
        if (!lacking.isEmpty()) {
            out.add("\"?\" stands on the sheet for " + lacking + ": neither its typeface nor a font of this machine has it. SVG and HTML keep it.");
        }
        leftOver(written).forEach(p -> out.add("left from an earlier run, not part of this drawing: " + p));
        return out;
    }

    /** A sheet that an earlier run wrote beside these and that does not belong to them. */
    static List<Path> leftOver(List<Path> written) {
        Path next = OutputNames.sheet(written.get(0), written.size() + 1);
        try {
            return Files.isRegularFile(next) && Signature.isOn(next) ? List.of(next) : List.of();
        } catch (IOException e) {
            return List.of();
        }
    }
}
