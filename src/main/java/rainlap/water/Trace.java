package rainlap.water;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.stream.Stream;
import rainlap.geom.Box;
import rainlap.geom.Point;
import rainlap.joint.Joint;
import rainlap.stack.Crew;
import rainlap.stack.Found;
import rainlap.stack.Stack;
import rainlap.wall.Elevation;
import rainlap.wall.Surface;

/** Where the water goes on one elevation; the package description says what that means. The cells it was found by are kept until {@link #letGo}. */
public final class Trace {
    private final Elevation elevation;
    private final Drive drive;
    private final Stack stack;
    private final Supplier<List<Reach>> asDrawn;
    /** Of a wall of a building: the walls laid flat, and how they are seen from it. */
    private final Optional<Unfolded> unfolded;
    private final Kept arrivals;
    /** Those through two failures that were asked for. */
    private final Kept ofTwo;
    private final List<Standing> trapped;
    private final List<OnBatten> onBattens;
    private final Optional<DrivingRain> rain;
    private final Optional<Balance> balance;
    private final Optional<Litres> litres;
    private final Again again;

    private Trace(Stack stack, Drive drive, Optional<DrivingRain> rain, Waters waters, Crew crew) {
        this.elevation = stack.elevation();
        this.rain = rain;
        this.drive = drive;
        Told told = new Told(waters, drive, rain, crew);
        Found<Reaches> reaches = new Found<>(() -> new Reaches(waters, 0));
        crew.all(List.of(told, reaches));
        this.stack = stack;
        this.unfolded = Optional.empty();
        this.trapped = told.trapped;
        this.onBattens = waters.flows().onBattens();
        this.balance = told.runoff.map(Runoff::balance);
        this.litres = told.runoff.map(r -> new Litres(elevation, r.met()));
        this.arrivals = new Kept(litres.map(l -> told.arrivals.stream().map(a -> withLitres(a, l.of(a))).toList()).orElse(told.arrivals));
        this.ofTwo = Kept.NONE;
        this.again = new Again(stack, drive, waters);
        this.asDrawn = reaches.found()::all;
    }

    /** What of an unfolded building's water is to be seen on one wall; where the wall's own rain goes is told of the wall alone. */
    private Trace(Trace alone, Trace unfolded, OneWall wall) {
        this.elevation = alone.elevation;
        this.stack = alone.stack;
        this.unfolded = Optional.of(new Unfolded(unfolded, wall));
        this.drive = alone.drive;
        this.rain = alone.rain;
        this.balance = alone.balance;
        this.litres = unfolded.litres;
        this.again = alone.again;
        this.arrivals = new Kept(wall.arrivals(unfolded.arrivals()));
        this.ofTwo = Kept.NONE;
        this.trapped = unfolded.trapped.stream().flatMap(s -> wall.standing(s).stream()).toList();
        this.onBattens = unfolded.onBattens.stream().flatMap(b -> wall.onBatten(b).stream()).toList();
        List<Reach> seen = wall.reaches(unfolded.reachAsDrawn());
        this.asDrawn = () -> seen;
    }

    private Trace(Trace t, Kept ofTwo) {
        this.elevation = t.elevation;
        this.stack = t.stack;
        this.unfolded = t.unfolded;
        this.drive = t.drive;
        this.rain = t.rain;
        this.balance = t.balance;
        this.litres = t.litres;
        this.again = t.again;
        this.arrivals = t.arrivals;
        this.ofTwo = ofTwo;
        this.trapped = t.trapped;
        this.onBattens = t.onBattens;
        this.asDrawn = t.asDrawn;
    }

    private record Unfolded(Trace flat, OneWall wall) {}

    /** @param rain what falls on the wall; without it no litres are told */
    public static Trace of(Stack stack, Drive drive, Optional<DrivingRain> rain, Crew crew) {
        return new Trace(stack, drive, rain, Waters.toOneFailure(stack, drive, crew, rain.isPresent()), crew);
    }

    /**
     * One wall of a building, by the water of that wall and its neighbours laid flat.
     *
     * @param alone the wall's own trace, as it is built
     * @param flat the walls side by side
     * @param leftJoined whether what runs exactly along its left end belongs to the wall beyond that corner
     */
    public static Trace ofWall(Trace alone, Stack flat, boolean leftJoined, Crew crew) {
        return new Trace(alone, of(flat, alone.drive, alone.rain, crew), new OneWall(alone.elevation, flat.elevation(), leftJoined));
    }

    /** Ways and litres. */
    private static final class Told implements Supplier<Object> {
        private final Waters waters;
        private final Drive drive;
        private final Optional<DrivingRain> rain;
        private final Crew crew;
        private List<Arrival> arrivals;
        private List<Standing> trapped;
        private Optional<Runoff> runoff;

        Told(Waters waters, Drive drive, Optional<DrivingRain> rain, Crew crew) {
            this.crew = crew;
            this.waters = waters;
            this.drive = drive;
            this.rain = rain;
        }

        @Override
        public Object get() {
            Paths paths = new Paths(waters.coat(), waters.flows().entryCount());
            arrivals = Arrivals.of(waters.flows(), w -> w.cost() < Flow.MOST, paths, crew);
            trapped = waters.flows().trapped().stream().filter(t -> t.water().cost() == 0).map(t -> standing(t, paths)).toList();
            runoff = rain.map(r -> waters.runoff(drive.creep(), r.litresPerM2Hour()));
            return arrivals;
        }
    }

    /** Nothing meets an edge only where nothing is reckoned: behind other pieces. */
    private static Arrival withLitres(Arrival a, double met) {
        return met > 0 ? a.withLitres(met) : a;
    }

