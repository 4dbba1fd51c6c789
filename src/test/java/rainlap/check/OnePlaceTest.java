package rainlap.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import rainlap.joint.Drawn;
import rainlap.material.Bond;
import rainlap.material.Edge;
import rainlap.material.MaterialKind;
import rainlap.practice.Practices;
import rainlap.rule.Evidence;
import rainlap.rule.Finding;
import rainlap.rule.Outcome;
import rainlap.rule.Place;
import rainlap.rule.Rule;
import rainlap.rule.RuleInfo;
import rainlap.wall.CutPattern;
import rainlap.wall.EdgeRole;
import rainlap.wall.Shape;
import rainlap.wall.Side;
import rainlap.wall.Stage;
import rainlap.wall.Surface;
import rainlap.water.Step;
import rainlap.geom.Point;

/** What rules of dimensions and the trace find at one place is one weak point, with the defences of the whole way. Rise and creep 150. */
class OnePlaceTest {
    private static Drawn wall() {
        return Drawn.wall().outline(0, 0, 2000, 2000, EdgeRole.FREE);
    }

    private static List<Finding> found(Drawn wall) {
        return Checker.check(wall.elevation(), Stage.WRAP, Practices.common()).weakPoints().stream().map(WeakPoint::finding).toList();
    }

    private static String text(Drawn wall) {
        return found(wall).stream().map(f -> f.defences() + " " + f.rule() + " " + f.pieces() + ": "
                + f.path().stream().map(s -> (s.failure() ? "!" : "") + s.why()).collect(Collectors.joining("; "))).collect(Collectors.joining("\n"));
    }

    @Test void aTapedButtIsOneWeakPointWithTheWayUnderItsTape() {
        Drawn butt = wall().sheet("M1", -50, -50, 2100, 1050).sheet("M2", -50, 1000, 2100, 1050).tape("T1", -50, 962.5, 2100, 75);
        assertEquals("1 butt-joint [M2, M1]: rain wets M2; !runs in behind T1, whose bond has failed; runs in behind M1", text(butt));
    }

    @Test void aReverseLapLeaksAndIsNotSaidTwice() {
        Drawn reversed = wall().sheet("M2", -50, 800, 2100, 1250).sheet("M1", -50, -50, 2100, 1050);
        assertEquals("0 reverse-lap [M1, M2]: rain wets M2; runs in behind M1; drops onto the frame", text(reversed));
    }

    @Test void anUntapedLapIsOverrunAtOneAndUnderNarrowTapeAtTwo() {
        Drawn lap = wall().sheet("M1", -50, -50, 2100, 1050).sheet("M2", -50, 850, 2100, 1200);
        assertEquals("1 untaped-joint [M2, M1]: rain wets M1; !overruns the lap under M2, onto M1; runs on in under M2, onto the frame", text(lap));
        List<Finding> narrow = found(lap.tape("T1", -50, 840, 2100, 60));
        assertEquals(List.of("narrow-tape-cover"), narrow.stream().map(Finding::rule).toList());
        assertEquals(2, narrow.get(0).defences());
    }

    @Test void whereNothingGetsInWithinTwoFailuresItIsThreeAndHasNoWay() {
        Drawn behind = wall().sheet("M0", -50, -50, 2100, 2100).sheet("M1", -50, -50, 2100, 1050).sheet("M2", -50, 850, 2100, 1200);
        assertEquals("3 untaped-joint [M2, M1]: ", text(behind));
    }

    @Test void anOpenGapIsBareFrameAndRainWetsIt() {
        Drawn gap = wall().sheet("M1", -50, -50, 1050, 2100).sheet("M2", 1040, -50, 1010, 2100);
        assertEquals("0 open-gap [M2, M1]: rain wets the frame", text(gap));
    }

    /** Bare frame lies between two sheets; what runs on it gets in behind the lower one, and is told where it came onto the frame. */
    @Test void aWayGoesNoFurtherThanTheFrame() {
        Drawn wall = wall().sheet("M1", -50, -50, 2100, 1000).sheet("M2", -50, 1100, 2100, 950).sheet("M3", 300, 200, 400, 300);
        for (Finding f : found(wall)) {
            long onFrame = f.path().stream().filter(s -> s.layer().equals(Step.FRAME)).count();
            assertTrue(onFrame == 0 || f.path().get(f.path().size() - 1).layer().equals(Step.FRAME) && onFrame == 1, f.rule() + f.path());
        }
    }

    @Test void aLeakElsewhereStaysAWeakPointOfItsOwn() {
        Drawn both = wall().ring("M1", -50, -50, 2050, -50, 2050, 500, 500, 500, 500, 510, 2050, 510, 2050, 1050, -50, 1050)
                .tape("T9", 400, 455, 1650, 100).sheet("M2", -50, 900, 2100, 1150).tape("T1", -50, 890, 2100, 60);
        assertEquals(List.of("one-failure-away [T9]", "narrow-tape-cover [T1, M2, M1]"), found(both).stream().map(f -> f.rule() + " " + f.pieces()).toList());
    }

