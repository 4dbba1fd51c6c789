package rainlap.paper;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The strips for labels round a drawing: how labels stand in them, and evenly spread slots to begin with. */
final class LabelStrips {

    /** More costly than any leader: this label does not fit this strip. */
    private static final double NEVER = 1e6;

    /** A place for one label of any size. */
    private record Slot(BoundarySide side, double place) {
    }

    private final List<BoundaryLabels.Site> sites;
    private final BoundaryLabels.Room room;

    LabelStrips(List<BoundaryLabels.Site> sites, BoundaryLabels.Room room) {
        this.sites = List.copyOf(sites);
        this.room = room;
    }

    List<BoundaryLabels.Site> sites() {
        return sites;
    }

    BoundaryLabels.Room room() {
        return room;
    }

    /** True when there is such a strip and the label is not too wide, or too high on top, for it. */
    boolean fits(int site, BoundarySide side) {
        BoundaryLabels.Site s = sites.get(site);
        return room.strip(side).filter(b -> side == BoundarySide.TOP ? s.height() <= b.height() : s.sideWidth() <= b.width())
                .filter(b -> from(side, before(site, side)) <= to(side, after(site, side))).isPresent();
    }

    /** The label's box with its leader at a place along the side. */
    PaperBox box(int site, BoundarySide side, double place) {
        BoundaryLabels.Site s = sites.get(site);
        PaperBox strip = room.strip(side).orElseThrow();
        return switch (side) {
            case TOP -> PaperBox.ofSize(place - s.portFromLeft(), strip.bottom() - s.height(), s.width(), s.height());
            case LEFT -> PaperBox.ofSize(strip.right() - s.sideWidth(), place - s.sideHeight() / 2, s.sideWidth(),
                    s.sideHeight());
            case RIGHT -> PaperBox.ofSize(strip.left(), place - s.sideHeight() / 2, s.sideWidth(), s.sideHeight());
        };
    }

    Leader leader(int site, LabelPlan.Seat seat, double place) {
        BoundarySide side = seat.side();
        PaperBox strip = room.strip(side).orElseThrow();
        double outside = switch (side) {
            case TOP -> room.inner().top() - strip.bottom();
            case LEFT -> room.inner().left() - strip.right();
            case RIGHT -> strip.left() - room.inner().right();
        };
        return Leader.of(side, room.inner(), outside, place, sites.get(site).points().get(seat.point()), seat.direct());
    }

    /** The places of a row of labels, each as near as can be to the wanted one; empty when the strip is too short. */
    Optional<double[]> places(BoundarySide side, List<Integer> row, double[] wanted) {
        if (row.isEmpty()) {
            return Optional.of(new double[0]);
        }
        double[] gaps = new double[row.size() - 1];
        for (int i = 0; i < gaps.length; i++) {
            gaps[i] = gap(after(row.get(i), side), before(row.get(i + 1), side));
        }
        return LabelRow.places(wanted, gaps, from(side, before(row.get(0), side)),
                to(side, after(row.get(row.size() - 1), side)));
    }

    /**
     * Seats the first sites, as many as there are slots.
     *
     * @param direct at least sum of straight distances with direct leaders, which then do not cross; else at least cost,
     *     each drawn to its site's own place
     */
    void seat(LabelPlan plan, boolean direct) {
        List<Slot> slots = slots();
        int count = Math.min(sites.size(), slots.size());
        double[][] cost = new double[count][slots.size()];
        LabelPlan.Seat[][] seats = new LabelPlan.Seat[count][slots.size()];
        for (int site = 0; site < count; site++) {
            for (int slot = 0; slot < slots.size(); slot++) {
                seats[site][slot] = best(plan, site, slots.get(slot), direct);
                cost[site][slot] = cost(plan, site, seats[site][slot], slots.get(slot).place());
            }
        }
        int[] slotOf = LeastAssignment.of(cost);
        Map<Integer, Integer> siteAt = new java.util.TreeMap<>();
        for (int site = 0; site < count; site++) {
            if (cost[site][slotOf[site]] < NEVER) {
                siteAt.put(slotOf[site], site);
            }
        }
        LabelPlan.Change change = LabelPlan.Change.none();
        siteAt.forEach((slot, site) -> {
            LabelPlan.Seat seat = seats[site][slot];
            change.rows().computeIfAbsent(seat.side(), s -> new ArrayList<>()).add(site);
            change.seats().put(site, Optional.of(seat));
        });
        plan.trial(change).ifPresent(plan::apply);
    }

    /** Length of a direct leader, or the cost of one at 45 degrees. */
    private double cost(LabelPlan plan, int site, LabelPlan.Seat seat, double place) {
        if (!fits(site, seat.side())) {
            return NEVER;
        }
        Leader leader = leader(site, seat, place);
        return seat.direct() ? leader.slant() : plan.cost(leader);
    }

    /** The seat at a slot with the best of the site's points. */
    private LabelPlan.Seat best(LabelPlan plan, int site, Slot slot, boolean direct) {
        List<PaperPoint> points = sites.get(site).points();
        LabelPlan.Seat best = new LabelPlan.Seat(slot.side(), 0, slot.place(), direct);
        for (int point = 1; point < points.size(); point++) {
            LabelPlan.Seat seat = new LabelPlan.Seat(slot.side(), point, slot.place(), direct);
            if (cost(plan, site, seat, slot.place()) < cost(plan, site, best, slot.place())) {
                best = seat;
            }
        }
        return direct ? best : new LabelPlan.Seat(slot.side(), best.point(),
                slot.side().along(points.get(best.point())), false);
    }

    /** Slots along all sides, wide enough for the largest label, spread evenly. */
    private List<Slot> slots() {
        List<Slot> slots = new ArrayList<>();
        for (BoundarySide side : BoundarySide.values()) {
            if (room.strip(side).isEmpty()) {
                continue;
            }
            double before = 0;
            double after = 0;
            for (int site = 0; site < sites.size(); site++) {
                before = fits(site, side) ? Math.max(before, before(site, side)) : before;
                after = fits(site, side) ? Math.max(after, after(site, side)) : after;
            }
            double length = to(side, after) - from(side, before);
            int steps = length < 0 ? -1 : (int) (length / gap(after, before));
            for (int i = 0; i <= steps; i++) {
                slots.add(new Slot(side, from(side, before) + (steps == 0 ? length / 2 : i * length / steps)));
            }
        }
        return slots;
    }

    private double gap(double after, double before) {
        return Math.max(BoundaryLabels.PITCH, after + before + Occupied.CLEARANCE);
    }

    /** How far the label reaches from its leader towards smaller places. */
    private double before(int site, BoundarySide side) {
        return side == BoundarySide.TOP ? sites.get(site).portFromLeft() : sites.get(site).sideHeight() / 2;
    }

    private double after(int site, BoundarySide side) {
        return side == BoundarySide.TOP ? sites.get(site).width() - sites.get(site).portFromLeft()
                : sites.get(site).sideHeight() / 2;
    }

    /** The least place of a leader: its label inside the strip, itself on the drawing. */
    private double from(BoundarySide side, double before) {
        return Math.max(side.least(room.strip(side).orElseThrow()) + before, side.least(room.drawing()));
    }

    private double to(BoundarySide side, double after) {
        return Math.min(side.most(room.strip(side).orElseThrow()) - after, side.most(room.drawing()));
    }
}
