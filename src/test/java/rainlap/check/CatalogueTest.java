package rainlap.check;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.lang.reflect.Modifier;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.function.Executable;
import rainlap.practice.Limit;
import rainlap.practice.LimitValue;
import rainlap.practice.Practices;
import rainlap.rule.Finding;
import rainlap.rule.Rule;
import rainlap.rule.RuleInfo;

/** What holds for every rule of the catalogue: a new rule that fails here is told what it still needs. */
class CatalogueTest {
    private static final List<String> HEADINGS =
            List.of("What", "Why", "Limit", "Source", "Assumptions", "Not covered", "How to mend");
    private static final Pattern EXAMPLE = Pattern.compile("(good|bad)-([0-9]+)(-[a-z0-9]+)+\\.json");

    @Test
    void idsArePlainWordsUniqueAndSorted() {
        List<String> ids = Rules.all().stream().map(r -> r.info().id()).toList();
        assertEquals(List.copyOf(new TreeSet<>(ids)), ids, "the list in Rules is sorted by id, and no id comes twice");
        assertAll(ids.stream().map(id -> () -> assertTrue(id.matches("[a-z]+(-[a-z]+)*"),
                id + ": an id is plain lower-case words with hyphens that name the defect")));
    }

    @Test
    void everyRuleClassIsInTheList() throws Exception {
        Set<String> listed = Rules.all().stream().map(r -> r.getClass().getName()).collect(Collectors.toCollection(TreeSet::new));
        Set<String> written = new TreeSet<>();
        Path classes = Path.of(Rule.class.getProtectionDomain().getCodeSource().getLocation().toURI());
        try (Stream<Path> files = Files.walk(classes.resolve("rainlap/rule"))) {
            for (Path f : files.filter(p -> p.toString().endsWith(".class") && !p.endsWith("package-info.class")).toList()) {
                String name = classes.relativize(f).toString().replace(f.getFileSystem().getSeparator(), ".").replaceAll("\\.class$", "");
                Class<?> c = Class.forName(name);
                if (Rule.class.isAssignableFrom(c) && !c.isInterface() && !Modifier.isAbstract(c.getModifiers())) {
                    written.add(name);
                }
            }
        }
        assertEquals(written, listed, "each rule is one line in rainlap.check.Rules");
    }

    @Test
    void titlesAreShortAndLowerCase() {
        assertAll(Rules.all().stream().map(Rule::info).map(i -> () -> assertTrue(
                i.title().equals(i.title().strip()) && Character.isLowerCase(i.title().charAt(0)) && i.title().length() <= 32
                        && !i.title().endsWith("."),
                i.id() + ": the title \"" + i.title() + "\" is a label on the drawing: a few words, lower case, no full stop")));
    }

    @TestFactory
    Stream<DynamicTest> everyRuleHasItsPage() {
        return each(rule -> {
            Path page = Example.RULES.resolve(rule.info().id()).resolve("page.md");
            assertTrue(Files.exists(page), () -> "write " + page + " with the headings " + HEADINGS);
            String text = Files.readString(page, StandardCharsets.UTF_8);
            List<String> headings = text.lines().filter(l -> l.startsWith("## ")).map(l -> l.substring(3)).toList();
            assertEquals(HEADINGS, headings, () -> page + ": the headings of a page, in this order");
            assertTrue(text.startsWith("# "), () -> page + " begins with its title");
            assertAll(Stream.of(text.split("(?m)^## ")).skip(1).map(s -> () -> assertTrue(s.substring(s.indexOf('\n')).strip().length() > 20,
                    page + ": nothing is said under " + s.lines().findFirst().orElse(""))));
            assertTrue(text.lines().noneMatch(l -> l.endsWith(" ") || l.contains("\t")), () -> page + ": trailing space or tab");
            assertEquals(List.of(), named(text).stream().filter(id -> Rules.find(id).isEmpty() && Practices.find(id).isEmpty() && Limit.find(id).isEmpty()).toList(),
                    () -> page + " names rules, practices or limits that do not exist");
        });
    }

    /** Ids in code marks. */
    private static List<String> named(String text) {
        Matcher m = Pattern.compile("`([a-z]+(?:-[a-z]+)+)`").matcher(text);
        List<String> out = new ArrayList<>();
        while (m.find()) {
            out.add(m.group(1));
        }
        return out;
    }

    @TestFactory
    Stream<DynamicTest> everyRuleHasExamplesInOrder() {
        return each(rule -> {
            String id = rule.info().id();
            Map<String, List<Integer>> numbers = new HashMap<>(Map.of("good", new ArrayList<>(), "bad", new ArrayList<>()));
            for (Example x : Example.of(id)) {
                Matcher m = EXAMPLE.matcher(x.name());
                assertTrue(m.matches(), x.file() + ": name it good-1-some-words.json or bad-1-some-words.json");
                numbers.get(m.group(1)).add(Integer.parseInt(m.group(2)));
            }
            numbers.forEach((kind, found) -> {
                assertTrue(!found.isEmpty(), id + ": draw a " + kind + "-1-… example: the textbook case");
                assertEquals(IntStream.rangeClosed(1, found.size()).boxed().toList(), found.stream().sorted().toList(),
                        id + ": the " + kind + " examples are numbered from 1 without holes");
            });
        });
    }

