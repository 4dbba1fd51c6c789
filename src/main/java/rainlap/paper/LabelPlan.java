package rainlap.paper;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * A state of the labels while they are being placed: the order along each side, where each wants to stand, its leader,
 * and what all that costs. A {@link Change} is tried beside it and applied only when it is wanted.
 */
final class LabelPlan {

    /** Where a label is to stand: side, which point of its site, wanted place along the side, leader kept direct. */
    record Seat(BoundarySide side, int point, double wanted, boolean direct) {
    }

    /** New rows for some sides and new seats for some labels. A label that is in no row any more has no seat. */
    record Change(Map<BoundarySide, List<Integer>> rows, Map<Integer, Optional<Seat>> seats) {

        static Change none() {
            return new Change(new EnumMap<>(BoundarySide.class), new TreeMap<>());
        }
    }

    /** What a change would bring: by how much crossings and cost grow. */
    record Trial(Change change, Map<Integer, Double> places, Map<Integer, Optional<Leader>> leaders, int crossings,
            double cost) {

        boolean betterThan(int otherCrossings, double otherCost) {
            return crossings < otherCrossings || crossings == otherCrossings && cost < otherCost;
        }
    }

    private final LabelStrips strips;
    private final LeaderCost cost;
    private final Map<BoundarySide, List<Integer>> rows = new EnumMap<>(BoundarySide.class);
    private final List<Optional<Seat>> seats;
    private final List<Optional<Leader>> leaders;
    private final double[] places;
    private final boolean[][] cross;
    private final double[][] together;
    private int crossings;

    LabelPlan(LabelStrips strips) {
        this.strips = strips;
        cost = new LeaderCost(strips.room());
        seats = new ArrayList<>(Collections.nCopies(strips.sites().size(), Optional.empty()));
        leaders = new ArrayList<>(Collections.nCopies(strips.sites().size(), Optional.empty()));
        places = new double[strips.sites().size()];
        cross = new boolean[places.length][places.length];
        together = new double[places.length][places.length];
        for (BoundarySide side : BoundarySide.values()) {
            rows.put(side, List.of());
        }
    }

    LabelStrips strips() {
        return strips;
    }

    int crossings() {
        return crossings;
    }

    List<Integer> row(BoundarySide side) {
        return rows.get(side);
    }

    Optional<Seat> seat(int site) {
        return seats.get(site);
    }

    double place(int site) {
        return places[site];
    }

    boolean cross(int a, int b) {
        return cross[a][b];
    }

    /** True when the leaders of the two cross or are hard to tell apart. */
    boolean disturb(int a, int b) {
        return cross[a][b] || together[a][b] > 0;
    }

    /** What the label's leader costs, with what it and others cost each other. */
    double cost(int site) {
        return leaders.get(site).map(cost::own).orElse(0.0) + Arrays.stream(together[site]).sum();
    }

    /** What a leader would cost by itself. */
    double cost(Leader leader) {
        return cost.own(leader);
    }

    /** The label as placed; it must have a seat. */
    BoundaryLabels.Placed placed(int site) {
        BoundarySide side = seats.get(site).orElseThrow().side();
        return new BoundaryLabels.Placed(site, side, strips.box(site, side, places[site]),
                leaders.get(site).orElseThrow().points());
    }

    /** Works out a change; empty when a row would be too long for its strip. */
    Optional<Trial> trial(Change change) {
        return placesAfter(change).map(newPlaces -> {
            Map<Integer, Optional<Leader>> moved = moved(change, newPlaces);
            List<Optional<Leader>> after = new ArrayList<>(leaders);
            boolean[] isMoved = new boolean[places.length];
            moved.forEach((site, leader) -> {
                after.set(site, leader);
                isMoved[site] = true;
            });
            double[] grown = new double[2];
            for (int site : moved.keySet()) {
                double[] was = weighNow(site, isMoved);
                double[] is = weigh(site, after, isMoved);
                grown[0] += is[0] - was[0];
                grown[1] += is[1] - was[1];
            }
            return new Trial(change, newPlaces, moved, (int) grown[0], grown[1]);
        });
    }

