package rainlap.cli;

import java.io.InputStream;
import java.io.PrintStream;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import rainlap.check.Rules;
import rainlap.file.Problem;
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