    /** A patch sealed at its foot and sides is a pocket: the reverse lap says that water gets in, and not that it stays. */
    @Test void aPocketBehindAReverseLapIsTrappedWaterToo() {
        Drawn pocket = wall().sheet("M", -50, -50, 2100, 2100).sheet("P", 600, 600, 400, 400);
        assertEquals("3 reverse-lap [P, M]: \n3 trapped-water [P, M]: rain wets M; runs in behind P",
                text(pocket.bond(Bond.sealedAt(Edge.LEFT, Edge.RIGHT, Edge.BOTTOM))));
        Drawn open = wall().sheet("M", -50, -50, 2100, 2100).sheet("P", 600, 600, 400, 400);
        assertEquals("3 reverse-lap [P, M]: \n3 untaped-joint [P, M]: ", text(open.bond(Bond.sealedAt(Edge.LEFT, Edge.RIGHT))));
    }

    private static Drawn window() {
        return wall().window("W1", 600, 600, 800, 700, 90).cutSheet("M", -50, -50, 2100, 2100, "W1", CutPattern.DIAGONAL, 90);
    }

    /** An upper corner piece, as wide on the wall as it is deep: at x = 600 or 1400, with what it has on the head from u on, and on a jamb. */
    private static Drawn corner(Drawn d, String id, double x, double u, Side jamb) {
        return d.piece(id, MaterialKind.CORNER_PIECE, new Shape(Surface.WALL, List.of(Drawn.region(x, 1175, x + 75, 1175, x + 75, 1300, x, 1300))),
                Drawn.on("W1", Side.HEAD, u, 0, u + 125, 0, u + 125, 90, u, 90), Drawn.on("W1", jamb, 575, 0, 700, 0, 700, 90, 575, 90));
    }

    private static int headFlashing(Drawn wall) {
        return found(wall).stream().filter(f -> f.rule().equals("missing-head-flashing")).findFirst().orElseThrow().defences();
    }

    /** Where the frame lies bare at the head, rain wets it whatever falls off the wall above; a corner piece makes that better, and never worse. */
    @Test void aMissingHeadFlashingHasNoFewerDefencesOnceABareCornerBesideItIsMended() {
        Drawn left = corner(window(), "K3", 525, 0, Side.LEFT), both = corner(corner(window(), "K3", 525, 0, Side.LEFT), "K4", 1400, 675, Side.RIGHT);
        assertEquals(List.of(0, 0, 1), List.of(headFlashing(window()), headFlashing(left), headFlashing(both)));
    }

    /** The right corner is covered on the head and bare on the jamb only. */
    @Test void aJambThatLiesBareAtTheHeadCountsAtTheHead() {
        Drawn onTheHead = corner(window(), "K3", 525, 0, Side.LEFT).piece("K4", MaterialKind.CORNER_PIECE,
                new Shape(Surface.WALL, List.of(Drawn.region(1275, 1300, 1475, 1300, 1475, 1400, 1275, 1400))), Drawn.on("W1", Side.HEAD, 675, 0, 800, 0, 800, 90, 675, 90));
        Finding f = found(onTheHead).stream().filter(g -> g.rule().equals("missing-head-flashing")).findFirst().orElseThrow();
        assertEquals("0 W1.right rain wets the frame", f.defences() + " " + f.path().get(0).on().name() + " " + f.path().get(0).why());
    }

    @Test void atTheFoldOfABuildingCornerTheRuleItselfCounts() {
        Drawn corner = Drawn.wall().outline(0, 0, 2000, 2000, EdgeRole.EXTERNAL_CORNER).sheet("M1", 0, -50, 2300, 2100).tape("C2", 1950, -50, 100, 2100);
        assertEquals("0 unwrapped-corner [M1]: ", text(corner), "the trace lets nothing in over the outline");
    }

    /** Of two findings of equal defences the one that meets more water comes first; fewer defences come before all. */
    @Test void weakPointsAreRankedByDefencesThenLitres() {
        Rule fake = new Rule() {
            private final RuleInfo info = RuleInfo.of("fake", "fake", RuleInfo.Theme.EDGES);

            @Override public RuleInfo info() {
                return info;
            }

            @Override public Stream<Outcome> check(Evidence e) {
                return Stream.of(of(1, "A", 2), of(1, "B", 5), of(0, "C", 0), of(1, "D", 5));
            }

            private Outcome of(int defences, String piece, double litres) {
                Place at = new Place(Surface.WALL, List.of(new Point(0, 0), new Point(100, 0)), List.of());
                Outcome.Broken b = Finding.of(info, at, List.of(piece)).defences(defences).says("So it is.", "Mend it.");
                return new Outcome.Broken(b.finding().withLitres(litres));
            }
        };
        Drawn whole = wall().sheet("M", -50, -50, 2100, 2100);
        List<String> order = Checker.check(Evidence.of(whole.elevation(), Stage.WRAP, Practices.common()), List.of(fake)).weakPoints().stream()
                .map(w -> w.number() + String.join("", w.finding().pieces())).toList();
        assertEquals(List.of("1C", "2B", "3D", "4A"), order);
    }
}
