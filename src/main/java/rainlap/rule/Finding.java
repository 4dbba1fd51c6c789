package rainlap.rule;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import rainlap.practice.LimitValue;
import rainlap.source.Source;
import rainlap.water.Step;

/**
 * One thing that is not as asked.
 *
 * @param rule the rule's id
 * @param pieces ids, the outer or offending piece first
 * @param where its place
 * @param measured what the drawing has, in {@code unit}; empty where there is nothing to measure
 * @param required what is asked, in {@code unit}; empty where the demand is no number
 * @param unit of both: {@code mm}, {@code deg}, {@code x}, {@code mm2/m}, {@code V}, {@code days}, {@code C} or empty
 * @param drawn what is there, in a few words: "100 reversed"
 * @param asked what is asked, in a few words: "150, or tape"
 * @param source who asks it
 * @param spokenBy the practice whose limit it is; empty where no practice sets one, because physics, materials, the law of the road or common
 *     sense do
 * @param says one or two sentences: what is there, what is asked and by whom
 * @param remedy how to mend it, with dimensions
 * @param defences how many things must fail before water reaches the frame by way of this place; {@link #MANY} for that many or more.
 *     A rule states it only where the trace does not look; the check lowers it to what the trace tells
 * @param joint the id of the joint it concerns
 * @param path the water's way by this place to the frame, from the rain on; empty when none comes with fewer than {@link #MANY} failures, or none can be followed there
 * @param litresPerHour of water that comes this way; empty where that is not reckoned
 */
public record Finding(String rule, List<String> pieces, Place where, OptionalDouble measured, OptionalDouble required, String unit,
        String drawn, String asked, Source source, Optional<String> spokenBy, String says, String remedy, int defences,
        Optional<String> joint, List<Step> path, OptionalDouble litresPerHour) {
    /** Ways of so many failures and more are not followed. */
    public static final int MANY = 3;

    public Finding {
        pieces = List.copyOf(pieces);
        path = List.copyOf(path);
        Objects.requireNonNull(where, "where");
        Objects.requireNonNull(litresPerHour, "litresPerHour");
        if (says.isBlank() || remedy.isBlank() || defences < 0 || defences > MANY) {
            throw new IllegalArgumentException(rule + ": a finding says what is wrong and how to mend it");
        }
    }

    /** The same finding with the water's way by its place. */
    public Finding withWay(int failures, List<Step> way) {
        return new Finding(rule, pieces, where, measured, required, unit, drawn, asked, source, spokenBy, says, remedy, failures, joint, way,
                litresPerHour);
    }

    /** The same finding with how much water comes its way. */
    public Finding withLitres(double perHour) {
        return new Finding(rule, pieces, where, measured, required, unit, drawn, asked, source, spokenBy, says, remedy, defences, joint, path,
                OptionalDouble.of(perHour));
    }

    /** In words, for a finding without a way: none gets in so easily, or none can be followed there and the rule itself reckons with so few failures. */
    public String whyNoWay() {
        return defences == MANY ? "None gets in here and comes to the frame with fewer than " + MANY + " failures."
                : "None is followed here: that " + (defences == 0 ? "nothing" : defences + (defences == 1 ? " thing" : " things")) + " must fail is what the rule takes, not what the water shows.";
    }

    /** Whether it is a matter for practices, and this one says nothing of it. */
    public boolean isUnspokenBy(String practice) {
        return spokenBy.isPresent() && !spokenBy.get().equals(practice);
    }

    /** Starts a finding of a rule at a place. */
    public static Builder of(RuleInfo rule, Place where, List<String> pieces) {
        return new Builder(rule, where, pieces);
    }

    /** Collects the parts of a finding by name. */
    public static final class Builder {
        private final RuleInfo rule;
        private final Place where;
        private final List<String> pieces;
        private OptionalDouble measured = OptionalDouble.empty();
        private OptionalDouble required = OptionalDouble.empty();
        private String unit = "";
        private String drawn = "";
        private String asked = "";
        private Source source = Source.commonPractice();
        private Optional<String> spokenBy = Optional.empty();
        private int defences = MANY;
        private Optional<String> joint = Optional.empty();
        private OptionalDouble litresPerHour = OptionalDouble.empty();
        private List<Step> path = List.of();

        private Builder(RuleInfo rule, Place where, List<String> pieces) {
            this.rule = rule;
            this.where = where;
            this.pieces = pieces;
        }

        /** What a practice asks: its number (unless it is "never"), source and who spoke. */
        public Builder asks(LimitValue limit) {
            required = limit.isNever() ? OptionalDouble.empty() : OptionalDouble.of(limit.value());
            unit = limit.isNever() ? "" : limit.limit().unit();
            source = limit.source();
            spokenBy = Optional.of(limit.spokenBy());
            return this;
        }

        /** What is asked of this place, in grid units, where it is not the limit's own number: all of a reveal that is shallower. */
        public Builder requires(long units) {
            required = OptionalDouble.of(units / 100.0);
            return this;
        }

        /** Who asks for what no limit holds, such as an order or a direction. */
        public Builder source(Source document) {
            source = document;
            return this;
        }

        /** Who asks for it, where the limit's own number is not what was measured. */
        public Builder saidBy(LimitValue limit) {
            source = limit.source();
            spokenBy = Optional.of(limit.spokenBy());
            return this;
        }

        /** What is there, in grid units, reported in millimetres. */
        public Builder measures(long units) {
            measured = OptionalDouble.of(units / 100.0);
            unit = "mm";
            return this;
        }

        /** What is there, in the unit of the limit that asks. */
        public Builder figure(double inThatUnit) {
            measured = OptionalDouble.of(inThatUnit);
            return this;
        }

        /** What is there as a factor, where the limit is one. */
        public Builder factor(double times) {
            measured = OptionalDouble.of(times);
            unit = "x";
            return this;
        }

        /** What is there as an angle, where the limit is one. */
        public Builder degrees(double angle) {
            measured = OptionalDouble.of(angle);
            unit = "deg";
            return this;
        }

        /** What is there and what is asked in a unit of its own: {@code V}, {@code days}, {@code C}. */
        public Builder compares(double there, double askedFor, String inUnit) {
            measured = OptionalDouble.of(there);
            required = OptionalDouble.of(askedFor);
            unit = inUnit;
            return this;
        }

        /** The two short texts of a table row. */
        public Builder reads(String drawnText, String askedText) {
            drawn = drawnText;
            asked = askedText;
            return this;
        }

        /** How many things must fail, where the trace does not look: at the fold of a building corner. */
        public Builder defences(int count) {
            defences = count;
            return this;
        }

        /** The way water comes here, and how many things fail on it. */
        public Builder way(int failures, List<Step> steps) {
            defences = failures;
            path = steps;
            return this;
        }

        /** How much water comes this way, litres per hour, where it is known. */
        public Builder litres(OptionalDouble perHour) {
            litresPerHour = perHour;
            return this;
        }

        public Builder joint(String id) {
            joint = Optional.of(id);
            return this;
        }

        /** What is wrong, and how to mend it. */
        public Outcome.Broken says(String what, String remedy) {
            return new Outcome.Broken(new Finding(rule.id(), pieces, where, measured, required, unit, drawn, asked, source,
                    spokenBy, what, remedy, defences, joint, path, litresPerHour));
        }
    }
}
