package rainlap.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import rainlap.Shipped;
import rainlap.check.CheckResult;
import rainlap.paper.Clip;
import rainlap.paper.Group;
import rainlap.paper.Mark;
import rainlap.paper.Sheet;
import rainlap.paper.SheetCheck;
import rainlap.paper.SheetSize;
import rainlap.paper.Text;

/** Several elevations as one set of sheets with an index. */
class SheetSetTest {
    private static final Pattern SHEETS = Pattern.compile("1:\\d+, sheets? (\\d+)(?: to (\\d+))?");

    private static SheetSet.Wall wall(String name, CheckResult result) {
        return new SheetSet.Wall(name, "folder-of-sheets/" + name + ".svg", result, Drawn.of(result));
    }

    private static List<String> texts(List<Mark> marks) {
        List<String> out = new ArrayList<>();
        for (Mark m : marks) {
            if (m instanceof Group g) {
                out.addAll(texts(g.marks()));
            } else if (m instanceof Clip c) {
                out.addAll(texts(c.marks()));
            } else if (m instanceof Text t) {
                out.add(t.text());
            }
        }
        return out;
    }

    private static List<String> texts(Sheet sheet, String group) {
        return sheet.marks().stream().filter(m -> m instanceof Group g && g.id().isPresent() && g.id().get().equals(group)).flatMap(m -> texts(((Group) m).marks()).stream()).toList();
    }

    /** The texts of each wall on an index, in order. */
    private static List<List<String>> cells(Sheet index) {
        return IntStream.iterate(1, i -> i + 1).mapToObj(i -> texts(index, "wall-" + i)).takeWhile(l -> !l.isEmpty()).toList();
    }

    @Test void theIndexOfEveryShippedWallIsSoundAndInOrder() {
        List<Shipped> shipped = Shipped.all();
        SheetSet set = SheetSet.of("All walls", TitleBlock.BLANK, shipped.stream().map(s -> wall(s.file(), s.result())).toList());
        assertEquals(1, set.index().size());
        assertEquals(List.of(), SheetCheck.of(set.index().get(0)));
        List<List<String>> cells = cells(set.index().get(0));
        assertEquals(shipped.size(), cells.size());
        List<Integer> least = new ArrayList<>();
        for (List<String> cell : cells) {
            CheckResult r = shipped.stream().filter(s -> s.file().equals(cell.get(0))).findFirst().orElseThrow().result();
            least.add(r.weakPoints().stream().mapToInt(p -> p.finding().defences()).min().orElse(99));
            String all = String.join(" ", cell);
            assertTrue(all.contains(r.weakPoints().isEmpty() ? "no weak point found" : r.weakPoints().size() + " weak point"), all);
            assertTrue(all.contains("not checked: " + r.unchecked().size()), all);
            assertEquals(r.weakPoints().isEmpty(), !all.contains("Worst, 1: "), all);
        }
        assertEquals(least.stream().sorted().toList(), least);
        assertTrue(least.contains(0) && least.contains(99), "walls of every kind");
    }

    /** The index sends the reader to sheets that carry these numbers in their title block, and the wall's name. */
    @Test void sheetsAreNumberedThroughAndFoundByTheIndex() {
        List<Shipped> walls = Shipped.inBuildings().stream().filter(s -> s.file().startsWith("estuary-hut")).toList();
        SheetSet set = SheetSet.of("Hut", TitleBlock.BLANK, walls.stream().map(s -> wall(s.file(), s.result())).toList());
        List<Sheet> all = set.all();
        assertTrue(all.size() > 5);
        for (int i = 0; i < all.size(); i++) {
            List<String> block = texts(all.get(i), "title-block");
            assertEquals((i + 1) + " / " + all.size(), block.get(block.size() - 1));
            assertEquals(List.of(), SheetCheck.of(all.get(i)));
        }
        for (List<String> cell : cells(set.index().get(0))) {
            Matcher m = SHEETS.matcher(cell.get(1));
            assertTrue(m.matches(), cell.get(1));
            int first = Integer.parseInt(m.group(1)), last = m.group(2) == null ? first : Integer.parseInt(m.group(2));
            Shipped wall = walls.stream().filter(s -> s.file().equals(cell.get(0))).findFirst().orElseThrow();
            List<Integer> its = IntStream.rangeClosed(1, all.size()).filter(n -> texts(all.get(n - 1), "title-block").contains(wall.wall().name())).boxed().toList();
            assertEquals(IntStream.rangeClosed(first, last).boxed().toList(), its);
        }
    }

