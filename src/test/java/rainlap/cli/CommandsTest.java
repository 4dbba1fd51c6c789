package rainlap.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import rainlap.check.Rules;
import rainlap.practice.Disagreements;
import rainlap.practice.Practices;
import rainlap.rule.Rule;

class CommandsTest {
    @TempDir
    Path folder;

    private Run run(String line) {
        return Run.in(folder, line.isEmpty() ? new String[0] : line.split(" "));
    }

    @ParameterizedTest
    @ValueSource(strings = {"--help", "-h", "--version", "help", "help check", "check --help", "explain --help", "practices --help",
        "materials --help", "schema --help", "practices", "materials", "schema", "schema elevation", "explain", "practices common",
        "materials foil-membrane"})
    void printsAndEndsWell(String line) {
        Run run = run(line);
        assertEquals(ExitStatus.DONE, run.status(), run.err());
        assertEquals("", run.err());
        assertFalse(run.out().isBlank());
        assertEquals(List.of(), Run.tree(folder));
    }

    @Test void everyStatusStandsInTheHelp() {
        String help = run("check --help").out();
        for (ExitStatus status : ExitStatus.values()) {
            assertTrue(help.matches("(?s).*\\n +" + status.code() + " +" + status.meaning().replaceAll("\\W", ".") + ".*"), help);
        }
    }

    @Test void statusesAreTheirOrder() {
        List<Integer> codes = new ArrayList<>();
        for (ExitStatus s : ExitStatus.values()) {
            codes.add(s.code());
        }
        assertEquals(List.of(0, 1, 2, 3, 4, 5), codes);
    }

    @ParameterizedTest
    @ValueSource(strings = {"--help", "check --help", "explain --help", "practices", "materials", "explain"})
    void noLineIsWiderThan100(String line) {
        run(line).out().lines().forEach(l -> assertTrue(l.length() <= 100, l));
    }

    @Test void nothingAtAllPrintsTheHelpAsAnError() {
        Run run = run("");
        assertEquals(ExitStatus.USAGE, run.status());
        assertEquals("", run.out());
        assertTrue(run.err().contains("Commands:"), run.err());
    }

    @ParameterizedTest
    @CsvSource({
        "chek hut.json, there is no command \"chek\", did you mean \"check\"?",
        "check hut.json --shet a.svg, there is no option \"--shet\" of check, did you mean \"--sheet\"?",
        "check hut.json --stage warp, there is no stage \"warp\", did you mean \"wrap\"?",
        "check hut.json --practice au-abcb-2202, there is no practice \"au-abcb-2202\", did you mean \"au-abcb-2022\"?",
        "practices comon, there is no practice \"comon\", did you mean \"common\"?",
        "materials foil-membrame, there is no material \"foil-membrame\", did you mean \"foil-membrane\"?",
        "schema findigs, there is no schema \"findigs\", did you mean \"findings\"?",
        "help explian, there is no command \"explian\", did you mean \"explain\"?",
        "schema elevation findings, there is no argument \"findings\" of schema, see: rainlap schema --help",
        "check, missing required parameter: 'FILE', see: rainlap check --help",
        "check hut.json --sheet, missing required parameter for option '--sheet' (PLACE), see: rainlap check --help",
        "check hut.json --stage wrap --stage wrap, option '--stage' (STAGE) should be specified only once, see: rainlap check --help",
        "check hut.json --dpi many, invalid value for option '--dpi', see: rainlap check --help",
        "check hut.json --dpi 300, --dpi is for a PNG, add --sheet out.png",
        "check hut.json --sheet a.png --dpi 29, --dpi 29 is out of range, choose 30 to 1200",
        "check hut.json --sheet a.png --dpi 1201, --dpi 1201 is out of range, choose 30 to 1200",
        "check hut.json --sheet a.svg --no-sheet, exclude each other, leave one of them out",
        "check hut.json --date 31.3.2026, \"31.3.2026\" is no date, like 2026-03-31",
        "check hut.json --date 2026-02-30, \"2026-02-30\" is no date, like 2026-03-31",
    })
    void wrongUsageSaysWhatAndWhatWouldBeRight(String line, String what, String hint) {
        Run.file(folder, "hut.json", Run.SOUND);
        Run run = run(line);
        assertEquals(ExitStatus.USAGE, run.status(), run.out());
        assertTrue(run.err().contains(what), run.err());
        assertTrue(run.err().contains(hint), run.err());
        assertEquals("", run.out());
        assertFalse(run.err().contains("\tat "), run.err());
        assertEquals(List.of("hut.json"), Run.tree(folder));
    }

    @Test void anArgumentThatBeginsWithAnAtSignIsJustAName() {
        Run.file(folder, "@hut.json", Run.SOUND);
        assertEquals(ExitStatus.DONE, run("check @hut.json --no-sheet").status());
    }

    @Test void practicesStandInTheOrderAskedFor() {
        String out = run("practices us-irc-2015 common").out();
        assertTrue(out.indexOf("us-irc-2015:") > 0 && out.indexOf("us-irc-2015:") < out.indexOf("common: "), out);
        assertFalse(out.contains("au-abcb"), out);
        String all = run("practices").out();
        Practices.ids().forEach(id -> assertTrue(all.contains("\n" + id + ": "), id));
    }

