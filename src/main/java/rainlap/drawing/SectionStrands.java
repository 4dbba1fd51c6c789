package rainlap.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rainlap.material.MaterialKind;
import rainlap.paper.Area;
import rainlap.paper.Edge;
import rainlap.paper.Mark;
import rainlap.paper.PaperBox;
import rainlap.paper.PaperPoint;
import rainlap.paper.PaperRegion;
import rainlap.paper.Pen;
import rainlap.paper.Tone;

/** The pieces of a section as strips, each as far from the frame as what lies beneath it, with slopes where it comes down. */
final class SectionStrands {
    private static final double FIRST = 1.7;
    private static final double WIDEST_STEP = 3;
    private static final double ROOM = 13;
    private static final double BATTEN = 1.6;
    private static final double BATTEN_PITCH = 0.9;
    private static final double CLADDING_PITCH = 1.6;
    /** Towards the eye at an internal corner: how far the other wall is drawn and how thick, and what shows of a short leg, printed mm. */
    private static final double REACH = 17;
    private static final double OTHER = 5;
    private static final double LEAST_LEG = 2;
    private final CutStack stack;
    private final SectionGrid grid;
    private final double step;
    private final double depth;
    private final double reach;
    private final SectionRelief relief;

    /** @param depth how far inwards the drawing goes, printed mm */
    SectionStrands(CutStack stack, SectionGrid grid, double depth) {
        this.stack = stack;
        this.grid = grid;
        this.depth = depth;
        this.reach = Math.max(REACH, depth);
        int most = stack.strands().stream().mapToInt(CutStack.Strand::highest).max().orElse(0);
        this.step = most == 0 ? WIDEST_STEP : Math.min(WIDEST_STEP, ROOM / most);
        this.relief = new SectionRelief(stack, grid, this::out, step);
    }

    /** Distance of a level from the frame's face, printed mm. */
    double out(int level) {
        return FIRST + level * step;
    }

    double furthest() {
        return out(stack.strands().stream().mapToInt(CutStack.Strand::highest).max().orElse(0));
    }

    List<Mark> marks() {
        List<Mark> out = new ArrayList<>();
        for (CutStack.Strand s : stack.strands()) {
            paths(s).forEach(p -> out.addAll(look(s, p)));
        }
        return out;
    }

    private static List<Mark> look(CutStack.Strand s, List<PaperPoint> path) {
        MaterialKind kind = s.piece().material().kind();
        return switch (kind) {
            case MEMBRANE -> List.of(Area.filled(Band.along(path, 1), Looks.SECTION_SHEET));
            case FLASHING -> List.of(Area.filled(Band.along(path, 1.2), Tone.INK));
            case TAPE, CORNER_PIECE, COLLAR -> List.of(
                    Area.of(Band.along(path, 0.7), kind == MaterialKind.TAPE ? Looks.TAPE : Looks.CORNER, Edge.of(Pen.THIN, Tone.of("#3b2a00"))));
            case SEALANT -> List.of(Area.filled(Band.along(path, 1), Tone.GREY));
            case BATTEN -> batten(Band.along(path, BATTEN));
            case CLADDING -> cladding(Band.along(path, 1));
            case TRIM -> List.of(Area.of(Band.along(path, 1), Tone.WHITE, Looks.WIDE));
            case FRAME -> List.of(Area.of(Band.along(path, 1), Tone.WHITE, Looks.NARROW));
        };
    }

    /** Stands out from tapes by its width and its hatch, in black and white too. */
    private static List<Mark> batten(PaperRegion body) {
        return List.of(Area.of(body, Looks.BATTEN, Looks.NARROW), rainlap.paper.Hatch.of(body, 135, BATTEN_PITCH, Looks.FRAME_HATCH));
    }

    private static List<Mark> cladding(PaperRegion body) {
        return List.of(Area.of(body, Tone.WHITE, Looks.NARROW), rainlap.paper.Hatch.of(body, 45, CLADDING_PITCH, Looks.FRAME_HATCH));
    }

