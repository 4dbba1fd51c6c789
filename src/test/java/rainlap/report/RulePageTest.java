package rainlap.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

class RulePageTest {
    @Test void marksGoAndLinesAreBroken() {
        RulePage page = RulePage.of("""
                # A **rule**

                Water runs `down` and
                [on](x.md).

                ## Why
                - first item that
                  goes on
                - second
                1. third

                | a | b |
                ```
                  keep   this
                ```
                end
                """);
        assertEquals(List.of("A rule", "======", "", "Water runs down and", "on.", "", "Why", "---", "- first item that",
                "  goes on", "- second", "1. third", "", "  | a | b |", "    keep   this", "end"), page.lines(20));
    }

    @Test void aRuleThatIsNotThereHasNoPage() {
        assertTrue(RulePage.find("no-such-rule").isEmpty());
        assertEquals(List.of(), RuleExamples.names("no-such-rule"));
    }
}
