package rainlap.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import rainlap.file.ElevationFile;
import rainlap.geom.Box;
import rainlap.geom.Point;
import rainlap.geom.Region;
import rainlap.geom.Ring;
import rainlap.geom.Segment;
import rainlap.material.Bond;
import rainlap.material.Edge;
import rainlap.material.EndDams;
import rainlap.material.Material;
import rainlap.material.Profile;
import rainlap.practice.Practice;
import rainlap.practice.Practices;
import rainlap.rule.Evidence;
import rainlap.rule.Finding;
import rainlap.rule.Rule;
import rainlap.wall.Elevation;
import rainlap.wall.Opening;
import rainlap.wall.Outline;
import rainlap.wall.OutlineEdge;
import rainlap.wall.Penetration;
import rainlap.wall.Piece;
import rainlap.wall.Shape;
import rainlap.wall.Side;
import rainlap.wall.Stage;
import rainlap.wall.Surface;

/** Every example, mirrored left to right, gives mirrored findings. */
class MirroredExamplesTest {
    private static final Path RULES = Path.of("src/main/resources/rules");

    @TestFactory
    Stream<DynamicTest> mirrored() throws IOException {
        List<Rule> ours = Rules.all();
        List<Path> files = new ArrayList<>();
        for (Rule r : ours) {
            try (Stream<Path> in = Files.list(RULES.resolve(r.info().id()))) {
                in.filter(f -> f.toString().endsWith(".json")).forEach(files::add);
            }
        }
        assertTrue(files.size() > 50, files.size() + " examples");
        return files.stream().sorted(Comparator.naturalOrder()).map(f -> DynamicTest.dynamicTest(RULES.relativize(f).toString(), () -> {
            Elevation e = ElevationFile.read(f).elevation().orElseThrow();
            assertEquals(found(e, ours, true), found(mirrored(e), ours, false));
        }));
    }

    private static Set<String> found(Elevation e, List<Rule> rules, boolean mirror) {
        Practice p = e.practice().flatMap(Practices::find).orElse(Practices.common());
        Set<String> out = new TreeSet<>();
        Checker.check(Evidence.of(e, Stage.WRAP, p), rules).weakPoints().forEach(w -> out.add(text(w.finding(), mirror)));
        return out;
    }

    private static String text(Finding f, boolean mirror) {
        Box b = f.where().box();
        Box at = mirror ? new Box(-b.maxX(), b.minY(), -b.minX(), b.maxY()) : b;
        Surface on = mirror ? mirrored(f.where().surface()) : f.where().surface();
        return f.rule() + f.pieces() + on.name() + mm(at.minX()) + mm(at.minY()) + mm(at.maxX()) + mm(at.maxY())
                + f.measured().stream().mapToObj(m -> " measured " + Math.round(m)).toList() + f.required() + f.defences();
    }

    /** Whole millimetres: beside a sloped edge 0.02 mm is the same line, and which side it falls to depends on the sense of the edge. */
    private static String mm(long units) {
        return " " + Math.round(units / 100.0);
    }

    private static Elevation mirrored(Elevation e) {
        List<Opening> openings = e.openings().stream().map(o -> new Opening(o.id(), o.kind(), new Box(-o.rect().maxX(), o.rect().minY(),
                -o.rect().minX(), o.rect().maxY()), o.reveal(), o.noHeadFlashing(), o.eaveOverhang(), o.eaveAbove())).toList();
        List<OutlineEdge> edges = e.outline().edges().stream().map(s -> new OutlineEdge(
                new Segment(mirrored(s.line().b()), mirrored(s.line().a())), s.role(), s.neighbour())).toList();
        List<Piece> pieces = e.pieces().stream().map(p -> new Piece(p.id(), mirrored(p.material()),
                p.shapes().stream().map(s -> mirrored(s, e)).toList(), p.under(), mirrored(p.bond()), p.cuts())).toList();
        List<Penetration> pipes = e.penetrations().stream().map(p -> new Penetration(p.id(), p.kind(), mirrored(p.region(), 0))).toList();
        return new Elevation(e.name(), e.practice(), e.exposure(), new Outline(mirrored(e.outline().region(), 0), edges, e.outline().ground()),
                openings, pipes, e.materials(), pieces, List.of());
    }

    private static Material mirrored(Material m) {
        Profile p = m.profile();
        return m.withProfile(new Profile(p.depthMm(), p.fallDeg(), p.upstandMm(), p.endDams().map(MirroredExamplesTest::mirrored), p.endDamMm(),
                p.dripMm(), p.hemMm()));
    }

    private static EndDams mirrored(EndDams d) {
        return switch (d) {
            case LEFT -> EndDams.RIGHT;
            case RIGHT -> EndDams.LEFT;
            case BOTH, NONE -> d;
        };
    }

    private static Bond mirrored(Bond b) {
        return b.isFull() ? b : Bond.sealedAt(b.sealedEdges().stream().map(e -> switch (e) {
            case LEFT -> Edge.RIGHT;
            case RIGHT -> Edge.LEFT;
            case TOP, BOTTOM -> e;
        }).toList());
    }

    private static Shape mirrored(Shape s, Elevation e) {
        if (s.on().side().isJamb()) {
            return new Shape(mirrored(s.on()), s.regions());
        }
        long width = s.on().isWall() ? 0 : Optional.of(s.on().opening()).flatMap(e::findOpening).orElseThrow().along(s.on().side());
        return new Shape(s.on(), s.regions().stream().map(r -> mirrored(r, width)).toList());
    }

    private static Surface mirrored(Surface s) {
        return switch (s.side()) {
            case LEFT -> new Surface(s.opening(), Side.RIGHT);
            case RIGHT -> new Surface(s.opening(), Side.LEFT);
            case WALL, SILL, HEAD -> s;
        };
    }

    private static Point mirrored(Point p) {
        return new Point(-p.x(), p.y());
    }

    private static Region mirrored(Region r, long width) {
        return new Region(mirrored(r.shell(), width), r.holes().stream().map(h -> mirrored(h, width)).toList());
    }

    private static Ring mirrored(Ring r, long width) {
        return Ring.of(r.points().stream().map(p -> new Point(width - p.x(), p.y())).toList());
    }
}
