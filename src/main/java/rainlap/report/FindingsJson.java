package rainlap.report;

import com.fasterxml.jackson.core.JsonEncoding;
import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.StreamWriteFeature;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.core.util.Separators;
import java.io.IOException;
import java.io.OutputStream;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import rainlap.check.CheckResult;
import rainlap.check.Crash;
import rainlap.check.Rules;
import rainlap.check.Unchecked;
import rainlap.check.WeakPoint;
import rainlap.defect.Study;
import rainlap.geom.Point;
import rainlap.joint.Joint;
import rainlap.rule.Finding;
import rainlap.rule.Place;
import rainlap.wall.Elevation;

/**
 * The findings file: JSON in UTF-8, keys in a fixed order, lengths in mm, geometry as well-known text in wall coordinates (what lies in a
 * reveal is laid flat into the opening). {@code defences} are those of the water's whole way, 3 standing for three or more; {@code litres_per_hour}
 * is null where it is not reckoned.
 */
public final class FindingsJson {
    /** Version of the form, the value of the key {@code findings}. */
    public static final int VERSION = 1;

    private static final int DECIMALS = 4;

    private final JsonGenerator json;
    private final Elevation elevation;

    private FindingsJson(JsonGenerator json, Elevation elevation) {
        this.json = json;
        this.elevation = elevation;
    }

    /**
     * Writes the whole file; the stream stays open.
     *
     * @param defects what became of holes put into the wall, where that was asked for
     */
    public static void write(CheckResult result, Optional<Study> defects, OutputStream out) throws IOException {
        write(out, json -> writeObject(json, result, defects));
    }

    /** What writes the whole of a file, one object. */
    interface Whole {
        void write(JsonGenerator json) throws IOException;
    }

    static void write(OutputStream out, Whole whole) throws IOException {
        try (JsonGenerator json = new JsonFactory().createGenerator(out, JsonEncoding.UTF8)) {
            json.disable(StreamWriteFeature.AUTO_CLOSE_TARGET.mappedFeature());
            json.setPrettyPrinter(printer());
            whole.write(json);
            json.writeRaw('\n');
        }
    }

    /** The same as an object within another file. */
    static void writeObject(JsonGenerator json, CheckResult result, Optional<Study> defects) throws IOException {
        new FindingsJson(json, result.evidence().elevation()).writeAll(result, defects);
    }

    /** Two blanks a level and a plain line feed, whatever the machine's own line end is. */
    static DefaultPrettyPrinter printer() {
        Separators separators = Separators.createDefaultInstance().withObjectFieldValueSpacing(Separators.Spacing.AFTER)
                .withRootSeparator("").withArrayEmptySeparator("").withObjectEmptySeparator("");
        DefaultPrettyPrinter printer = new DefaultPrettyPrinter(separators);
        printer.indentObjectsWith(new DefaultIndenter("  ", "\n"));
        return printer;
    }

    private void writeAll(CheckResult result, Optional<Study> defects) throws IOException {
        json.writeStartObject();
        json.writeNumberField("findings", VERSION);
        json.writeStringField("elevation", elevation.name());
        json.writeStringField("practice", result.evidence().practice().id());
        json.writeStringField("stage", result.evidence().stage().word());
        json.writeStringField("units", "mm");
        json.writeStringField("water", "traced");
        json.writeStringField("defences_of", "the whole way");
        WaterJson water = new WaterJson(json, elevation);
        water.assumptions(TakenForGranted.all(result.evidence()));
        water.rain(result.evidence().trace());
        joints(result);
        new TurnsJson(json, elevation).turns(result.evidence());
        list("weak_points", result.weakPoints(), this::write);
        water.reach(result.evidence().trace().reach());
        DefectJson.write(json, defects);
        list("unchecked", result.unchecked(), this::write);
        writeCounts(result);
        list("failed", result.crashes(), this::write);
        json.writeEndObject();
    }

    private void writeCounts(CheckResult result) throws IOException {
        json.writeObjectFieldStart("held");
        for (var entry : result.held().entrySet()) {
            json.writeNumberField(entry.getKey(), entry.getValue());
        }
        json.writeEndObject();
        json.writeObjectFieldStart("not_applicable");
        for (var entry : result.notApplicable().entrySet()) {
            json.writeStringField(entry.getKey(), entry.getValue());
        }
        json.writeEndObject();
    }

    private void joints(CheckResult result) throws IOException {
        json.writeArrayFieldStart("joints");
        List<Joint> all = result.evidence().joints().all();
        for (int i = 0; i < all.size(); i++) {
            write(all.get(i), result.evidence().trace().litresAt(all.get(i)));
        }
        json.writeEndArray();
    }

