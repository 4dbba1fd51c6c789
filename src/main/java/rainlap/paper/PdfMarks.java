package rainlap.paper;

import java.io.IOException;
import java.util.List;
import java.util.Map;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.font.PDType0Font;
import org.apache.pdfbox.pdmodel.graphics.state.PDExtendedGraphicsState;

/** Writes marks as the content of a PDF page whose units are printed millimetres, y down. */
final class PdfMarks {
    /** A quarter of a circle as one Bezier curve: how far its handles reach, as a share of the radius. */
    private static final double HANDLE = 0.5522847498;

    private final PDPageContentStream out;
    private final PdfTexts texts;

    PdfMarks(PDPageContentStream out, Map<Weight, PDType0Font> fonts) {
        this.out = out;
        this.texts = new PdfTexts(out, fonts);
    }

    void writeAll(List<Mark> marks) throws IOException {
        for (Mark m : marks) {
            write(m);
        }
    }

    private void write(Mark mark) throws IOException {
        if (mark instanceof Group group) {
            writeAll(group.marks());
        } else if (mark instanceof Clip clip) {
            out.saveGraphicsState();
            rings(clip.region());
            out.clipEvenOdd();
            writeAll(clip.marks());
            out.restoreGraphicsState();
        } else if (mark instanceof Halo halo) {
            halo(halo);
        } else if (mark instanceof Text text) {
            colour(text.style().tone());
            texts.write(text);
        } else if (mark instanceof Polyline line) {
            stroke(line.edge());
            path(line.points());
            out.stroke();
        } else if (mark instanceof Strokes strokes && !strokes.segments().isEmpty()) {
            stroke(strokes.edge());
            for (PaperSegment s : strokes.segments()) {
                path(List.of(s.from(), s.to()));
            }
            out.stroke();
        } else if (mark instanceof Area area) {
            filled(area.fill().orElse(null), area.edge().orElse(null), () -> rings(area.region()));
        } else if (mark instanceof Disc disc) {
            filled(disc.fill().orElse(null), disc.edge().orElse(null), () -> circle(disc));
        }
    }

    /** What traces a path. */
    private interface Shape {
        void trace() throws IOException;
    }

    private void filled(Fill fill, Edge edge, Shape shape) throws IOException {
        if (fill != null) {
            out.saveGraphicsState();
            colour(fill.tone());
            if (fill.opacity() < 1) {
                PDExtendedGraphicsState thin = new PDExtendedGraphicsState();
                thin.setNonStrokingAlphaConstant((float) fill.opacity());
                out.setGraphicsStateParameters(thin);
            }
            shape.trace();
            out.fillEvenOdd();
            out.restoreGraphicsState();
        }
        if (edge != null) {
            stroke(edge);
            shape.trace();
            out.stroke();
        }
    }

    /** The same shape in the tone of the ground, filled and as wide as the halo, with round corners. */
    private void halo(Halo halo) throws IOException {
        out.saveGraphicsState();
        colour(halo.ground());
        line(halo.ground(), halo.width(), List.of());
        out.setLineJoinStyle(1);
        Mark of = halo.of();
        if (of instanceof Text text) {
            texts.outline(text);
        } else if (of instanceof Area area) {
            rings(area.region());
        } else if (of instanceof Disc disc) {
            circle(disc);
        } else if (of instanceof Polyline line) {
            path(line.points());
        } else if (of instanceof Strokes strokes) {
            for (PaperSegment s : strokes.segments()) {
                path(List.of(s.from(), s.to()));
            }
        }
        if (of instanceof Polyline || of instanceof Strokes) {
            out.stroke();
        } else {
            out.fillAndStrokeEvenOdd();
        }
        out.restoreGraphicsState();
    }

    private void colour(Tone tone) throws IOException {
        out.setNonStrokingColor(part(tone, 1), part(tone, 3), part(tone, 5));
    }

    private static float part(Tone tone, int at) {
        return Integer.parseInt(tone.hex().substring(at, at + 2), 16) / 255f;
    }

    private void stroke(Edge edge) throws IOException {
        line(edge.tone(), edge.pen().width(), edge.pen().dashes());
    }

    private void line(Tone tone, double width, List<Double> dashes) throws IOException {
        out.setStrokingColor(part(tone, 1), part(tone, 3), part(tone, 5));
        out.setLineWidth((float) width);
        float[] pattern = new float[dashes.size()];
        for (int i = 0; i < pattern.length; i++) {
            pattern[i] = dashes.get(i).floatValue();
        }
        out.setLineDashPattern(pattern, 0);
    }

    private void path(List<PaperPoint> points) throws IOException {
        for (int i = 0; i < points.size(); i++) {
            float x = (float) points.get(i).x(), y = (float) points.get(i).y();
            if (i == 0) {
                out.moveTo(x, y);
            } else {
                out.lineTo(x, y);
            }
        }
    }

    private void rings(PaperRegion region) throws IOException {
        for (List<PaperPoint> ring : region.rings()) {
            path(ring);
            out.closePath();
        }
    }

    private void circle(Disc d) throws IOException {
        float x = (float) d.centre().x(), y = (float) d.centre().y(), r = (float) d.radius(), h = (float) (d.radius() * HANDLE);
        out.moveTo(x + r, y);
        out.curveTo(x + r, y + h, x + h, y + r, x, y + r);
        out.curveTo(x - h, y + r, x - r, y + h, x - r, y);
        out.curveTo(x - r, y - h, x - h, y - r, x, y - r);
        out.curveTo(x + h, y - r, x + r, y - h, x + r, y);
        out.closePath();
    }
}
