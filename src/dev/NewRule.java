import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * Begins a rule: {@code java src/dev/NewRule.java short-return opening} writes its class, its page, a good and a bad example and its line in
 * the list, from the project's top folder. The tests of the catalogue then fail and say what is still to be done. Themes: lap, tape, opening,
 * penetration, edge, cavity, face, water, material, transport. Overwrites nothing.
 */
public final class NewRule {
    private static final Path LIST = Path.of("src/main/java/rainlap/check/Rules.java");
    private static final Path PAGES = Path.of("src/main/resources/rules");
    private static final TreeMap<String, String> THEMES = new TreeMap<>(java.util.Map.of(
            "lap", "LAPS", "tape", "TAPE", "opening", "OPENINGS", "penetration", "PENETRATIONS", "edge", "EDGES", "cavity", "CAVITY", "face", "FACE", "water", "WATER",
            "material", "MATERIALS", "transport", "TRANSPORT"));

    private final String id;
    private final String theme;
    private final String name;

    private NewRule(String id, String theme) {
        this.id = id;
        this.theme = theme;
        this.name = Arrays.stream(id.split("-")).map(w -> w.substring(0, 1).toUpperCase(java.util.Locale.ROOT) + w.substring(1))
                .collect(Collectors.joining());
    }

    public static void main(String[] args) throws IOException {
        if (args.length != 2 || !args[0].matches("[a-z]+(-[a-z]+)*") || !THEMES.containsKey(args[1]) || !Files.exists(LIST)) {
            System.err.println("java src/dev/NewRule.java ID THEME, in the project's top folder: an id in plain lower-case words with hyphens "
                    + "that name the defect, and one of " + THEMES.keySet());
            System.exit(2);
        }
        new NewRule(args[0], args[1]).write();
    }

    private void write() throws IOException {
        Path source = Path.of("src/main/java/rainlap/rule", theme, name + ".java");
        Path folder = PAGES.resolve(id);
        if (Files.exists(source) || Files.exists(folder)) {
            System.err.println(id + " is there already: " + (Files.exists(source) ? source : folder));
            System.exit(2);
        }
        String list = withLine(Files.readString(LIST, StandardCharsets.UTF_8));
        put(source, source());
        put(folder.resolve("page.md"), page());
        put(folder.resolve("good-1-as-it-should-be.json"), example("As it should be", 1200, "[]"));
        put(folder.resolve("bad-1-as-it-should-not-be.json"),
                example("As it should not be", 1250, "[ { \"rule\": \"" + id + "\", \"pieces\": [\"M1\"] } ]"));
        put(LIST, list);
        System.out.println("Now the page, then examples on both sides of each limit, then the code; mvn -q test -Dtest='CatalogueTest,RulePagesTest'");
    }

    private static void put(Path file, String text) throws IOException {
        Files.createDirectories(file.getParent());
        Files.writeString(file, text, StandardCharsets.UTF_8);
        System.out.println(file);
    }

    /** The list with this rule in its place: imports by name, rules by id. */
    private String withLine(String list) throws IOException {
        List<String> imports = new ArrayList<>(List.of("import rainlap.rule." + theme + "." + name + ";"));
        Matcher m = Pattern.compile("import rainlap\\.rule\\.\\w+\\.(\\w+);").matcher(list);
        TreeMap<String, String> lines = new TreeMap<>();
        lines.put(id, "            new " + name + "()");
        while (m.find()) {
            imports.add(m.group());
            lines.put(idOf(m.group()), "            new " + m.group(1) + "()");
        }
        String all = String.join("\n", imports.stream().sorted().toList());
        String between = Pattern.quote("import rainlap.rule.Rule;\n") + "(import rainlap\\.rule\\.\\w+\\.\\w+;\n)*";
        return list.replaceFirst(between, "import rainlap.rule.Rule;\n" + all + "\n")
                .replaceFirst("(?s)List\\.of\\(\n.*?\n    \\);", Matcher.quoteReplacement(
                        "List.of(\n" + String.join(",\n", lines.values()) + "\n    );"));
    }

    private static String idOf(String line) throws IOException {
        Path source = Path.of("src/main/java", line.replace("import ", "").replace(";", "").replace('.', '/') + ".java");
        Matcher m = Pattern.compile("RuleInfo\\.of\\(\\s*\"([^\"]+)\"").matcher(Files.readString(source, StandardCharsets.UTF_8));
        if (!m.find()) {
            throw new IllegalStateException(source + " states no RuleInfo.of(\"…\")");
        }
        return m.group(1);
    }

    private String source() {
        return """
                package rainlap.rule.%s;

                import java.util.stream.Stream;
                import rainlap.rule.Evidence;
                import rainlap.rule.Outcome;
                import rainlap.rule.Rule;
                import rainlap.rule.RuleInfo;

                /** One sentence: what is wrong where this rule is broken. */
                public final class %s implements Rule {
                    static final RuleInfo INFO = RuleInfo.of("%s", "%s", RuleInfo.Theme.%s);

                    @Override
                    public RuleInfo info() {
                        return INFO;
                    }

                    @Override
                    public Stream<Outcome> check(Evidence e) {
                        return Stream.of(new Outcome.DoesNotApply("this rule is not written yet: one outcome for each place it looks at"));
                    }
                }
                """.formatted(theme, name, id, id.replace('-', ' '), THEMES.get(theme));
    }

    private String page() {
        String title = id.substring(0, 1).toUpperCase(java.util.Locale.ROOT) + id.substring(1).replace('-', ' ');
        return "# " + title + "\n\n## What\n\n## Why\n\n## Limit\n\n<!-- limits -->\n<!-- /limits -->\n\n## Source\n\n## Assumptions\n\n"
                + "## Not covered\n\n## How to mend\n";
    }

    private static String example(String title, int height, String expect) {
        return """
                {
                  // What this shows, in a sentence.
                  "rainlap": 1,
                  "name": "%s",
                  "practice": "common",
                  "wall": { "outline": [[0, 0], [1200, 0], [1200, 1200], [0, 1200]], "edges": ["free", "free", "free", "free"] },
                  "pieces": [
                    { "id": "M1", "material": "foil-membrane", "rect": [0, 0, 1200, %d] }
                  ],
                  "expect": %s
                }
                """.formatted(title, height, expect);
    }
}
