package rainlap.water;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertSame;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import rainlap.geom.Ends;
import rainlap.geom.Grid;
import rainlap.geom.Point;
import rainlap.wall.Side;
import rainlap.wall.Surface;

/** What is written small is read back as it was. */
class KeptTest {
    private static final Surface SILL = new Surface("W1", Side.SILL);

    @Test void numbersOfEverySizeAreReadBack() {
        Random random = new Random(7);
        long[] all = LongStream.concat(LongStream.of(0, 1, 127, 128, -1, Long.MAX_VALUE, Long.MIN_VALUE),
                LongStream.generate(() -> random.nextLong() >> random.nextInt(64)).limit(2_000)).toArray();
        Packed p = new Packed();
        for (long v : all) {
            p.put(v);
            p.signed(v);
        }
        p.trim();
        Packed.Reader in = p.reader();
        for (long v : all) {
            assertEquals(v, in.get());
            assertEquals(v, in.signed());
        }
        assertFalse(in.hasMore());
    }

    private static Step step(int n) {
        Step.Kind[] kinds = Step.Kind.values();
        return new Step(kinds[n % kinds.length], n % 3 == 0 ? Step.FRAME : "M" + n % 5, n % 4 == 0 ? "" : "T" + n % 7, n % 2 == 0,
                n % 6 == 0 ? SILL : Surface.WALL, List.of(new Point(-n * 1_000L, n), new Point(Grid.of(Grid.LIMIT_MM) - n, -7)));
    }

    @Test void arrivalsAreReadBackWithTheStepsTheyHadInCommon() {
        List<Step> steps = Stream.iterate(0, n -> n + 1).limit(40).map(KeptTest::step).toList();
        List<Point> bent = List.of(new Point(0, 0), new Point(-5, 9), new Point(3, 3));
        List<Arrival> given = new ArrayList<>();
        for (int i = 0; i + 4 < steps.size(); i += 3) {
            given.add(new Arrival(i % 3, i % 2 == 0, i % 5 == 0 ? SILL : Surface.WALL, i % 4 == 0 ? bent : List.of(new Point(i, -i), new Point(i + 1, 0)),
                    List.of(steps.get(0), steps.get(i), steps.get(i + 4)), i % 2 == 0 ? OptionalDouble.of(i / 7.0) : OptionalDouble.empty()));
        }
        Kept kept = new Kept(List.copyOf(given));
        assertSame(given.get(0), kept.all().get(0));
        kept.pack();
        List<Arrival> read = kept.read();
        assertEquals(given, read);
        assertSame(read.get(0).path().get(0), read.get(5).path().get(0));
    }

    @Test void patchesAreReadBackAtTheDefencesTheyWereGivenFor() {
        Line level = Line.level(-300, -50, 900), slope = new Line(0, 10, 400, 210);
        Patch low = new Patch(level, null, -50, 100, 20, 30), full = new Patch(slope, new Line(0, 500, 400, 900), 100, 200, 600, 700),
                flat = new Patch(level, null, 200, 900, 7, 7);
        Patches p = new Patches();
        p.add(low, 0, 2);
        p.add(full, 1, 1);
        p.add(flat, 2, 2);
        p.trim();
        assertEquals(corners(List.of(low)), corners(p.at(0)));
        assertEquals(corners(List.of(low, full)), corners(p.at(1)));
        assertEquals(corners(List.of(low, flat)), corners(p.at(2)));
    }

    private static String corners(List<Patch> all) {
        StringBuilder out = new StringBuilder();
        for (Patch p : all) {
            out.append(p.from()).append(' ').append(p.to()).append(' ').append(p.leftFoot()).append(' ').append(p.rightFoot()).append(' ')
                    .append(p.leftTop()).append(' ').append(p.rightTop()).append(p.lower().isLevel() ? "" : p.lower().toString()).append('\n');
        }
        return out.toString();
    }

    @Test void endsAreAListLikeAnyOther() {
        List<Point> line = List.of(new Point(1, 2), new Point(3, 4)), three = List.of(new Point(0, 0), new Point(1, 1), new Point(2, 0));
        assertEquals(line, Ends.copyOf(line));
        assertEquals(Ends.copyOf(line), line);
        assertEquals(line.hashCode(), Ends.copyOf(line).hashCode());
        assertEquals(three, Ends.copyOf(three));
        assertEquals(List.of(), Ends.copyOf(List.of()));
    }
}
