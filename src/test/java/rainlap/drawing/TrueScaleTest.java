package rainlap.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.awt.geom.Point2D;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.contentstream.PDFGraphicsStreamEngine;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.graphics.image.PDImage;
import org.junit.jupiter.api.Test;
import rainlap.check.CheckResult;
import rainlap.check.Checker;
import rainlap.file.ElevationFile;
import rainlap.paper.PdfWriter;
import rainlap.paper.Sheet;
import rainlap.practice.Practices;
import rainlap.wall.Elevation;
import rainlap.wall.Stage;

/** A wall as long on the printed page as its scale says, measured on the page. */
class TrueScaleTest {
    @Test void aWallOf3600At1To20Is180Long() throws IOException {
        Elevation e = ElevationFile.read(Path.of("elevations/estuary-hut-north.json")).elevation().orElseThrow();
        assertEquals(360_000, e.outline().box().width());
        CheckResult result = Checker.check(e, Stage.WRAP, Practices.find(e.practice().orElseThrow()).orElseThrow());
        assertEquals(180, measured(Sheets.of(result, TitleBlock.BLANK), 180), 0.1);
        assertEquals(72, measured(Sheets.of(result, TitleBlock.BLANK, Sheets.Paper.A4), 72), 0.1, "1:50 on A4");
    }

    /** The level line on the first page that is nearest to a length, mm. */
    private static double measured(List<Sheet> sheets, double about) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        PdfWriter.write(sheets, out);
        try (PDDocument pdf = Loader.loadPDF(out.toByteArray())) {
            assertEquals(sheets.size(), pdf.getNumberOfPages());
            return new Ruler(pdf.getPage(0)).lengths().stream().min(Comparator.comparingDouble(mm -> Math.abs(mm - about))).orElseThrow();
        }
    }

    /** Measures the level lines of 0.7 that are stroked on a page, mm. */
    private static final class Ruler extends PDFGraphicsStreamEngine {
        private final List<Double> lengths = new ArrayList<>();
        private final List<double[]> pending = new ArrayList<>();
        private Point2D at = new Point2D.Double();

        Ruler(PDPage page) {
            super(page);
        }

        List<Double> lengths() throws IOException {
            processPage(getPage());
            return lengths;
        }

        @Override public void moveTo(float x, float y) {
            at = new Point2D.Double(x, y);
        }

        @Override public void lineTo(float x, float y) {
            pending.add(new double[] {at.getX(), at.getY(), x, y});
            at = new Point2D.Double(x, y);
        }

        @Override public void strokePath() {
            double scale = Math.abs(getGraphicsState().getCurrentTransformationMatrix().getScaleX());
            if (Math.abs(getGraphicsState().getLineWidth() * scale / 72 * 25.4 - 0.7) < 0.01) {
                pending.stream().filter(l -> Math.abs(l[1] - l[3]) < 0.01).forEach(l -> lengths.add(Math.abs(l[2] - l[0]) / 72 * 25.4));
            }
            pending.clear();
        }

        @Override public void fillPath(int rule) {
            pending.clear();
        }

        @Override public void fillAndStrokePath(int rule) {
            pending.clear();
        }

        @Override public void endPath() {
            pending.clear();
        }

        @Override public Point2D getCurrentPoint() {
            return at;
        }

        @Override public void appendRectangle(Point2D a, Point2D b, Point2D c, Point2D d) {}

        @Override public void drawImage(PDImage image) {}

        @Override public void clip(int rule) {}

        @Override public void curveTo(float ax, float ay, float bx, float by, float cx, float cy) {
            at = new Point2D.Double(cx, cy);
        }

        @Override public void closePath() {}

        @Override public void shadingFill(COSName name) {}
    }
}
