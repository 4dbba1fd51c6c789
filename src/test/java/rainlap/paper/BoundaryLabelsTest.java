package rainlap.paper;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.geom.Line2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;

class BoundaryLabelsTest {

    private static final PaperBox DRAWING = new PaperBox(70, 40, 280, 170);
    private static final BoundaryLabels.Room ROOM = new BoundaryLabels.Room(DRAWING,
            Optional.of(new PaperBox(66, 18, 284, 34)), Optional.of(new PaperBox(44, 36, 64, 178)),
            Optional.of(new PaperBox(286, 36, 306, 178)), List.of());

    @Test
    void aLoneSiteGetsAStraightLeaderToTheNearestSide() {
        BoundaryLabels.Placed placed = only(new PaperPoint(90, 100));
        assertEquals(BoundarySide.LEFT, placed.side());
        assertEquals(List.of(new PaperPoint(64, 100), new PaperPoint(90, 100)), placed.leader());
        assertEquals(new PaperBox(45, 96.5, 64, 103.5), placed.box());
        assertEquals(BoundarySide.TOP, only(new PaperPoint(170, 60)).side());
        assertEquals(BoundarySide.RIGHT, only(new PaperPoint(260, 100)).side());
    }

    @Test
    void theNearestPointOfASiteIsTaken() {
        BoundaryLabels.Site site = new BoundaryLabels.Site(
                List.of(new PaperPoint(150, 100), new PaperPoint(100, 100), new PaperPoint(200, 100)), 19, 7, 3.5);
        BoundaryLabels.Placed placed = BoundaryLabels.place(List.of(site), ROOM).placed().get(0);
        assertEquals(new PaperPoint(100, 100), placed.leader().get(placed.leader().size() - 1));
    }

    @Test
    void aLeaderBendsRatherThanRunsAlongAnEdge() {
        BoundaryLabels.Room room = new BoundaryLabels.Room(DRAWING, Optional.empty(), ROOM.left(), Optional.empty(),
                List.of(PaperSegment.of(70, 100, 280, 100)));
        List<PaperPoint> leader = BoundaryLabels.place(List.of(site(new PaperPoint(120, 100))), room).placed().get(0).leader();
        assertEquals(3, leader.size());
        assertEquals(4, Math.abs(leader.get(0).y() - 100), 1e-9);
        assertEquals(Math.abs(leader.get(1).x() - 120), Math.abs(leader.get(1).y() - 100), 1e-9, "45 degrees");
    }

    @Test
    void aLeaderGoesRoundAnOpening() {
        PaperPoint site = new PaperPoint(150, 110);
        assertEquals(BoundarySide.TOP, only(site).side());
        BoundaryLabels.Room room = new BoundaryLabels.Room(DRAWING, ROOM.top(), ROOM.left(), ROOM.right(), List.of(),
                List.of(new PaperBox(130, 50, 170, 100)));
        assertEquals(BoundarySide.LEFT, BoundaryLabels.place(List.of(site(site)), room).placed().get(0).side());
    }

    @Test
    void itBendsAtTheDrawingsOwnEdgeToo() {
        BoundaryLabels.Room room = new BoundaryLabels.Room(DRAWING, Optional.empty(), Optional.empty(), ROOM.right(),
                List.of(PaperSegment.of(70, 170, 280, 170)));
        List<PaperPoint> leader = BoundaryLabels.place(List.of(site(new PaperPoint(200, 170))), room).placed().get(0).leader();
        assertEquals(166, leader.get(0).y(), 1e-9);
    }

    @Test
    void labelsOfOnePlaceShareItAndDoNotCross() {
        List<BoundaryLabels.Site> sites = new ArrayList<>();
        for (int i = 0; i < 9; i++) {
            sites.add(site(new PaperPoint(170, 100)));
        }
        check(sites, ROOM, "nine on one point", true);
    }

    @Test
    void crowdsOfEveryKindNeitherCrossNorMeet() {
        long seed = 77_1003;
        int unplaced = 0;
        int sites = 0;
        for (int round = 0; round < 1500; round++) {
            Random random = new Random(seed + round);
            List<BoundaryLabels.Site> crowd = crowd(random, 1 + random.nextInt(12), 15 + 10 * random.nextDouble(), true);
            sites += crowd.size();
            unplaced += check(crowd, ROOM, "seed " + (seed + round), false).unplaced().size();
        }
        assertTrue(unplaced < sites / 200, unplaced + " of " + sites + " left out, seeds from " + seed);
    }

