package rainlap.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import rainlap.practice.Limit;
import rainlap.practice.LimitValue;
import rainlap.practice.Practice;
import rainlap.practice.Practices;
import rainlap.rule.Rule;
import rainlap.source.Known;
import rainlap.source.Source;

/**
 * The figures on a rule's page are those of the practices: the block between the two marks under "Limit" is written anew from the data, and
 * the test fails when that changed the page. Run it again, look at the change, commit.
 */
class RulePagesTest {
    private static final String FROM = "<!-- limits -->\n", TO = "<!-- /limits -->\n";

    @TestFactory
    Stream<DynamicTest> figuresOnThePagesAreThoseOfThePractices() {
        return Rules.all().stream().map(r -> DynamicTest.dynamicTest(r.info().id(), () -> refresh(r)));
    }

    private static void refresh(Rule rule) throws IOException {
        Path page = Example.RULES.resolve(rule.info().id()).resolve("page.md");
        String old = Files.readString(page, StandardCharsets.UTF_8);
        int from = old.indexOf(FROM), to = old.indexOf(TO);
        if (rule.info().limits().isEmpty() && from < 0) {
            return;
        }
        assertTrue(from > old.indexOf("\n## Limit\n") && from < to && to < old.indexOf("\n## Source\n"),
                () -> page + ": put the two lines " + FROM.strip() + " and " + TO.strip() + " at the end of the section \"Limit\"");
        String fresh = old.substring(0, from) + FROM + block(rule) + old.substring(to);
        if (!fresh.equals(old)) {
            Files.writeString(page, fresh, StandardCharsets.UTF_8);
        }
        assertEquals(old, fresh, () -> page + " was written anew: look at the change and run the tests again");
    }

    private static String block(Rule rule) {
        return rule.info().limits().stream().map(RulePagesTest::table).collect(Collectors.joining("\n"));
    }

    private static String table(Limit limit) {
        List<Practice> speak = Practices.all().stream().filter(p -> !p.isSilentOn(limit)).toList();
        List<Practice> silent = Practices.all().stream().filter(p -> p.isSilentOn(limit)).toList();
        String rows = speak.stream().map(p -> row(p, p.get(limit))).collect(Collectors.joining());
        return "\n**" + limit.plainName().substring(0, 1).toUpperCase(java.util.Locale.ROOT) + limit.plainName().substring(1) + ".** "
                + limit.meaning() + "\n\n| practice | asks | who says so | how well known | note |\n|---|---|---|---|---|\n" + rows
                + (silent.isEmpty() ? "" : "\nSilent, so that `common` speaks: "
                        + silent.stream().map(p -> "`" + p.id() + "`").collect(Collectors.joining(", ")) + ".\n") + "\n";
    }

    private static String row(Practice p, LimitValue v) {
        return "| `" + p.id() + "` | " + v.text() + " | " + who(v.source()) + " | " + v.source().known().text() + " | " + v.note() + " |\n";
    }

    private static String who(Source s) {
        if (s.known() == Known.COMMON_PRACTICE) {
            return "no document";
        }
        return Stream.of(s.edition().isBlank() ? s.document() : s.document() + " " + s.edition(), s.clause()).filter(t -> !t.isBlank())
                .collect(Collectors.joining(", "));
    }
}
