package rainlap.report;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.List;
import rainlap.geom.EdgeFrame;
import rainlap.geom.Intervals;
import rainlap.geom.Point;
import rainlap.geom.Profile;
import rainlap.geom.Segment;
import rainlap.joint.BuildingCorner;
import rainlap.joint.Joint;
import rainlap.joint.OpeningCorner;
import rainlap.joint.OpeningEdge;
import rainlap.joint.Run;
import rainlap.rule.Evidence;
import rainlap.rule.Place;
import rainlap.wall.Elevation;
import rainlap.wall.Surface;

/** The part of the findings file on laps along joints and on which piece turns which edge and corner. */
final class TurnsJson {
    private final JsonGenerator json;
    private final Elevation elevation;

    TurnsJson(JsonGenerator json, Elevation elevation) {
        this.json = json;
        this.elevation = elevation;
    }

    /** {@code laps}: the lap along a joint, straight from one end of each stretch to the other; empty for a butt or gap. */
    void laps(Joint joint) throws IOException {
        json.writeArrayFieldStart("laps");
        for (Run r : joint.kind().isLap() ? joint.runs() : List.<Run>of()) {
            for (Profile.Stretch s : r.lap().stretches()) {
                Segment line = new Segment(r.at(s.s0()), r.at(s.s1()));
                if (Double.isFinite(s.v0()) && !line.a().equals(line.b())) {
                    json.writeStartObject();
                    json.writeStringField("where", Place.line(elevation, joint.surface(), line).wkt());
                    FindingsJson.length(json, "from", Math.round(s.v0()));
                    FindingsJson.length(json, "to", Math.round(s.v1()));
                    json.writeEndObject();
                }
            }
        }
        json.writeEndArray();
    }

    /** {@code opening_edges}, {@code opening_corners} and {@code building_corners}. */
    void turns(Evidence evidence) throws IOException {
        json.writeArrayFieldStart("opening_edges");
        for (OpeningEdge e : evidence.openingEdges()) {
            edge(e);
        }
        json.writeEndArray();
        json.writeArrayFieldStart("opening_corners");
        for (OpeningCorner c : evidence.openingCorners()) {
            corner(c);
        }
        json.writeEndArray();
        json.writeArrayFieldStart("building_corners");
        for (BuildingCorner c : evidence.buildingCorners()) {
            corner(c);
        }
        json.writeEndArray();
    }

    private void edge(OpeningEdge e) throws IOException {
        EdgeFrame front = EdgeFrame.of(new Segment(new Point(0, 0), new Point(e.opening().along(e.side()), 0)));
        json.writeStartObject();
        json.writeStringField("surface", e.surface().name());
        json.writeStringField("where", Place.line(elevation, Surface.WALL, e.opening().edge(e.side())).wkt());
        turnedBy(e.turns(), front, e.surface());
        json.writeEndObject();
    }

    private void corner(OpeningCorner c) throws IOException {
        json.writeStartObject();
        json.writeStringField("opening", c.opening().id());
        json.writeStringField("corner", c.inWords());
        json.writeArrayFieldStart("pieces");
        for (String id : c.pieces()) {
            json.writeString(id);
        }
        json.writeEndArray();
        json.writeBooleanField("bare", c.isBare());
        json.writeEndObject();
    }

    private void corner(BuildingCorner c) throws IOException {
        EdgeFrame frame = EdgeFrame.of(c.edge().line());
        json.writeStartObject();
        json.writeStringField("role", c.edge().role().word());
        json.writeStringField("where", Place.line(elevation, Surface.WALL, c.edge().line()).wkt());
        FindingsJson.length(json, "wrap", Math.round(c.wrap().least()));
        turnedBy(c.turns(), frame, Surface.WALL);
        lines("taped", c.taped(), frame, Surface.WALL);
        json.writeEndObject();
    }

    private void turnedBy(List<OpeningEdge.Turn> turns, EdgeFrame along, Surface on) throws IOException {
        json.writeArrayFieldStart("turned_by");
        for (OpeningEdge.Turn t : turns) {
            json.writeStartObject();
            json.writeStringField("piece", t.face().piece().id());
            lines("where", t.where(), along, on);
            json.writeEndObject();
        }
        json.writeEndArray();
    }

    private void lines(String key, Intervals where, EdgeFrame along, Surface on) throws IOException {
        json.writeArrayFieldStart(key);
        for (int i = 0; i < where.count(); i++) {
            json.writeString(Place.line(elevation, on, new Segment(along.at(where.from(i)), along.at(where.to(i)))).wkt());
        }
        json.writeEndArray();
    }
}
