package rainlap.report;

import com.fasterxml.jackson.core.JsonEncoding;
import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.StreamWriteFeature;
import java.io.IOException;
import java.io.OutputStream;
import java.util.List;
import rainlap.practice.Disagreement;
import rainlap.practice.Limit;
import rainlap.practice.LimitValue;
import rainlap.practice.Practice;

/** The practices as JSON: what each is, what each asks limit by limit, and where documents disagree. UTF-8, keys in a fixed order. */
public final class PracticeJson {
    private final JsonGenerator json;

    private PracticeJson(JsonGenerator json) {
        this.json = json;
    }

    /** Writes it all; the stream stays open. */
    public static void write(List<Practice> practices, List<Disagreement> disagreements, OutputStream out) throws IOException {
        try (JsonGenerator json = new JsonFactory().createGenerator(out, JsonEncoding.UTF8)) {
            json.disable(StreamWriteFeature.AUTO_CLOSE_TARGET.mappedFeature());
            json.setPrettyPrinter(FindingsJson.printer());
            new PracticeJson(json).all(practices, disagreements);
            json.writeRaw('\n');
        }
    }

    private void all(List<Practice> practices, List<Disagreement> disagreements) throws IOException {
        json.writeStartObject();
        json.writeArrayFieldStart("practices");
        for (Practice p : practices) {
            json.writeStartObject();
            json.writeStringField("id", p.id());
            json.writeStringField("title", p.title());
            json.writeStringField("about", p.about());
            json.writeArrayFieldStart("facts");
            for (String fact : p.facts()) {
                json.writeString(fact);
            }
            json.writeEndArray();
            json.writeEndObject();
        }
        json.writeEndArray();
        json.writeArrayFieldStart("limits");
        for (Limit l : Limit.values()) {
            limit(l, practices);
        }
        json.writeEndArray();
        json.writeArrayFieldStart("disagreements");
        for (Disagreement d : disagreements) {
            disagreement(d);
        }
        json.writeEndArray();
        json.writeEndObject();
    }

    private void limit(Limit l, List<Practice> practices) throws IOException {
        json.writeStartObject();
        json.writeStringField("limit", l.id());
        json.writeStringField("unit", l.unit());
        json.writeStringField("meaning", l.meaning());
        json.writeArrayFieldStart("asked");
        for (Practice p : practices) {
            json.writeStartObject();
            json.writeStringField("practice", p.id());
            value(p.get(l));
            json.writeEndObject();
        }
        json.writeEndArray();
        json.writeEndObject();
    }

    private void value(LimitValue v) throws IOException {
        if (v.isNever()) {
            json.writeNullField("value");
        } else {
            json.writeNumberField("value", v.value());
        }
        json.writeBooleanField("never", v.isNever());
        json.writeBooleanField("strict", v.strict());
        json.writeBooleanField("or_taped", v.orTaped());
        json.writeStringField("spoken_by", v.spokenBy());
        WaterJson.source(json, v.source());
        json.writeStringField("note", v.note());
    }

    private void disagreement(Disagreement d) throws IOException {
        json.writeStartObject();
        json.writeStringField("about", d.about());
        if (d.limit().isPresent()) {
            json.writeStringField("limit", d.limit().get().id());
        } else {
            json.writeNullField("limit");
        }
        json.writeArrayFieldStart("says");
        for (Disagreement.Says s : d.says()) {
            json.writeStartObject();
            json.writeStringField("who", s.who());
            json.writeStringField("what", s.what());
            json.writeStringField("known", s.known().text());
            json.writeEndObject();
        }
        json.writeEndArray();
        json.writeStringField("comment", d.comment());
        json.writeEndObject();
    }
}
