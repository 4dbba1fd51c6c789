package rainlap.drawing;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import rainlap.check.WeakPoint;
import rainlap.geom.Box;
import rainlap.joint.Joint;
import rainlap.joint.JointKind;
import rainlap.material.MaterialKind;
import rainlap.paper.Area;
import rainlap.paper.Group;
import rainlap.paper.Halo;
import rainlap.paper.Mark;
import rainlap.paper.PaperBox;
import rainlap.paper.PaperPoint;
import rainlap.paper.PaperRegion;
import rainlap.paper.PaperSegment;
import rainlap.paper.Polyline;
import rainlap.paper.Text;
import rainlap.paper.TextMetrics;
import rainlap.paper.Tone;
import rainlap.rule.Evidence;
import rainlap.stack.Face;
import rainlap.wall.Surface;

/** The legend: the signs that stand on this sheet, and no other. */
final class Legend {
    private static final double WIDTH = 11;
    private static final double HEIGHT = 3.8;
    private static final double PITCH = 6.3;
    private static final double TOP = 202.3;
    /** Close beneath the title. */
    private static final double HIGHEST = 199.6;
    private static final double APART = 0.4;
    /** From the middle of a sign to the foot of its words. */
    private static final double BASE = 1.25;
    private static final double[] COLUMNS = {230, 292.5};
    private static final double DEFENCES = 350.5;
    /** Which ways of water are drawn, whether frame is painted as wet, and whether weak stretches go on in other bays. */
    record Ways(boolean free, boolean failed, boolean wet, boolean onwards) {}

    private final Map<String, Function<PaperBox, List<Mark>>> entries = new LinkedHashMap<>();
    private final List<Mark> out = new ArrayList<>();

    /**
     * @param bottom where the notes begin
     * @param planes whether planes of sections stand on the elevation
     * @param ways which ways of water are drawn
     */
    static Group of(Evidence evidence, List<WeakPoint> shown, boolean planes, Ways ways, double bottom) {
        Legend legend = new Legend();
        legend.collect(evidence, planes, ways);
        legend.out.add(Text.of(230, 196, "Legend", Looks.TITLE));
        legend.out.add(Polyline.line(230, 198.6, 408, 198.6, Looks.WIDE));
        legend.draw(bottom);
        legend.defences(shown, ways.onwards(), bottom);
        return Group.of("legend", legend.out);
    }

    /** The signs alone and what they stand for, to be drawn in boxes of another's choice. */
    static Map<String, Function<PaperBox, List<Mark>>> signs(Evidence evidence, Ways ways) {
        Legend legend = new Legend();
        legend.collect(evidence, false, ways);
        return legend.entries;
    }

    private void collect(Evidence evidence, boolean planes, Ways ways) {
        Set<MaterialKind> kinds = new TreeSet<>();
        evidence.stack().surfaces().forEach(s -> evidence.stack().on(s).forEach(f -> kinds.add(f.kind())));
        laps(evidence, kinds);
        strips(kinds);
        add(kinds, MaterialKind.SEALANT, "bead of sealant", b -> List.of(Area.of(PaperRegion.of(b.grown(-1.2)), Tone.GREY, Looks.THIN)));
        add(kinds, MaterialKind.FRAME, "flange of a frame", b -> List.of(Area.of(PaperRegion.of(b), Tone.WHITE, Looks.WIDE)));
        add(kinds, MaterialKind.FLASHING, "flashing", b -> Symbols.flashing(PaperRegion.of(b)));
        add(kinds, MaterialKind.BATTEN, "batten", b -> Symbols.batten(PaperRegion.of(b)));
        add(kinds, MaterialKind.CLADDING, "cladding", Symbols::cladding);
        add(kinds, MaterialKind.TRIM, "trim", Symbols::trim);
        entries.put("wall outline" + (evidence.elevation().outline().ground().isPresent() ? ", ground" : ""), b -> level(b, Looks.OUTLINE));
        if (!evidence.elevation().outline().abutting().isEmpty()) {
            entries.put("deck, roof that meets the wall", b -> List.of(ViewTitle.ground(b.left(), b.right(), b.middle().y() - 0.6)));
        }
        if (folds(evidence)) {
            entries.put("return, fold: laid flat", b -> List.of(Area.of(PaperRegion.of(b), Looks.FOLDED, Looks.FLAT)));
        }
        if (ways.wet()) {
            entries.put("frame wet as drawn, beneath", Legend::wet);
        }
        if (ways.free()) {
            entries.put("water's way", b -> way(b, false));
        }
        if (ways.failed()) {
            entries.put("water's way after a failure", b -> way(b, true));
        }
        if (planes) {
            entries.put("plane of a section", Legend::plane);
        }
        if (!evidence.elevation().penetrations().isEmpty()) {
            entries.put("centre line", b -> level(b, Looks.CENTRE));
        }
    }

