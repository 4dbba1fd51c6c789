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

    @Test void limitsGoWhereThePageWantsThem() {
        RulePage page = RulePage.of("# A\n\n<!-- limits -->\nold\n<!-- /limits -->\n\nend\n");
        assertEquals("# A\n\n```\nlap\n  common 150\n```\n\nend\n", page.withLimits(List.of("lap", "  common 150")).markdown());
        assertEquals("# A\n\nNo practice gives a number for this.\n\nend\n", page.withLimits(List.of()).markdown());
        assertEquals("# B\n", RulePage.of("# B\n").withLimits(List.of()).markdown());
        assertEquals("# B\n\n## What each practice asks\n\n```\nlap\n```\n", RulePage.of("# B\n").withLimits(List.of("lap")).markdown());
    }

    @Test void aRuleThatIsNotThereHasNoPage() {
        assertTrue(RulePage.find("no-such-rule").isEmpty());
        assertEquals(List.of(), RuleExamples.names("no-such-rule"));
    }
}