    @Test
    void looseSitesKeepToFortyFiveDegrees() {
        long seed = 45;
        int others = 0;
        for (int round = 0; round < 200; round++) {
            Random random = new Random(seed + round);
            List<BoundaryLabels.Site> loose = new ArrayList<>();
            for (int i = 0; i < 10; i++) {
                loose.add(site(inside(random, DRAWING)));
            }
            others += (int) check(loose, ROOM, "seed " + (seed + round), true).placed().stream().filter(p -> !at45(p)).count();
        }
        assertTrue(others <= 20, others + " of 2000 leaders at other angles, seeds from " + seed);
    }

    @Test
    void sixtyMarksFindTheirPlaces() {
        long seed = 60_60;
        PaperBox drawing = new PaperBox(40, 40, 320, 230);
        BoundaryLabels.Room room = new BoundaryLabels.Room(drawing, Optional.of(new PaperBox(36, 20, 324, 34)),
                Optional.of(new PaperBox(24, 36, 34, 235)), Optional.of(new PaperBox(326, 36, 336, 235)), List.of());
        for (int round = 0; round < 6; round++) {
            Random random = new Random(seed + round);
            List<BoundaryLabels.Site> crowd = new ArrayList<>();
            for (int i = 0; i < 60; i++) {
                crowd.add(new BoundaryLabels.Site(List.of(inside(random, drawing)), 7, 7, 3.5));
            }
            check(crowd, room, "seed " + (seed + round), true);
        }
    }

    @Test
    void theSameSitesGiveTheSamePlaces() {
        List<BoundaryLabels.Site> crowd = crowd(new Random(9), 12, 18, true);
        assertEquals(BoundaryLabels.place(crowd, ROOM), BoundaryLabels.place(crowd, ROOM));
    }

    @Test
    void whatDoesNotFitIsNamedAndTheFirstGoFirst() {
        List<BoundaryLabels.Site> crowd = crowd(new Random(5), 80, 18, true);
        BoundaryLabels.Result result = check(crowd, ROOM, "eighty", false);
        assertTrue(result.unplaced().size() > 20, result.unplaced().toString());
        assertEquals(0, result.placed().get(0).site());
        BoundaryLabels.Room none = new BoundaryLabels.Room(DRAWING, Optional.empty(), Optional.empty(), Optional.empty(), List.of());
        assertEquals(List.of(0), BoundaryLabels.place(List.of(site(new PaperPoint(90, 90))), none).unplaced());
    }

    @Test
    void stripsThatMeetTheDrawingAreRefused() {
        assertThrows(IllegalArgumentException.class, () -> new BoundaryLabels.Room(DRAWING, Optional.empty(),
                Optional.of(new PaperBox(40, 40, 69.5, 170)), Optional.empty(), List.of()));
        assertThrows(IllegalArgumentException.class, () -> BoundaryLabels.place(List.of(site(new PaperPoint(20, 20))), ROOM));
    }

