package rainlap.paper;

import java.util.List;
import java.util.Optional;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamWriter;

/** Writes marks as SVG elements, attributes always in the same order. */
final class SvgMarks {

    private final XMLStreamWriter xml;
    private final StringBuilder scratch = new StringBuilder(256);
    private int clips;

    SvgMarks(XMLStreamWriter xml) {
        this.xml = xml;
    }

    void writeAll(List<Mark> marks) throws XMLStreamException {
        for (Mark mark : marks) {
            write(mark);
        }
    }

    private void write(Mark mark) throws XMLStreamException {
        if (mark instanceof Group group) {
            writeGroup(group);
        } else if (mark instanceof Clip clip) {
            writeClip(clip);
        } else if (mark instanceof Halo halo) {
            writeShape(halo.of(), Paint.halo(halo));
        } else if (!(mark instanceof Strokes strokes && strokes.segments().isEmpty())) {
            writeShape(mark, Paint.of(mark));
        }
    }

    private void writeGroup(Group group) throws XMLStreamException {
        xml.writeStartElement("g");
        if (group.id().isPresent()) {
            xml.writeAttribute("id", group.id().get());
        }
        if (!group.classes().isEmpty()) {
            xml.writeAttribute("class", String.join(" ", group.classes()));
        }
        for (Group.Datum datum : group.data()) {
            xml.writeAttribute("data-" + datum.key(), PrintableText.of(datum.value()));
        }
        newLine();
        if (group.title().isPresent()) {
            xml.writeStartElement("title");
            xml.writeCharacters(PrintableText.of(group.title().get()));
            xml.writeEndElement();
            newLine();
        }
        writeAll(group.marks());
        xml.writeEndElement();
        newLine();
    }

    private void writeClip(Clip clip) throws XMLStreamException {
        String id = "clip-" + ++clips;
        xml.writeStartElement("clipPath");
        xml.writeAttribute("id", id);
        xml.writeEmptyElement("path");
        xml.writeAttribute("d", rings(clip.region()));
        xml.writeAttribute("clip-rule", "evenodd");
        xml.writeEndElement();
        newLine();
        xml.writeStartElement("g");
        xml.writeAttribute("clip-path", "url(#" + id + ")");
        newLine();
        writeAll(clip.marks());
        xml.writeEndElement();
        newLine();
    }

    private void writeShape(Mark mark, Paint paint) throws XMLStreamException {
        if (mark instanceof Text text) {
            writeText(text, paint);
            return;
        }
        xml.writeEmptyElement(mark instanceof Disc ? "circle" : "path");
        if (mark instanceof Disc disc) {
            writeNumber("cx", disc.centre().x());
            writeNumber("cy", disc.centre().y());
            writeNumber("r", disc.radius());
        } else if (mark instanceof Polyline line) {
            xml.writeAttribute("d", path(line.points()));
        } else if (mark instanceof Strokes strokes) {
            xml.writeAttribute("d", strokes(strokes.segments()));
        } else if (mark instanceof Area area) {
            xml.writeAttribute("d", rings(area.region()));
            if (area.region().rings().size() > 1) {
                xml.writeAttribute("fill-rule", "evenodd");
            }
        }
        writePaint(paint);
        newLine();
    }

    private void writeText(Text text, Paint paint) throws XMLStreamException {
        TextStyle style = text.style();
        xml.writeStartElement("text");
        writeNumber("x", text.at().x());
        writeNumber("y", text.at().y());
        writeNumber("font-size", style.fontSize());
        xml.writeAttribute("font-weight", Integer.toString(style.weight().css()));
        if (style.anchor() != Anchor.START) {
            xml.writeAttribute("text-anchor", style.anchor() == Anchor.MIDDLE ? "middle" : "end");
        }
        if (style.rotation() != 0) {
            xml.writeAttribute("transform", "rotate(" + PaperNumber.of(style.rotation()) + " "
                    + PaperNumber.of(text.at().x()) + " " + PaperNumber.of(text.at().y()) + ")");
        }
        writePaint(paint);
        xml.writeCharacters(BidiLine.marked(text.text()));
        xml.writeEndElement();
        newLine();
    }

