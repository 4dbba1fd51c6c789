package rainlap.paper;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Labels in the margins of a drawing, each joined to its site by a leader (boundary labelling; Bekos, Kaufmann,
 * Symvonis, Wolff, Computational Geometry 36, 2007).
 *
 * <p><b>Guarantee.</b> No leader crosses or touches another, except where two share their site; no leader crosses a
 * label; no two labels meet; every label lies in its strip; labels stand at the pitch or wider. Labels for which no such
 * place was found are named in {@link Result#unplaced}; earlier sites go before later ones.
 *
 * <p><b>How.</b> Sites are assigned to evenly spread slots at least total length. Each row is then drawn to the sites'
 * own places. A search exchanges, moves and shifts labels while crossings, then length, bends, openings run over and lines
 * run along grow less. Should crossings remain, it starts again from slots assigned at least straight distance with straight leaders:
 * such a set has no crossing, because exchanging two that cross would shorten it, and the search keeps that.
 */
public final class BoundaryLabels {

    /** Least distance from one label's leader to the next, in millimetres. */
    public static final double PITCH = 9;

    private BoundaryLabels() {
    }

    /**
     * What is to be labelled.
     *
     * @param points where the leader may end, at least one, all inside the drawing; the best is chosen
     * @param width of the label on top, in millimetres
     * @param height of the label on top, in millimetres
     * @param portFromLeft on top, where the leader leaves the label's lower edge; left and right it leaves at half height
     * @param sideWidth width of the label where it stands left or right
     * @param sideHeight its height there
     */
    public record Site(List<PaperPoint> points, double width, double height, double portFromLeft, double sideWidth,
            double sideHeight) {

        public Site {
            points = List.copyOf(points);
            if (points.isEmpty() || !(width > 0 && height > 0 && portFromLeft >= 0 && portFromLeft <= width)
                    || !(sideWidth > 0 && sideHeight > 0)) {
                throw new IllegalArgumentException("a site needs a point, a size above 0 and a port on the label");
            }
        }

        /** A label of one size wherever it stands. */
        public Site(List<PaperPoint> points, double width, double height, double portFromLeft) {
            this(points, width, height, portFromLeft, width, height);
        }
    }

    /**
     * Where there is room.
     *
     * @param drawing box of the drawing; leaders run inside it
     * @param top strip for labels above it; its lower edge is where labels stand
     * @param left strip on the left; labels stand at its right edge
     * @param right strip on the right; labels stand at its left edge
     * @param edges lines of the drawing along which a leader should not run
     * @param openings what a leader should go round where it can
     */
    public record Room(PaperBox drawing, Optional<PaperBox> top, Optional<PaperBox> left, Optional<PaperBox> right,
            List<PaperSegment> edges, List<PaperBox> openings) {

        /** Strips keep this far from the drawing, in millimetres. */
        public static final double MARGIN = 1;

        public Room {
            edges = List.copyOf(edges);
            openings = List.copyOf(openings);
            top.ifPresent(s -> require(s.bottom() <= drawing.top() - MARGIN, "top"));
            left.ifPresent(s -> require(s.right() <= drawing.left() - MARGIN, "left"));
            right.ifPresent(s -> require(s.left() >= drawing.right() + MARGIN, "right"));
            require(!meet(top, left) && !meet(top, right), "top");
        }

        /** With nothing to go round. */
        public Room(PaperBox drawing, Optional<PaperBox> top, Optional<PaperBox> left, Optional<PaperBox> right, List<PaperSegment> edges) {
            this(drawing, top, left, right, edges, List.of());
        }

        Optional<PaperBox> strip(BoundarySide side) {
            return switch (side) {
                case TOP -> top;
                case LEFT -> left;
                case RIGHT -> right;
            };
        }

        /** The drawing with its margin: bends lie inside it, labels outside. */
        PaperBox inner() {
            return drawing.grown(MARGIN);
        }

        private static boolean meet(Optional<PaperBox> a, Optional<PaperBox> b) {
            return a.isPresent() && b.isPresent() && a.get().meets(b.get());
        }

        private static void require(boolean holds, String which) {
            if (!holds) {
                throw new IllegalArgumentException("the strip " + which + " meets the drawing or another strip");
            }
        }
    }

    /**
     * A label in its place.
     *
     * @param site index of the site
     * @param leader from the label to the site, two or three points
     */
    public record Placed(int site, BoundarySide side, PaperBox box, List<PaperPoint> leader) {
    }

    /** All labels placed, by site, and the indices of the sites whose labels do not fit. */
    public record Result(List<Placed> placed, List<Integer> unplaced) {
    }

    /** Places the labels; the same input gives the same result. */
    public static Result place(List<Site> sites, Room room) {
        for (Site site : sites) {
            for (PaperPoint p : site.points()) {
                if (!room.drawing().grown(Room.MARGIN / 2).holds(p)) {
                    throw new IllegalArgumentException("site " + p + " lies outside the drawing " + room.drawing());
                }
            }
        }
        LabelStrips strips = new LabelStrips(sites, room);
        LabelPlan plan = new LabelPlan(strips);
        strips.seat(plan, false);
        new LabelSearch(plan).improve();
        if (plan.crossings() > 0) {
            plan = new LabelPlan(strips);
            strips.seat(plan, true);
            new LabelSearch(plan).improve();
            plan.dropCrossing();
        }
        new LabelSearch(plan).seatRest();
        return result(plan, sites.size());
    }

    private static Result result(LabelPlan plan, int sites) {
        List<Placed> placed = new ArrayList<>();
        List<Integer> unplaced = new ArrayList<>();
        for (int site = 0; site < sites; site++) {
            if (plan.seat(site).isPresent()) {
                placed.add(plan.placed(site));
            } else {
                unplaced.add(site);
            }
        }
        return new Result(List.copyOf(placed), List.copyOf(unplaced));
    }
}