    @Test void practicesAsJsonHoldWhatTheTableHolds() throws IOException {
        JsonNode json = new ObjectMapper().readTree(run("practices --json").out());
        assertEquals(Practices.ids(), StreamSupport.stream(json.get("practices").spliterator(), false).map(p -> p.get("id").asText()).toList());
        JsonNode lap = json.at("/limits/0");
        assertEquals("course-lap", lap.get("limit").asText());
        JsonNode british = StreamSupport.stream(lap.get("asked").spliterator(), false).filter(a -> a.get("practice").asText().startsWith("uk")).findFirst().orElseThrow();
        assertEquals(100, british.get("value").asDouble());
        assertEquals("NHBC Standards", british.at("/source/document").asText());
        assertEquals(Disagreements.all().size(), json.get("disagreements").size());
    }

    @Test void aPracticeOfOnesOwnJudges() {
        Run.file(folder, "hut.json", Run.SOUND);
        Run.file(folder, "crew.json", "{ \"rainlap\": 1, \"practice\": \"crew\", \"base\": \"common\", \"limits\": [ { \"limit\": \"course-lap\", \"value\": 5000 } ] }");
        assertTrue(run("practices crew.json").out().contains("5000"));
        assertTrue(run("check hut.json --no-sheet --practice crew.json").out().contains("practice crew"));
        Run.file(folder, "bad.json", "{ \"rainlap\": 1, \"practice\": \"crew\", \"base\": \"commun\", \"limits\": [] }");
        Run run = run("check hut.json --no-sheet --practice bad.json");
        assertEquals(ExitStatus.BAD_INPUT, run.status());
        assertTrue(run.err().contains("bad.json:1:") && run.err().contains("common"), run.err());
        assertEquals(ExitStatus.BAD_INPUT, run("practices bad.json").status());
    }

    @Test void aSingleMaterialIsPrintedAlone() {
        String out = run("materials foil-membrane").out();
        assertTrue(out.contains("foil-membrane"), out);
        assertFalse(out.contains("batten"), out);
    }

    @Test void theSchemaIsTheOneInTheProgram() {
        assertEquals(SchemaCommand.text("elevation"), run("schema").out());
        assertEquals(SchemaCommand.text("elevation"), run("schema elevation").out());
    }

    @Test void everyRuleIsListedAndExplained() {
        String list = run("explain").out();
        for (Rule rule : Rules.all()) {
            String id = rule.info().id();
            assertTrue(list.contains("  " + id + " "), id);
            Run page = run("explain " + id);
            assertEquals(ExitStatus.DONE, page.status(), page.err());
            page.out().lines().filter(l -> !l.startsWith("  ")).forEach(l -> assertTrue(l.length() <= 100, id + ": " + l));
        }
    }

    @Test void aRulesExamplesAreDrawnIntoAFolderThatIsThere() {
        String id = Rules.all().get(0).info().id();
        assertEquals(ExitStatus.USAGE, run("explain " + id + " --drawings " + folder + "/nowhere").status());
        assertEquals(ExitStatus.USAGE, run("explain --drawings " + folder).status());
        assertEquals(List.of(), Run.tree(folder));
        Run run = run("explain " + id + " --drawings " + folder);
        assertEquals(ExitStatus.DONE, run.status(), run.err());
        for (String example : rainlap.report.RuleExamples.names(id)) {
            assertTrue(Run.tree(folder).contains(id + "-" + example.replace(".json", ".svg")), example);
        }
        assertTrue(Run.tree(folder).size() >= 2);
    }

    @Test void anUnknownRuleIsRefused() {
        Run run = run("explain revers-lap");
        assertEquals(ExitStatus.USAGE, run.status());
        assertTrue(run.err().contains("there is no rule \"revers-lap\""), run.err());
    }

    @Test void ourOwnFailureIsOneLineWithoutATrace() {
        Run.file(folder, "hut.json", Run.SOUND);
        Run run = Run.in(folder, List.of(new Nameless()), "check", "hut.json", "--no-sheet");
        assertEquals(ExitStatus.CRASHED, run.status());
        assertEquals("Rainlap failed: UnsupportedOperationException: no name, please report\n", run.err());
        Run traced = Run.in(folder, List.of(new Nameless()), "", Map.of(Surroundings.TRACE, "1"), "check", "hut.json", "--no-sheet");
        assertEquals(ExitStatus.CRASHED, traced.status());
        assertTrue(traced.err().contains("\tat rainlap."), traced.err());
    }

    /** A rule that fails outside the runner's containment. */
    private static final class Nameless implements Rule {
        @Override
        public rainlap.rule.RuleInfo info() {
            throw new UnsupportedOperationException("no name");
        }

        @Override
        public java.util.stream.Stream<rainlap.rule.Outcome> check(rainlap.rule.Evidence e) {
            return java.util.stream.Stream.empty();
        }
    }
}
