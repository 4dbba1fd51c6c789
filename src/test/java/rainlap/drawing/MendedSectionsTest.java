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
import rainlap.Shipped;
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
import rainlap.wall.LayingOrder;
import rainlap.wall.Piece;
import rainlap.wall.Shape;
import rainlap.wall.Stage;

/** The cut as it should be: the whole wall with its pieces as mended no longer has the weak point there, and has no other in its place. */
class MendedSectionsTest {
    private static final List<Done> MENDED = all();

    /** A weak point of 0 or 1 defences, its cut or none for one seen close to, and what became of it. */
    private record Done(String wall, CheckResult result, WeakPoint point, Optional<Cut> cut, Answer answer) {
        Optional<Mended> mended() {
            return answer.mended();
        }

        boolean isOnBareWall() {
            return wall.startsWith("few-defences");
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
                Box place = f.where().box().grow(30_000);
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
        MENDED.stream().filter(d -> d.mended().isEmpty() && !d.isOnBareWall()).forEach(d -> reasons.add(d.point.finding().rule() + ": " + d.answer.why()));
        assertEquals(Set.of("no-collar: clearance round a flue or hot duct is for licensed people and local code to say."), reasons);
    }

    /** Walls on which a rule's weak points have few defences are made for it, and named after it. */
    @Test void onAWallMadeForARuleItIsMended() {
        Set<String> made = new TreeSet<>(), mended = new TreeSet<>();
        MENDED.stream().filter(Done::isOnBareWall).forEach(d -> {
            made.add(d.wall);
            if (d.mended().isPresent() && d.wall.endsWith(d.point.finding().rule() + ".json")) {
                mended.add(d.wall);
            }
        });
        assertEquals(made, mended);
        assertTrue(made.size() > 5, made.toString());
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
        assertEquals(Set.of("short-flashing-lap", "short-upstand"), mended, "never of 0 or 1 defences here: look for walls on which they are");
    }

    /**
     * What is told beside the mended cut has no size that the table's remedy has not; tape is as wide as everywhere. Walls made for one rule have nothing behind
     * their cladding: there the cut mends besides what water then finds.
     */
    @Test void theTableAndTheMendedCutTellTheSameSizes() {
        Map<String, String> wrong = new TreeMap<>();
        for (Done d : MENDED.stream().filter(d -> !d.isOnBareWall()).toList()) {
            String remedy = d.point.finding().remedy();
            d.mended().stream().flatMap(m -> m.what().stream()).filter(s -> s.startsWith("Tape ") ? !remedy.matches(".*[Tt]ape.*") : !sizes(remedy).containsAll(sizes(s)))
                    .forEach(s -> wrong.put(d.toString(), s + " / " + remedy));
        }
        assertEquals(Map.of(), wrong);
    }

    /** Where the table has a strip laid, and nothing else, the cut shows that strip, or says that it shows another way. */
    @Test void theTableAndTheMendedCutTellOfTheSameStrip() {
        Map<String, String> wrong = new TreeMap<>();
        for (Done d : MENDED.stream().filter(d -> d.mended().isPresent() && d.point.finding().remedy().matches("(Slip|Wrap|Lap|Lay) a strip.*")).toList()) {
            String told = String.join(" ", d.mended().get().what());
            if (!told.contains("strip") || d.mended().get().added().stream().noneMatch(id -> id.startsWith("strip") || id.startsWith("flap")) && !told.contains("as here")) {
                wrong.put(d.toString(), told + " / " + d.point.finding().remedy());
            }
        }
        assertEquals(Map.of(), wrong);
    }

    /** A membrane that runs on over an end that is turned up must be slit there, and both say so. */
    @Test void whatRunsOverAnEndDamIsSlit() {
        Set<String> told = new TreeSet<>();
        for (Done d : MENDED.stream().filter(d -> d.mended().isPresent() && d.point.finding().rule().matches("no-end-dam|way-round-an-end")).toList()) {
            boolean cut = String.join(" ", d.mended().get().what()).contains(" slit where it stands"), words = d.point.finding().remedy().contains("; slit ");
            assertEquals(words, cut, d.toString());
            told.add(d.wall + " " + cut);
        }
        assertTrue(told.contains("elevations/estuary-hut-north.json true") && told.contains("elevations/bakery-trailer-rear.json true"), told.toString());
    }

    /** Two things wrong with one joint are mended with the same sheet outside. */
    @Test void oneJointIsMendedOneWay() {
        Map<String, String> wrong = new TreeMap<>();
        int pairs = 0;
        for (Done a : MENDED.stream().filter(d -> d.mended().isPresent() && d.point.finding().joint().isPresent()).toList()) {
            for (Done b : MENDED.stream().filter(d -> d.result == a.result && d.point.number() > a.point.number() && d.mended().isPresent()).toList()) {
                if (a.point.finding().joint().equals(b.point.finding().joint()) && Set.copyOf(a.point.finding().pieces()).equals(Set.copyOf(b.point.finding().pieces()))) {
                    pairs++;
                    String one = order(a), other = order(b);
                    if (!one.equals(other)) {
                        wrong.put(a + " / " + b, one + " / " + other);
                    }
                }
            }
        }
        assertEquals(Map.of(), wrong);
        assertTrue(pairs > 0, "no joint with two weak points");
    }

