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
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import rainlap.check.CheckResult;
import rainlap.check.Checker;
import rainlap.check.Rules;
import rainlap.check.WeakPoint;
import rainlap.file.ElevationFile;
import rainlap.geom.Box;
import rainlap.geom.Grid;
import rainlap.material.Layer;
import rainlap.mend.Answer;
import rainlap.mend.Mended;
import rainlap.mend.Mending;
import rainlap.practice.Practices;
import rainlap.paper.PaperBox;
import rainlap.rule.Evidence;
import rainlap.rule.Finding;
import rainlap.wall.Elevation;
import rainlap.wall.Piece;
import rainlap.wall.Shape;
import rainlap.wall.Stage;

/** The cut as it should be: the whole wall with its pieces as mended no longer has the weak point there, and has no other in its place. */
class MendedSectionsTest {
    private static final List<Done> MENDED = all();

    /** A weak point of 0 or 1 defences, its cut or none for a corner, and what became of it. */
    private record Done(String wall, CheckResult result, WeakPoint point, Optional<Cut> cut, Answer answer) {
        Optional<Mended> mended() {
            return answer.mended();
        }

        @Override
        public String toString() {
            return wall + " " + point.number() + " " + point.finding().rule();
        }
    }

    @Test void theWholeWallMendedNoLongerHasTheWeakPoint() {
        Map<String, List<String>> wrong = new HashMap<>();
        for (Done d : MENDED) {
            if (d.mended().isPresent()) {
                Finding f = d.point.finding();
                Box place = f.where().box().grow(20_000);
                CheckResult after = Checker.check(whole(d), d.result.evidence().stage(), d.result.evidence().practice());
                Set<String> before = keys(d.result, place, d);
                List<String> left = keys(after, place, d).stream().filter(k -> k.equals(key(f)) || !before.contains(k)).toList();
                if (!left.isEmpty()) {
                    wrong.put(d.toString(), left);
                }
            }
        }
        assertEquals(Map.of(), wrong);
    }

    /** A cut or a corner that is shown at all is shown mended, or there is a reason that a reader can judge. */
    @Test void whatIsNotDrawnMendedHasItsReason() {
        Set<String> reasons = new TreeSet<>();
        MENDED.stream().filter(d -> d.mended().isEmpty()).forEach(d -> reasons.add(d.point.finding().rule() + ": " + d.answer.why()));
        assertEquals(Set.of("no-collar: clearance round a flue or hot duct is for licensed people and local code to say."), reasons);
    }

    /** Each rule has ways to mend it, or says why no cut shows that; what is drawn as mended is all of the first sort that these walls have. */
    @Test void eachRuleIsMendedOrSaysWhyNot() {
        Set<String> mended = new TreeSet<>(), shown = new TreeSet<>();
        Rules.all().stream().map(r -> r.info().id()).forEach(id -> {
            Optional<String> why = Mending.why(id);
            assertTrue(why.isEmpty() || why.get().endsWith("."), id);
            if (why.isEmpty()) {
                mended.add(id);
            }
        });
        MENDED.stream().filter(d -> d.mended().isPresent()).forEach(d -> shown.add(d.point.finding().rule()));
        assertTrue(mended.containsAll(shown), shown + " / " + mended);
        mended.removeAll(shown);
        assertEquals(Set.of("flat-capping", "lap-towards-weather", "short-capping-lap", "short-sheet-end-lap", "short-sheet-side-lap", "uncovered-base"), mended,
                "never of 0 or 1 defences here: look for walls on which they are");
    }

    /** What is told beside the mended cut has no size that the table's remedy has not; tape is as wide as everywhere. */
    @Test void theTableAndTheMendedCutTellTheSameSizes() {
        Map<String, String> wrong = new TreeMap<>();
        for (Done d : MENDED) {
            String remedy = d.point.finding().remedy();
            d.mended().stream().flatMap(m -> m.what().stream()).filter(s -> s.startsWith("Tape ") ? !remedy.matches(".*[Tt]ape.*") : !sizes(remedy).containsAll(sizes(s)))
                    .forEach(s -> wrong.put(d.toString(), s + " / " + remedy));
        }
        assertEquals(Map.of(), wrong);
    }

    private static Set<String> sizes(String text) {
        return Pattern.compile("(?<![\\w.])[0-9]+(\\.[0-9]+)?").matcher(text).results().map(MatchResult::group).collect(Collectors.toSet());
    }

    @Test void aMendedCutDiffersFromTheDrawnOne() {
        MENDED.stream().filter(d -> d.mended().isPresent()).forEach(d -> {
            String drawn = d.cut.map(c -> strands(d.result.evidence(), c)).orElseGet(() -> corner(d, d.result.evidence()));
            String mended = d.cut.map(c -> strands(d.mended().get().evidence(), c)).orElseGet(() -> corner(d, d.mended().get().evidence()));
            assertTrue(!drawn.equals(mended), () -> d + ": " + drawn);
        });
    }