    private Optional<Map<Integer, Double>> placesAfter(Change change) {
        Map<Integer, Double> newPlaces = new TreeMap<>();
        for (Map.Entry<BoundarySide, List<Integer>> row : change.rows().entrySet()) {
            List<Integer> order = row.getValue();
            double[] wanted = order.stream().mapToDouble(s -> seatAfter(s, change).orElseThrow().wanted()).toArray();
            Optional<double[]> found = strips.places(row.getKey(), order, wanted);
            if (found.isEmpty()) {
                return Optional.empty();
            }
            for (int i = 0; i < wanted.length; i++) {
                newPlaces.put(order.get(i), found.get()[i]);
            }
        }
        return Optional.of(newPlaces);
    }

    void apply(Trial trial) {
        trial.change().rows().forEach((side, order) -> rows.put(side, List.copyOf(order)));
        trial.change().seats().forEach(seats::set);
        trial.leaders().forEach(leaders::set);
        trial.places().forEach((site, place) -> places[site] = place);
        crossings += trial.crossings();
        trial.leaders().keySet().forEach(this::compare);
    }

    /** Notes anew how a leader stands to all others. */
    private void compare(int site) {
        for (int other = 0; other < places.length; other++) {
            boolean both = other != site && leaders.get(site).isPresent() && leaders.get(other).isPresent();
            cross[site][other] = both && leaders.get(site).get().crosses(leaders.get(other).get());
            together[site][other] = both ? cost.together(leaders.get(site).get(), leaders.get(other).get()) : 0;
            cross[other][site] = cross[site][other];
            together[other][site] = together[site][other];
        }
    }

    /** Takes away later labels until no two leaders cross. */
    void dropCrossing() {
        for (int b = seats.size() - 1; b > 0; b--) {
            for (int a = 0; a < b; a++) {
                if (cross(a, b)) {
                    apply(trial(without(b)).orElseThrow());
                }
            }
        }
    }

    /** The change that takes a label out of its row. */
    Change without(int site) {
        Change change = Change.none();
        BoundarySide side = seats.get(site).orElseThrow().side();
        List<Integer> row = new ArrayList<>(rows.get(side));
        row.remove(Integer.valueOf(site));
        change.rows().put(side, row);
        change.seats().put(site, Optional.empty());
        return change;
    }

    private Optional<Seat> seatAfter(int site, Change change) {
        return change.seats().getOrDefault(site, seats.get(site));
    }

    /** The leaders that a change alters. */
    private Map<Integer, Optional<Leader>> moved(Change change, Map<Integer, Double> newPlaces) {
        Map<Integer, Optional<Leader>> moved = new TreeMap<>();
        change.seats().forEach((site, seat) -> {
            if (seat.isEmpty()) {
                moved.put(site, Optional.empty());
            }
        });
        newPlaces.forEach((site, place) -> {
            if (change.seats().containsKey(site) || place != places[site] || leaders.get(site).isEmpty()) {
                moved.put(site, Optional.of(strips.leader(site, seatAfter(site, change).orElseThrow(), place)));
            }
        });
        return moved;
    }

    /** Crossings and cost of a leader as it is, where pairs of moved leaders count once, at the first of the two. */
    private double[] weighNow(int site, boolean[] moved) {
        double[] sum = {0, leaders.get(site).map(cost::own).orElse(0.0)};
        for (int other = 0; other < places.length; other++) {
            if (other > site || !moved[other]) {
                sum[0] += cross[site][other] ? 1 : 0;
                sum[1] += together[site][other];
            }
        }
        return sum;
    }

    /** The same of a leader as it would be. */
    private double[] weigh(int site, List<Optional<Leader>> after, boolean[] moved) {
        double[] sum = new double[2];
        if (after.get(site).isEmpty()) {
            return sum;
        }
        Leader leader = after.get(site).get();
        sum[1] = cost.own(leader);
        for (int other = 0; other < places.length; other++) {
            boolean counted = other > site || other < site && !moved[other];
            if (counted && after.get(other).isPresent() && leader.near(after.get(other).get(), LeaderCost.CLOSE)) {
                sum[0] += leader.crosses(after.get(other).get()) ? 1 : 0;
                sum[1] += cost.together(leader, after.get(other).get());
            }
        }
        return sum;
    }
}