    static Standing standing(Trapped t, Paths paths) {
        Wet w = t.water();
        Cell c = w.cell();
        List<Point> where = List.of(c.ground.turned(new Point(t.from(), Math.round(c.lower.at(t.from())))),
                c.ground.turned(new Point(t.to(), Math.round(c.lower.at(t.to())))));
        String over = c.isOpen() ? "" : paths.name(c.over);
        String layer = paths.name(c.on);
        return new Standing(over, layer, c.ground.surface(), where, paths.to(w));
    }

    /** How hard the water is driven, and what is assumed. */
    public Drive drive() {
        return drive;
    }

    /** The frame that is wet as drawn, by surface. */
    public List<Reach> reachAsDrawn() {
        return asDrawn.get();
    }

    /** By defences, then surface; what is in none of them has three defences or more. For this all water is followed once more, through two failures everywhere. */
    public List<Reach> reach() {
        return unfolded.map(u -> u.wall.reaches(u.flat.reach())).orElseGet(() -> new Reaches(new Waters(stack, drive, Crew.ALONE), Flow.MOST).all());
    }

    /**
     * Where water comes onto the frame from elsewhere as drawn or after one failure, and by those ways through two that it was told {@link #with}, fewest defences first; rain on a
     * bare frame is in {@link #reach} alone. Made again when nobody holds them any more: who asks for them often holds on to them.
     */
    public List<Arrival> arrivals() {
        List<Arrival> more = ofTwo.all();
        return more.isEmpty() ? arrivals.all() : Stream.concat(arrivals.all().stream(), more.stream()).toList();
    }

    /** The same with ways through two failures that somebody asked for. */
    public Trace with(List<Arrival> ofTwoFailures) {
        return new Trace(this, new Kept(ofTwoFailures));
    }

    /**
     * Where water comes onto the frame after two failures, which is nearly everywhere, near some places.
     *
     * @param near boxes of the wall, with the reveals of the openings there: ways that come onto the frame elsewhere are left out, and so are those that fail
     *     elsewhere, be it for the second time or, unless they lead to the frame for that one failure, for the first
     */
    public List<Arrival> ofTwoFailures(List<Box> near, Crew crew) {
        return unfolded.map(u -> u.wall.arrivals(u.flat.ofTwoFailures(near, crew)))
                .orElseGet(() -> again.further(near, crew).stream().map(a -> litres.map(l -> withLitres(a, l.of(a))).orElse(a)).toList());
    }

    /**
     * The worst way by which water comes onto the frame that comes in at one place alone: as if it rained there and nowhere else. So no other leak hides what the place itself
     * lets in. On a wall of a building the neighbours are left out.
     *
     * @param surface on which the place lies
     * @param place on the wall: it rains on what lies beside it, and what falls past it runs on; for a place in a reveal it rains on all of that opening's reveals
     * @param within the part of the wall in which it is followed, by how many failures it took: three of them
     * @param most how many failures at most, 0 to 2
     * @param among chooses the one that counts, if any does, among all ways of one number of defences; it is asked for fewer ones first
     */
    public Optional<Arrival> worstFrom(Surface surface, Box place, List<Box> within, int most, Function<List<Arrival>, Optional<Arrival>> among) {
        return again.worstFrom(surface, place, new Bounds(within, most), among);
    }

    /** Itself, with its ways in less room. Who follows them may do so meanwhile. */
    public Trace packed() {
        arrivals.pack();
        return this;
    }

    /** Gives the room of the cells back; whoever asks for other rain later has them made again. */
    public void letGo() {
        arrivals.pack();
        ofTwo.pack();
        again.letGo();
        unfolded.ifPresent(u -> u.flat.letGo());
    }

    /** Water that, as drawn, stands and cannot get out. */
    public List<Standing> trapped() {
        return trapped;
    }

    /** Where water, as drawn, comes to lie on a batten. */
    public List<OnBatten> onBattens() {
        return onBattens;
    }

    /** Whether the frame is wet as drawn at a place of a surface's own frame. */
    public boolean isWet(Surface surface, Point place) {
        for (Reach r : asDrawn.get()) {
            if (r.surface().equals(surface) && r.where().stream().anyMatch(w -> w.covers(place.x(), place.y()))) {
                return true;
            }
        }
        return false;
    }

    /** What falls on the wall; empty where no rain is stated. */
    public Optional<DrivingRain> rain() {
        return rain;
    }

    /** What becomes of the rain, as drawn; empty where none is stated. */
    public Optional<Balance> balance() {
        return balance;
    }

    /** Where the rain goes, as drawn, in the order it is told; nothing where none is stated. */
    public List<Balance.Share> shares() {
        return balance.map(b -> b.shares(elevation, besides())).orElse(List.of());
    }

    /** By what means water reaches the frame as drawn that the balance does not count, in words. */
    public List<String> besides() {
        return Besides.of(arrivals(), asDrawn.get());
    }

    /** How much water meets which place; empty where no rain is stated. */
    public Optional<Litres> litres() {
        return litres;
    }

    /**
     * How much water meets all of a joint, litres per hour: over a level or sloped one; beside a plumb one, within the creep of it, at its foot. Empty where
     * no rain is stated, and on a reveal, where nothing is told.
     */
    public OptionalDouble litresAt(Joint j) {
        return litres.isPresent() && j.surface().isWall() ? OptionalDouble.of(litres.get().atEdge(j.outer().piece().id(), j.line())) : OptionalDouble.empty();
    }
}
