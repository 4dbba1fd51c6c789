package rainlap.drawing;

import java.util.ArrayList;
import java.util.List;
import rainlap.check.Cautions;
import rainlap.paper.Area;
import rainlap.paper.Group;
import rainlap.paper.Mark;
import rainlap.paper.PaperPoint;
import rainlap.paper.PaperRegion;
import rainlap.paper.Polyline;
import rainlap.paper.Text;
import rainlap.paper.TextMetrics;
import rainlap.rule.Evidence;
import rainlap.rule.Place;
import rainlap.wall.Exposure;
import rainlap.water.Drive;

/** Assumptions with their figures, then the cautions, beside the key plan. */
final class Notes {
    private static final double RIGHT = 382;
    private static final double FOOT = 251.4;
    private static final double PITCH = 3.75;
    private final List<String> lines;

    private Notes(List<String> lines) {
        this.lines = lines;
    }

    static Notes of(Evidence evidence) {
        return new Notes(TextMetrics.wrap(words(evidence), RIGHT - Slots.NOTES.left(), Looks.PLAIN));
    }

    /** Where the notes begin: they stand on the title block and grow upwards. */
    double top() {
        return FOOT - (lines.size() - 1) * PITCH - 4.4;
    }

    Group marks() {
        List<Mark> out = new ArrayList<>();
        out.add(Polyline.line(Slots.NOTES.left(), top(), RIGHT, top(), Looks.RULE));
        for (int i = 0; i < lines.size(); i++) {
            out.add(Text.of(Slots.NOTES.left(), FOOT - (lines.size() - 1 - i) * PITCH, lines.get(i), Looks.PLAIN));
        }
        return Group.of("cautions", out);
    }

    private static String words(Evidence evidence) {
        List<String> out = new ArrayList<>();
        Exposure x = evidence.elevation().exposure();
        out.add(drive(x, evidence.trace().drive()));
        x.rainMmPerH().ifPresent(v -> out.add("Rain " + LabelText.number(v) + " mm/h."));
        out.add("Defences: what must fail before the frame is wet; 3: or more. Not followed: soaking, ice, fixings not drawn.");
        out.add("This sheet advises, it certifies nothing: local code and licensed people decide.");
        Cautions.of(evidence).forEach(c -> out.add(c.brief()));
        return String.join(" ", out);
    }

    /** What drives the water, and how far: "Wind 26 m/s: 422 Pa, driven up 43, sideways 150." */
    private static String drive(Exposure x, Drive d) {
        List<String> parts = new ArrayList<>();
        x.windMPerS().ifPresent(v -> parts.add("wind " + LabelText.number(v) + " m/s"));
        x.towingKmPerH().ifPresent(v -> parts.add("towing " + LabelText.number(v) + " km/h"));
        x.pressurePa().ifPresent(v -> parts.add("pressure " + LabelText.number(v) + " Pa"));
        String far = "driven up " + Place.mm(d.rise()) + (d.shelteredRise() == d.rise() ? "" : ", " + Place.mm(d.shelteredRise()) + " behind the cladding")
                + ", sideways " + Place.mm(d.creep()) + ".";
        if (d.pressurePa().isEmpty()) {
            return "No wind or travel is stated: the practice's laps stand for the drive, " + far;
        }
        String stated = String.join(" and ", parts);
        boolean given = x.pressurePa().isPresent() && parts.size() == 1;
        return Character.toUpperCase(stated.charAt(0)) + stated.substring(1) + ": "
                + (given ? "" : Math.round(d.pressurePa().getAsDouble()) + " Pa, ") + far;
    }

    /** The plan of the building as a box, the side seen heavy, an arrow of view. No north: the file states none. */
    static Group keyPlan() {
        double left = 388, top = 242.2, width = 16, height = 6;
        PaperPoint tip = new PaperPoint(left + width / 2, top + height + 0.6);
        List<Mark> out = new ArrayList<>();
        out.add(Area.edged(PaperRegion.of(rainlap.paper.PaperBox.ofSize(left, top, width, height)), Looks.NARROW));
        out.add(Polyline.line(left, top + height, left + width, top + height, Looks.OUTLINE));
        out.add(Polyline.of(Looks.NARROW, tip.plus(0, 3.6), tip.plus(0, 1)));
        out.add(Symbols.arrowHead(tip, 0, -1));
        return Group.of("key-plan", out);
    }
}
