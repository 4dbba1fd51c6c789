package rainlap.drawing;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import rainlap.check.WeakPoint;
import rainlap.rule.Place;

/**
 * A section to be drawn.
 *
 * @param letter of the plane
 * @param points the weak points it shows, worst first
 * @param gauge what is dimensioned
 * @param place where it is, in words, and what else it shows; empty where its letter stands on the elevation and there is nothing else
 */
record SectionPlan(String letter, List<WeakPoint> points, Cut cut, int scale, Optional<Gauge> gauge, Optional<String> place) {
    SectionPlan {
        points = List.copyOf(points);
    }

    /** The same section for these weak points. */
    SectionPlan of(List<WeakPoint> others) {
        return new SectionPlan(letter, others, cut, scale, gauge, place);
    }

    /** The same section, telling that it stands for further weak points too. */
    SectionPlan telling(List<WeakPoint> alike) {
        String numbers = alike.stream().map(p -> Integer.toString(p.number())).collect(Collectors.joining(", "));
        return alike.isEmpty() ? this : new SectionPlan(letter, points, cut, scale, gauge, Optional.of(place.map(s -> s + " ").orElse("") + "This cut shows " + numbers + " too."));
    }

    /** The same section with a letter that stands on the elevation. */
    SectionPlan marked(String by) {
        return new SectionPlan(by, points, cut, scale, gauge, Optional.empty());
    }

    /** The same with a letter that finds no room there. */
    SectionPlan unmarked(String by) {
        return new SectionPlan(by, points, cut, scale, gauge, Optional.of(noRoom("x " + Place.mm(cut.at().x()) + ", " + Place.level(cut.at().y()))));
    }

    /** The same with something else dimensioned. */
    SectionPlan with(Optional<Gauge> other) {
        return new SectionPlan(letter, points, cut, scale, other, place);
    }

    /** Tells a place that is not marked. */
    static String noRoom(String at) {
        return "Not marked; at " + at + ".";
    }

    WeakPoint first() {
        return points.get(0);
    }

    /**
     * A length that is short.
     *
     * @param from place along the cut's axis where it begins
     * @param sign 1 towards higher places, -1 towards lower ones, 0 inwards from a turn at {@code from}
     * @param measured grid units
     * @param asked grid units, or 0 where nothing is asked in a number
     */
    record Gauge(long from, int sign, long measured, long asked) {}
}
