package rainlap.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import rainlap.rule.Finding;
import rainlap.rule.Outcome;
import rainlap.rule.RuleInfo;
import rainlap.check.CheckResult;

class TerminalTableTest {
    @Test void aMixedResultReadsSo() {
        assertEquals("""
                Sample (walls/sample.json)
                practice au-abcb-2022 (%s), stage wrap, 4 pieces

                no.  defences  l/h  rule                pieces  drawn         asked
                  1         0    -  reverse-lap         M1, M2  137 reversed  150, or tape
                                    place     +1213, x 0 to 2000
                """.formatted(Samples.evidence().practice().title()), String.join("\n", first(6)) + "\n");
    }

    private static List<String> first(int n) {
        return TerminalTable.lines("walls/sample.json", Samples.mixed()).subList(0, n);
    }

    private static String mixed() {
        return String.join("\n", TerminalTable.lines("sample.json", Samples.mixed()));
    }

    @Test void belowEachRowStandWhoAsksAndTheRemedy() {
        String indent = " ".repeat(20);
        assertTrue(mixed().contains("\n" + indent + "place     +1213, x 0 to 2000\n" + indent + "remedy    Lift the upper sheet over the lower one by at least 150 mm, or cover\n"
                + indent + "          the joint with tape centred on it, pressed on along its whole length.\n"
                + indent + "asked by  common practice (no source); au-abcb-2022 is silent\n"), mixed());
    }

    /** No practice could speak of what physics, a material or the road's law asks; none is called silent on it. */
    @Test void nobodyIsSilentWhereNoPracticeCouldSpeak() {
        Outcome.Broken broken = Finding.of(RuleInfo.of("rots-where-wet", "rots where wet", RuleInfo.Theme.MATERIALS), Samples.finding(0, "any").where(),
                List.of("B1")).reads("untreated", "treated").says("It rots.", "Treat it.");
        String below = String.join("\n", TerminalTable.below(broken.finding(), "au-abcb-2022", ""));
        assertTrue(below.endsWith("asked by  common practice (no source)"), below);
    }

    @Test void countsSayHowNearTheWaterIs() {
        assertTrue(mixed().contains("\n4 weak points: 2 with no defence, 1 one failure away, 1 safe but below what is asked\n"), mixed());
        assertTrue(mixed().contains("\nJoints, 2: 1 reverse lap, 1 butt\n"), mixed());
    }

    @Test void whatWasNotCheckedIsSaidOnceForEachReason() {
        assertTrue(mixed().contains("""

                Not checked, 2:
                  short-corner-wrap: the neighbour is not known (M1; M2)
                Nothing to judge for 1 rule: tape-order (the findings file says why)
                FAILED: rule z-rule broke down, which is our fault (ArithmeticException: / by zero); the other rules
                went on. Please report it."""), mixed());
    }

    @Test void aSoundWallSaysSoAndThatNothingWasLeftOut() {
        String text = String.join("\n", TerminalTable.lines("sample.json", Samples.sound()));
        assertTrue(text.contains("\nNo weak point\n"), text);
        assertTrue(text.contains("\nAs asked: 3 places by 2 rules\nNot checked, 0"), text);
    }

    @Test void whatWasTakenForGrantedStandsBesideItsFigure() {
        assertTrue(mixed().contains("""

                Water was followed over the whole wall: lifted 150 mm under lower edges, pushed 150 mm under side
                edges. Taken for granted:
                  rise                     150 mm   ABCB Housing Provisions 2022, 7.5.2(3)(c),
                                                    published. No wind, towing or pressure is stated:
                                                    the course lap of au-abcb-2022 stands for the rise.
                """), mixed());
        assertTrue(String.join(" ", TerminalTable.caution()).contains("3 stands for three or more"));
    }

    @Test void whereNoRainIsStatedThereAreNoLitresAndItSaysWhy() {
        assertTrue(mixed().contains("\nNo litres an hour (l/h): the elevation states no rain. Give rain_mm_h in its exposure.\n"), mixed());
    }

    /** Half of 50 mm/h on 1.2 by 2 m; what falls above +1200 meets the top of M1, half of it runs in behind. */
    @Test void theRelationItsSourceAndWhereTheRainGoesStandBesideTheLitres() {
        String text = String.join("\n", TerminalTable.lines("rain.json", Samples.rain()));
        assertTrue(text.contains("no.  defences  l/h  rule         pieces  drawn         asked"), text);
        assertTrue(text.contains("  1         0   24  reverse-lap"), text);
        assertTrue(text.contains("\n  shares where water parts ") && text.contains("Our own choice. A level"), text);
        assertTrue(text.contains("rain on the wall            25 l/(m2 h)  BS 6367 1983, as a building handbook gives it,"), text);
        assertTrue(text.contains("""
                Litres an hour (l/h) are what runs over or beside the place of a weak point, or falls on it, on
                whatever lies outermost there; a dash where that is not reckoned, as in reveals, round pipes and at
                corners of the building. Where the rain goes, as drawn:
                  falls on the wall               60
                  leaves at the base              48  80%
                  drips off clear of the wall      0   0%
                  leaves past a side of the wall   0   0%
                  comes onto the frame            12  20%
                  stands trapped                   0   0%
                """), text);
    }

    @Test void everyColumnFitsWhateverStandsInIt() {
        CheckResult wide = Samples.widest();
        TerminalTable.lines("wide.json", wide).forEach(l -> assertTrue(l.length() <= TerminalTable.COLUMNS, l));
    }

    @Test void noLineIsWiderThan100() {
        mixed().lines().forEach(l -> assertTrue(l.length() <= TerminalTable.COLUMNS, l));
        TerminalTable.caution().forEach(l -> assertTrue(l.length() <= TerminalTable.COLUMNS, l));
    }

    @Test void theTotalAddsUp() {
        assertEquals("""
                Together, 2 elevations: 4 weak points: 2 with no defence, 1 one failure away, 1 safe but below what
                is asked; not checked, 2
                a.json  4 weak points: 2 with no defence, 1 one failure away, 1 safe
                        but below what is asked
                b.json  no weak point""",
                String.join("\n", TerminalTable.total(List.of("a.json", "b.json"), List.of(Samples.mixed(), Samples.sound()))));
    }

    @Test void namesCannotSteerTheTerminal() {
        String text = String.join("\n", TerminalTable.lines("\u001b[2Jsample\u202e.json", Samples.sound()));
        assertTrue(text.startsWith("Sample (\ufffd[2Jsample\ufffd.json)\n"), text);
    }
}