    /** Loose, clustered, on lines, on one spot, on the border; coordinates in steps, so that ties are common. */
    private static List<BoundaryLabels.Site> crowd(Random random, int count, double width, boolean varied) {
        double step = List.of(0.05, 5.0, 15.0).get(random.nextInt(3));
        PaperPoint heart = inside(random, DRAWING);
        double spread = List.of(3.0, 20.0, 500.0, 500.0).get(random.nextInt(4));
        List<BoundaryLabels.Site> sites = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            List<PaperPoint> points = new ArrayList<>();
            for (int k = 1 + random.nextInt(4); k > 0; k--) {
                double x = heart.x() + (random.nextDouble() - 0.5) * spread;
                double y = heart.y() + (random.nextDouble() - 0.5) * spread;
                points.add(new PaperPoint(snap(x, step, DRAWING.left(), DRAWING.right()), snap(y, step, DRAWING.top(), DRAWING.bottom())));
            }
            double top = varied ? width * (0.6 + 0.8 * random.nextDouble()) : width;
            sites.add(new BoundaryLabels.Site(points, top, 7, 3.5, varied ? 7 + 12 * random.nextDouble() : width,
                    varied ? 7 + 4 * random.nextInt(2) : 7));
        }
        return sites;
    }

    private static double snap(double value, double step, double least, double most) {
        return Math.max(least, Math.min(most, Math.rint(value / step) * step));
    }

    private static PaperPoint inside(Random random, PaperBox box) {
        return new PaperPoint(box.left() + random.nextDouble() * box.width(), box.top() + random.nextDouble() * box.height());
    }

    private static boolean at45(BoundaryLabels.Placed placed) {
        List<PaperPoint> l = placed.leader();
        return l.size() == 2 || Math.abs(Math.abs(l.get(1).x() - l.get(2).x()) - Math.abs(l.get(1).y() - l.get(2).y())) < 1e-6;
    }

    private static BoundaryLabels.Site site(PaperPoint point) {
        return new BoundaryLabels.Site(List.of(point), 19, 7, 3.5);
    }

    private static BoundaryLabels.Placed only(PaperPoint point) {
        return BoundaryLabels.place(List.of(site(point)), ROOM).placed().get(0);
    }

    /** Looks at the result with other means than the product's own. */
    private static BoundaryLabels.Result check(List<BoundaryLabels.Site> sites, BoundaryLabels.Room room, String which, boolean all) {
        BoundaryLabels.Result result = BoundaryLabels.place(sites, room);
        assertEquals(sites.size(), result.placed().size() + result.unplaced().size(), which);
        assertTrue(!all || result.unplaced().isEmpty(), which + " left out " + result.unplaced());
        for (BoundaryLabels.Placed a : result.placed()) {
            assertTrue(room.strip(a.side()).orElseThrow().grown(1e-6).holds(a.box()), which + ": label outside its strip");
            PaperPoint end = a.leader().get(a.leader().size() - 1);
            assertTrue(sites.get(a.site()).points().contains(end), which + ": leader ends elsewhere");
            assertTrue(a.box().grown(1e-6).holds(a.leader().get(0)), which + ": leader begins elsewhere");
            for (BoundaryLabels.Placed b : result.placed()) {
                if (a.site() < b.site()) {
                    assertTrue(!a.box().grown(0.249).meets(b.box().grown(0.249)), which + ": labels meet");
                    assertTrue(!cross(a.leader(), b.leader()), which + ": leaders cross " + a + " " + b);
                    if (a.side() == b.side()) {
                        double apart = a.side() == BoundarySide.TOP ? a.leader().get(0).x() - b.leader().get(0).x()
                                : a.leader().get(0).y() - b.leader().get(0).y();
                        assertTrue(Math.abs(apart) > 9 - 1e-6, which + ": pitch " + apart);
                    }
                }
                if (a.site() != b.site()) {
                    assertTrue(!crosses(a.leader(), b.box()), which + ": leader over a label");
                }
            }
        }
        return result;
    }

    private static boolean crosses(List<PaperPoint> line, PaperBox box) {
        for (int i = 1; i < line.size(); i++) {
            if (new java.awt.geom.Rectangle2D.Double(box.left(), box.top(), box.width(), box.height())
                    .intersectsLine(line.get(i - 1).x(), line.get(i - 1).y(), line.get(i).x(), line.get(i).y())) {
                return true;
            }
        }
        return false;
    }

    private static boolean cross(List<PaperPoint> a, List<PaperPoint> b) {
        boolean shared = a.get(a.size() - 1).equals(b.get(b.size() - 1));
        for (int i = 1; i < a.size(); i++) {
            for (int k = 1; k < b.size(); k++) {
                if (segment(a, i, shared).intersectsLine(segment(b, k, shared))) {
                    return true;
                }
            }
        }
        return false;
    }

    /** A segment; the last one drawn back by a tenth of a micrometre where the leaders share their site. */
    private static Line2D segment(List<PaperPoint> line, int i, boolean shared) {
        PaperPoint from = line.get(i - 1);
        PaperPoint to = line.get(i);
        boolean back = shared && i == line.size() - 1;
        double share = back ? 1 - Math.min(0.5, 1e-4 / from.distance(to)) : 1;
        PaperPoint end = from.towards(to, share);
        return new Line2D.Double(from.x(), from.y(), end.x(), end.y());
    }
}
