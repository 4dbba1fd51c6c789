package rainlap;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import java.io.IOException;
import java.nio.file.Files;
import org.junit.jupiter.api.Test;
import rainlap.check.CheckResult;
import rainlap.check.Rules;
import rainlap.geom.Box;
import rainlap.geom.Grid;
import rainlap.geom.Point;
import rainlap.file.ElevationFile;
import rainlap.joint.Joint;
import rainlap.joint.JointKind;
import rainlap.material.MaterialKind;
import rainlap.practice.Limit;
import rainlap.practice.Practices;
import rainlap.rule.Evidence;
import rainlap.rule.Finding;
import rainlap.wall.CutPattern;
import rainlap.wall.EdgeRole;
import rainlap.wall.Elevation;
import rainlap.wall.Opening;
import rainlap.wall.Piece;
import rainlap.wall.Stage;

/** The walls that ship give exactly the findings their files state, and between them hold everything the product looks at. */
class ShippedWallsTest {
    private static final List<Shipped> WALLS = Shipped.all();
    /** How far from a piece a finding may lie that its absence causes: the tape that covers a joint is narrower. */
    private static final long NEAR = Grid.of(100);
    /** Joints longer than this are not the stubs beside a flap. */
    private static final double LONG_MM = 300;

    @Test void eachGivesWhatItExpectsAndNothingElse() {
        assertAll(WALLS.stream().map(w -> () -> assertEquals(
                text(w.wall().expected().stream().map(e -> line(e.rule(), e.pieces()))),
                text(w.result().weakPoints().stream().map(p -> line(p.finding().rule(), p.finding().pieces()))), w.file())));
    }

    @Test void nothingIsLeftUnjudged() {
        assertAll(WALLS.stream().map(w -> () -> {
            assertEquals(List.of(), w.result().crashes(), w.file());
            assertEquals(List.of(), w.result().unchecked(), w.file());
        }));
    }

    @Test void eachIsAWallOfFortyToTwoHundredPiecesWithAShortName() {
        assertTrue(WALLS.size() >= 8, () -> WALLS.toString());
        assertAll(WALLS.stream().map(w -> () -> {
            int pieces = w.wall().pieces().size();
            assertTrue(pieces >= 40 && pieces <= 200, () -> w + " has " + pieces + " pieces");
            assertTrue(w.wall().name().length() <= 25, () -> w.wall().name() + " is long for a sheet's title");
        }));
    }

    @Test void someAreSoundAndTheOthersHaveThreeToFifteenFaults() {
        assertEquals(List.of("bakery-trailer-left", "boat-shed-side", "estuary-hut-east"),
                WALLS.stream().filter(Shipped::isSound).map(Shipped::file).toList());
        assertAll(WALLS.stream().filter(w -> !w.isSound()).map(w -> () -> {
            int faults = w.wall().expected().size();
            assertTrue(faults >= 3 && faults <= 15, () -> w + " expects " + faults);
        }));
    }

    @Test void betweenThemTheyHoldAllThatIsLookedAt() {
        assertAll(
                () -> covers("joints", Arrays.asList(JointKind.values()),
                        w -> w.result().evidence().joints().all().stream().map(j -> j.kind())),
                () -> covers("cuts", Arrays.asList(CutPattern.values()),
                        w -> w.wall().pieces().stream().flatMap(p -> p.cuts().stream()).map(c -> c.pattern())),
                () -> covers("openings", Arrays.asList(Opening.Kind.values()), w -> w.wall().openings().stream().map(o -> o.kind())),
                () -> covers("rules broken", Rules.all().stream().map(r -> r.info().id()).toList(),
                        w -> Stream.concat(w.wall().expected().stream().map(e -> e.rule()), rules(Shipped.check(w.wall(), Stage.FINISHED)).stream())),
                () -> covers("rules that hold", Rules.all().stream().map(r -> r.info().id()).toList(),
                        w -> Stream.concat(w.result().held().keySet().stream(), Shipped.check(w.wall(), Stage.FINISHED).held().keySet().stream())),
                () -> covers("edges", List.of(EdgeRole.BASE, EdgeRole.EAVE, EdgeRole.VERGE, EdgeRole.PARAPET, EdgeRole.EXTERNAL_CORNER),
                        w -> w.wall().outline().edges().stream().map(e -> e.role())));
    }

    /** By a shipped wall or by an example of a rule. */
    @Test void everyPracticeJudgesSomethingThatShips() throws IOException {
        Set<String> missing = new LinkedHashSet<>(Practices.ids());
        WALLS.forEach(w -> missing.removeAll(w.wall().practice().stream().toList()));
        try (Stream<Path> examples = Files.walk(Path.of("src/main/resources/rules"))) {
            examples.filter(p -> p.toString().endsWith(".json")).forEach(p -> ElevationFile.read(p).elevation().flatMap(Elevation::practice).ifPresent(missing::remove));
        }
        assertEquals(Set.of(), missing);
    }

    private static <T> void covers(String what, List<T> all, Function<Shipped, Stream<T>> found) {
        Set<T> missing = new LinkedHashSet<>(all);
        missing.removeAll(WALLS.stream().flatMap(found).collect(Collectors.toSet()));
        assertEquals(Set.of(), missing, what + " that no wall has");
    }

