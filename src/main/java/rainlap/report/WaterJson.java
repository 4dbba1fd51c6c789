package rainlap.report;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.List;
import rainlap.rule.Place;
import rainlap.source.Source;
import rainlap.wall.Elevation;
import rainlap.water.Assumption;
import rainlap.water.Balance;
import rainlap.water.Reach;
import rainlap.water.Step;
import rainlap.water.Trace;

/** The part of the findings file on where the water goes and on what was taken for granted. */
final class WaterJson {
    private final JsonGenerator json;
    private final Elevation elevation;

    WaterJson(JsonGenerator json, Elevation elevation) {
        this.json = json;
        this.elevation = elevation;
    }

    /** {@code reach}: the frame that is wet when at most so many things fail, one entry for each surface. */
    void reach(List<Reach> all) throws IOException {
        json.writeArrayFieldStart("reach");
        for (Reach r : all) {
            if (!r.where().isEmpty()) {
                json.writeStartObject();
                json.writeNumberField("defences", r.defences());
                json.writeStringField("surface", r.surface().name());
                json.writeStringField("where", Place.area(elevation, r.surface(), r.where()).wkt());
                json.writeEndObject();
            }
        }
        json.writeEndArray();
    }

    /** {@code path}: from the rain on. */
    void path(List<Step> steps) throws IOException {
        json.writeArrayFieldStart("path");
        for (Step s : steps) {
            json.writeStartObject();
            json.writeStringField("surface", s.on().name());
            json.writeStringField("where", Place.line(elevation, s.on(), s.where()).wkt());
            json.writeStringField("why", s.why());
            json.writeBooleanField("failure", s.failure());
            json.writeEndObject();
        }
        json.writeEndArray();
    }

    /** {@code assumptions}: each with its figure, and its source unless the elevation itself states it. */
    void assumptions(List<Assumption> all) throws IOException {
        json.writeArrayFieldStart("assumptions");
        for (Assumption a : all) {
            json.writeStartObject();
            json.writeStringField("what", a.what());
            json.writeStringField("figure", a.figure());
            if (a.source().isPresent()) {
                source(a.source().get());
            } else {
                json.writeNullField("source");
            }
            json.writeStringField("note", a.note());
            json.writeEndObject();
        }
        json.writeEndArray();
    }

    /** {@code rain}: how much falls on the wall, and where it goes as drawn; null where none is stated. */
    void rain(Trace trace) throws IOException {
        if (trace.rain().isEmpty() || trace.balance().isEmpty()) {
            json.writeNullField("rain");
            return;
        }
        Balance b = trace.balance().get();
        json.writeObjectFieldStart("rain");
        FindingsJson.number(json, "litres_per_m2_hour", trace.rain().get().litresPerM2Hour());
        json.writeObjectFieldStart("balance");
        FindingsJson.number(json, "fallen", b.fallen());
        for (Balance.Share s : trace.shares()) {
            FindingsJson.number(json, s.name(), s.litresPerHour());
        }
        json.writeEndObject();
        json.writeArrayFieldStart("not_counted");
        for (String means : trace.besides()) {
            json.writeString(means);
        }
        json.writeEndArray();
        json.writeEndObject();
    }

    void source(Source source) throws IOException {
        source(json, source);
    }

    /** {@code source}: who says a number, and how well it is known. */
    static void source(JsonGenerator json, Source source) throws IOException {
        json.writeObjectFieldStart("source");
        json.writeStringField("document", source.document());
        json.writeStringField("edition", source.edition());
        json.writeStringField("clause", source.clause());
        json.writeStringField("known", source.known().text());
        json.writeEndObject();
    }
}
