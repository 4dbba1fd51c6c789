package rainlap.file;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import rainlap.wall.Exposure;

/** Reads {@code exposure}. */
final class ExposureReader {
    static final List<String> KEYS = List.of("wind_m_s", "pressure_pa", "wind_from", "rain_mm_h", "towing_km_h", "leading",
            "temperature_c", "sun_days", "road");
    private static final Range TEMPERATURE = Range.between(-100, 200);

    private ExposureReader() {}

    static Exposure read(Value value, Problems problems) {
        return Fields.of(value, "exposure", KEYS, problems).map(ExposureReader::read).orElse(Exposure.UNSTATED);
    }

    private static Exposure read(Fields f) {
        if (f.has("wind_m_s") && f.has("pressure_pa")) {
            f.wrong(f.keyAt("pressure_pa"), "\"wind_m_s\" and \"pressure_pa\" exclude each other", "keep one of them");
        }
        if (f.has("leading") && !f.has("towing_km_h")) {
            f.wrong(f.keyAt("leading"), "\"leading\" says which side travels first, but there is no \"towing_km_h\"",
                    "add \"towing_km_h\": 80, or take it out");
        }
        return new Exposure(f.number("wind_m_s", Range.between(0, 120)), f.number("pressure_pa", Range.between(0, 10_000)),
                from(f, "wind_from", Exposure.From.LEFT, Exposure.From.RIGHT, Exposure.From.FRONT),
                f.number("rain_mm_h", Range.between(0, 2_000)), f.number("towing_km_h", Range.between(0, 200)),
                from(f, "leading", Exposure.From.LEFT, Exposure.From.RIGHT), f.find("temperature_c").flatMap(v -> span(f, v)),
                f.number("sun_days", Range.between(0, 3_650)), f.text("road"));
    }

    private static Optional<Exposure.From> from(Fields f, String key, Exposure.From... allowed) {
        List<String> words = Stream.of(allowed).map(a -> a.name().toLowerCase(Locale.ROOT)).toList();
        return f.word(key, w -> Optional.of(words.indexOf(w)).filter(i -> i >= 0).map(i -> allowed[i]), words);
    }

    private static Optional<Exposure.Span> span(Fields f, Value v) {
        Optional<double[]> n = f.numbers(v, "temperature_c", "[lowest, highest]", TEMPERATURE, TEMPERATURE);
        if (n.isPresent() && n.get()[0] >= n.get()[1]) {
            f.wrong(v.at(), "\"temperature_c\" must run from the lowest to the highest", "write [lowest, highest]");
            return Optional.empty();
        }
        return n.map(d -> new Exposure.Span(d[0], d[1]));
    }
}
