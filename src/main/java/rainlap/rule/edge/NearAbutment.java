package rainlap.rule.edge;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import rainlap.geom.EdgeFrame;
import rainlap.geom.Intervals;
import rainlap.geom.Overlay;
import rainlap.geom.Point;
import rainlap.geom.Region;
import rainlap.geom.Segment;
import rainlap.measure.LengthText;
import rainlap.practice.Limit;
import rainlap.practice.LimitValue;
import rainlap.rule.Asked;
import rainlap.rule.Evidence;
import rainlap.rule.Finding;
import rainlap.rule.Outcome;
import rainlap.rule.PieceWords;
import rainlap.rule.Place;
import rainlap.stack.Face;
import rainlap.wall.Abutment;
import rainlap.wall.Surface;

/** How near cladding comes to a deck or roof that meets the wall, square to the line along its upper side. What ends below it is not looked at. */
record NearAbutment(Evidence evidence, Abutment abutment, EdgeFrame frame, LimitValue asked) {
    /** The drawing's own tolerance: 1 mm. */
    private static final double LEAST = 100;

    static Stream<Outcome> judge(Evidence e, List<Face> cladding) {
        return e.elevation().outline().abutting().stream().flatMap(a -> new NearAbutment(e, a, EdgeFrame.of(a.line()),
                e.practice().get(a.kind() == Abutment.Kind.DECK ? Limit.DECK_CLEARANCE : Limit.ROOF_CLEARANCE)).judge(cladding));
    }

    /** A stretch along the line over which a sheet comes too near, and how far it stays above at the nearest. */
    private record Near(Face sheet, double from, double to, long above) {}

    private Stream<Outcome> judge(List<Face> cladding) {
        List<Near> near = cladding.stream().flatMap(f -> near(f).stream()).sorted(Comparator.comparingDouble(Near::from)).toList();
        List<Face> low = near.stream().map(Near::sheet).toList();
        Stream<Outcome> sound = cladding.stream().filter(f -> !low.contains(f) && isOver(f)).map(f -> Outcome.Holds.of(f.piece().id()));
        List<List<Near>> groups = new ArrayList<>();
        double end = 0;
        for (Near n : near) {
            if (groups.isEmpty() || n.from > end + LEAST) {
                groups.add(new ArrayList<>());
                end = n.to;
            }
            groups.get(groups.size() - 1).add(n);
            end = Math.max(end, n.to);
        }
        return Stream.concat(sound, groups.stream().map(this::broken));
    }

    /** Whether a sheet stands over some of the line, anywhere above it. */
    private boolean isOver(Face f) {
        return f.box().minX() < abutment.line().b().x() && abutment.line().a().x() < f.box().maxX() && f.box().maxY() > abutment.line().box().minY();
    }

    /** How far up cladding is looked at: all of the wall where a practice asks for more. */
    private long high() {
        return Math.min(asked.hundredths(), evidence.elevation().outline().box().height() + 1);
    }

    private Optional<Near> near(Face f) {
        double length = frame.length(), high = high();
        if (high < 1) {
            return Optional.empty();
        }
        Region band = Region.of(List.of(frame.at(0), frame.at(length), frame.at(length, high), frame.at(0, high)));
        if (!f.box().overlaps(band.box())) {
            return Optional.empty();
        }
        List<Point> points = Overlay.intersection(List.of(f.region()), List.of(band)).stream().flatMap(r -> r.shell().points().stream()).toList();
        double above = points.stream().mapToDouble(p -> frame.t(p.x(), p.y())).min().orElse(high);
        double from = points.stream().mapToDouble(p -> frame.s(p.x(), p.y())).min().orElse(0), to = points.stream().mapToDouble(p -> frame.s(p.x(), p.y())).max().orElse(0);
        long least = Math.max(0, Math.round(above));
        return least < high() && to - from >= LEAST ? Optional.of(new Near(f, from, to, least)) : Optional.empty();
    }

    private Outcome broken(List<Near> group) {
        long above = group.stream().mapToLong(Near::above).min().orElseThrow();
        double from = group.stream().mapToDouble(Near::from).min().orElseThrow(), to = group.stream().mapToDouble(Near::to).max().orElseThrow();
        List<String> pieces = group.stream().map(Near::sheet).sorted(Comparator.comparingInt(Face::number)).map(f -> f.piece().id()).distinct().toList();
        Place where = Place.line(evidence.elevation(), Surface.WALL, new Segment(frame.at(from, above), frame.at(to, above)));
        String on = abutment.kind().word(), mm = LengthText.mmBeside(above, asked.hundredths());
        boolean behind = Intervals.of(from, to).minus(Intervals.unionOf(group.stream().map(n -> frame.inside(n.sheet.region(), -LEAST)).toList())).total() < to - from;
        String says = above > 0 ? PieceWords.does(pieces, "ends", "end") + " only " + mm + " above the " + on
                : behind ? PieceWords.does(pieces, "runs", "run") + " down behind the " + on : PieceWords.does(pieces, "stands", "stand") + " on the " + on;
        return Finding.of(LowCladding.INFO, where, pieces).asks(asked).measures(above).reads(mm + " above the " + on, asked.number() + " above the " + on)
                .says(says + ": what splashes up from it and stands on it is drawn in behind. " + Asked.sentence(asked, asked.number() + " above it"),
                        "Cut " + PieceWords.list(pieces) + " to end at least " + asked.number() + " above the " + on
                        + ", treat the cut edges, and lead the membrane and a flashing down before what lies behind. Wear gloves and eye protection: cut sheet is sharp; work at height from a scaffold or platform.");
    }
}