    /** What tells the walls of a building apart stands at the end of their names. */
    @Test void theIndexOfABuildingNamesItsWallsInFull() {
        List<Shipped> walls = Shipped.inBuildings();
        for (Sheets.Paper paper : Sheets.Paper.values()) {
            SheetSet set = SheetSet.of(paper, "Hut", TitleBlock.BLANK, walls.stream().map(s -> wall(s.file().replaceAll(".*: ", "") + ": " + s.wall().name(), s.result())).toList());
            for (Sheet index : set.index()) {
                assertEquals(List.of(), SheetCheck.of(index));
                assertEquals(List.of(), cells(index).stream().flatMap(List::stream).filter(t -> t.contains("…")).toList(), paper.toString());
            }
        }
    }

    /** On A4 that stands, six walls on each; all sheets of the set are as sound as those of A3. */
    @Test void onA4TheIndexIsA4Too() {
        List<Shipped> shipped = Shipped.all();
        SheetSet set = SheetSet.of(Sheets.Paper.A4, "All walls", TitleBlock.BLANK, shipped.stream()
                .map(s -> new SheetSet.Wall(s.file(), "folder-of-sheets/" + s.file() + ".svg", s.result(), Drawn.of(s.result(), Sheets.Paper.A4))).toList());
        assertEquals((shipped.size() + 5) / 6, set.index().size());
        for (Sheet s : set.all()) {
            assertEquals("A4", s.size().word());
            assertEquals(List.of(), SheetCheck.of(s), s.title());
        }
        assertEquals(shipped.size(), set.index().stream().mapToInt(i -> cells(i).size()).sum());
        SheetSet two = SheetSet.of(Sheets.Paper.A4, "Two", TitleBlock.BLANK, shipped.subList(0, 2).stream()
                .map(s -> new SheetSet.Wall(s.file(), "", s.result(), Drawn.of(s.result()))).toList());
        assertEquals(List.of(), SheetCheck.of(two.index().get(0)));
    }

    @Test void withoutAnIndexNothingIsNumberedAnew() {
        CheckResult result = SampleWall.result();
        List<Sheet> sheets = Drawn.of(result);
        Sheet first = sheets.get(0);
        assertEquals("1 / " + sheets.size(), texts(first, "title-block").get(texts(first, "title-block").size() - 1));
        assertEquals(first.marks().size(), SheetSet.of("x", TitleBlock.BLANK, List.of(wall("a", result))).walls().get(0).get(0).marks().size());
    }

    /** More than one index sheet, long names, more than a hundred sheets: everything still has its place. */
    @Test void thirtyWallsTakeThreeIndexSheets() {
        CheckResult result = SampleWall.result();
        Sheet sheet = Drawn.of(result).get(0);
        List<SheetSet.Wall> walls = IntStream.range(0, 30).mapToObj(i -> new SheetSet.Wall("wall number " + i + " with a name that is much too long for the room it has here",
                "a-file-with-a-long-name-as-well-that-will-not-fit-into-the-room-it-has-" + i + ".svg", result, List.of(sheet, sheet, sheet, sheet))).toList();
        SheetSet set = SheetSet.of("A settlement with a name that is far too long for the heading of a sheet, and goes on and on until nobody reads it", TitleBlock.BLANK, walls);
        assertEquals(3, set.index().size());
        assertEquals(List.of(12, 12, 6), set.index().stream().map(s -> cells(s).size()).toList());
        set.index().forEach(s -> assertEquals(List.of(), SheetCheck.of(s)));
        Sheet last = set.all().get(set.all().size() - 1);
        assertEquals("123/123", texts(last, "title-block").get(texts(last, "title-block").size() - 1), "no digit is cut off");
    }

    @Test void oneToTwelveWallsFitOneSheet() {
        CheckResult result = SampleWall.result();
        for (int n = 1; n <= 12; n++) {
            List<SheetSet.Wall> walls = IntStream.range(0, n).mapToObj(i -> new SheetSet.Wall("wall " + i, "", result,
                    List.of(new Sheet(SheetSize.A3, "t", "en", List.of())))).toList();
            SheetSet set = SheetSet.of("n", TitleBlock.BLANK, walls);
            assertEquals(1, set.index().size());
            assertEquals(List.of(), SheetCheck.of(set.index().get(0)), n + " walls");
        }
    }

    /** Names and words of every kind, up to sixty weak points on one wall: not all numbers have room, but nothing meets. */
    @Test void crowdedWallsAreSound() {
        int most = 0;
        for (long seed = 1; seed <= 12; seed++) {
            CheckResult crowded = CrowdedWall.of(seed, 0, 60);
            Sheet sheet = new Sheet(SheetSize.A3, "t", "en", List.of());
            SheetSet set = SheetSet.of("n", TitleBlock.BLANK, IntStream.range(0, 7)
                    .mapToObj(i -> new SheetSet.Wall(crowded.evidence().elevation().name(), "", crowded, List.of(sheet))).toList());
            assertEquals(List.of(), SheetCheck.of(set.index().get(0)), "seed " + seed);
            most = Math.max(most, crowded.weakPoints().size());
        }
        assertTrue(most > 40, "crowded: " + most);
    }
}
