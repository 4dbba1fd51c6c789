package rainlap.water;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import rainlap.source.Known;
import rainlap.source.Source;
import rainlap.wall.Exposure;

/** What {@link DrivingRain} takes for granted, in the order of the reckoning. */
final class RainAssumptions {
    private static final Source DIGEST = new Source("Building Science Digest BSD-148", "2010", "", Known.PUBLISHED);
    private static final Source DROPS = new Source("Driving Rain Data for Canadian Building Design", "", "after Best 1950",
            Known.PUBLISHED_SECONDARY);
    private static final Source FALL = new Source("Dingle and Lee", "1972", "", Known.PUBLISHED_SECONDARY);
    private static final Source RULE = new Source("BS 6367", "1983", "as a building handbook gives it", Known.PUBLISHED_SECONDARY);

    /** Why a stated calm brings less than no word about the wind. */
    static final String CALM = "A stated speed of 0 means that no rain is driven onto the wall, so all litres are 0. Where the wind is not known leave it out:"
            + " half the rain on level ground is then taken.";

    private RainAssumptions() {}

    static boolean isCalm(Exposure x) {
        return Head.speedMPerS(x).orElse(1) == 0;
    }

    /** A choice of ours with nothing published behind it. */
    private static Assumption shares() {
        return Assumption.of("shares where water parts", "equal", Source.commonPractice(), "Our own choice. A level line that holds water drains half to"
                + " each end; of what meets a loose upper edge half runs on over it and half in behind; from a ledge equal parts go over its front, in behind a batten, and off each"
                + " end without a dam. Which way it really goes is not drawn.");
    }

    private static Source chosen(String how) {
        return new Source(how, "", "", Known.DERIVED);
    }

    private static Assumption rain(double rain) {
        return Assumption.stated("rain on level ground", Figures.number(rain, 3) + " mm/h", "");
    }

    /** The relation, and what it gives. */
    private static Assumption onWall(double litres, Source source, String relation) {
        return Assumption.of("rain on the wall", Figures.number(litres, 1) + " l/(m2 h)", source, relation);
    }

    /** Figures do not part from their units: {@code 71.3 l/(m² h) at most: 10 mm/h × 0.158 s/m × 45 m/s (Building Science Digest BSD-148 2010, published)}. */
    static String relation(Exposure x, double litres) {
        double rain = x.rainMmPerH().orElseThrow();
        OptionalDouble speed = Head.speedMPerS(x);
        String of = Figures.number(litres, 1) + "\u00a0l/(m²\u00a0h)", fallen = Figures.number(rain, 3) + "\u00a0mm/h × ";
        return speed.isEmpty() ? of + ": " + fallen + Figures.number(DrivingRain.DESIGN_RULE, 1) + " (" + RULE.text() + ")"
                : of + (isCalm(x) ? ", as the wind is stated as 0: " : " at most: ") + fallen + Figures.number(DrivingRain.factorSPerM(rain), 3)
                        + "\u00a0s/m × " + Figures.number(speed.getAsDouble(), 2) + "\u00a0m/s (" + DIGEST.text() + ")";
    }

    static List<Assumption> driven(Exposure x, double rain, double onWall) {
        List<Assumption> out = new ArrayList<>(List.of(rain(rain)));
        out.add(speed(x));
        if (rain > 0) {
            out.add(Assumption.of("median drop", Figures.number(DrivingRain.medianDropMm(rain), 2) + " mm", DROPS, ""));
            out.add(Assumption.of("its fall", Figures.number(DrivingRain.fallMPerS(DrivingRain.medianDropMm(rain)), 2) + " m/s", FALL, ""));
            out.add(Assumption.of("driving rain factor", Figures.number(DrivingRain.factorSPerM(rain), 3) + " s/m", DIGEST,
                    "One over the fall of the median drop."));
        }
        out.add(Assumption.of("deposition", Figures.number(DrivingRain.DEPOSITION, 1), DIGEST,
                "The most it gives, near the upper corners of a building; less elsewhere, so the litres are an upper bound."));
        out.add(Assumption.of("wind's angle to the wall", "0 degrees", chosen("Straight on"), "The most that one wind can bring."));
        out.add(onWall(onWall, DIGEST, "A speed is stated, so: rain on level ground x driving rain factor x speed x deposition"
                + " x cosine of the wind's angle to the wall, an upper bound." + (isCalm(x) ? " " + CALM : "")));
        out.add(shares());
        return out;
    }

    /** The same as drives the rise; at the wall, not ten metres up in the open. */
    private static Assumption speed(Exposure x) {
        String figure = Figures.number(Head.speedMPerS(x).orElseThrow(), 2) + " m/s";
        String where = "Taken as the speed at the wall, whatever its height.";
        if (x.windMPerS().isPresent() && x.towingKmPerH().isPresent()) {
            return Assumption.of("speed", figure, chosen("Sum of wind and towing"), where);
        }
        return Assumption.stated(x.windMPerS().isPresent() ? "wind" : "towing speed", figure, where);
    }

    static List<Assumption> byDesignRule(double rain, double onWall) {
        return List.of(rain(rain), Assumption.of("share of the rain on an upright wall", Figures.number(DrivingRain.DESIGN_RULE, 1), RULE,
                "No wind or towing is stated: rain is taken to fall one across to two down. A stated speed, also one of 0, is reckoned with instead."),
                onWall(onWall, RULE, "Rain on level ground x that share."), shares());
    }
}
