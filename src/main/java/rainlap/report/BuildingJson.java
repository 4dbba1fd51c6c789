package rainlap.report;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.io.OutputStream;
import java.util.List;
import java.util.Optional;
import rainlap.check.BuildingResult;
import rainlap.check.BuildingResult.OneWall;
import rainlap.check.BuildingResult.Ranking;
import rainlap.defect.Study;

/** The findings file of a building: the one ranked list, what goes round the corners, and for each wall what an elevation's findings file holds. */
public final class BuildingJson {
    private final JsonGenerator json;

    private BuildingJson(JsonGenerator json) {
        this.json = json;
    }

    /**
     * Writes the whole file; the stream stays open.
     *
     * @param files the name of each elevation's file, in order
     * @param defects what became of holes put into each wall, where that was asked for
     */
    public static void write(BuildingResult result, List<String> files, List<Optional<Study>> defects, OutputStream out) throws IOException {
        FindingsJson.write(out, json -> new BuildingJson(json).writeAll(result, files, defects));
    }

    private void writeAll(BuildingResult result, List<String> files, List<Optional<Study>> defects) throws IOException {
        json.writeStartObject();
        json.writeNumberField("findings", FindingsJson.VERSION);
        json.writeStringField("building", result.building().name());
        json.writeBooleanField("closed", result.building().closed());
        json.writeArrayFieldStart("weak_points");
        for (Ranking r : result.weakPoints()) {
            write(r);
        }
        json.writeEndArray();
        json.writeArrayFieldStart("corners");
        for (RoundCorner c : RoundCorner.all(result)) {
            write(c);
        }
        json.writeEndArray();
        json.writeArrayFieldStart("walls");
        for (int i = 0; i < files.size(); i++) {
            write(result.walls().get(i), files.get(i), defects.get(i));
        }
        json.writeEndArray();
        json.writeEndObject();
    }

    private void write(Ranking r) throws IOException {
        json.writeStartObject();
        json.writeNumberField("number", r.point().number());
        json.writeStringField("wall", r.wall());
        json.writeStringField("rule", r.point().finding().rule());
        json.writeNumberField("defences", r.point().finding().defences());
        FindingsJson.number(json, "litres_per_hour", r.point().finding().litresPerHour());
        json.writeEndObject();
    }

    private void write(RoundCorner c) throws IOException {
        json.writeStartObject();
        json.writeStringField("left", c.left());
        json.writeStringField("right", c.right());
        json.writeArrayFieldStart("together");
        for (List<String> pair : c.together()) {
            json.writeStartArray();
            for (String id : pair) {
                json.writeString(id);
            }
            json.writeEndArray();
        }
        json.writeEndArray();
        texts("onto_left", c.ontoLeft());
        texts("onto_right", c.ontoRight());
        json.writeEndObject();
    }

    private void write(OneWall wall, String file, Optional<Study> defects) throws IOException {
        json.writeStartObject();
        json.writeStringField("id", wall.wall().id());
        json.writeStringField("file", file);
        texts("left_out", wall.unfolded().leftOut());
        json.writeFieldName("result");
        FindingsJson.writeObject(json, wall.result(), defects);
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
