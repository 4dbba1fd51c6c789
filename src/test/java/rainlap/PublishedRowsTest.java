package rainlap;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import rainlap.check.Rules;
import rainlap.defect.Pressure;
import rainlap.practice.Disagreement;
import rainlap.practice.Disagreements;
import rainlap.practice.PracticeTable;
import rainlap.practice.Practices;
import rainlap.report.RulePage;
import rainlap.source.Known;

/** Every published row is used or says why it is not, and what is said to use it names its document. */
class PublishedRowsTest {
    /** How many rows each section has, without those that were put in between later. */
    private static final Map<String, Integer> SECTIONS = new TreeMap<>(Map.of("1.", 28, "2.", 16, "3.", 19, "4.", 33, "5.", 26, "6.", 17, "7.", 17, "8.", 14, "9.", 6, "D", 17));
    private static final List<String> BETWEEN = List.of("1.4b", "3.10b", "3.10c", "8.6b", "D15b");

    @Test
    void everyRowStandsInOneListOnly() {
        Set<String> expected = new TreeSet<>(BETWEEN);
        SECTIONS.forEach((section, count) -> Stream.iterate(1, i -> i <= count, i -> i + 1).forEach(i -> expected.add(section + i)));
        List<String> found = new ArrayList<>(new TreeSet<>(PublishedRows.numbers(PublishedRows.FIGURES)));
        found.addAll(PublishedRows.numbers(PublishedRows.IN_WORDS));
        found.addAll(PublishedRows.numbers(PublishedRows.UNUSED));
        Set<String> twice = found.stream().filter(row -> found.indexOf(row) != found.lastIndexOf(row)).collect(Collectors.toCollection(TreeSet::new));
        assertEquals(Set.of(), twice, "a row is used or it is not");
        assertEquals(expected, new TreeSet<>(found), "each row of each section, and no other");
    }

    @Test
    void everyRowSaysHowWellItIsKnown() {
        Stream.of(PublishedRows.IN_WORDS, PublishedRows.UNUSED).flatMap(List::stream)
                .forEach(r -> assertTrue(Known.find(r.get(3)).isPresent(), r::toString));
        assertEquals(List.of(), PublishedRows.IN_WORDS.stream().filter(r -> r.get(3).equals(Known.FROM_MEMORY.text())).toList(), "nothing from memory is followed");
    }

    @TestFactory
    Stream<DynamicTest> whatFollowsARowNamesItsDocument() {
        return PublishedRows.IN_WORDS.stream().map(r -> DynamicTest.dynamicTest(r.get(0), () -> {
            String text = text(r.get(4)).replaceAll("\\s+", " ");
            assertTrue(text.contains(r.get(2)), () -> r.get(4) + " does not name " + r.get(2) + ": " + text);
        }));
    }

    private static String text(String usedBy) {
        int blank = usedBy.indexOf(' ');
        String kind = blank < 0 ? usedBy : usedBy.substring(0, blank), name = usedBy.substring(blank + 1);
        return switch (kind) {
            case "rule" -> {
                assertTrue(Rules.find(name).isPresent(), () -> "no rule " + name);
                yield RulePage.find(name).orElseThrow().markdown();
            }
            case "practice" -> String.join(" ", new PracticeTable(List.of(Practices.find(name).orElseThrow()), List.of()).lines());
            case "disagreement" -> Disagreements.all().stream().filter(d -> d.about().equals(name)).map(Disagreement::says).map(Object::toString)
                    .findFirst().orElseThrow(() -> new AssertionError("nobody disagrees on " + name));
            case "holes" -> Pressure.TEST.text();
            default -> throw new AssertionError(usedBy);
        };
    }
}
