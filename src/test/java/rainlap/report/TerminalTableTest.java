package rainlap.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

class TerminalTableTest {
    @Test void aMixedResultReadsSo() {
        assertEquals("""
                Sample (walls/sample.json)
                practice au-abcb-2022 (%s), stage wrap, 4 pieces

                no.  defences  rule                pieces  place               drawn         asked
                  1         0  reverse-lap         M1, M2  +1213, x 0 to 2000  137 reversed  150, or tape
                """.formatted(Samples.evidence().practice().title()), String.join("\n", first(5)) + "\n");
    }

    private static List<String> first(int n) {
        return TerminalTable.lines("walls/sample.json", Samples.mixed()).subList(0, n);
    }

    private static String mixed() {
        return String.join("\n", TerminalTable.lines("sample.json", Samples.mixed()));
    }

    @Test void belowEachRowStandWhoAsksAndTheRemedy() {
        String indent = " ".repeat(15);
        assertTrue(mixed().contains("\n" + indent + "remedy    Lift the upper sheet over the lower one by at least 150 mm, or cover the\n"
                + indent + "          joint with tape centred on it, pressed on along its whole length.\n"
                + indent + "asked by  common practice (no source); au-abcb-2022 is silent\n"), mixed());
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
