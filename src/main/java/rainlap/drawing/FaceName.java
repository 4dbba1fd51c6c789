package rainlap.drawing;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import rainlap.paper.PaperBox;
import rainlap.paper.PaperRegion;
import rainlap.paper.PaperSegment;
import rainlap.paper.Text;
import rainlap.paper.TextMetrics;

/** What the sheet on a wall's face is called beside a corner seen close to, clear of what is stuck onto it. */
final class FaceName {
    /** From the drawing's end, from place to place, and to what is stuck on, printed mm. */
    private static final double INSET = 1.2;
    private static final double NUDGE = 1;
    private static final double[] CLEAR = {0.8, 0.2};
    private static final double LONGEST = 18;
    private static final double[] SHARES = {0.5, 0.3, 0.7};

    private FaceName() {}

    /**
     * The words in a strip of the face: in the middle of its height or nearer to an edge, the piece's name alone where no more finds room.
     *
     * @param stuck what is stuck onto the face
     */
    static Optional<Text> in(PaperBox strip, String id, List<PaperRegion> stuck) {
        String name = TextMetrics.shorten(id, LONGEST, Looks.STRONG);
        return Arrays.stream(CLEAR).boxed().flatMap(clear -> Stream.of(name + " on the face", name).flatMap(words -> places(strip, words))
                .filter(t -> stuck.stream().noneMatch(s -> meets(s, t.box().grown(clear))))).findFirst();
    }

    private static Stream<Text> places(PaperBox strip, String words) {
        double room = strip.width() - 2 * INSET - TextMetrics.width(words, Looks.STRONG), high = Looks.STRONG.capHeight();
        return DoubleStream.of(SHARES).boxed().flatMap(share -> IntStream.rangeClosed(0, (int) Math.floor(room / NUDGE))
                .mapToObj(i -> Text.of(strip.left() + INSET + i * NUDGE, strip.top() + share * strip.height() + high / 2, words, Looks.STRONG)));
    }

    private static boolean meets(PaperRegion r, PaperBox b) {
        return r.holds(b.middle()) || r.rings().stream().anyMatch(ring -> IntStream.range(0, ring.size())
                .anyMatch(i -> b.meets(new PaperSegment(ring.get(i), ring.get((i + 1) % ring.size())))));
    }
}
