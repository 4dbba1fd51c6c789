package rainlap.water;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import rainlap.geom.Box;

/** Streams that come to one gap, side by side: less than 1 mm apart they are one. */
class PoolTest {
    private static final long HIGH = 400, LOW = 100;
    private static final Cell CELL = new Cell(Ground.ofWall(new Box(0, 0, 2_000, 400), null, false), 0, 2_000, Line.level(0, 0, 2_000), Line.level(HIGH, 0, 2_000),
            -1, 0);

    private static Wet stream(long at, boolean running, int cost, long high) {
        return new Wet(CELL, running, cost, at, at + 1, high, high, null, How.RAIN, null);
    }

    private static Wet at(long x) {
        return stream(x, true, 0, HIGH);
    }

    /** Which x are wet, each stretch by itself, after each of some batches has settled. */
    private static List<String> settled(int cost, List<List<Wet>> batches) {
        Pool pool = new Pool();
        for (List<Wet> batch : batches) {
            batch.forEach(pool::add);
            IntStream.rangeClosed(0, cost).forEach(pool::settle);
        }
        return pool.settled().stream().map(w -> w.from() + "-" + w.to()).toList();
    }

    @Test void togetherTheyAreOneIfLessThanAMillimetreParts() {
        assertEquals(List.of("300-400"), settled(0, List.of(List.of(at(399), at(300)))));
        assertEquals(List.of("300-401"), settled(0, List.of(List.of(at(300), at(400)))));
        assertEquals(List.of("300-301", "401-402"), settled(0, List.of(List.of(at(300), at(401)))));
    }

    @Test void oneAfterTheOtherTheLaterFillsWhatPartsThem() {
        assertEquals(List.of("300-301", "301-351"), settled(0, List.of(List.of(at(300)), List.of(at(350)))));
        assertEquals(List.of("350-351", "300-350"), settled(0, List.of(List.of(at(350)), List.of(at(300)))));
        assertEquals(List.of("300-301", "440-441", "301-440"), settled(0, List.of(List.of(at(300)), List.of(at(440)), List.of(at(370)))));
    }

    /** So a later one between them brings nothing new: a high wall has no more streams than places they come from. */
    @Test void whatComesBetweenIsThereAlready() {
        assertEquals(List.of("300-301", "301-391"), settled(0, List.of(List.of(at(300)), List.of(at(390)), List.of(at(333)), List.of(at(377)))));
    }

    @Test void onlyLikeWaterOfTheWholeHeightIsOne() {
        assertEquals(List.of("300-301", "350-351"), settled(0, List.of(List.of(at(300)), List.of(stream(350, false, 0, HIGH)))));
        assertEquals(List.of("300-301", "350-351"), settled(0, List.of(List.of(at(300)), List.of(stream(350, true, 0, LOW)))));
        assertEquals(List.of("300-301", "350-351"), settled(0, List.of(List.of(stream(300, true, 0, LOW)), List.of(at(350)))));
    }

    /** What needs a failure more is wet as far as what needs none; not the other way. */
    @Test void costsStayApart() {
        assertEquals(List.of("300-301", "301-351"), settled(1, List.of(List.of(at(300)), List.of(stream(350, true, 1, HIGH)))));
        assertEquals(List.of("350-351", "300-301"), settled(1, List.of(List.of(stream(350, true, 1, HIGH)), List.of(at(300)))));
    }

    /** Rain that falls past one piece, and rain that got in behind that and ran on. */
    private static Wet stretch(long from, long to, int steps) {
        Wet w = new Wet(CELL, true, 0, from, to, HIGH, HIGH, null, How.RAIN, null);
        for (int i = 0; i < steps; i++) {
            w = new Wet(CELL, true, 0, from, to, HIGH, HIGH, w, new How(How.Move.FALL, i), null);
        }
        return w;
    }

    /** Where both come to, the shorter way is told; the other one where it alone comes to. */
    @Test void ofUnlikeWaysTheShorterIsToldWhereBothCome() {
        assertEquals(List.of("500-900", "300-500"), settled(0, List.of(List.of(stretch(300, 700, 3), stretch(500, 900, 1)))));
        assertEquals(List.of("300-700", "700-900"), settled(0, List.of(List.of(stretch(300, 700, 1), stretch(500, 900, 3)))));
    }

    @Test void likeWaysAreOneAndToldByTheShorter() {
        Pool pool = new Pool();
        pool.add(stretch(300, 700, 1));
        pool.add(new Wet(CELL, true, 0, 600, 900, HIGH, HIGH, stretch(600, 900, 2), new How(How.Move.FALL, 0), null));
        pool.settle(0);
        assertEquals(1, pool.count());
        assertEquals(300, pool.settled(0).from());
        assertEquals(900, pool.settled(0).to());
        assertEquals(1, pool.settled(0).steps());
    }
}
