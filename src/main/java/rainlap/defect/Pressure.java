package rainlap.defect;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import rainlap.measure.LengthText;
import rainlap.rule.Evidence;
import rainlap.source.Known;
import rainlap.source.Source;
import rainlap.wall.Exposure;
import rainlap.water.Drive;

/**
 * What drives the water into the holes.
 *
 * @param name in a word or two, for tables
 * @param says in a sentence where it comes from
 * @param source of the pressure; empty for what the elevation states
 */
public record Pressure(String name, String says, Drive drive, Optional<Source> source) {
    /** Where the holes and the pressure come from. */
    public static final Source TEST = new Source("NCC Volume Two", "2022", "H2V1(5)(d), (6)", Known.PUBLISHED);
    /** Held for 15 minutes when the tests have been repeated. */
    public static final double HELD_PA = 50;

    static List<Pressure> of(Evidence e) {
        Exposure own = e.elevation().exposure(), held = new Exposure(OptionalDouble.empty(), OptionalDouble.of(HELD_PA), own.windFrom(), own.rainMmPerH(),
                OptionalDouble.empty(), own.leading(), own.temperatureC(), own.sunDays(), own.road());
        Drive test = Drive.of(held, e.practice(), e.stack().stage()), walls = e.trace().drive();
        return List.of(new Pressure("50 Pa", "held for 15 min in the test", test, Optional.of(TEST)),
                new Pressure("own", own(walls), walls, Optional.empty()));
    }

    private static String own(Drive drive) {
        return drive.pressurePa().isEmpty() ? "the wall states no wind, towing or pressure: the course lap of its practice stands for the rise"
                : "the wall's own: " + Math.round(drive.pressurePa().getAsDouble()) + " Pa from the wind, travel or pressure it states";
    }

    /** How far it drives: {@code lifts 5.1 mm, pushes 100 mm}. */
    public String inWords() {
        String sheltered = drive.shelteredRise() == drive.rise() ? "" : " (" + LengthText.mm(drive.shelteredRise()) + " mm behind cladding)";
        return "lifts water " + LengthText.mm(drive.rise()) + " mm" + sheltered + ", pushes it " + LengthText.mm(drive.creep()) + " mm";
    }
}
