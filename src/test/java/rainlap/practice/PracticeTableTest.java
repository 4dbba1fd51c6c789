package rainlap.practice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;

class PracticeTableTest {
    private final List<String> lines = new PracticeTable(Practices.all(), Disagreements.all()).lines();

    private String line(String start) {
        return lines.stream().filter(l -> l.startsWith(start)).findFirst().orElseThrow();
    }

    private static List<String> cells(String line) {
        return List.of(line.split(" {2,}"));
    }

    @Test
    void fitsAHundredColumns() {
        lines.forEach(l -> assertTrue(l.length() <= PracticeTable.COLUMNS && l.equals(l.stripTrailing()), l));
    }

    @Test
    void showsWhoIsSilentAndWhatMayBeTaped() {
        assertEquals(List.of("course-lap", "150", "150 t", "100", "150", "90"), cells(line("course-lap")));
        assertEquals(
                List.of("tape-free-lap", "never", "150", "(never)", "(never)", "(never)"),
                cells(line("tape-free-lap")));
        assertEquals(List.of("eave-shelter", "4 x", ">3 x", "4 x", "(4 x)", "(4 x)"), cells(line("eave-shelter")));
    }

    @Test
    void everyOwnValueStandsWithItsSource() {
        String text = String.join(" ", lines).replaceAll("\\s+", " ");
        for (Practice practice : Practices.all()) {
            assertTrue(text.contains(practice.about()), practice.id());
            practice.facts().forEach(fact -> assertTrue(text.contains(fact), fact));
            for (LimitValue value : practice.ownValues()) {
                String expected = value.limit().id() + " " + value.text() + ": " + value.source().text() + " " + value.note();
                assertTrue(text.contains(expected.strip()), expected);
            }
        }
    }

    @Test
    void onePracticeAloneMakesATable() {
        List<String> one = new PracticeTable(List.of(Practices.common()), List.of()).lines();
        assertTrue(one.stream().anyMatch(l -> l.startsWith("corner-wrap") && l.endsWith("300")));
    }

    @Test
    void moreThanFitSideBySideStandBelowOneAnother() {
        assertThrows(IllegalArgumentException.class, () -> new PracticeTable(List.of(), List.of()));
        List<String> seven = new PracticeTable(Collections.nCopies(7, Practices.common()), List.of()).lines();
        assertEquals(2 + Limit.values().length, seven.indexOf(""), "two lines of heading, then one a limit");
        assertEquals(List.of("150", "100", "75", "100", "51"), cells(nth("course-lap", 2)).subList(1, 6), "the second five, common first again");
    }

    @Test
    void everySideOfEveryDisagreementIsPrinted() {
        String text = String.join(" ", lines).replaceAll("\\s+", " ");
        assertTrue(Disagreements.all().size() >= 15);
        for (Disagreement d : Disagreements.all()) {
            d.says().forEach(s -> assertTrue(text.contains(s.what() + ": " + s.who()), s.toString()));
            assertTrue(text.contains(d.comment()), d.about());
        }
    }

    @Test
    void whatPracticesDisagreeOnIsTheirOwn() {
        Disagreement lap = Disagreements.all().get(0);
        assertEquals(List.of("us-irc-2015 51 mm", "nz-metal-cop 75 mm", "jp-inspection 90 mm", "ca-obc 100 mm", "jp-manual 100 mm", "uk-nhbc-2021 100 mm",
                "au-abcb-2022 150 mm or taped", "ie-guide 150 mm"), lap.says().stream().map(s -> s.who() + " " + s.what()).toList());
    }

    private String nth(String start, int n) {
        return lines.stream().filter(l -> l.startsWith(start)).skip(n - 1).findFirst().orElseThrow();
    }
}
