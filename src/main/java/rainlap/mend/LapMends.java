package rainlap.mend;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import rainlap.geom.Box;
import rainlap.geom.EdgeFrame;
import rainlap.geom.Point;
import rainlap.geom.Region;
import rainlap.geom.Segment;
import rainlap.joint.Joint;
import rainlap.material.Bond;
import rainlap.material.Material;
import rainlap.material.MaterialKind;
import rainlap.measure.LengthText;
import rainlap.practice.Limit;
import rainlap.rule.Evidence;
import rainlap.rule.Finding;
import rainlap.rule.MendSizes;
import rainlap.rule.lap.LapTowardsTravel;
import rainlap.stack.Face;
import rainlap.wall.Piece;
import rainlap.wall.Shape;
import rainlap.wall.Surface;

/** Laps turned round, lengthened, or made where edges only meet. The outer piece of a joint lies to the left of its line. */
final class LapMends {
    /** How far beyond a joint's line tape over it is taken off: 200 mm. */
    private static final long TAPE = 20_000;
    /** Sheets that only touch are made one by so much: 1 mm. */
    private static final long INTO = 100;

    private LapMends() {}

    /** The upper sheet over the lower one; where the inner one has no foot there, a strip lies on a sheet, and tape is what helps. */
    static Optional<Edited> reverse(Evidence e, Finding f) {
        Optional<Joint> joint = joint(e, f);
        if (joint.isEmpty()) {
            return Optional.empty();
        }
        if (joint.get().outer().kind() != MaterialKind.MEMBRANE) {
            return TapeMends.tape(e, f);
        }
        boolean patch = joint.get().inner().box().minY() <= joint.get().outer().box().minY();
        boolean isShort = f.measured().orElse(0) * 100 < MendSizes.lap(e, joint.get(), e.practice().get(Limit.COURSE_LAP).hundredths(), true);
        return patch ? Optional.empty() : turned(e, f, isShort ? ", the lap made up by a strip behind it or, as here, a longer sheet." : ".");
    }

    /** The piece that lay inside is brought outside; tape that held the edge as it was is taken off. */
    static Optional<Edited> turned(Evidence e, Finding f) {
        return turned(e, f, ".");
    }

    private static Optional<Edited> turned(Evidence e, Finding f, String end) {
        return joint(e, f).map(j -> {
            Edited out = new Edited(e.elevation().pieces());
            String outer = j.outer().piece().id(), inner = j.inner().piece().id();
            untape(out, j, f);
            out.turn(inner, outer);
            out.say(inner + " over " + outer + end);
            return out;
        });
    }

    /** Turned round and made as long as asked, where it opens the way the building travels and is short besides. */
    static Optional<Edited> turnedLonger(Evidence e, Finding f) {
        long end = e.practice().get(Limit.END_LAP).hundredths();
        return joint(e, f).filter(j -> LapTowardsTravel.isOpen(e, j)).flatMap(j -> {
            long asked = MendSizes.lap(e, j, end, false), least = Math.round(j.runs().stream().mapToDouble(r -> r.lap().least()).min().orElse(end));
            return least >= end ? Optional.empty() : turned(e, f, ", lapped by " + LengthText.mm(asked) + ".").map(out -> {
                out.extend(j.outer().piece().id(), Surface.WALL, Bands.beside(f.where().line(), least - asked, INTO));
                return out;
            });
        });
    }

    static void untape(Edited out, Joint j, Finding f) {
        j.strips().forEach(s -> out.takeOff(s.piece().id(), Surface.WALL, Bands.beside(f.where().line(), -TAPE, TAPE)));
    }

    /** The inner sheet runs on beneath the outer one, whose edge stays where it is. */
    static Optional<Edited> lengthened(Evidence e, Finding f) {
        return joint(e, f).filter(j -> f.required().isPresent() && !(f.rule().equals("short-end-lap") && LapTowardsTravel.isOpen(e, j))).map(j -> {
            long asked = asked(e, f, j);
            Edited out = new Edited(e.elevation().pieces());
            out.extend(j.inner().piece().id(), Surface.WALL, beneath(f.where().line(), asked));
            out.sayLap(asked, j.outer().piece().id(), j.inner().piece().id(), "");
            return out;
        });
    }