    @TestFactory
    Stream<DynamicTest> everyExampleGivesExactlyWhatItExpects() {
        return Example.all().stream().map(x -> DynamicTest.dynamicTest(x.rule() + "/" + x.name(), () -> {
            CheckResult result = x.check();
            assertEquals(List.of(), result.crashes());
            List<String> expected = x.elevation().expected().stream().map(e -> key(e.rule(), e.pieces())).sorted().toList();
            List<String> found = result.weakPoints().stream().map(w -> key(w.finding().rule(), w.finding().pieces())).sorted().toList();
            assertEquals(String.join("\n", expected), String.join("\n", found),
                    () -> x.file() + " under " + x.practice() + "; found were:\n" + described(result));
            assertEquals(x.isGood(), expected.isEmpty(), x.file() + ": a good example is sound, a bad one is not");
            assertTrue(x.isGood() || expected.stream().anyMatch(k -> k.startsWith(x.rule() + " ")),
                    x.file() + " does not show its own rule broken");
        }));
    }

    private static String key(String rule, List<String> pieces) {
        return rule + " " + new TreeSet<>(pieces);
    }

    private static String described(CheckResult r) {
        return r.weakPoints().stream().map(w -> "  " + w.finding().rule() + " " + w.finding().pieces() + " at "
                + w.finding().where().inWords() + ": " + w.finding().says()).collect(Collectors.joining("\n"));
    }

    @Test
    void noTwoExamplesAreAlike() {
        Map<String, Path> seen = new HashMap<>();
        List<Executable> checks = new ArrayList<>();
        for (Example x : Example.all()) {
            String drawn = x.practice() + " " + x.elevation().exposure() + x.elevation().outline() + x.elevation().openings() + x.elevation().penetrations()
                    + x.elevation().pieces().stream().map(p -> p.id() + p.material() + p.shapes() + p.under() + p.bond() + p.cuts()).toList();
            Path other = seen.put(drawn, x.file());
            checks.add(() -> assertTrue(other == null, () -> x.file() + " draws the same as " + other));
        }
        assertAll(checks);
    }

    @TestFactory
    Stream<DynamicTest> everyLimitIsShownOnBothSides() {
        return each(rule -> {
            List<Example> examples = Example.of(rule.info().id());
            assertAll(rule.info().limits().stream().flatMap(limit -> Stream.<Executable>of(
                    () -> assertTrue(examples.stream().anyMatch(x -> isJustEnough(x, rule, limit)), () -> rule.info().id()
                            + ": draw a good example that has exactly what a practice asks for " + limit.id()
                            + ", so that it breaks when the limit rises by no more than 2 mm (a factor by 5 %)"),
                    () -> assertTrue(examples.stream().anyMatch(x -> isJustShort(x, rule, limit)), () -> rule.info().id()
                            + ": draw a bad example that misses " + limit.id()
                            + " by no more than 2 mm (a factor by 5 %), so that it is sound when the limit falls by that"))));
        });
    }

    private static boolean isJustEnough(Example x, Rule rule, Limit limit) {
        LimitValue v = x.practice().get(limit);
        return x.isGood() && !v.isNever() && x.findWith(rule, limit, v.value() + near(v)).size() > x.find(rule).size();
    }

    /** How near a limit is near: some rules leave out what is under 1 mm. */
    private static double near(LimitValue v) {
        return v.limit().isLength() ? 2 : 0.05 * v.value();
    }

    /** Where a practice says "never", any bad example will do that is sound when a hundredth of a millimetre is enough. */
    private static boolean isJustShort(Example x, Rule rule, Limit limit) {
        LimitValue v = x.practice().get(limit);
        double lower = v.isNever() ? 0.01 : v.value() - near(v);
        return !x.isGood() && x.findWith(rule, limit, lower).size() < x.find(rule).size();
    }

    @TestFactory
    Stream<DynamicTest> findingsSpeakPlainly() {
        return Example.all().stream().filter(x -> !x.isGood()).map(x -> DynamicTest.dynamicTest(x.rule() + "/" + x.name(),
                () -> assertAll(x.check().weakPoints().stream().map(WeakPoint::finding).flatMap(CatalogueTest::wording))));
    }

    private static Stream<Executable> wording(Finding f) {
        return Stream.of(
                () -> assertTrue(f.says().matches("(?s)\\S.*\\S\\.") && f.remedy().matches("(?s)\\S.*\\S\\."),
                        () -> f.rule() + ": sentences end with a full stop and no space: [" + f.says() + "] [" + f.remedy() + "]"),
                () -> assertTrue(!(f.says() + f.remedy() + f.drawn() + f.asked()).matches("(?s).*(  |\\n|null|\\{|\\}|%| ,| \\.).*"),
                        () -> f.rule() + ": stray marks in [" + f.says() + "] [" + f.remedy() + "]"),
                () -> assertTrue(!f.drawn().isBlank() && !f.asked().isBlank() && f.drawn().length() <= 60,
                        () -> f.rule() + ": the table needs what is drawn and what is asked, in a few words: [" + f.drawn() + "]"),
                () -> assertTrue(f.remedy().chars().anyMatch(Character::isDigit) || info(f).limits().isEmpty(),
                        () -> f.rule() + ": a remedy gives dimensions: " + f.remedy()));
    }

    private static RuleInfo info(Finding f) {
        return Rules.find(f.rule()).orElseThrow().info();
    }

    private interface Check {
        void on(Rule rule) throws IOException;
    }

    private static Stream<DynamicTest> each(Check check) {
        return Rules.all().stream().map(r -> DynamicTest.dynamicTest(r.info().id(), () -> check.on(r)));
    }
}
