package rainlap.paper;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rainlap.paper.LabelPlan.Change;
import rainlap.paper.LabelPlan.Seat;
import rainlap.paper.LabelPlan.Trial;

/**
 * Betters a plan step by step: moves single labels to other places, sides and points of their site, and exchanges pairs,
 * as long as crossings or, with no more crossings, cost grow less. Every step takes the best trial, the first of equals,
 * so the way is always the same.
 */
final class LabelSearch {

    private static final int MOST_SWEEPS = 6;
    private static final int MOST_POINTS = 6;
    /** Moves that cost the label more than this by itself are not tried while nothing crosses: others gain less. */
    private static final double MOST_LOSS = 12;
    private static final double WORTH = 1e-6;
    /** Shifts from the place square to the site, in millimetres; enough for a bend that is seen. */
    private static final double[] SHIFTS = {0, -4, 4, -8, 8, -14, 14};

    private final LabelPlan plan;
    private final LabelStrips strips;

    LabelSearch(LabelPlan plan) {
        this.plan = plan;
        this.strips = plan.strips();
    }

    /** Sweeps over all labels until nothing gets better. */
    void improve() {
        boolean better = true;
        for (int sweep = 0; sweep < MOST_SWEEPS && better; sweep++) {
            better = false;
            for (int site = 0; site < strips.sites().size(); site++) {
                if (plan.seat(site).isPresent()) {
                    better |= take(bestMove(site));
                }
            }
            better |= exchange();
        }
    }

    /** Seats labels left over wherever they cross nothing, in the order of their sites. */
    void seatRest() {
        for (int site = 0; site < strips.sites().size(); site++) {
            if (plan.seat(site).isEmpty()) {
                bestSeat(site).filter(t -> t.crossings() <= 0).ifPresent(plan::apply);
            }
        }
    }

    private boolean take(Optional<Trial> trial) {
        boolean better = trial.isPresent() && trial.get().betterThan(0, -WORTH);
        if (better) {
            plan.apply(trial.get());
        }
        return better;
    }

    private Optional<Trial> bestMove(int site) {
        boolean all = plan.crossings() > 0;
        double most = plan.cost(site) + MOST_LOSS;
        Optional<Trial> best = Optional.empty();
        for (Seat seat : seats(site)) {
            if (all || plan.cost(strips.leader(site, seat, seat.wanted())) < most) {
                best = better(best, plan.trial(moved(site, seat)));
            }
        }
        return best;
    }

    private Optional<Trial> bestSeat(int site) {
        Optional<Trial> best = Optional.empty();
        List<Seat> seats = new ArrayList<>(seats(site));
        for (BoundarySide side : BoundarySide.values()) {
            if (strips.fits(site, side)) {
                for (int other : plan.row(side)) {
                    seats.add(new Seat(side, 0, plan.place(other) - WORTH, true));
                    seats.add(new Seat(side, 0, plan.place(other) + WORTH, false));
                    seats.add(new Seat(side, 0, plan.place(other) + WORTH, true));
                }
            }
        }
        for (Seat seat : seats) {
            best = better(best, plan.trial(moved(site, seat)));
        }
        return best;
    }

    private static Optional<Trial> better(Optional<Trial> best, Optional<Trial> other) {
        return best.isEmpty() || other.isPresent()
                && other.get().betterThan(best.get().crossings(), best.get().cost() - WORTH) ? other : best;
    }

    /** All seats worth trying: every side and point, square to the site and shifted, and where it stands now. */
    private List<Seat> seats(int site) {
        List<Seat> seats = new ArrayList<>();
        List<PaperPoint> points = strips.sites().get(site).points();
        for (BoundarySide side : BoundarySide.values()) {
            for (int point = 0; strips.fits(site, side) && point < Math.min(points.size(), MOST_POINTS); point++) {
                for (double shift : SHIFTS) {
                    seats.add(new Seat(side, point, side.along(points.get(point)) + shift, false));
                }
                if (plan.seat(site).isPresent() && plan.seat(site).get().side() == side) {
                    seats.add(new Seat(side, point, plan.place(site), false));
                }
            }
        }
        return seats;
    }

    /** The change that gives a label, seated or not, a seat where its wanted place falls in the row. */
    private Change moved(int site, Seat seat) {
        Change change = plan.seat(site).isPresent() ? plan.without(site) : Change.none();
        List<Integer> row = change.rows().getOrDefault(seat.side(), new ArrayList<>(plan.row(seat.side())));
        int index = 0;
        while (index < row.size() && plan.place(row.get(index)) < seat.wanted()) {
            index++;
        }
        row.add(index, site);
        change.rows().put(seat.side(), row);
        change.seats().put(site, Optional.of(seat));
        return change;
    }

    /** Exchanges neighbours in a row and pairs that cross or come close. */
    private boolean exchange() {
        boolean better = false;
        int count = strips.sites().size();
        for (int a = 0; a < count; a++) {
            for (int b = a + 1; b < count; b++) {
                if (plan.seat(a).isPresent() && plan.seat(b).isPresent() && (plan.disturb(a, b) || neighbours(a, b))) {
                    better |= take(exchanged(a, b).flatMap(plan::trial));
                }
            }
        }
        return better;
    }

    private boolean neighbours(int a, int b) {
        List<Integer> row = plan.row(plan.seat(a).orElseThrow().side());
        int at = row.indexOf(b);
        return at >= 0 && Math.abs(at - row.indexOf(a)) == 1;
    }

    private Optional<Change> exchanged(int a, int b) {
        BoundarySide sideA = plan.seat(a).orElseThrow().side();
        BoundarySide sideB = plan.seat(b).orElseThrow().side();
        if (!strips.fits(a, sideB) || !strips.fits(b, sideA)) {
            return Optional.empty();
        }
        Change change = Change.none();
        change.rows().put(sideA, new ArrayList<>(plan.row(sideA)));
        change.rows().computeIfAbsent(sideB, s -> new ArrayList<>(plan.row(s)));
        int atA = plan.row(sideA).indexOf(a);
        int atB = plan.row(sideB).indexOf(b);
        change.rows().get(sideA).set(atA, b);
        change.rows().get(sideB).set(atB, a);
        change.seats().put(a, Optional.of(seatAt(a, sideB, plan.place(b))));
        change.seats().put(b, Optional.of(seatAt(b, sideA, plan.place(a))));
        return Optional.of(change);
    }

    /** The seat at a place with the point of the site that costs least from there. */
    private Seat seatAt(int site, BoundarySide side, double place) {
        Seat best = new Seat(side, 0, place, false);
        for (int point = 1; point < strips.sites().get(site).points().size(); point++) {
            Seat seat = new Seat(side, point, place, false);
            if (plan.cost(strips.leader(site, seat, place)) < plan.cost(strips.leader(site, best, place))) {
                best = seat;
            }
        }
        return best;
    }
}
