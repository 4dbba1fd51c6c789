package rainlap.rule.material;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import rainlap.material.MaterialKind;
import rainlap.material.TemperatureRange;
import rainlap.rule.Evidence;
import rainlap.rule.Finding;
import rainlap.rule.Outcome;
import rainlap.rule.Rule;
import rainlap.rule.RuleInfo;
import rainlap.wall.Exposure;

/** A tape, or something else that is stuck on, gets colder or hotter than it works. */
public final class TapeOutOfService implements Rule {
    static final RuleInfo INFO = RuleInfo.of("tape-out-of-service", "tape beyond its temperatures", RuleInfo.Theme.MATERIALS);
    private static final String KEY = "service_c";

    @Override
    public RuleInfo info() {
        return INFO;
    }

    @Override
    public Stream<Outcome> check(Evidence e) {
        List<Batch> batches = stuckOn(e);
        if (batches.isEmpty()) {
            return Stream.of(new Outcome.DoesNotApply("nothing that is stuck on is drawn"));
        }
        Optional<Exposure.Span> stated = e.elevation().exposure().temperatureC();
        if (stated.isEmpty()) {
            return Stream.of(new Outcome.CannotTell(List.of(), "the exposure states no temperature_c"));
        }
        return batches.stream().flatMap(b -> judge(e, b, stated.get()));
    }

    /** Every tape, and what else is stuck. */
    private static List<Batch> stuckOn(Evidence e) {
        return Batch.of(e, m -> Contacts.mayBeStuck(m.kind())).stream().map(b -> b.material().kind() == MaterialKind.TAPE ? b : b.only(Contacts::isStuck))
                .filter(b -> !b.pieces().isEmpty()).toList();
    }

    private static Stream<Outcome> judge(Evidence e, Batch b, Exposure.Span stated) {
        Optional<TemperatureRange> service = b.wear().serviceC();
        if (service.isEmpty()) {
            return Stream.of(new Outcome.CannotTell(b.ids(), b.material().id() + " states no service_c"));
        }
        TemperatureRange s = service.get();
        List<Outcome> out = new ArrayList<>();
        if (stated.lo() < s.lowC()) {
            out.add(cold(e, b, stated.lo(), s));
        }
        if (stated.hi() > s.highC()) {
            out.add(hot(e, b, stated.hi(), s));
        }
        return out.isEmpty() ? Stream.of(new Outcome.Holds(b::ids)) : out.stream();
    }

    private static Outcome cold(Evidence e, Batch b, double lowest, TemperatureRange s) {
        String least = Numbers.text(s.lowC());
        return begun(e, b, lowest, s.lowC()).reads("down to " + Numbers.text(lowest) + " C", least + " C or warmer")
                .says(says(b, s) + "; the wall gets as cold as " + Numbers.text(lowest) + " C.",
                        "Use a tape that works down to " + Numbers.text(lowest) + " C, over dry, clean sheets, and roll it down. Where the day is colder than it may be "
                        + "stuck at, warm tape and sheet first: hot-air tools burn skin and set light to membrane and insulation.");
    }

    private static Outcome hot(Evidence e, Batch b, double highest, TemperatureRange s) {
        return begun(e, b, highest, s.highC()).reads("up to " + Numbers.text(highest) + " C", Numbers.text(s.highC()) + " C or cooler")
                .says(says(b, s) + "; the wall gets as hot as " + Numbers.text(highest) + " C.",
                        "Use a tape that works up to " + Numbers.text(highest) + " C, or keep the sun off it. Stick it in the cool of the day: tape in heat lets go of its "
                        + "backing, and hot metal burns.");
    }

    private static String says(Batch b, TemperatureRange s) {
        return b.described() + " works from " + Numbers.text(s.lowC()) + " to " + Numbers.text(s.highC()) + " C (" + Origin.inWords(b.material(), KEY) + ")";
    }

    private static Finding.Builder begun(Evidence e, Batch b, double there, double allowed) {
        return Finding.of(INFO, b.where(e), b.ids()).compares(there, allowed, "C").source(Origin.of(b.material(), KEY));
    }
}
