package rainlap.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import rainlap.check.BuildingChecker;
import rainlap.check.BuildingResult;
import rainlap.file.BuildingFile;
import rainlap.file.BuildingReading;
import rainlap.file.Problem;
import rainlap.file.Reading;
import rainlap.page.LiveBuilding;
import rainlap.report.TerminalTable;

/** A building's index and its walls' pages, brought up to date when its file or one of its elevations is saved. */
final class BuildingView {
    private final Surroundings around;
    private final JudgedBy judgedBy;
    private final String file;
    private final TreeSet<Path> watched = new TreeSet<>();
    private final FilesWatch watch;
    private LiveBuilding pages;
    private String said = "";

    BuildingView(Surroundings around, JudgedBy judgedBy, String file) {
        this.around = around;
        this.judgedBy = judgedBy;
        this.file = file;
        this.pages = LiveBuilding.empty(file);
        this.watched.add(around.folder().resolve(file));
        this.watch = new FilesWatch(List.copyOf(watched));
        read();
    }

    LiveBuilding pages() {
        return pages;
    }

    /** What there is to say of the last state, in a line. */
    String said() {
        return said;
    }

    /** Returns when something was saved and read again. */
    void await() throws InterruptedException {
        watch.await();
        read();
    }

    /** Whatever is saved while this reads is seen the next time. */
    private void read() {
        watch.look(List.copyOf(watched));
        BuildingReading reading = BuildingFile.read(around.folder().resolve(file));
        boolean more = watched.addAll(reading.elevations().stream().map(r -> around.folder().resolve(r.file())).toList());
        if (more) {
            watch.look(List.copyOf(watched));
        }
        if (!reading.problems().isEmpty()) {
            fail(reading.problems());
            return;
        }
        try {
            draw(reading);
        } catch (RuntimeException | StackOverflowError | OutOfMemoryError e) {
            fail(List.of(new Problem(file, Optional.empty(), "Rainlap failed: " + e.getClass().getSimpleName() + ", please report", "", Optional.empty())));
        }
    }

    private void draw(BuildingReading reading) {
        BuildingResult result = BuildingChecker.check(reading.building().orElseThrow(), judgedBy.stage(), judgedBy::practiceFor, around.rules(), around.processors());
        List<Reading> files = reading.elevations();
        pages = pages.drawn(result.building().name(), IntStream.range(0, files.size())
                .mapToObj(i -> new LiveBuilding.Wall(files.get(i).file(), files.get(i).sha256(), result.walls().get(i).result())).toList());
        said = "drawn: " + TerminalTable.counts(result.walls().stream().flatMap(w -> w.result().weakPoints().stream()).toList());
    }

    private void fail(List<Problem> problems) {
        around.complain(problems);
        around.err().flush();
        pages = pages.with(problems);
        said = "";
    }
}