    private void writePaint(Paint paint) throws XMLStreamException {
        xml.writeAttribute("fill", paint.fill().isPresent() ? paint.fill().get().tone().css() : "none");
        if (paint.fill().isPresent() && paint.fill().get().opacity() < 1) {
            writeNumber("fill-opacity", paint.fill().get().opacity());
        }
        if (paint.width() > 0) {
            xml.writeAttribute("stroke", paint.stroke().css());
            writeNumber("stroke-width", paint.width());
        }
        if (!paint.dashes().isEmpty()) {
            scratch.setLength(0);
            for (double dash : paint.dashes()) {
                scratch.append(scratch.length() > 0 ? " " : "");
                PaperNumber.append(scratch, dash);
            }
            xml.writeAttribute("stroke-dasharray", scratch.toString());
        }
        if (paint.round()) {
            xml.writeAttribute("stroke-linejoin", "round");
        }
    }

    private void writeNumber(String name, double value) throws XMLStreamException {
        scratch.setLength(0);
        PaperNumber.append(scratch, value);
        xml.writeAttribute(name, scratch.toString());
    }

    private String path(List<PaperPoint> points) {
        scratch.setLength(0);
        append(points);
        return scratch.toString();
    }

    private String rings(PaperRegion region) {
        scratch.setLength(0);
        for (List<PaperPoint> ring : region.rings()) {
            append(ring);
            scratch.append('Z');
        }
        return scratch.toString();
    }

    private String strokes(List<PaperSegment> segments) {
        scratch.setLength(0);
        for (PaperSegment s : segments) {
            step('M', s.from());
            step('L', s.to());
        }
        return scratch.toString();
    }

    private void append(List<PaperPoint> points) {
        char command = 'M';
        for (PaperPoint p : points) {
            step(command, p);
            command = 'L';
        }
    }

    private void step(char command, PaperPoint p) {
        scratch.append(command);
        PaperNumber.append(scratch, p.x());
        scratch.append(' ');
        PaperNumber.append(scratch, p.y());
    }

    private void newLine() throws XMLStreamException {
        xml.writeCharacters("\n");
    }

    /** Fill and line of an element; width 0 is no line. */
    private record Paint(Optional<Fill> fill, Tone stroke, double width, List<Double> dashes, boolean round) {

        static Paint of(Mark mark) {
            if (mark instanceof Text text) {
                return new Paint(Optional.of(Fill.of(text.style().tone())), Tone.INK, 0, List.of(), false);
            }
            Optional<Fill> fill = mark instanceof Area area ? area.fill()
                    : mark instanceof Disc disc ? disc.fill() : Optional.empty();
            Optional<Edge> edge = edge(mark);
            return edge.isEmpty() ? new Paint(fill, Tone.INK, 0, List.of(), false)
                    : new Paint(fill, edge.get().tone(), edge.get().pen().width(), edge.get().pen().dashes(), false);
        }

        static Paint halo(Halo halo) {
            boolean closed = halo.of() instanceof Area || halo.of() instanceof Disc || halo.of() instanceof Text;
            return new Paint(closed ? Optional.of(Fill.of(halo.ground())) : Optional.empty(), halo.ground(),
                    halo.width(), List.of(), true);
        }

        private static Optional<Edge> edge(Mark mark) {
            if (mark instanceof Polyline line) {
                return Optional.of(line.edge());
            }
            if (mark instanceof Strokes strokes) {
                return Optional.of(strokes.edge());
            }
            return mark instanceof Area area ? area.edge() : mark instanceof Disc disc ? disc.edge() : Optional.empty();
        }
    }
}