    /** The lines of a piece, joined round the turns where it goes round them. */
    List<List<PaperPoint>> paths(CutStack.Strand s) {
        List<List<PaperPoint>> out = new ArrayList<>();
        List<List<CutStack.Step>> low = new ArrayList<>(SectionRelief.runs(s.lowLeg())), high = new ArrayList<>(SectionRelief.runs(s.highLeg()));
        boolean pan = s.piece().material().kind() == MaterialKind.FLASHING && grid.plumb() && startsAtTurn(high), caps = stack.caps(s.piece()), soft = CutStack.goesRound(s.piece()) || pan || caps;
        boolean folds = s.piece().material().kind() == MaterialKind.FLASHING && !pan && !caps;
        for (List<double[]> line : relief.lines(s, folds)) {
            List<PaperPoint> path = new ArrayList<>(line.stream().map(p -> grid.at(p[0], p[1])).toList());
            double[] first = line.get(0), last = line.get(line.size() - 1);
            if (soft && Math.abs(first[0] - stack.frameFrom()) <= 1 && startsAtTurn(low)) {
                List<PaperPoint> leg = leg(low.remove(0), false);
                path.set(0, corner(leg.get(0), first[1]));
                leg = turned(stack.low()) ? towardsEye(path, leg, -1) : leg;
                path.addAll(0, reversed(leg.subList(1, leg.size())));
            }
            if (soft && Math.abs(last[0] - stack.frameTo()) <= 1 && startsAtTurn(high)) {
                List<PaperPoint> leg = backed(s, fallen(s, leg(high.remove(0), true)), true);
                path.set(path.size() - 1, corner(leg.get(0), last[1]));
                if (turned(stack.high())) {
                    java.util.Collections.reverse(path);
                    leg = towardsEye(path, leg, 1);
                    java.util.Collections.reverse(path);
                }
                path.addAll(leg.subList(1, leg.size()));
            }
            out.add(path);
        }
        low.forEach(l -> out.add(backed(s, leg(l, false), false)));
        high.forEach(l -> out.add(backed(s, leg(l, true), true)));
        return out;
    }

    /** A capping that falls to the roof, or the wrong way, on a packer: its higher side stands off. */
    private List<PaperPoint> fallen(CutStack.Strand s, List<PaperPoint> leg) {
        double fall = stack.caps(s.piece()) ? Math.tan(Math.toRadians(s.piece().material().profile().fallDeg().orElse(0))) : 0;
        double front = leg.get(0).x(), back = leg.get(leg.size() - 1).x();
        return leg.stream().map(p -> p.plus(0, -Math.abs(fall) * (fall > 0 ? back - p.x() : p.x() - front))).toList();
    }

    /** A pan on a sill with its back turned up, where the file says so. */
    private List<PaperPoint> backed(CutStack.Strand s, List<PaperPoint> leg, boolean atHigh) {
        double up = s.piece().material().profile().upstandMm().orElse(0);
        boolean pan = s.piece().material().kind() == MaterialKind.FLASHING && grid.plumb() && atHigh && up > 0;
        if (!pan) {
            return leg;
        }
        List<PaperPoint> out = new ArrayList<>(leg);
        out.add(leg.get(leg.size() - 1).plus(0, -grid.length(up * 100)));
        return out;
    }

    /**
     * At an internal corner what lies there takes room from both legs of a piece: each is drawn so long that it shows.
     *
     * @param path along the wall from the corner, of which points in what lies at the corner are left out
     * @return the leg
     */
    private static List<PaperPoint> towardsEye(List<PaperPoint> path, List<PaperPoint> leg, int sign) {
        PaperPoint corner = path.get(0);
        while (path.size() > 2 && (corner.x() - path.get(1).x()) * sign < LEAST_LEG) {
            path.remove(1);
        }
        PaperPoint next = path.get(1);
        path.set(1, (corner.x() - next.x()) * sign < LEAST_LEG ? new PaperPoint(corner.x() - sign * LEAST_LEG, next.y()) : next);
        return leg.stream().map(p -> new PaperPoint(p.x(), Math.max(p.y(), corner.y() + LEAST_LEG))).toList();
    }

    private static boolean turned(Optional<CutStack.Turn> turn) {
        return turn.filter(CutStack.Turn::outwards).isPresent();
    }