    private void laps(Evidence evidence, Set<MaterialKind> kinds) {
        add(kinds, MaterialKind.MEMBRANE, "membrane, visible edge", b -> Symbols.membrane(PaperRegion.of(b)));
        List<Joint> onWall = evidence.joints().all().stream().filter(j -> j.surface().isWall() && Visibility.isMembrane(j.outer())).toList();
        if (onWall.stream().anyMatch(j -> j.kind() == JointKind.COURSE_LAP || j.kind() == JointKind.END_LAP)) {
            entries.put("lap: inner sheet ends at dashes", b -> lap(b, false));
        }
        if (onWall.stream().anyMatch(j -> j.kind() == JointKind.REVERSE_LAP)) {
            entries.put("reversed lap: ticks point uphill", b -> lap(b, true));
        }
    }

    private void strips(Set<MaterialKind> kinds) {
        add(kinds, MaterialKind.TAPE, "tape over an edge", b -> {
            List<Mark> marks = new ArrayList<>(Symbols.tape(PaperRegion.of(b)));
            marks.add(Polyline.line(b.left(), b.middle().y(), b.right(), b.middle().y(), Looks.HIDDEN));
            return marks;
        });
        boolean corner = kinds.contains(MaterialKind.CORNER_PIECE), collar = kinds.contains(MaterialKind.COLLAR);
        if (corner || collar) {
            entries.put(corner && collar ? "corner piece, collar" : corner ? "corner piece" : "collar", b -> Symbols.corner(PaperRegion.of(b)));
        }
    }

    private void add(Set<MaterialKind> kinds, MaterialKind kind, String words, Function<PaperBox, List<Mark>> sign) {
        if (kinds.contains(kind)) {
            entries.put(words, sign);
        }
    }

    private static boolean folds(Evidence evidence) {
        Box outline = evidence.elevation().outline().box();
        return evidence.stack().surfaces().stream().anyMatch(s -> !s.isWall())
                || evidence.stack().on(Surface.WALL).stream().map(Face::box).anyMatch(b -> !outline.contains(b));
    }

    /** Rows at their usual pitch, or as close as they must stand; then the signs are lower too. */
    private void draw(double bottom) {
        int rows = (entries.size() + 2) / 2;
        boolean crowded = TOP + (rows - 1) * (HEIGHT + APART) + HEIGHT + APART > bottom;
        double top = crowded ? HIGHEST : TOP;
        double pitch = crowded ? (bottom - HIGHEST) / rows : Math.min(PITCH, (bottom - APART - top - HEIGHT) / Math.max(1, rows - 1));
        double height = Math.min(HEIGHT, pitch - APART);
        int i = 0;
        for (Map.Entry<String, Function<PaperBox, List<Mark>>> e : entries.entrySet()) {
            double x = COLUMNS[i / rows], y = top + (i % rows) * pitch;
            out.addAll(e.getValue().apply(PaperBox.ofSize(x, y, WIDTH, height)));
            double room = (i / rows == 0 ? COLUMNS[1] : DEFENCES) - x - WIDTH - 3.4;
            out.add(Text.of(x + WIDTH + 3, y + height / 2 + BASE, TextMetrics.shorten(e.getKey(), room, Looks.PLAIN), Looks.PLAIN));
            i++;
        }
        out.add(Text.of(COLUMNS[1], top + (rows - 1) * pitch + height / 2 + BASE, "ticks: towards the sheet beneath", Looks.SECOND));
    }

