package rainlap.building;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import rainlap.geom.Box;
import rainlap.geom.Overlay;
import rainlap.geom.Region;
import rainlap.geom.Segment;
import rainlap.joint.RandomWall;
import rainlap.practice.Practices;
import rainlap.rule.Evidence;
import rainlap.stack.Crew;
import rainlap.wall.EdgeRole;
import rainlap.wall.Elevation;
import rainlap.wall.Opening;
import rainlap.wall.Outline;
import rainlap.wall.OutlineEdge;
import rainlap.wall.Piece;
import rainlap.wall.Stage;
import rainlap.water.Reach;

/** A wall, cut in two at a corner, with every piece that crosses it drawn from both sides, has the same wet frame as the wall in one. */
class CutInTwoTest {
    private static final long FOLD = 300_000;

    @ParameterizedTest
    @EnumSource(value = EdgeRole.class, names = {"EXTERNAL_CORNER", "INTERNAL_CORNER"})
    void theWaterIsTheSame(EdgeRole role) {
        int wet = 0, crossing = 0;
        for (long seed = 0; seed < 120; seed++) {
            Elevation whole = RandomWall.upright(seed).elevation();
            Elevation left = part(whole, 0, FOLD, role), right = part(whole, FOLD, whole.outline().box().maxX(), role);
            Building b = new Building("cut", List.of(new Building.Wall("l", left), new Building.Wall("r", right)), false);
            Map<String, Double> cut = new TreeMap<>();
            for (int i = 0; i < 2; i++) {
                Unfolded u = Unfolded.of(b, i);
                crossing += u.together().size();
                add(cut, Evidence.ofWall(u, Stage.WRAP, Practices.common(), Crew.ALONE).trace().reach(), "");
            }
            Map<String, Double> one = new TreeMap<>();
            for (Reach r : Evidence.of(whole, Stage.WRAP, Practices.common()).trace().reach()) {
                add(one, r.surface().isWall() ? split(r) : List.of(r), "");
            }
            assertEquals(rounded(one), rounded(cut), "seed " + seed);
            wet += rounded(one).size();
        }
        assertTrue(wet > 300 && crossing > 500, crossing + " pieces cross, " + wet + " surfaces are wet");
    }

    /** The left and the right part, which are added up again. */
    private static List<Reach> split(Reach r) {
        return Stream.of(new Box(-FOLD, -FOLD, FOLD, 2 * FOLD), new Box(FOLD, -FOLD, 3 * FOLD, 2 * FOLD))
                .map(side -> new Reach(r.defences(), r.surface(), Overlay.intersection(r.where(), List.of(Region.of(side))))).toList();
    }

    private static void add(Map<String, Double> sum, List<Reach> reach, String prefix) {
        reach.forEach(r -> sum.merge(prefix + r.surface().name() + " " + r.defences(), r.areaMm2(), Double::sum));
    }

    private static Map<String, Long> rounded(Map<String, Double> areas) {
        Map<String, Long> out = new TreeMap<>();
        areas.forEach((k, v) -> out.put(k, Math.round(v)));
        out.values().removeIf(v -> v == 0);
        return out;
    }

    /** One side of the fold: pieces that lie on it at all, whole. */
    private static Elevation part(Elevation e, long from, long to, EdgeRole role) {
        Box b = e.outline().box();
        Region region = Region.of(new Box(from, b.minY(), to, b.maxY()));
        List<OutlineEdge> edges = new ArrayList<>();
        for (int i = 0; i < 4; i++) {
            Segment s = region.edge(i);
            boolean corner = s.isPlumb() && s.a().x() == FOLD;
            edges.add(new OutlineEdge(s, corner ? role : EdgeRole.FREE, Optional.empty()));
        }
        List<Piece> pieces = e.pieces().stream().filter(p -> p.wallBox().filter(w -> w.minX() < to && w.maxX() > from).isPresent()).toList();
        List<Opening> openings = e.openings().stream().filter(o -> o.rect().minX() >= from && o.rect().maxX() <= to).toList();
        return new Elevation(e.name(), e.practice(), e.exposure(), new Outline(region, edges, OptionalLong.empty()), openings, List.of(), e.materials(),
                pieces, List.of());
    }
}
