package rainlap.rule.water;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import rainlap.geom.Point;
import rainlap.joint.Drawn;
import rainlap.material.Bond;
import rainlap.material.Edge;
import rainlap.material.MaterialKind;
import rainlap.practice.Limit;
import rainlap.practice.Practice;
import rainlap.practice.Practices;
import rainlap.practice.ShiftedPractice;
import rainlap.rule.Evidence;
import rainlap.rule.Finding;
import rainlap.rule.Judged;
import rainlap.rule.Outcome;
import rainlap.rule.Rule;
import rainlap.rule.Written;
import rainlap.rule.lap.ButtJoint;
import rainlap.rule.lap.ReverseLap;
import rainlap.rule.lap.ShortCourseLap;
import rainlap.wall.EdgeRole;
import rainlap.wall.Elevation;
import rainlap.wall.Shape;
import rainlap.wall.Stage;
import rainlap.wall.Surface;
import rainlap.water.Step;

/** Each rule on its own, on both sides. Rise and creep 150. */
class WaterRulesTest {
    private static Drawn wall() {
        return Drawn.wall().outline(0, 0, 2000, 2000, EdgeRole.FREE);
    }

    /** A sheet with a slot of 10 by 10 at (x, 1000), open to its right-hand side so that it needs no hole. */
    private static Drawn cut(double x) {
        return wall().ring("M1", -50, -50, 2050, -50, 2050, 1000, x, 1000, x, 1010, 2050, 1010, 2050, 2050, -50, 2050);
    }

    private static String said(Rule rule, Drawn wall) {
        return Judged.found(rule, wall);
    }

    @Test void aCourseLapBelowTheRiseLeaksAsDrawn() {
        assertEquals("M2 | +1000, x 0 to 2000 | frame is wet / dry as drawn", said(new LeaksAsDrawn(), lap(149.99)));
        assertEquals("", said(new LeaksAsDrawn(), lap(150)), "at exactly the rise it holds");
    }

    private static Drawn lap(double lap) {
        return wall().sheet("M1", -50, -50, 2100, 1050).sheet("M2", -50, 1000 - lap, 2100, 2000);
    }

    @Test void theRemedyNamesHowFarWaterIsDriven() {
        Finding f = Judged.findings(new LeaksAsDrawn(), lap(100), "common").get(0);
        assertTrue(f.remedy().contains("at least 150, the height wind lifts water to"), f.remedy());
        assertTrue(f.says().contains("rain wets M1; wind lifts it under M2; wind lifts it on, onto the frame"), f.says());
        Drawn beside = wall().sheet("Ma", -50, -50, 1050, 2100).sheet("Mb", 900, -50, 1150, 2100);
        assertTrue(Judged.findings(new LeaksAsDrawn(), beside, "common").get(0).remedy().contains("at least 150, as far as wind pushes water"));
    }

    /** 40 m/s hold up 101.98 mm of water, a quarter of that 25.5, named in whole millimetres: behind the cladding the lap of 20 is too short by the lesser height. */
    @Test void behindCladdingTheRemedyNamesTheHeightThere() {
        Practice quarter = ShiftedPractice.of(Practices.common(), Limit.DRIVING_SHARE, 0.25);
        assertEquals(List.of("26"), named(clad("'rect': [-50,-50,1900,1250]"), quarter));
        assertEquals(List.of("102"), named(clad("'rect': [-50,-50,1900,550]"), quarter), "no cladding over the lap");
    }

    /** A lap of 20 at +800; cladding over the upper part from +1210 on, and a lower sheet. */
    private static Elevation clad(String lower) {
        return Written.read("{'rainlap': 1, 'exposure': {'wind_m_s': 40}, 'wall': {'outline': [[0,0],[1800,0],[1800,1600],[0,1600]], 'edges': ['free','free','free','free']},"
                + "'pieces': [{'id': 'M1', 'material': 'foil-membrane', 'rect': [-50,-50,1900,870]}, {'id': 'M2', 'material': 'foil-membrane', 'rect': [-50,800,1900,850]},"
                + "{'id': 'C1', 'material': 'weatherboard', " + lower + "}, {'id': 'C2', 'material': 'weatherboard', 'rect': [-50,1210,1900,440]}]}");
    }