    private void defences(List<WeakPoint> shown, boolean onwards, double bottom) {
        Set<Severity> severities = new TreeSet<>();
        shown.forEach(p -> severities.add(Severity.of(p.finding().defences())));
        if (severities.isEmpty()) {
            return;
        }
        out.add(Text.of(DEFENCES, 205.4, "Defences left at a place", Looks.STRONG));
        double y = 211.6;
        for (Severity s : severities) {
            out.addAll(s.smallMark(new PaperPoint(DEFENCES + 3.6, y), s.ordinal()));
            List<Mark> lines = List.of(Polyline.line(DEFENCES + 8.6, y, DEFENCES + 15.5, y, s.edge()),
                    Polyline.line(DEFENCES + 8.6, y - 1.5, DEFENCES + 8.6, y + 1.5, s.edge()),
                    Polyline.line(DEFENCES + 15.5, y - 1.5, DEFENCES + 15.5, y + 1.5, s.edge()));
            lines.forEach(l -> out.add(new Halo(l, Tone.WHITE, 1.4)));
            out.addAll(lines);
            out.add(Text.of(DEFENCES + 18, y + 1.25, s.inWords(), Looks.PLAIN));
            y += 7.3;
        }
        if (onwards) {
            out.add(Polyline.line(DEFENCES + 8.6, y, DEFENCES + 13.5, y, Looks.WIDE));
            out.add(Symbols.arrowHead(new PaperPoint(DEFENCES + 15.5, y), 1, 0));
            out.add(Text.of(DEFENCES + 18, y + 1.25, "goes on in the next bay", Looks.PLAIN));
            y += 6;
        }
        if (y + 5.2 <= bottom) {
            out.add(Text.of(DEFENCES, y + 0.4, "Figure in the mark: number of the", Looks.SECOND));
            out.add(Text.of(DEFENCES, y + 4.2, "weak point; here, of defences.", Looks.SECOND));
        }
    }

    private static List<Mark> level(PaperBox b, rainlap.paper.Edge edge) {
        return List.of(Polyline.line(b.left(), b.middle().y(), b.right(), b.middle().y(), edge));
    }

    private static List<Mark> wet(PaperBox b) {
        List<Mark> out = new ArrayList<>(Symbols.membrane(PaperRegion.of(b)));
        out.addAll(1, WaterSigns.wet(PaperRegion.of(b)));
        return out;
    }

    private static List<Mark> way(PaperBox b, boolean failed) {
        List<PaperPoint> line = List.of(new PaperPoint(b.left(), b.middle().y()), new PaperPoint(b.right(), b.middle().y()));
        return WaterSigns.way(failed ? new WaterSigns.Way(List.of(), line) : new WaterSigns.Way(line, List.of()), b.width(), false);
    }

    private static List<Mark> plane(PaperBox b) {
        double y = b.middle().y();
        return List.of(Polyline.line(b.left(), y, b.right(), y, Looks.CENTRE), Polyline.line(b.left(), y, b.left() + 3, y, Looks.WIDE),
                Polyline.line(b.right() - 3, y, b.right(), y, Looks.WIDE));
    }

    private static List<Mark> lap(PaperBox b, boolean reversed) {
        PaperRegion band = PaperRegion.of(new PaperBox(b.left(), b.top() + 0.6, b.right(), b.bottom() - 0.6));
        List<Mark> out = new ArrayList<>();
        out.add(Area.filled(PaperRegion.of(b), Looks.MEMBRANE));
        out.addAll(reversed ? Symbols.reversed(band) : List.of(Area.filled(band, Looks.LAP)));
        double edge = reversed ? b.top() + 0.6 : b.bottom() - 0.6, end = reversed ? b.bottom() - 0.6 : b.top() + 0.6;
        out.add(Polyline.line(b.left(), end, b.right(), end, Looks.HIDDEN));
        out.add(Polyline.line(b.left(), edge, b.right(), edge, Looks.MEDIUM));
        List<PaperSegment> ticks = new ArrayList<>();
        for (double x = b.left() + 1.5; x < b.right(); x += 2) {
            ticks.add(PaperSegment.of(x, edge, x, edge + (reversed ? -1.2 : 1.2)));
        }
        out.add(new rainlap.paper.Strokes(ticks, Looks.THIN));
        return out;
    }
}