    private static String order(Done d) {
        List<String> ids = d.point.finding().pieces().stream().sorted().limit(2).toList();
        List<String> laid = d.mended().orElseThrow().evidence().elevation().pieces().stream().map(Piece::id).toList();
        return new LayingOrder(d.mended().get().evidence().elevation().pieces()).isOutside(laid.indexOf(ids.get(0)), laid.indexOf(ids.get(1))) ? ids.get(0) : ids.get(1);
    }

    /** However much there is to say of a mended cut, it stands inside its cell, and above what comes beneath. */
    @Test void theWordsOfAMendedCutFit() {
        Map<String, String> wrong = new TreeMap<>();
        for (Done d : MENDED.stream().filter(x -> x.cut.isPresent() && x.mended().isPresent()).toList()) {
            boolean plumb = d.cut.get().plumb();
            SectionPlan plan = new SectionPlanner(d.result.evidence()).plan(d.point, 0.5);
            PaperBox cell = PaperBox.ofSize(0, 0, 82, SectionPair.height(plan, d.result.evidence(), d.mended().get()));
            if (plan.cut().plumb() == plumb) {
                PaperBox drawn = SectionPair.of(plan, d.result.evidence(), d.mended().get(), cell).box();
                if (drawn.bottom() > cell.bottom() + 1) {
                    wrong.put(d.toString(), drawn.bottom() + " > " + cell.bottom());
                }
            }
        }
        assertEquals(Map.of(), wrong);
    }

    private static Set<String> sizes(String text) {
        return Pattern.compile("(?<![\\w.])[0-9]+(\\.[0-9]+)?").matcher(text).results().map(MatchResult::group).collect(Collectors.toSet());
    }

    @Test void aMendedCutDiffersFromTheDrawnOne() {
        MENDED.stream().filter(d -> d.mended().isPresent()).forEach(d -> {
            String drawn = d.cut.map(c -> strands(d.result.evidence(), c)).orElseGet(() -> painted(d, d.result.evidence()));
            String mended = d.cut.map(c -> strands(d.mended().get().evidence(), c)).orElseGet(() -> painted(d, d.mended().get().evidence()));
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
                r.weakPoints().stream().filter(w -> w.finding().defences() <= 1 && CloseUp.of(w, r.evidence()).isEmpty()).forEach(w -> Stream.of(0.1, 0.3, 0.7, 0.9)
                        .map(t -> new SectionPlanner(r.evidence()).plan(w, t).cut())
                        .forEach(c -> MendedCuts.of(w, c, r.evidence()).flatMap(Answer::sentence).ifPresent(s -> wrong.put(p.getFileName() + " " + w.number() + " " + c, s))));
            }
        }
        assertEquals(Map.of(), wrong);
    }

    /** What a close view paints of the pieces, and nothing that only one of the two has. */
    private static String painted(Done d, Evidence e) {
        return CloseUp.of(d.point, d.result.evidence()).orElseThrow().mended(new Mended(e, List.of(), List.of("")), PaperBox.ofSize(0, 0, 50, 40)).toString();
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
                .filter(f -> f.where().box().grow(Grid.MM).meets(seen(d))).forEach(f -> out.add(key(f)));
        return out;
    }

    /** Where nothing new may be wrong: at the cut, in the corner, and all about what is moved in a view from outside. */
    private static Box seen(Done d) {
        boolean moved = CloseUp.of(d.point, d.result.evidence()).filter(FrontView.class::isInstance).isPresent();
        return d.cut.map(c -> Box.of(List.of(c.at()))).orElse(d.point.finding().where().box()).grow(moved ? 300 * Grid.MM : Grid.MM);
    }

    private static String key(Finding f) {
        return f.rule() + " " + new TreeSet<>(f.pieces());
    }

    private static List<Done> all() {
        List<Done> out = new ArrayList<>();
        for (Path p : Shipped.withWrongWalls()) {
            Elevation e = ElevationFile.read(p).elevation().orElseThrow();
            for (Stage stage : Stage.values()) {
                if (stage == Stage.WRAP || e.pieces().stream().anyMatch(x -> x.material().layer() != Layer.WRAP)) {
                    CheckResult r = Checker.check(e, stage, Practices.find(e.practice().orElse("common")).orElseThrow());
                    r.weakPoints().stream().filter(w -> w.finding().defences() <= 1).forEach(w -> out.add(done(p.getName(p.getNameCount() - 2) + "/" + p.getFileName(), r, w)));
                }
            }
        }
        return out;
    }

    private static Done done(String wall, CheckResult r, WeakPoint w) {
        return CloseUp.of(w, r.evidence()).map(c -> new Done(wall, r, w, Optional.empty(), c.answer().orElseThrow()))
                .orElseGet(() -> {
                    Cut c = new SectionPlanner(r.evidence()).plan(w, 0.5).cut();
                    return new Done(wall, r, w, Optional.of(c), MendedCuts.of(w, c, r.evidence()).orElseThrow());
                });
    }
}
