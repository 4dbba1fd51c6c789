package rainlap.water;

import java.lang.ref.WeakReference;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import rainlap.geom.Point;
import rainlap.wall.Surface;

/**
 * Arrivals in a fifth of the room that objects take, from when they are packed: made into objects again when somebody asks for them and as long as somebody holds them. Steps
 * that ways had in common they have in common again.
 */
final class Kept {
    static final Kept NONE = new Kept(List.of());
    private static final int FIRST = 4, LITRES = 8, FAILURE = 16, BENT = 32;
    private static final int ENDS = 2;

    private final Packed steps = new Packed();
    private final Packed arrivals = new Packed();
    private final Names<String> words = new Names<>();
    private final Names<Surface> surfaces = new Names<>();
    private final int size;
    /** Until they are packed, else null. */
    private volatile List<Arrival> given;
    private WeakReference<List<Arrival>> made = new WeakReference<>(null);

    /** Things that are named again and again, by number. */
    private static final class Names<T> {
        private final List<T> all = new ArrayList<>();
        private final Map<T, Integer> numbers = new HashMap<>();

        int of(T name) {
            Integer known = numbers.putIfAbsent(name, all.size());
            if (known == null) {
                all.add(name);
                return all.size() - 1;
            }
            return known;
        }
    }

    Kept(List<Arrival> all) {
        size = all.size();
        given = all;
    }

    /** Packs them, if they are not yet; meanwhile whoever asks for them gets them as they were given. */
    synchronized void pack() {
        if (given == null) {
            return;
        }
        Map<Step, Integer> known = new IdentityHashMap<>();
        given.forEach(a -> put(a, known));
        steps.trim();
        arrivals.trim();
        words.numbers.clear();
        surfaces.numbers.clear();
        made = new WeakReference<>(given);
        given = null;
    }

    private void put(Arrival a, Map<Step, Integer> known) {
        arrivals.put(a.defences() | (a.first() ? FIRST : 0) | (a.litresPerHour().isPresent() ? LITRES : 0) | bent(a.where()));
        arrivals.put(surfaces.of(a.surface()));
        put(a.where(), arrivals);
        if (a.litresPerHour().isPresent()) {
            arrivals.put(Double.doubleToRawLongBits(a.litresPerHour().getAsDouble()));
        }
        arrivals.put(a.path().size());
        int before = known.size();
        for (Step s : a.path()) {
            Integer number = known.get(s);
            if (number == null) {
                number = known.size();
                known.put(s, number);
                put(s);
            }
            arrivals.signed(number - before);
            before = number;
        }
    }

    private void put(Step s) {
        steps.put(s.kind().ordinal() | (s.failure() ? FAILURE : 0) | bent(s.where()));
        steps.put(words.of(s.layer()));
        steps.put(words.of(s.piece()));
        steps.put(surfaces.of(s.on()));
        put(s.where(), steps);
    }

    /** Nearly all lines have just two points. */
    private static int bent(List<Point> line) {
        return line.size() == ENDS ? 0 : BENT;
    }

    private static void put(List<Point> line, Packed to) {
        if (line.size() != ENDS) {
            to.put(line.size());
        }
        line.forEach(to::point);
    }

    /** As they were given. */
    List<Arrival> all() {
        List<Arrival> now = given;
        return now != null ? now : made();
    }

    private synchronized List<Arrival> made() {
        List<Arrival> out = made.get();
        if (out == null) {
            out = read();
            made = new WeakReference<>(out);
        }
        return out;
    }

    List<Arrival> read() {
        List<Step> known = new ArrayList<>();
        for (Packed.Reader in = steps.reader(); in.hasMore();) {
            known.add(step(in));
        }
        List<Arrival> out = new ArrayList<>(size);
        int[] before = {0};
        for (Packed.Reader in = arrivals.reader(); in.hasMore();) {
            out.add(arrival(in, known, before));
        }
        return List.copyOf(out);
    }

    private Step step(Packed.Reader in) {
        int flags = (int) in.get();
        return new Step(Step.Kind.values()[flags & FAILURE - 1], words.all.get((int) in.get()), words.all.get((int) in.get()), (flags & FAILURE) != 0,
                surfaces.all.get((int) in.get()), line(flags, in));
    }

    /** @param told how many steps have been told by the ways read so far: a way's first step is written by how far it lies before that */
    private Arrival arrival(Packed.Reader in, List<Step> known, int[] told) {
        int flags = (int) in.get();
        Surface on = surfaces.all.get((int) in.get());
        List<Point> where = line(flags, in);
        OptionalDouble litres = (flags & LITRES) != 0 ? OptionalDouble.of(Double.longBitsToDouble(in.get())) : OptionalDouble.empty();
        int length = (int) in.get(), number = told[0];
        Step[] path = new Step[length];
        for (int i = 0; i < length; i++) {
            number += (int) in.signed();
            path[i] = known.get(number);
            told[0] = Math.max(told[0], number + 1);
        }
        return new Arrival(flags & FIRST - 1, (flags & FIRST) != 0, on, where, List.of(path), litres);
    }

    private static List<Point> line(int flags, Packed.Reader in) {
        Point[] out = new Point[(flags & BENT) == 0 ? ENDS : (int) in.get()];
        for (int i = 0; i < out.length; i++) {
            out[i] = in.point();
        }
        return List.of(out);
    }
}
