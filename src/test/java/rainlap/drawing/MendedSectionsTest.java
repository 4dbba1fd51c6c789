package rainlap.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import rainlap.check.CheckResult;
import rainlap.check.Checker;
import rainlap.check.WeakPoint;
import rainlap.file.ElevationFile;
import rainlap.geom.Box;
import rainlap.geom.Grid;
import rainlap.material.Layer;
import rainlap.mend.Mended;
import rainlap.mend.Mending;
import rainlap.practice.Practices;
import rainlap.rule.Finding;
import rainlap.wall.Elevation;
import rainlap.wall.Piece;
import rainlap.wall.Shape;
import rainlap.wall.Stage;

/** The cut as it should be: the whole wall with its pieces as mended no longer has the weak point there, and has no other in its place. */
class MendedSectionsTest {
    private static final List<Done> MENDED = all();

    /** A weak point of a shipped wall, its cut, and what became of it. */
    private record Done(String wall, CheckResult result, WeakPoint point, Cut cut, Optional<Mended> mended) {
        @Override
        public String toString() {
            return wall + " " + point.number() + " " + point.finding().rule();
        }
    }

    @Test void theWholeWallMendedNoLongerHasTheWeakPoint() {
        Map<String, List<String>> wrong = new HashMap<>();
        for (Done d : MENDED) {
            if (d.mended.isPresent()) {
                Finding f = d.point.finding();
                Box place = f.where().box().grow(20_000);
                CheckResult after = Checker.check(whole(d), d.result.evidence().stage(), d.result.evidence().practice());
                Set<String> before = keys(d.result, place, d.cut);
                List<String> left = keys(after, place, d.cut).stream().filter(k -> k.equals(key(f)) || !before.contains(k)).toList();
                if (!left.isEmpty()) {
                    wrong.put(d.toString(), left);
                }
            }
        }
        assertEquals(Map.of(), wrong);
    }

    /** What is drawn as mended, rule by rule, so that none is lost in silence. */
    @Test void theseRulesAreMendedOnTheShippedWalls() {
        Set<String> rules = new TreeSet<>();
        MENDED.stream().filter(d -> d.mended.isPresent()).forEach(d -> rules.add(d.point.finding().rule()));
        assertEquals(Set.of("butt-joint", "flashing-in-front", "lap-towards-travel", "open-gap", "reverse-lap", "short-corner-wrap", "short-course-lap", "short-end-lap",
                "short-return", "tape-missed", "narrow-tape-cover", "untaped-corner", "untaped-joint", "unwrapped-corner"), rules);
    }

    @Test void aMendedCutDiffersFromTheDrawnOne() {
        MENDED.stream().filter(d -> d.mended.isPresent()).forEach(d -> {
            String drawn = strands(CutStack.of(d.result.evidence(), d.cut)), mended = strands(CutStack.of(d.mended.get().evidence(), d.cut));
            assertTrue(!drawn.equals(mended), () -> d + ": " + drawn);
        });
    }

    private static String strands(CutStack s) {
        return s.strands().stream().map(x -> x.piece().id() + x.steps() + x.lowLeg() + x.highLeg()).toList().toString();
    }

    /** The pieces of the whole wall, those near the place as mended, in their order. */
    private static Elevation whole(Done d) {
        Elevation drawn = d.result.evidence().elevation();
        Map<String, Piece> changed = new HashMap<>();
        List<Piece> near = d.mended.orElseThrow().evidence().elevation().pieces(), out = new ArrayList<>();
        near.forEach(p -> changed.put(p.id(), p));
        Set<String> old = new TreeSet<>(drawn.pieces().stream().map(Piece::id).toList());
        for (Piece p : drawn.pieces()) {
            boolean inNear = changed.containsKey(p.id());
            out.add(inNear ? joined(p, changed.get(p.id())) : p);
            for (int i = inNear ? near.indexOf(changed.get(p.id())) + 1 : near.size(); i < near.size() && !old.contains(near.get(i).id()); i++) {
                out.add(near.get(i));
            }
        }
        return drawn.withPieces(out);
    }

    /** As mended, and tucked under what lay further off too. */
    private static Piece joined(Piece drawn, Piece mended) {
        Set<String> under = new TreeSet<>(mended.under());
        drawn.under().stream().filter(u -> !u.equals(mended.id())).forEach(under::add);
        List<Shape> shapes = mended.shapes();
        return new Piece(mended.id(), mended.material(), shapes, mended.under().isEmpty() && drawn.under().isEmpty() ? List.of() : List.copyOf(under),
                mended.bond(), mended.cuts());
    }

    private static Set<String> keys(CheckResult r, Box place, Cut cut) {
        Set<String> out = new TreeSet<>();
        r.weakPoints().stream().map(WeakPoint::finding).filter(f -> f.where().box().meets(place))
                .filter(f -> f.where().box().grow(Grid.MM).meets(Box.of(List.of(cut.at())).grow(Grid.MM))).forEach(f -> out.add(key(f)));
        return out;
    }

    private static String key(Finding f) {
        return f.rule() + " " + new TreeSet<>(f.pieces());
    }

    private static List<Done> all() {
        List<Done> out = new ArrayList<>();
        try (Stream<Path> files = Files.list(Path.of("elevations"))) {
            for (Path p : files.filter(f -> f.toString().endsWith(".json")).sorted().toList()) {
                Elevation e = ElevationFile.read(p).elevation().orElseThrow();
                Stage stage = e.pieces().stream().anyMatch(x -> x.material().layer() != Layer.WRAP) ? Stage.FINISHED : Stage.WRAP;
                CheckResult r = Checker.check(e, stage, Practices.find(e.practice().orElse("common")).orElseThrow());
                SectionPlanner planner = new SectionPlanner(r.evidence());
                for (WeakPoint w : r.weakPoints()) {
                    planner.plan(w, 0.5).map(SectionPlan::cut).ifPresent(c -> out.add(new Done(p.getFileName().toString(), r, w, c,
                            Mending.of(r.evidence(), w.finding(), c.at(), c.plumb()))));
                }
            }
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
        return out;
    }
}