    @Test void aTapeTakenFromASoundWallIsMissedThereAndNowhereElse() {
        Set<String> matter = new TreeSet<>();
        sound().forEach(w -> w.wall().pieces().stream().filter(ShippedWallsTest::isStraightTape).forEach(t -> {
            CheckResult without = Shipped.check(without(w.wall(), t));
            without.weakPoints().forEach(p -> assertLiesAt(w, t, p.finding()));
            boolean noticed = !without.weakPoints().isEmpty();
            assertTrue(noticed || !isNeeded(w, t), () -> w + ": without " + t.id() + " nothing is found");
            if (noticed) {
                matter.add(w + " " + t.id());
            }
        }));
        assertTrue(matter.size() >= 20, () -> "few tapes matter: " + matter);
    }

    @Test void aHeadFlashingTakenFromASoundWallIsMissed() {
        sound().forEach(w -> w.wall().pieces().stream().filter(p -> p.material().id().equals("head-flashing")).forEach(h -> {
            boolean needed = w.wall().openings().stream().anyMatch(o -> isWindowOrDoor(o) && isAbove(h, o));
            List<String> found = rules(Shipped.check(without(w.wall(), h)));
            assertEquals(needed, found.contains("missing-head-flashing"), () -> w + ": without " + h.id() + " " + found);
        }));
    }

    @Test void anUpperSheetOfASoundWallThatIsLaidTooEarlyIsAReverseLap() {
        int moved = 0;
        for (Shipped w : sound()) {
            for (Joint j : w.result().evidence().joints().all()) {
                if (j.kind() == JointKind.COURSE_LAP && isOfMembranes(j) && j.surface().isWall() && j.lengthMm() > LONG_MM) {
                    Piece outer = j.outer().piece(), inner = j.inner().piece();
                    List<String> found = rules(Shipped.check(w.wall().withPieces(movedBefore(w.wall().pieces(), outer, inner))));
                    assertTrue(found.contains("reverse-lap"), () -> w + ": " + outer.id() + " before " + inner.id() + " gives " + found);
                    moved++;
                }
            }
        }
        assertTrue(moved >= 10, "only " + moved + " laps were turned");
    }

    private static List<Shipped> sound() {
        return WALLS.stream().filter(Shipped::isSound).toList();
    }

    private static List<String> rules(CheckResult result) {
        return result.weakPoints().stream().map(p -> p.finding().rule()).distinct().toList();
    }

    private static boolean isWindowOrDoor(Opening o) {
        return o.kind() == Opening.Kind.WINDOW || o.kind() == Opening.Kind.DOOR;
    }

    private static boolean isAbove(Piece flashing, Opening o) {
        Box b = flashing.wallBox().orElseThrow();
        return b.minX() < o.rect().minX() && b.maxX() > o.rect().maxX() && Math.abs(b.minY() - o.rect().maxY()) <= Grid.of(5);
    }

    /** A tape laid as a level or plumb run; those round openings are drawn as shapes. */
    private static boolean isStraightTape(Piece p) {
        if (p.material().kind() != MaterialKind.TAPE || p.shapes().size() != 1 || p.shapes().get(0).run().size() != 2) {
            return false;
        }
        List<Point> run = p.shapes().get(0).run();
        return run.get(0).x() == run.get(1).x() || run.get(0).y() == run.get(1).y();
    }

    /** Whether it covers the fold of a building corner, or a joint of membranes that its practice wants taped. */
    private static boolean isNeeded(Shipped w, Piece t) {
        Evidence e = w.result().evidence();
        Box box = t.wallBox().orElseThrow();
        return e.buildingCorners().stream().anyMatch(c -> box.contains(c.edge().line().box()))
                || e.practice().get(Limit.TAPE_FREE_LAP).isNever() && e.joints().all().stream()
                .anyMatch(j -> isOfMembranes(j) && j.lengthMm() > LONG_MM && j.strips().stream().anyMatch(f -> f.piece().equals(t)));
    }

    private static boolean isOfMembranes(Joint j) {
        return j.outer().piece().material().kind() == MaterialKind.MEMBRANE && j.inner().piece().material().kind() == MaterialKind.MEMBRANE;
    }

    private static Elevation without(Elevation wall, Piece gone) {
        return wall.withPieces(wall.pieces().stream().filter(p -> !p.equals(gone)).toList());
    }

    private static List<Piece> movedBefore(List<Piece> pieces, Piece moved, Piece before) {
        List<Piece> out = new ArrayList<>(pieces);
        out.remove(moved);
        out.add(out.indexOf(before), moved);
        return out;
    }

    /** There, or where its water got in: what is trapped stands further down. */
    private static void assertLiesAt(Shipped w, Piece gone, Finding f) {
        Box there = gone.wallBox().orElseThrow().grow(NEAR);
        boolean gotInThere = f.path().stream().filter(s -> !s.piece().isEmpty()).reduce((a, b) -> b)
                .filter(s -> s.on().isWall() && there.overlaps(Box.of(s.where()).grow(1))).isPresent();
        assertTrue(there.overlaps(f.where().box().grow(1)) || gotInThere, () -> w + ": without " + gone.id() + " there is " + f.rule() + " at " + f.where().inWords());
    }

    @Test void regressionTable() {
        Generated.file(Path.of("docs/regression.md"), RegressionTable.of(WALLS));
    }

    private static String line(String rule, List<String> pieces) {
        return rule + " " + String.join(" ", new TreeSet<>(pieces));
    }

    private static String text(Stream<String> lines) {
        return lines.sorted().collect(Collectors.joining("\n"));
    }
}