    /** What is told of a place hangs on no paper: wherever along it there is room for the plane, the mended cut is the same. */
    @Test void aPlaneElsewhereAlongThePlaceIsMendedToo() throws IOException {
        Map<String, String> wrong = new TreeMap<>();
        try (Stream<Path> shipped = Files.list(Path.of("elevations"))) {
            for (Path p : shipped.filter(f -> f.toString().endsWith(".json")).sorted().toList()) {
                Elevation e = ElevationFile.read(p).elevation().orElseThrow();
                CheckResult r = Checker.check(e, Stage.WRAP, Practices.find(e.practice().orElse("common")).orElseThrow());
                r.weakPoints().stream().filter(w -> w.finding().defences() <= 1 && CornerView.corner(w, r.evidence()).isEmpty()).forEach(w -> Stream.of(0.1, 0.3, 0.7, 0.9)
                        .flatMap(t -> new SectionPlanner(r.evidence()).plan(w, t).stream()).map(SectionPlan::cut)
                        .forEach(c -> MendedCuts.of(w, c, r.evidence()).flatMap(Answer::sentence).ifPresent(s -> wrong.put(p.getFileName() + " " + w.number() + " " + c, s))));
            }
        }
        assertEquals(Map.of(), wrong);
    }

    private static String corner(Done d, Evidence e) {
        return CornerView.marks(d.point.finding(), CornerView.same(CornerView.corner(d.point, d.result.evidence()).orElseThrow(), e), e, PaperBox.ofSize(0, 0, 50, 40), "").toString();
    }

    /** What the strips of a cut look like. */
    private static String strands(Evidence e, Cut cut) {
        CutStack s = CutStack.of(e, cut, true);
        return new SectionStrands(s, new SectionGrid(cut.plumb(), 5, 0, 0, cut.centre()), 200).marks().toString();
    }

    /** The pieces of the whole wall, those near the place as mended, in their order. */
    private static Elevation whole(Done d) {
        Elevation drawn = d.result.evidence().elevation();
        Map<String, Piece> changed = new HashMap<>();
        List<Piece> near = d.mended().orElseThrow().evidence().elevation().pieces(), out = new ArrayList<>();
        near.forEach(p -> changed.put(p.id(), p));
        Set<String> old = new TreeSet<>(drawn.pieces().stream().map(Piece::id).toList());
        near.stream().takeWhile(p -> !old.contains(p.id())).forEach(out::add);
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

    private static Set<String> keys(CheckResult r, Box place, Done d) {
        Set<String> out = new TreeSet<>();
        r.weakPoints().stream().map(WeakPoint::finding).filter(f -> f.where().box().meets(place))
                .filter(f -> f.where().box().grow(Grid.MM).meets(d.cut.map(c -> Box.of(List.of(c.at()))).orElse(d.point.finding().where().box()).grow(Grid.MM))).forEach(f -> out.add(key(f)));
        return out;
    }

    private static String key(Finding f) {
        return f.rule() + " " + new TreeSet<>(f.pieces());
    }

    private static List<Done> all() {
        List<Done> out = new ArrayList<>();
        for (Path p : files()) {
            Elevation e = ElevationFile.read(p).elevation().orElseThrow();
            for (Stage stage : Stage.values()) {
                if (stage == Stage.WRAP || e.pieces().stream().anyMatch(x -> x.material().layer() != Layer.WRAP)) {
                    CheckResult r = Checker.check(e, stage, Practices.find(e.practice().orElse("common")).orElseThrow());
                    r.weakPoints().stream().filter(w -> w.finding().defences() <= 1).forEach(w -> done(p.getFileName().toString(), r, w).ifPresent(out::add));
                }
            }
        }
        return out;
    }

    private static Optional<Done> done(String wall, CheckResult r, WeakPoint w) {
        return CornerView.corner(w, r.evidence()).map(c -> new Done(wall, r, w, Optional.empty(), MendedCuts.ofCorner(w, r.evidence()).orElseThrow()))
                .or(() -> new SectionPlanner(r.evidence()).plan(w, 0.5).map(SectionPlan::cut)
                        .map(c -> new Done(wall, r, w, Optional.of(c), MendedCuts.of(w, c, r.evidence()).orElseThrow())));
    }

    /** The shipped walls and what the rules' pages show as wrong. */
    private static List<Path> files() {
        try (Stream<Path> shipped = Files.list(Path.of("elevations")); Stream<Path> examples = Files.walk(Path.of("src/main/resources/rules"))) {
            return Stream.concat(shipped.filter(f -> f.toString().endsWith(".json")), examples.filter(f -> f.getFileName().toString().startsWith("bad-"))).sorted().toList();
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }
}
