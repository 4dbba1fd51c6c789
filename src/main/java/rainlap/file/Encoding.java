package rainlap.file;

import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CoderResult;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;

/** Whether bytes are UTF-8 text at all. */
final class Encoding {
    private static final int CHUNK = 8192;

    private Encoding() {}

    /** Notes the first byte that is none of a UTF-8 text. */
    static boolean isSound(SourceText source, Problems problems) {
        byte[] b = source.bytes();
        if (b.length >= 2 && ((b[0] & 0xFF) == 0xFE && (b[1] & 0xFF) == 0xFF || (b[0] & 0xFF) == 0xFF && (b[1] & 0xFF) == 0xFE)) {
            problems.add(0, "the file is written in UTF-16", "save it as UTF-8");
            return false;
        }
        for (int i = 0; i < b.length; i++) {
            if (b[i] == 0) {
                problems.add(i, "a zero byte: this is no text file", "save the elevation as JSON in UTF-8");
                return false;
            }
        }
        int bad = firstBad(b);
        if (bad >= 0) {
            problems.add(bad, "a byte here is not UTF-8", "save the file as UTF-8");
        }
        return bad < 0;
    }

    private static int firstBad(byte[] bytes) {
        CharsetDecoder decoder = StandardCharsets.UTF_8.newDecoder().onMalformedInput(CodingErrorAction.REPORT)
                .onUnmappableCharacter(CodingErrorAction.REPORT);
        ByteBuffer in = ByteBuffer.wrap(bytes);
        CharBuffer out = CharBuffer.allocate(CHUNK);
        while (true) {
            CoderResult r = decoder.decode(in, out, true);
            if (r.isError()) {
                return in.position();
            }
            if (r.isUnderflow()) {
                return -1;
            }
            out.clear();
        }
    }
}
