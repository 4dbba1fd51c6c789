package rainlap.water;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.atomic.AtomicInteger;
import rainlap.geom.Point;
import rainlap.water.How.Move;

/** Tells the way water came, step by step. */
final class Paths {
    /** A way that tells nothing new for long is remembered at every so many cells: what comes after finds the rest from there. */
    private static final int FAR = 8;

    private final Coat coat;
    /** Ways have their beginnings in common. */
    private final Map<Wet, Told> known = new IdentityHashMap<>();
    private final Words words;

    Paths(Coat coat) {
        this(coat, 0);
    }

    /** @param ways about how many will be told */
    Paths(Coat coat, int ways) {
        this(coat, new Words(ways));
    }

    private Paths(Coat coat, Words words) {
        this.coat = coat;
        this.words = words;
    }

    /** For another thread: of what both tell it knows what is told with the same words. */
    Paths beside() {
        return new Paths(coat, words);
    }

    /** Water whose coming tells something, and what was told before: so a way is as long as what it tells, however many cells it goes through. */
    private static final class Told {
        final Wet wet;
        final Told before;
        final int length;
        /** The same for ways that are told with the same words. */
        final int number;
        Step step;

        Told(Wet wet, Told before, int number) {
            this.wet = wet;
            this.before = before;
            this.length = before == null ? 1 : before.length + 1;
            this.number = number;
        }
    }

    /** What a step that tells something says, after what was told before. */
    private record Said(int before, int move, boolean failure, int layer, int under) {}

    /** Numbers for what is said: which is which depends on who comes first, whether two are the same does not. */
    private static final class Words {
        private final Map<Said, Integer> numbers;
        private final AtomicInteger next = new AtomicInteger();

        Words(int ways) {
            numbers = new ConcurrentHashMap<>(ways);
        }

        int number(Said s) {
            return numbers.computeIfAbsent(s, k -> next.getAndIncrement());
        }
    }

    /** From the rain to this water; what tells nothing new is left out. */
    List<Step> to(Wet last) {
        Told end = tellingOf(last);
        Step[] way = new Step[end.length];
        for (Told t = end; t != null; t = t.before) {
            t.step = t.step == null ? step(t.wet) : t.step;
            way[t.length - 1] = t.step;
        }
        return List.of(way);
    }

    /** A number for what the steps to this water say, but not where: the same for ways that are told with the same words. */
    int told(Wet last) {
        return tellingOf(last).number;
    }

    /** The last on its way, itself too, that tells something. */
    private Told tellingOf(Wet last) {
        Deque<Wet> open = new ArrayDeque<>();
        Told told = null;
        for (Wet w = last; w != null && told == null; w = w.source()) {
            told = known.get(w);
            if (told == null) {
                open.push(w);
            }
        }
        for (Wet next : open) {
            boolean tells = next.source() == null || tells(next);
            told = tells ? telling(next, told) : told;
            if (tells || next.cell().number % FAR == 0) {
                known.put(next, told);
            }
        }
        return told;
    }

    private Told telling(Wet w, Told before) {
        Said said = new Said(before == null ? -1 : before.number, w.how().move().ordinal(), isFailure(w), layer(w), w.how().under());
        return new Told(w, before, words.number(said));
    }

    private static boolean isFailure(Wet w) {
        return w.cost() > (w.source() == null ? 0 : w.source().cost());
    }

    private static boolean tells(Wet w) {
        How how = w.how();
        boolean goesOn = w.source().how().move() == how.move() && w.source().how().under() == how.under();
        return switch (how.move()) {
            case OVERRUN -> !goesOn || layer(w) != layer(w.source());
            case LIFT, PUSH -> how.under() >= 0 || layer(w) != layer(w.source());
            case RAIN, PIPE, LEDGE -> true;
            case ALONG -> !goesOn;
            case FALL, SPREAD -> how.under() >= 0 || layer(w) != layer(w.source()) || w.cell().ground != w.source().cell().ground;
        };
    }

    private static int layer(Wet w) {
        return w.cell().on;
    }

    String name(int piece) {
        return piece < 0 ? Step.FRAME : coat.piece(piece).id();
    }

    private Step step(Wet w) {
        int under = w.how().under();
        Ground ground = w.source() == null ? w.cell().ground : w.source().cell().ground;
        return new Step(kind(w.how()), name(layer(w)), under < 0 ? "" : name(under), isFailure(w), ground.surface(), where(w, ground));
    }

    private static List<Point> where(Wet w, Ground ground) {
        Line l = w.crossed();
        if (l == null) {
            return top(w);
        }
        return List.of(ground.turned(new Point(l.ax(), l.ay())), ground.turned(new Point(l.bx(), l.by())));
    }

    /** Where water stands highest in its cell. */
    static List<Point> top(Wet w) {
        Ground g = w.cell().ground;
        return List.of(g.turned(new Point(w.from(), Math.round(w.leftTop()))), g.turned(new Point(w.to(), Math.round(w.rightTop()))));
    }

    private static Step.Kind kind(How how) {
        boolean under = how.under() >= 0;
        return switch (how.move()) {
            case RAIN -> Step.Kind.RAIN;
            case FALL -> under ? Step.Kind.RUN_BEHIND : Step.Kind.DROP;
            case LIFT -> under ? Step.Kind.LIFT_UNDER : Step.Kind.LIFT_ON;
            case PUSH -> under ? Step.Kind.PUSH_UNDER : Step.Kind.PUSH_ON;
            case OVERRUN -> Step.Kind.OVERRUN;
            case ALONG -> Step.Kind.RUN_ALONG;
            case LEDGE -> Step.Kind.OFF_A_LEDGE;
            case SPREAD -> under ? Step.Kind.SPREAD_UNDER : Step.Kind.SPREAD;
            case PIPE -> Step.Kind.ALONG_A_PIPE;
        };
    }
}
