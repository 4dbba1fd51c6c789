package rainlap.water;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import rainlap.measure.LengthText;
import rainlap.practice.Limit;
import rainlap.practice.LimitValue;
import rainlap.practice.Practice;
import rainlap.source.Known;
import rainlap.source.Source;
import rainlap.wall.Exposure;
import rainlap.wall.Stage;

/** What a {@link Drive} takes for granted, in the order of the reckoning. */
final class DriveAssumptions {
    private static final Source CONVENTIONAL = new Source("NIST SP 811", "", "appendix B.8", Known.PUBLISHED_SECONDARY);
    private static final Source WIND_CODE = new Source("EN 1991-1-4", "", "recommended values", Known.PUBLISHED_SECONDARY);

    private static final String UNUSED = "Not used here: wind is taken to blow straight at every edge. Which way laps open is for rules: side laps of the cladding for lap-towards-weather, end laps of the membrane for lap-towards-wind.";
    private static final String TRAVEL = "Not used here: travel is taken to blow straight at every edge. Which way end laps of the membrane open is for lap-towards-travel.";

    private final Drive drive;
    private final Exposure exposure;
    private final List<Assumption> out = new ArrayList<>();

    private DriveAssumptions(Drive drive, Exposure exposure) {
        this.drive = drive;
        this.exposure = exposure;
    }

    static List<Assumption> of(Drive drive, Exposure exposure, Practice practice, Stage stage) {
        DriveAssumptions a = new DriveAssumptions(drive, exposure);
        if (drive.pressurePa().isPresent()) {
            a.pressure(drive.pressurePa().getAsDouble());
            a.open();
        } else {
            a.unstated(practice.get(Limit.COURSE_LAP));
        }
        a.directions();
        if (stage == Stage.FINISHED) {
            a.sheltered(practice.get(Limit.DRIVING_SHARE), Drive.share(practice));
        }
        a.creep(practice.get(Limit.END_LAP));
        a.capillary();
        return a.out;
    }

    private static Source derived(String how) {
        return new Source(how, "", "", Known.DERIVED);
    }

    private void add(String what, String figure, Source source, String note) {
        out.add(Assumption.of(what, figure, source, note));
    }

    private void pressure(double pa) {
        speed();
        exposure.pressurePa().ifPresent(stated -> out.add(Assumption.stated("test pressure", Figures.number(stated, 2) + " Pa",
                out.isEmpty() ? "" : "The greater of this and the pressure of the speed drives the water.")));
        if (Head.speedMPerS(exposure).isPresent()) {
            add("air density", Figures.number(Head.AIR_KG_PER_M3, 2) + " kg/m3", WIND_CODE, "");
        }
        if (exposure.pressurePa().orElse(-1) != pa) {
            add("driving pressure", Figures.number(pa, 2) + " Pa", WIND_CODE, "Half the air density times the speed squared.");
        }
    }

    private void speed() {
        boolean both = exposure.windMPerS().isPresent() && exposure.towingKmPerH().isPresent();
        exposure.windMPerS().ifPresent(v -> out.add(Assumption.stated("wind", Figures.number(v, 2) + " m/s", "")));
        exposure.towingKmPerH().ifPresent(v -> out.add(Assumption.stated("towing", Figures.number(v, 2) + " km/h", "")));
        if (both) {
            add("speed", Figures.number(Head.speedMPerS(exposure).orElseThrow(), 2) + " m/s", derived("Sum of wind and towing"),
                    "The wind is taken to blow against the direction of travel" + overruled() + ".");
        }
    }

    /** The worst case is kept where the file states another. */
    private String overruled() {
        return exposure.windFrom().filter(f -> exposure.leading().isPresent() ? exposure.leading().get() != f : f != Exposure.From.FRONT).map(f -> ", the worst case, although wind_from states " + word(f)
                + exposure.leading().map(l -> " and leading " + word(l)).orElse("")).orElse("");
    }

    /** Which way wind blows and travel goes is for rules: the trace drives water at every edge alike. */
    private void directions() {
        exposure.windFrom().ifPresent(f -> out.add(Assumption.stated("wind from", word(f), UNUSED)));
        exposure.leading().ifPresent(f -> out.add(Assumption.stated("side that travels first", word(f), TRAVEL)));
    }

    private static String word(Exposure.From from) {
        return from.name().toLowerCase(Locale.ROOT);
    }

    private void open() {
        add("water density", Figures.number(Head.WATER_KG_PER_M3, 0) + " kg/m3", CONVENTIONAL,
                "At 20 C the same pressure lifts water 0.2 % further.");
        add("gravity", Figures.number(Head.GRAVITY_M_PER_S2, 5) + " m/s2", CONVENTIONAL, "");
        add("share in the open", "1", derived("Whole pressure"), "An edge that nothing covers is taken to meet all of it.");
        add("rise", LengthText.mm(drive.rise()) + " mm", derived("Pressure over the weight of water"),
                "Rounded up to 0.01 mm.");
    }

    private void unstated(LimitValue courseLap) {
        add("rise", LengthText.mm(drive.rise()) + " mm", courseLap.source(),
                "No wind, towing or pressure is stated: the course lap of " + courseLap.spokenBy() + " stands for the rise.");
    }

    private void sheltered(LimitValue asked, double share) {
        add("share behind a drained cladding", Figures.number(share, 3), asked.source(), asked.note());
        String why = drive.pressurePa().isEmpty() ? "Without a stated pressure the share has nothing to lessen."
                : exposure.pressurePa().isPresent() ? "A stated test pressure is not lessened." : "Rounded up to 0.01 mm.";
        add("rise behind a drained cladding", LengthText.mm(drive.shelteredRise()) + " mm",
                derived("Share of the pressure over the weight of water"), why);
    }

    private void creep(LimitValue endLap) {
        boolean none = drive.creep() == 0;
        add("creep", LengthText.mm(drive.creep()) + " mm", none ? derived("Nothing pushes") : endLap.source(),
                none ? "The stated pressure is nothing." : "No formula for it is published: the end lap of " + endLap.spokenBy() + " stands for it.");
    }

    private void capillary() {
        String gap = Figures.number(Capillary.STATED_GAP_MM, 1);
        add("height wetted by itself", Figures.number(Capillary.betweenPlatesMm(Capillary.STATED_GAP_MM), 1) + " mm",
                derived("Rise between plates, water at 20 C"),
                "In a gap of " + gap + " mm. No part of the rise: it wets a lap and does not run out behind it.");
    }
}