    private static boolean startsAtTurn(List<List<CutStack.Step>> legs) {
        return !legs.isEmpty() && legs.get(0).get(0).from() < 1;
    }

    private static List<PaperPoint> reversed(List<PaperPoint> points) {
        List<PaperPoint> out = new ArrayList<>(points);
        java.util.Collections.reverse(out);
        return out;
    }

    /** Where a piece goes round: as far along as its leg, as far out as its wall part. */
    private PaperPoint corner(PaperPoint legStart, double out) {
        return grid.plumb() ? new PaperPoint(grid.face() - out, legStart.y()) : new PaperPoint(legStart.x(), grid.face() + out);
    }

    private List<PaperPoint> leg(List<CutStack.Step> run, boolean atHigh) {
        double turn = atHigh ? stack.frameTo() : stack.frameFrom();
        int sign = atHigh ? 1 : -1;
        if (turned(atHigh ? stack.high() : stack.low())) {
            return relief.sloped(run).stream().map(p -> grid.at(turn - sign * grid.units(p[1]), Math.min(reach, grid.length(p[0])))).toList();
        }
        return relief.sloped(run).stream()
                .map(p -> grid.at(turn + sign * grid.units(p[1]), -Math.min(depth, grid.length(p[0])))).toList();
    }

    /** The frame: hatched, its face and its turned ends wide, broken off behind. */
    List<Mark> frame() {
        double from = stack.frameFrom(), to = stack.frameTo();
        PaperRegion body = PaperRegion.of(grid.at(from, 0), grid.at(to, 0), grid.at(to, -depth), grid.at(from, -depth));
        List<PaperPoint> face = new ArrayList<>(List.of(grid.at(from, 0), grid.at(to, 0)));
        stack.low().ifPresent(t -> face.add(0, grid.at(from, t.outwards() ? reach + 1 : -depth)));
        stack.high().ifPresent(t -> face.add(grid.at(to, t.outwards() ? reach + 1 : -depth)));
        double middle = (from + to) / 2, zig = Math.min(grid.units(1), (to - from) / 8);
        List<PaperPoint> broken = List.of(grid.at(from, -depth), grid.at(middle - 2 * zig, -depth), grid.at(middle - zig, -depth + 1.2),
                grid.at(middle + zig, -depth - 1.2), grid.at(middle + 2 * zig, -depth), grid.at(to, -depth));
        List<Mark> out = new ArrayList<>(List.of(Area.filled(body, Tone.WHITE), rainlap.paper.Hatch.of(body, 45, 2, Looks.FRAME_HATCH)));
        out.addAll(turned(stack.low()) ? otherWall(from, -1) : List.of());
        out.addAll(turned(stack.high()) ? otherWall(to, 1) : List.of());
        out.addAll(List.of(new rainlap.paper.Polyline(face, Looks.WIDE), new rainlap.paper.Polyline(broken, Looks.THIN)));
        return out;
    }

    /** The frame of the wall that comes towards the eye at an internal corner, broken off behind and before. */
    private List<Mark> otherWall(double at, int sign) {
        PaperRegion body = PaperRegion.of(otherBox(at, sign));
        PaperBox b = otherBox(at, sign);
        double back = sign > 0 ? b.right() : b.left();
        return List.of(Area.filled(body, Tone.WHITE), rainlap.paper.Hatch.of(body, 135, 2, Looks.FRAME_HATCH),
                new rainlap.paper.Polyline(List.of(new PaperPoint(back, b.top()), new PaperPoint(back, b.bottom()), new PaperPoint(sign > 0 ? b.left() : b.right(), b.bottom())), Looks.THIN));
    }

    private PaperBox otherBox(double at, int sign) {
        return PaperBox.of(List.of(grid.at(at, -depth), grid.at(at + sign * grid.units(OTHER), reach + 1)));
    }

    /** What other walls take of the drawing. */
    List<PaperBox> otherWalls() {
        List<PaperBox> out = new ArrayList<>();
        stack.low().filter(CutStack.Turn::outwards).ifPresent(t -> out.add(otherBox(stack.frameFrom(), -1)));
        stack.high().filter(CutStack.Turn::outwards).ifPresent(t -> out.add(otherBox(stack.frameTo(), 1)));
        return out;
    }
}
