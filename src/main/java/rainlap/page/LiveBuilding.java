package rainlap.page;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import rainlap.check.CheckResult;
import rainlap.drawing.Sheets;
import rainlap.drawing.TitleBlock;
import rainlap.file.Problem;

/**
 * The pages of a building that a server keeps up to date: an index, and one for each wall, drawn when it is asked for.
 *
 * @param title of the building
 * @param walls of the last state without faults; none as long as there was none
 * @param problems of the files as last read
 * @param drawing counts the states
 */
public record LiveBuilding(String title, List<Wall> walls, List<Problem> problems, int drawing) {
    private static final String HOME = "<a class=\"home\" href=\"../\">all elevations</a>";

    public LiveBuilding {
        walls = List.copyOf(walls);
        problems = List.copyOf(problems);
    }

    /** One wall, checked. */
    public record Wall(String file, String sha256, CheckResult result) {
        private HtmlPage.About about() {
            return new HtmlPage.About(file, TitleBlock.BLANK.withInputHash(sha256.substring(0, 8)), HOME);
        }
    }

    /** Before anything was read. */
    public static LiveBuilding empty(String file) {
        return new LiveBuilding(file, List.of(), List.of(), 0);
    }

    /** A new state with nothing wrong. */
    public LiveBuilding drawn(String name, List<Wall> all) {
        return new LiveBuilding(name, all, List.of(), drawing + 1);
    }

    /** The same state, now behind files with faults. */
    public LiveBuilding with(List<Problem> faults) {
        return new LiveBuilding(title, walls, faults, drawing);
    }

    /** The index, or a wall's page by its number from 1; empty where there is none. */
    public Optional<Live> find(String key) {
        if (key.isEmpty()) {
            return Optional.of(new Page(this, Optional.empty()));
        }
        int number = Integer.parseInt(key);
        return number >= 1 && number <= walls.size() ? Optional.of(new Page(this, Optional.of(walls.get(number - 1)))) : Optional.empty();
    }

    /** @param wall empty for the index */
    private record Page(LiveBuilding all, Optional<Wall> wall) implements Live {
        @Override
        public int drawing() {
            return all.drawing;
        }

        @Override
        public String html() {
            return wall.isPresent() ? wall(wall.get()) : index();
        }

        private String index() {
            List<IndexPage.Entry> entries = IntStream.range(0, all.walls.size())
                    .mapToObj(i -> new IndexPage.Entry(all.walls.get(i).file, i + 1 + "/", all.walls.get(i).result)).toList();
            return LivePage.shell(all.title, panel(), all.drawing, entries.isEmpty() ? Optional.empty() : Optional.of(IndexPage.body(all.title, entries)), false);
        }

        private String wall(Wall w) {
            String name = w.result.evidence().elevation().name();
            try {
                return LivePage.shell(name, panel(), all.drawing, Optional.of(HtmlPage.body(w.result, w.about())), true);
            } catch (Sheets.TooLarge e) {
                Problem large = new Problem(w.file, Optional.empty(), e.getMessage(), "draw it as several elevations", Optional.empty());
                return LivePage.shell(name, LivePage.panel(List.of(large), false, true), all.drawing, Optional.empty(), false);
            }
        }

        @Override
        public String panel() {
            return LivePage.panel(all.problems, !all.walls.isEmpty(), true);
        }

        @Override
        public String should(int number) {
            return wall.map(w -> HtmlPage.should(w.result, number)).orElse("");
        }
    }
}
