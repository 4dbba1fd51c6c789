package rainlap.joint;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.Random;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;
import rainlap.geom.Box;
import rainlap.geom.Point;
import rainlap.geom.Region;
import rainlap.geom.Ring;
import rainlap.stack.Stack;
import rainlap.wall.Cut;
import rainlap.wall.CutPattern;
import rainlap.wall.Elevation;
import rainlap.wall.Opening;
import rainlap.wall.Outline;
import rainlap.wall.Piece;
import rainlap.wall.Shape;
import rainlap.wall.Stage;

/** The same wall moved, mirrored, turned upside down or written down in another order has the same joints. */
class JointSymmetryTest {
    private static final int WALLS = 400;

    @Test
    void moved() {
        for (long seed = 0; seed < WALLS; seed++) {
            Elevation e = RandomWall.of(seed).elevation();
            UnaryOperator<Point> there = p -> new Point(p.x() + 7_000_000, p.y() - 3_000_000);
            UnaryOperator<Point> back = p -> new Point(p.x() - 7_000_000, p.y() + 3_000_000);
            assertSame(texts(e, p -> p, false), texts(mapped(e, there), back, false), seed);
        }
    }

    @Test
    void mirrored() {
        for (long seed = 0; seed < WALLS; seed++) {
            Elevation e = RandomWall.upright(seed).elevation();
            UnaryOperator<Point> flip = p -> new Point(-p.x(), p.y());
            assertSame(texts(e, p -> p, false), texts(mapped(e, flip), flip, false), seed);
        }
    }

    /** Upside down each course lap becomes a reverse lap of the same lap at the same place, and the other way about. */
    @Test
    void turnedUpsideDown() {
        for (long seed = 0; seed < WALLS; seed++) {
            Elevation e = withoutHeadCuts(RandomWall.upright(seed).elevation());
            UnaryOperator<Point> turn = p -> new Point(-p.x(), -p.y());
            assertSame(texts(e, p -> p, false), texts(mapped(e, turn), turn, true), seed);
        }
    }

    @Test
    void inAnotherFileOrder() {
        for (long seed = 0; seed < WALLS; seed++) {
            Elevation e = RandomWall.of(seed).elevation();
            List<Piece> pieces = new ArrayList<>(e.pieces());
            Random random = new Random(seed);
            for (int k = 0; k < 200; k++) {
                int i = random.nextInt(pieces.size() - 1);
                if (!box(pieces.get(i)).grow(JointFinder.GAP + 1).meets(box(pieces.get(i + 1)))) {
                    Collections.swap(pieces, i, i + 1);
                }
            }
            assertSame(texts(e, p -> p, false), texts(e.withPieces(pieces), p -> p, false), seed);
            assertEquals(ids(e), ids(e.withPieces(pieces)), "seed " + seed);
        }
    }

    private static void assertSame(List<String> a, List<String> b, long seed) {
        List<String> onlyA = new ArrayList<>(a), onlyB = new ArrayList<>(b);
        b.forEach(onlyA::remove);
        a.forEach(onlyB::remove);
        assertEquals("", String.join("\n", onlyA) + (onlyB.isEmpty() ? "" : "\nbut\n" + String.join("\n", onlyB)), "seed " + seed);
    }

    /** The inverted Y knows up from down; a diagonal cut does not. */
    private static Elevation withoutHeadCuts(Elevation e) {
        return e.withPieces(e.pieces().stream().map(p -> new Piece(p.id(), p.material(), p.shapes(), p.under(), p.bond(),
                p.cuts().stream().map(c -> c.pattern() == CutPattern.INVERTED_Y
                        ? new Cut(c.opening(), CutPattern.DIAGONAL, c.returned()) : c).toList())).toList());
    }

    private static Box box(Piece p) {
        return p.wallBox().orElseThrow();
    }

    private static List<String> ids(Elevation e) {
        return Joints.of(Stack.of(e, Stage.WRAP)).all().stream().map(Joint::id).sorted().toList();
    }

    private static List<String> texts(Elevation e, UnaryOperator<Point> back, boolean upsideDown) {
        return Joints.of(Stack.of(e, Stage.WRAP)).all().stream().filter(j -> j.surface().isWall())
                .map(j -> text(j, back, upsideDown)).sorted().toList();
    }

    private static String text(Joint j, UnaryOperator<Point> back, boolean upsideDown) {
        List<Point> line = new ArrayList<>(j.line().stream().map(back).toList());
        if (line.get(0).compareTo(line.get(line.size() - 1)) > 0) {
            Collections.reverse(line);
        }
        JointKind kind = !upsideDown ? j.kind() : switch (j.kind()) {
            case COURSE_LAP -> JointKind.REVERSE_LAP;
            case REVERSE_LAP -> JointKind.COURSE_LAP;
            case END_LAP, BUTT, GAP -> j.kind();
        };
        return kind + " " + j.outer().piece().id() + "/" + j.inner().piece().id() + " " + line + " " + j.lap() + " " + j.gap() + " "
                + j.coverOnOuter() + " " + j.coverOnInner() + " " + j.uncovered().size();
    }

    private static Elevation mapped(Elevation e, UnaryOperator<Point> to) {
        Outline outline = new Outline(mapped(e.outline().region(), to), List.of(), OptionalLong.empty());
        List<Opening> openings = e.openings().stream().map(o -> new Opening(o.id(), o.kind(),
                mapped(Region.of(o.rect()), to).box(), o.reveal(), Optional.empty(), OptionalLong.empty(), OptionalLong.empty())).toList();
        List<Piece> pieces = e.pieces().stream().map(p -> new Piece(p.id(), p.material(),
                p.shapes().stream().map(s -> new Shape(s.on(), s.regions().stream().map(r -> mapped(r, to)).toList())).toList(),
                p.under(), p.bond(), p.cuts())).toList();
        return new Elevation(e.name(), e.practice(), e.exposure(), outline, openings, List.of(), e.materials(), pieces, List.of());
    }

    private static Region mapped(Region r, UnaryOperator<Point> to) {
        return new Region(Ring.of(r.shell().points().stream().map(to).toList()),
                r.holes().stream().map(h -> Ring.of(h.points().stream().map(to).toList())).toList());
    }
}