    private static List<String> named(Elevation wall, Practice practice) {
        return new LeaksAsDrawn().check(Evidence.of(wall, Stage.FINISHED, practice)).map(o -> ((Outcome.Broken) o).finding().remedy())
                .map(r -> r.replaceFirst(".*by at least ([0-9.]+),.*", "$1")).distinct().toList();
    }

    @Test void aSlitUnderTapeIsOneFailureAwayAndWithASheetBehindItIsNot() {
        assertEquals("T1 | +1010, x 500 to 2000 | 1 failure / 2 failures", first(said(new OneFailureAway(), cut(500).tape("T1", 400, 950, 1650, 120))));
        Drawn behind = wall().sheet("A1", -50, -50, 2100, 2100)
                .ring("M1", -50, -50, 2050, -50, 2050, 1000, 500, 1000, 500, 1010, 2050, 1010, 2050, 2050, -50, 2050).tape("T1", 400, 950, 1650, 120);
        assertEquals("", said(new OneFailureAway(), behind));
    }

    /** 43 m/s lift water 117.85: over a lap of 100 once the tape is off. A lap longer than that mends it, drawn out or by a strip, and the tape laid again. */
    @Test void whereWindGetsOverATapedLapTheRemedyMakesItLonger() {
        String drawn = "{'id': 'M2', 'material': 'foil-membrane', 'rect': [0,1200,2400,1300]}, {'id': 'T1', 'material': 'foil-tape-75', 'line': [[0,1200],[2400,1200]]}";
        Finding f = towed("{'id': 'M1', 'material': 'foil-membrane', 'rect': [0,-40,2400,1340]}, " + drawn).get(0);
        assertEquals("Take T1 off and let M2 lap M1 by at least 118, no less than wind lifts water: slide M2 down or M1 up, or slip a strip in behind M2 and over M1 that laps each by 118. "
                + "Then tape each lower edge again, 25 to each side.", f.remedy());
        assertEquals(List.of(), towed("{'id': 'M1', 'material': 'foil-membrane', 'rect': [0,-40,2400,1358]}, " + drawn), "drawn out");
        assertEquals(List.of(), towed("{'id': 'M1', 'material': 'foil-membrane', 'rect': [0,-40,2400,1340]}, {'id': 'S', 'material': 'foil-membrane', 'rect': [0,1182,2400,136]}, "
                + drawn + ", {'id': 'T2', 'material': 'foil-tape-75', 'line': [[0,1182],[2400,1182]]}"), "by a strip");
    }

    /** What mends a lap that is too short, or none, leaves nothing of which another remedy asks for a longer one. */
    @Test void aLapIsMendedOnceAsFarAsWindLiftsWater() {
        String upper = "{'id': 'M2', 'material': 'foil-membrane', 'rect': [0,1200,2400,1300]}", lower = "{'id': 'M1', 'material': 'foil-membrane', 'rect': [0,-40,2400,%d]}, ";
        assertEquals("Slide M2 down or M1 up by at least 106, or slip a strip in behind M2 and over M1 that laps each by 118 (wind drives water that far).",
                told(new ShortCourseLap(), lower.formatted(1252) + upper));
        assertEquals("Slip a strip 236 high in behind M2 and over M1, so that it laps each by 118, and tape its edges.", told(new ButtJoint(), lower.formatted(1240) + upper));
        assertEquals("Draw the foot of M1 out over M2. It then laps only 100: slip a strip in behind it and over M2 that laps each by 118.",
                told(new ReverseLap(), "{'id': 'M1', 'material': 'foil-membrane', 'rect': [0,1100,2400,1400]}, {'id': 'M2', 'material': 'foil-membrane', 'rect': [0,-40,2400,1240]}")
                        .replace(" Tape the joint.", ""));
    }

    private static String told(Rule rule, String pieces) {
        return rule.check(towedWall(pieces)).flatMap(o -> o instanceof Outcome.Broken b ? java.util.stream.Stream.of(b.finding().remedy()) : java.util.stream.Stream.empty()).findFirst().orElseThrow();
    }

