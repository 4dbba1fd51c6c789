package rainlap.cli;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import rainlap.check.Rules;
import rainlap.rule.Finding;
import rainlap.rule.Outcome;
import rainlap.rule.Place;
import rainlap.rule.Rule;
import rainlap.rule.RuleInfo;
import rainlap.wall.Surface;

/** One run of a command in process, and what it left. */
record Run(ExitStatus status, String out, String err) {
    /** Two courses of foil, 150 lapped. */
    static final String SOUND = """
            { "rainlap": 1, "name": "Sound wall",
              "wall": { "outline": [[0, 0], [3000, 0], [3000, 2400], [0, 2400]], "edges": ["base", "free", "eave", "free"] },
              "pieces": [
                { "id": "M1", "material": "foil-membrane", "rect": [0, 0, 3000, 1350] },
                { "id": "M2", "material": "foil-membrane", "rect": [0, 1200, 3000, 1350] } ] }
            """;
    /** Two faults in one file. */
    static final String BAD = """
            { "rainlap": 1,
              "wall": { "outline": [[0, 0], [3000, 0], [3000, 2400], [0, 2400]], "edges": ["base", "free", "eave", "free"] },
              "pieces": [
                { "id": "M1", "material": "foil-membrame", "rect": [0, 0, 3000, 1350] },
                { "id": "M2", "material": "foil-membrane", "rekt": [0, 1200, 3000, 1350] } ] }
            """;

    /** A rule that finds one weak point on any wall. */
    static final Rule FINDING = new Rule() {
        private final RuleInfo info = RuleInfo.of("always-found", "found for a test", RuleInfo.Theme.LAPS);

        @Override
        public RuleInfo info() {
            return info;
        }

        @Override
        public Stream<Outcome> check(rainlap.rule.Evidence e) {
            Place where = Place.area(e.elevation(), Surface.WALL, List.of(e.elevation().outline().region()));
            return Stream.of(Finding.of(info, where, List.of("M1")).reads("this", "that").defences(0).says("It is so.", "Make it otherwise."));
        }
    };
    /** A rule that breaks down. */
    static final Rule CRASHING = new Rule() {
        @Override
        public RuleInfo info() {
            return RuleInfo.of("always-fails", "fails for a test", RuleInfo.Theme.LAPS);
        }

        @Override
        public Stream<Outcome> check(rainlap.rule.Evidence e) {
            throw new IllegalStateException("on purpose");
        }
    };

    static Run in(Path folder, String... args) {
        return in(folder, Rules.all(), args);
    }

    static Run in(Path folder, List<Rule> rules, String... args) {
        return in(folder, rules, "", Map.of(), args);
    }

    static Run in(Path folder, List<Rule> rules, String input, Map<String, String> environment, String... args) {
        ByteArrayOutputStream out = new ByteArrayOutputStream(), err = new ByteArrayOutputStream();
        Surroundings around = new Surroundings(new ByteArrayInputStream(input.getBytes(StandardCharsets.UTF_8)),
                new PrintStream(out, false, StandardCharsets.UTF_8), new PrintStream(err, false, StandardCharsets.UTF_8), folder,
                environment, rules, 2);
        ExitStatus status = Main.run(List.of(args), around);
        return new Run(status, out.toString(StandardCharsets.UTF_8), err.toString(StandardCharsets.UTF_8));
    }

    /** Writes a file and gives its path as text. */
    static String file(Path folder, String name, String content) {
        try {
            Path path = folder.resolve(name);
            Files.createDirectories(path.getParent());
            return Files.writeString(path, content).toString();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Everything below a folder, as paths relative to it, sorted. */
    static List<String> tree(Path folder) {
        try (Stream<Path> all = Files.walk(folder)) {
            return all.filter(Files::isRegularFile).map(p -> folder.relativize(p).toString().replace('\\', '/')).sorted().toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
