package rainlap.cli;

import java.io.InputStream;
import java.io.PrintStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import rainlap.check.Rules;
import rainlap.file.ElevationFile;
import rainlap.file.Problem;
import rainlap.file.Reading;
import rainlap.report.PlainText;
import rainlap.rule.Rule;

/**
 * What a run stands on.
 *
 * @param folder the current folder; relative paths start here
 * @param environment the process's environment variables
 * @param rules the rules that {@code check} runs
 * @param processors how many threads can run at once
 */
record Surroundings(InputStream in, PrintStream out, PrintStream err, Path folder, Map<String, String> environment,
        List<Rule> rules, int processors) {
    /** Set to anything but nothing, stack traces are printed. */
    static final String TRACE = "RAINLAP_TRACE";

    Surroundings {
        environment = Map.copyOf(environment);
        rules = List.copyOf(rules);
    }

    static Surroundings ofProcess(InputStream in, PrintStream out, PrintStream err) {
        return new Surroundings(in, out, err, Path.of(""), System.getenv(), Rules.all(), Runtime.getRuntime().availableProcessors());
    }

    boolean traces() {
        return !environment.getOrDefault(TRACE, "").isEmpty();
    }

    /** Reads an elevation; of one that is not there it is told which may be meant. */
    Reading read(String file) {
        Path path = folder.resolve(file);
        Reading reading = ElevationFile.read(path);
        if (Files.exists(path)) {
            return reading;
        }
        Problem missing = new Problem(file, Optional.empty(), "there is no such file", Suggestion.ofFile(path).orElse(""), Optional.empty());
        return new Reading(file, Optional.empty(), List.of(missing), "", reading.places());
    }

    /** Prints lines that end in a line feed on every machine. */
    void print(List<String> lines) {
        lines.forEach(this::print);
    }

    void print(String line) {
        out.print(line + "\n");
    }

    /** All that is wrong with files, one after the other. */
    void complain(List<Problem> problems) {
        problems.forEach(p -> p.lines().forEach(line -> complain(PlainText.of(line))));
    }

    /** After all that was printed, where both go to one place. */
    void complain(String line) {
        out.flush();
        err.print(line + "\n");
    }
}