    private void write(Joint joint, OptionalDouble litresPerHour) throws IOException {
        json.writeStartObject();
        json.writeStringField("id", joint.id());
        json.writeStringField("kind", joint.kind().word());
        texts("pieces", List.of(joint.outer().piece().id(), joint.inner().piece().id()));
        json.writeStringField("surface", joint.surface().name());
        json.writeStringField("where", wkt(joint, joint.line()));
        length("lap", joint.lap());
        new TurnsJson(json, elevation).laps(joint);
        writeTape(joint);
        length("gap", joint.gap());
        json.writeBooleanField("sealed", joint.sealed());
        texts("uncovered", joint.uncovered().stream().map(s -> wkt(joint, s.line())).toList());
        number("litres_per_hour", litresPerHour);
        json.writeEndObject();
    }

    /** What lies in a reveal is laid flat into the opening, as on the sheet. */
    private String wkt(Joint joint, List<Point> line) {
        return Place.line(elevation, joint.surface(), line).wkt();
    }

    private void writeTape(Joint joint) throws IOException {
        if (!joint.isTaped()) {
            json.writeNullField("tape");
            return;
        }
        json.writeArrayFieldStart("tape");
        json.writeNumber(millimetres(joint.coverOnOuter()));
        json.writeNumber(millimetres(joint.coverOnInner()));
        json.writeEndArray();
    }

    private void write(WeakPoint point) throws IOException {
        Finding f = point.finding();
        json.writeStartObject();
        json.writeNumberField("number", point.number());
        json.writeStringField("rule", f.rule());
        json.writeStringField("title", Rules.find(f.rule()).map(r -> r.info().title()).orElse(f.rule()));
        texts("pieces", f.pieces());
        json.writeStringField("surface", f.where().surface().name());
        json.writeStringField("where", f.where().wkt());
        number("measured", f.measured());
        number("required", f.required());
        json.writeStringField("unit", f.unit());
        json.writeStringField("drawn", f.drawn());
        json.writeStringField("asked", f.asked());
        json.writeNumberField("defences", f.defences());
        number("litres_per_hour", f.litresPerHour());
        new WaterJson(json, elevation).source(f.source());
        word("spoken_by", f.spokenBy());
        json.writeStringField("says", f.says());
        json.writeStringField("remedy", f.remedy());
        word("joint", f.joint());
        new WaterJson(json, elevation).path(f.path());
        json.writeEndObject();
    }

    private void write(Unchecked unchecked) throws IOException {
        json.writeStartObject();
        json.writeStringField("rule", unchecked.rule());
        texts("pieces", unchecked.pieces());
        json.writeStringField("why", unchecked.why());
        json.writeEndObject();
    }

    private void write(Crash crash) throws IOException {
        json.writeStartObject();
        json.writeStringField("rule", crash.rule());
        json.writeStringField("what", crash.what());
        json.writeEndObject();
    }

    /** What writes one item of a list. */
    private interface Item<T> {
        void write(T item) throws IOException;
    }

    private <T> void list(String key, List<T> items, Item<T> each) throws IOException {
        json.writeArrayFieldStart(key);
        for (T item : items) {
            each.write(item);
        }
        json.writeEndArray();
    }

    private void texts(String key, List<String> texts) throws IOException {
        list(key, texts, json::writeString);
    }

    private void length(String key, long hundredths) throws IOException {
        length(json, key, hundredths);
    }

    static void length(JsonGenerator json, String key, long hundredths) throws IOException {
        json.writeFieldName(key);
        json.writeNumber(millimetres(hundredths));
    }

    private static String millimetres(long hundredths) {
        return trimmed(BigDecimal.valueOf(hundredths, 2));
    }

    private void word(String key, Optional<String> value) throws IOException {
        if (value.isPresent()) {
            json.writeStringField(key, value.get());
        } else {
            json.writeNullField(key);
        }
    }

    private void number(String key, OptionalDouble value) throws IOException {
        number(json, key, value);
    }

    static void number(JsonGenerator json, String key, OptionalDouble value) throws IOException {
        if (value.isEmpty()) {
            json.writeNullField(key);
            return;
        }
        number(json, key, value.getAsDouble());
    }

    static void number(JsonGenerator json, String key, double value) throws IOException {
        json.writeFieldName(key);
        json.writeNumber(trimmed(BigDecimal.valueOf(value).setScale(DECIMALS, RoundingMode.HALF_EVEN)));
    }

    /** Without trailing zeros, never with an exponent: {@code 150}, {@code 62.5}. */
    private static String trimmed(BigDecimal value) {
        return value.stripTrailingZeros().toPlainString();
    }
}
