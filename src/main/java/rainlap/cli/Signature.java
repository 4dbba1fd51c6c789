package rainlap.cli;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.zip.CRC32;
import rainlap.paper.PdfWriter;
import rainlap.report.Lists;

/**
 * The mark by which Rainlap knows its own files, so that it never replaces anything else: the first key of a findings file, a comment
 * at the end of a drawing in SVG, a text chunk in a PNG, the producer of a PDF, the headings of a list as CSV, the archive's comment of a
 * list as XLSX.
 */
final class Signature {
    /** Stands at the end of every SVG written. */
    static final String SVG = "<!-- drawn by Rainlap -->\n";

    private static final String FINDINGS = "{\n  \"findings\": ";
    private static final byte[] CHUNK = chunk("Software\0Rainlap");
    /** The eight bytes every PNG begins with, and its header chunk. */
    private static final int PNG_HEAD = 8 + 25;

    private Signature() {}

    /** Whether a file may be replaced: Rainlap wrote it, or it is empty. */
    static boolean isOn(Path file) throws IOException {
        long size = Files.size(file);
        if (size == 0) {
            return true;
        }
        try (RandomAccessFile bytes = new RandomAccessFile(file.toFile(), "r")) {
            return holds(bytes, 0, FINDINGS.getBytes(StandardCharsets.UTF_8)) || holds(bytes, PNG_HEAD, CHUNK)
                    || holds(bytes, size - SVG.length(), SVG.getBytes(StandardCharsets.UTF_8))
                    || isList(bytes) || isPdf(file, bytes);
        }
    }

    /** A list that was given a further column, or saved by a spreadsheet, is somebody's own. */
    private static boolean isList(RandomAccessFile bytes) throws IOException {
        for (String line : Lists.firstLines()) {
            if (holds(bytes, 0, line.getBytes(StandardCharsets.UTF_8))) {
                return true;
            }
        }
        return holds(bytes, bytes.length() - Lists.WORKBOOK_END.length(), Lists.WORKBOOK_END.getBytes(StandardCharsets.UTF_8));
    }

    /** Its producer is read only where it is a PDF. */
    private static boolean isPdf(Path file, RandomAccessFile bytes) throws IOException {
        return holds(bytes, 0, "%PDF-".getBytes(StandardCharsets.US_ASCII)) && PdfWriter.isOurs(file);
    }

    private static boolean holds(RandomAccessFile bytes, long at, byte[] wanted) throws IOException {
        if (at < 0 || bytes.length() < at + wanted.length) {
            return false;
        }
        byte[] found = new byte[wanted.length];
        bytes.seek(at);
        bytes.readFully(found);
        return java.util.Arrays.equals(found, wanted);
    }

    /** A PNG with the mark after its header. */
    static byte[] onPng(byte[] png) {
        return ByteBuffer.allocate(png.length + CHUNK.length).put(png, 0, PNG_HEAD).put(CHUNK)
                .put(png, PNG_HEAD, png.length - PNG_HEAD).array();
    }

    /** A text chunk as the PNG specification lays it out: length, type, data, check sum of type and data. */
    private static byte[] chunk(String text) {
        byte[] body = ("tEXt" + text).getBytes(StandardCharsets.ISO_8859_1);
        CRC32 sum = new CRC32();
        sum.update(body);
        return ByteBuffer.allocate(body.length + 8).putInt(body.length - 4).put(body).putInt((int) sum.getValue()).array();
    }
}
