package rainlap.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import rainlap.check.CheckResult;
import rainlap.check.Checker;
import rainlap.drawing.Sheets;
import rainlap.drawing.TitleBlock;
import rainlap.file.BuildingFile;
import rainlap.file.ElevationFile;
import rainlap.file.Problem;
import rainlap.file.Reading;
import rainlap.page.HtmlPage;
import rainlap.page.Live;
import rainlap.page.LivePage;
import rainlap.report.PlainText;
import rainlap.report.TerminalTable;
import rainlap.wall.Elevation;

@Command(name = "view", sortOptions = false, description = {
        "Shows an elevation or a building in a browser and draws it anew whenever a file of it is saved: the page of check --sheet NAME.html, served to this machine"
                + " alone; of a building an index, worst first, that leads to each wall's.",
        "",
        "Faults in a file are shown in the page with line and proposal, above the last good drawing. Ctrl-C stops it. Nothing is written."
                + " A practice of your own is read once."},
        parameterListHeading = "%n", optionListHeading = "%nOptions:%n", footerHeading = "%nExamples:%n", footer = {
            "  rainlap view elevations/estuary-hut-north.json",
            "  rainlap view hut.json --stage finished --port 8420",
            "  rainlap view elevations/buildings/estuary-hut.json"})
final class ViewCommand implements RainlapCommand {
    private static final int MOST_PORTS = 65_535;
    private final Surroundings around;

    @Parameters(paramLabel = "FILE", description = "An elevation file, or a building file.")
    String file;

    @Option(names = "--port", paramLabel = "N", description = "The port to serve at, 1 to 65535. Default: any that is free; the address is printed.")
    Integer port;

    @Mixin
    JudgedBy judgedBy = new JudgedBy();

    @Option(names = {"-h", "--help"}, usageHelp = true, description = "Print this help.")
    boolean help;

    ViewCommand(Surroundings around) {
        this.around = around;
    }

    @Override
    public ExitStatus run() {
        Path path = around.folder().resolve(file);
        check();
        List<Problem> problems = new ArrayList<>(judgedBy.readPractice(around));
        if (!Files.isRegularFile(path)) {
            problems.addAll(around.read(file).problems());
        }
        if (!problems.isEmpty()) {
            complain(problems);
            return ExitStatus.BAD_INPUT;
        }
        try {
            if (BuildingFile.isOne(path)) {
                BuildingView building = new BuildingView(around, judgedBy, file);
                tell(building.said());
                serve(building.pages()::find, () -> {
                    building.await();
                    tell(building.said());
                    return building.pages()::find;
                });
            } else {
                serveOne(path);
            }
        } catch (IOException e) {
            throw Refusal.usage("the page cannot be served" + (port == null ? "" : " at port " + port) + ": " + e.getMessage(), "choose another --port, or none");
        }
        return ExitStatus.DONE;
    }

    private void serveOne(Path path) throws IOException {
        try (FileWatch watch = new FileWatch(path)) {
            LivePage[] page = {drawn(LivePage.empty(file), watch)};
            serve(alone(page[0]), () -> {
                watch.await();
                page[0] = drawn(page[0], watch);
                return alone(page[0]);
            });
        }
    }

    private static Function<String, Optional<Live>> alone(LivePage page) {
        return key -> key.isEmpty() ? Optional.of(page) : Optional.empty();
    }

    private void tell(String line) {
        if (!line.isEmpty()) {
            say(line);
        }
    }

    private void check() {
        judgedBy.stage();
        if (port != null && (port < 1 || port > MOST_PORTS)) {
            throw Refusal.usage("--port " + port + " is out of range", "choose 1 to " + MOST_PORTS);
        }
    }

    /** The next state of what is served, waited for. */
    private interface Next {
        Function<String, Optional<Live>> await() throws InterruptedException;
    }

    /** Until this thread is interrupted; Ctrl-C ends the process, which closes the server first. */
    private void serve(Function<String, Optional<Live>> first, Next next) throws IOException {
        try (PageServer server = new PageServer(port == null ? 0 : port, first)) {
            Thread closing = new Thread(() -> close(server));
            Runtime.getRuntime().addShutdownHook(closing);
            say("view: " + server.address());
            say("Ctrl-C stops it");
            try {
                while (true) {
                    server.show(next.await());
                }
            } catch (InterruptedException e) {
                Runtime.getRuntime().removeShutdownHook(closing);
                close(server);
            }
        }
    }

    private void close(PageServer server) {
        server.close();
        say("stopped");
    }

    private void say(String line) {
        around.print(PlainText.of(line));
        around.out().flush();
    }

    private LivePage drawn(LivePage before, FileWatch watch) {
        if (!watch.gone().isEmpty()) {
            return failed(before, watch.gone(), "put it back, and it is drawn again");
        }
        Reading reading = ElevationFile.read(file, watch.bytes());
        if (!reading.problems().isEmpty()) {
            complain(reading.problems());
            return before.with(reading.problems());
        }
        try {
            return drawn(before, reading.elevation().orElseThrow(), reading.sha256());
        } catch (Sheets.TooLarge e) {
            return failed(before, e.getMessage(), Refusal.SEVERAL);
        } catch (RuntimeException | StackOverflowError | OutOfMemoryError e) {
            return failed(before, "Rainlap failed: " + e.getClass().getSimpleName() + ", please report", "");
        }
    }

    private LivePage drawn(LivePage before, Elevation elevation, String sha256) {
        CheckResult result = Checker.check(elevation, judgedBy.stage(), judgedBy.practiceFor(elevation), around.rules(), around.processors());
        LivePage page = before.drawn(result, new HtmlPage.About(file, TitleBlock.BLANK.withInputHash(sha256.substring(0, 8)), ""));
        say("drawn: " + TerminalTable.counts(result.weakPoints()));
        return page;
    }

    private LivePage failed(LivePage before, String what, String proposal) {
        List<Problem> problems = List.of(new Problem(file, Optional.empty(), what, proposal, Optional.empty()));
        complain(problems);
        return before.with(problems);
    }

    private void complain(List<Problem> problems) {
        around.complain(problems);
        around.err().flush();
    }
}
