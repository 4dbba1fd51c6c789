package rainlap.report;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.List;
import java.util.Optional;
import rainlap.defect.AsDrawn;
import rainlap.defect.Hole;
import rainlap.defect.NotPlaced;
import rainlap.defect.Pressure;
import rainlap.defect.Result;
import rainlap.defect.Study;

/** The part of the findings file on holes put into the wall: {@code simulated_defects}, null where they were not asked for. */
final class DefectJson {
    private final JsonGenerator json;
    private final Study study;
    private final WaterJson water;

    private DefectJson(JsonGenerator json, Study study) {
        this.json = json;
        this.study = study;
        this.water = new WaterJson(json, study.followed());
    }

    static void write(JsonGenerator json, Optional<Study> asked) throws IOException {
        if (asked.isEmpty()) {
            json.writeNullField("simulated_defects");
        } else {
            new DefectJson(json, asked.get()).write();
        }
    }

    private void write() throws IOException {
        json.writeObjectFieldStart("simulated_defects");
        json.writeStringField("says", study.says());
        water.source(Pressure.TEST);
        FindingsJson.length(json, "hole", Hole.SIZE);
        json.writeArrayFieldStart("pressures");
        for (AsDrawn a : study.asDrawn()) {
            write(a);
        }
        json.writeEndArray();
        json.writeArrayFieldStart("holes");
        for (Study.Followed f : study.holes()) {
            write(f);
        }
        json.writeEndArray();
        json.writeArrayFieldStart("not_placed");
        for (NotPlaced n : study.notPlaced()) {
            write(n);
        }
        json.writeEndArray();
        json.writeEndObject();
    }

    private void write(AsDrawn a) throws IOException {
        Pressure p = a.pressure();
        json.writeStartObject();
        json.writeStringField("name", p.name());
        json.writeStringField("says", p.says());
        if (p.drive().pressurePa().isPresent()) {
            json.writeNumberField("pressure_pa", p.drive().pressurePa().getAsDouble());
        } else {
            json.writeNullField("pressure_pa");
        }
        FindingsJson.length(json, "rise", p.drive().rise());
        FindingsJson.length(json, "sheltered_rise", p.drive().shelteredRise());
        FindingsJson.length(json, "creep", p.drive().creep());
        if (p.source().isPresent()) {
            water.source(p.source().get());
        } else {
            json.writeNullField("source");
        }
        json.writeBooleanField("frame_wet_as_drawn", a.wetsFrame());
        texts("pools_as_drawn", a.pools());
        json.writeEndObject();
    }

    private void write(Study.Followed f) throws IOException {
        json.writeStartObject();
        json.writeNumberField("number", f.number());
        json.writeStringField("kind", f.hole().kind().word());
        json.writeStringField("of", f.hole().of());
        json.writeStringField("where", f.hole().place().wkt());
        json.writeStringField("piece", f.hole().piece().id());
        json.writeArrayFieldStart("results");
        for (Result r : f.results()) {
            write(r);
        }
        json.writeEndArray();
        json.writeEndObject();
    }

    private void write(Result r) throws IOException {
        json.writeStartObject();
        json.writeStringField("pressure", r.pressure().name());
        json.writeBooleanField("reaches_frame", r.frame().isPresent());
        if (r.frame().isPresent()) {
            json.writeStringField("surface", r.frame().get().surface().name());
            json.writeStringField("where", r.frame().get().wkt());
        } else {
            json.writeNullField("surface");
            json.writeNullField("where");
        }
        texts("pools_on", r.pools());
        json.writeBooleanField("wet_as_drawn", r.asDrawn());
        water.path(r.path());
        json.writeEndObject();
    }

    private void write(NotPlaced n) throws IOException {
        json.writeStartObject();
        json.writeStringField("kind", n.kind().word());
        json.writeStringField("of", n.of());
        json.writeStringField("why", n.why());
        json.writeEndObject();
    }

    private void texts(String key, List<String> texts) throws IOException {
        json.writeArrayFieldStart(key);
        for (String t : texts) {
            json.writeString(t);
        }
        json.writeEndArray();
    }
}