    /** A strip in behind one sheet and over the other, its edges taped. */
    static Optional<Edited> stripped(Evidence e, Finding f) {
        Optional<Joint> joint = joint(e, f).filter(j -> f.required().isPresent());
        return joint.flatMap(j -> sheet(e, j).map(material -> {
            List<Point> line = f.where().line();
            long lap = asked(e, f, j), gap = gap(f), cover = e.practice().get(Limit.TAPE_COVER).hundredths();
            String behind = looksUp(line) ? j.inner().piece().id() : j.outer().piece().id(), over = looksUp(line) ? j.outer().piece().id() : j.inner().piece().id();
            Edited out = new Edited(e.elevation().pieces());
            String name = out.free("strip");
            untape(out, j, f);
            out.layAfter(List.of(over), new Piece(name, material, List.of(new Shape(Surface.WALL, Bands.beside(line, -gap - lap, lap))), List.of(), Bond.LOOSE, List.of()));
            out.bringOutside(behind, name);
            double own = looksUp(line) ? -gap : 0, far = looksUp(line) ? lap : -gap - lap;
            if (out.pieces().get(out.number(behind)).material().kind() == MaterialKind.MEMBRANE) { // a flashing stays free to drain at its foot
                TapeMends.lay(e, out, List.of(name, behind), Bands.beside(line, own - cover, own + cover), 2 * cover);
            }
            TapeMends.lay(e, out, List.of(name, over), Bands.beside(line, far - cover, far + cover), 2 * cover);
            out.say("A strip " + LengthText.mmUp(gap + 2 * lap) + (f.where().box().width() < f.where().box().height() ? " wide" : " high") + " in behind " + behind + " and over " + over
                    + ", lapping each by " + LengthText.mm(lap) + ", its edges taped.");
            return out;
        }));
    }

    /** What a strip over a joint is cut from. */
    private static Optional<Material> sheet(Evidence e, Joint j) {
        return Stream.concat(Stream.of(j.outer(), j.inner()).map(Face::piece), e.elevation().pieces().stream()).map(Piece::material)
                .filter(m -> m.kind() == MaterialKind.MEMBRANE).findFirst();
    }

    private static boolean looksUp(List<Point> line) {
        return EdgeFrame.of(new Segment(line.get(0), line.get(1))).ux() < -0.5;
    }

    private static long gap(Finding f) {
        return f.measured().isPresent() ? Math.round(f.measured().getAsDouble() * 100) : 0;
    }

    /** The same of a longer sheet: one runs on under the other, past the gap; of an edge that looks up, over it. */
    static Optional<Edited> bridged(Evidence e, Finding f) {
        return joint(e, f).filter(j -> f.required().isPresent()).map(j -> {
            List<Point> line = f.where().line();
            boolean up = looksUp(line);
            long asked = asked(e, f, j), gap = gap(f);
            String outer = j.outer().piece().id(), inner = j.inner().piece().id();
            Edited out = new Edited(e.elevation().pieces());
            if (up) {
                untape(out, j, f);
                out.turn(inner, outer);
            }
            out.extend(inner, Surface.WALL, Bands.beside(line, -gap - INTO, asked));
            out.say("A strip between them or, as here, a longer sheet: " + inner + " runs on " + (up ? "over " : "beneath ") + outer + " by " + LengthText.mm(asked) + ".");
            return out;
        });
    }

    /** As its rule says: of membrane no less than wind drives water. */
    private static long asked(Evidence e, Finding f, Joint j) {
        long asked = Math.round(f.required().getAsDouble() * 100);
        Box b = f.where().box();
        return switch (f.rule()) {
            case "short-course-lap" -> MendSizes.lap(e, j, asked, true);
            case "short-end-lap" -> MendSizes.lap(e, j, asked, false);
            case "butt-joint", "open-gap" -> MendSizes.lap(e, j, asked, b.width() >= b.height());
            default -> asked;
        };
    }

    /** As far in beneath the outer piece of a joint as asked. */
    static List<Region> beneath(List<Point> line, long asked) {
        return Bands.beside(line, -INTO, asked);
    }

    static Optional<Joint> joint(Evidence e, Finding f) {
        return f.where().surface().isWall() && f.where().isLine()
                ? f.joint().flatMap(id -> e.joints().all().stream().filter(j -> j.id().equals(id)).findFirst()) : Optional.empty();
    }
}
