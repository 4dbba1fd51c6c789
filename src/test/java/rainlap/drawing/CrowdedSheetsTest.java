package rainlap.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import rainlap.check.CheckResult;
import rainlap.check.WeakPoint;
import rainlap.paper.Clip;
import rainlap.paper.Group;
import rainlap.paper.Mark;
import rainlap.paper.Sheet;
import rainlap.paper.SheetCheck;

/** Sheets of random walls with up to 80 findings, every fourth with 60: nothing meets, nothing is dropped. */
class CrowdedSheetsTest {
    private static final int WALLS = 16;
    private static final List<Case> CASES = new ArrayList<>();

    private record Case(long seed, CheckResult result, List<Sheet> sheets) {}

    @BeforeAll
    static void draw() {
        for (long seed = 0; seed < WALLS; seed++) {
            CheckResult result = CrowdedWall.of(seed, seed % 4 == 3 ? 60 : 0, seed % 4 == 3 ? 60 : 80);
            CASES.add(new Case(seed, result, Sheets.of(result, SampleWall.TITLE)));
        }
    }

    @Test
    void nothingMeetsAndNothingLeavesTheFrame() {
        for (Case c : CASES) {
            for (int i = 0; i < c.sheets().size(); i++) {
                assertEquals(List.of(), SheetCheck.of(c.sheets().get(i)), "seed " + c.seed() + ", sheet " + (i + 1));
            }
        }
    }

    @Test
    void everyWeakPointHasItsRowOnceAndItsMarkAndPlaceInEachBayItRunsThrough() {
        for (Case c : CASES) {
            Map<String, Integer> ids = new HashMap<>();
            c.sheets().forEach(s -> count(s.marks(), ids));
            for (WeakPoint p : c.result().weakPoints()) {
                int bays = Bay.marking(Sheets.bays(c.result(), Sheets.Paper.A3), p).size();
                assertEquals(List.of(bays, bays, 1), Stream.of("label-", "place-", "row-").map(what -> ids.get(what + p.number())).toList(), p.number() + ", seed " + c.seed());
            }
        }
    }

    /** Each of no or one defence is in a section, by itself or with others at its place; further letters are two. */
    @Test
    void everyWeakPointOfFewDefencesHasItsSection() {
        int most = 0;
        for (Case c : CASES) {
            List<String> words = new ArrayList<>();
            words.addAll(SheetWords.of(c.sheets()));
            assertEquals(List.of(), words.stream().filter(w -> w.startsWith("Without a section")).toList(), "seed " + c.seed());
            Map<String, Integer> ids = new HashMap<>();
            c.sheets().forEach(s -> count(s.marks(), ids));
            int sections = (int) ids.keySet().stream().filter(id -> id.startsWith("section-") && !id.equals("section-planes")).count();
            most = Math.max(most, sections);
            assertTrue(sections <= SectionLetters.SINGLE || ids.containsKey("section-AA"), "seed " + c.seed());
        }
        assertTrue(most > SectionLetters.SINGLE, "only " + most);
    }

    @Test
    void whatWasNotCheckedAlwaysClosesTheTable() {
        for (Case c : CASES) {
            List<String> words = new ArrayList<>();
            words.addAll(SheetWords.of(c.sheets()));
            int n = c.result().unchecked().size() + c.result().crashes().size();
            assertTrue(words.stream().anyMatch(w -> w.startsWith("Not checked, " + n + ":")), "seed " + c.seed() + " " + new TreeSet<>(words));
        }
    }

    private static void count(List<Mark> marks, Map<String, Integer> ids) {
        for (Mark m : marks) {
            if (m instanceof Group g) {
                g.id().ifPresent(id -> ids.merge(id, 1, Integer::sum));
                count(g.marks(), ids);
            } else if (m instanceof Clip c) {
                count(c.marks(), ids);
            }
        }
    }
}