    private static Evidence towedWall(String pieces) {
        return Evidence.of(Written.read("{'rainlap': 1, 'exposure': {'wind_m_s': 18, 'towing_km_h': 90}, 'wall': {'outline': [[0,0],[2400,0],[2400,2400],[0,2400]],"
                + "'edges': ['base','free','eave','free']}, 'pieces': [" + pieces + "]}"), Stage.WRAP, Practices.find("us-irc-2015").orElseThrow());
    }

    private static List<Finding> towed(String pieces) {
        return new OneFailureAway().check(towedWall(pieces))
                .flatMap(o -> o instanceof Outcome.Broken b ? java.util.stream.Stream.of(b.finding()) : java.util.stream.Stream.empty()).toList();
    }

    private static String first(String lines) {
        return lines.lines().findFirst().orElse("");
    }

    @Test void aCornerPieceAloneIsAllThatIsAsked() {
        Shape patch = new Shape(Surface.WALL, List.of(Drawn.region(400, 950, 2050, 950, 2050, 1070, 400, 1070)));
        assertEquals("", said(new OneFailureAway(), cut(500).piece("K1", MaterialKind.CORNER_PIECE, patch)));
    }

    /** The window's upper left corner is at 500, 1100: what lies wholly within 200 of it asks for one strip. */
    @Test void nearACornerOfAnOpeningOneStripIsAllThatIsAsked() {
        assertEquals("holds T1", Written.said(new OneFailureAway(), holeBy("1300")));
        assertEquals("broken T1 | +1300, x 600 to 620 | - of -", Written.said(new OneFailureAway(), holeBy("1300.01")).replace("| defences 1", "").strip());
    }

    private static Elevation holeBy(String top) {
        return Written.wall("'free', 'free', 'free', 'free'", "{'id': 'W1', 'kind': 'window', 'rect': [500, 400, 800, 700], 'reveal': 0}",
                "{'id': 'M1', 'material': 'foil-membrane', 'ring': [[-50,-50],[1850,-50],[1850,1650],[-50,1650]], 'holes': [[[600,1290],[620,1290],[620,%s],[600,%s]]]}"
                        .formatted(top, top),
                "{'id': 'T1', 'material': 'foil-tape-100', 'rect': [550, 1245, 120, 100]}");
    }

    @Test void waterBehindAFlangeSealedButForItsTopIsTrapped() {
        Shape flange = new Shape(Surface.WALL, List.of(Drawn.region(400, 500, 800, 500, 800, 535, 400, 535)));
        Drawn w = wall().sheet("M1", -50, -50, 2100, 2100).piece("F1", MaterialKind.FRAME, flange);
        assertEquals("F1 M1 | +500, x 400 to 800 | water stands / a way out", said(new TrappedWater(), w.bond(Bond.sealedAt(Edge.LEFT, Edge.RIGHT, Edge.BOTTOM))));
        assertEquals("", said(new TrappedWater(), w.bond(Bond.sealedAt(Edge.LEFT, Edge.BOTTOM))), "out at the right end");
    }

    /** A long way is cut short, and wind's steps in it told of the water. */
    @Test void aLongWayIsToldByItsEnds() {
        Step rain = step(Step.Kind.RAIN, "M1", ""), drop = step(Step.Kind.DROP, "M2", ""), lift = step(Step.Kind.LIFT_UNDER, "M2", "M3"),
                push = step(Step.Kind.PUSH_ON, Step.FRAME, "");
        assertEquals("rain wets M1; drops onto M2; and so on, until it is lifted by wind under M3; is pushed by wind on, onto the frame; drops onto M2",
                Steps.told(List.of(rain, drop, drop, drop, lift, push, drop)));
        assertEquals("rain wets M1; wind lifts it under M3", Steps.told(List.of(rain, lift)));
    }

    private static Step step(Step.Kind kind, String layer, String piece) {
        return new Step(kind, layer, piece, false, Surface.WALL, List.of(new Point(0, 0)));
    }
}
