package rainlap.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rainlap.page.Browser;

/** {@code view} with a real browser: save, redraw, save a fault, mend it. Skipped, with the reason, where no browser is installed. */
class ViewInBrowserTest {
    /** Two courses that lap too little, the upper one held by a tape that misses a stretch. */
    private static final String WALL = """
            { "rainlap": 1, "name": "Shed, first", "practice": "au-abcb-2022",
              "wall": { "outline": [[0, 0], [3000, 0], [3000, 2400], [0, 2400]], "edges": ["base", "free", "eave", "free"] },
              "pieces": [
                { "id": "M1", "material": "foil-membrane", "rect": [0, -40, 3000, 1300] },
                { "id": "M2", "material": "foil-membrane", "rect": [0, 1200, 3000, 1350] },
                { "id": "T1", "material": "foil-tape-75", "line": [[0, 1200], [1900, 1200]] } ] }
            """;
    private static final String TITLE = "document.querySelector('h1') && document.querySelector('h1').textContent";
    private static final int SAVES = 7;
    @TempDir
    Path folder;

    private Browser browser() {
        assumeTrue(Browser.program().isPresent(), "no Chromium is installed: the served page was not looked at");
        return Browser.open(Browser.program().get());
    }

    @Test void redrawsShowsFaultsAndMends() throws IOException {
        Path file = Path.of(Run.file(folder, "shed.json", WALL));
        try (Browser b = browser(); ViewCommandTest.Running view = ViewCommandTest.Running.start(folder, "view", "shed.json")) {
            b.size(1440, 900).calm(true).go(view.address());
            b.key("1");
            b.click("[data-l=laps]");
            String chosen = b.text("document.querySelector('.f.on .r').textContent");
            Files.writeString(file, WALL.replace("first", "second"));
            b.await(TITLE + " === 'Shed, second'");
            b.await("document.querySelector('.f.on') !== null && !document.querySelector('[data-l=laps]').checked");
            b.await("document.querySelector('.f.on .should svg') !== null");
            assertTrue(b.text("document.querySelector('.f.on .should').textContent").contains("as it should be, 1:5"), "asked of the server when it is chosen");
            assertEquals(chosen, b.text("document.querySelector('.f.on .r').textContent"));

            Files.writeString(file, WALL.replace("foil-tape-75", "foil-tape-7").replace("first", "third"));
            b.await("document.querySelectorAll('#problems li').length === 1");
            assertTrue(b.text("document.querySelector('#problems').textContent").contains("Line 6, column "), b.text("document.querySelector('#problems').textContent"));
            assertTrue(b.text("document.querySelector('#problems').textContent").contains("foil-tape-75"), "what would be right");
            assertEquals("Shed, second", b.text(TITLE));
            assertEquals(chosen, b.text("document.querySelector('.f.on .r').textContent"));
            assertEquals(1440, b.eval("document.documentElement.scrollWidth").asInt());
            b.screenshot("view-fault-1440");
            b.size(360, 740).screenshot("view-fault-360");
            assertEquals(360, b.eval("document.documentElement.scrollWidth").asInt());

            Files.writeString(file, WALL.replace("first", "mended"));
            b.await(TITLE + " === 'Shed, mended'");
            assertEquals(0, b.eval("document.querySelectorAll('#problems li').length").asInt());
            assertEquals(List.of(), b.complaints());
            assertTrue(b.requests().stream().allMatch(r -> r.startsWith(view.address())), b.requests().toString());
        }
    }

    /** The median of several saves; one before them loads the classes. */
    @Test void isThereWithinASecondOfSaving() throws IOException {
        Path file = Path.of(Run.file(folder, "shed.json", WALL));
        try (Browser b = browser(); ViewCommandTest.Running view = ViewCommandTest.Running.start(folder, "view", "shed.json")) {
            b.go(view.address());
            List<Long> millis = new ArrayList<>();
            for (int i = 0; i <= SAVES; i++) {
                long from = System.nanoTime();
                Files.writeString(file, WALL.replace("first", "number " + i));
                b.await(TITLE + " === 'Shed, number " + i + "'");
                millis.add((System.nanoTime() - from) / 1_000_000);
            }
            List<Long> warm = millis.subList(1, millis.size()).stream().sorted().toList();
            assertTrue(warm.get(SAVES / 2) < 1000, "milliseconds from saving to the new title in the browser, the first to warm up: " + millis);
        }
    }

    @Test void aBuildingIsThereWithinASecondOfSavingOneOfItsWalls() throws IOException {
        ViewCommandTest.building(folder);
        String wall = Files.readString(folder.resolve("east.json"));
        try (Browser b = browser(); ViewCommandTest.Running view = ViewCommandTest.Running.start(folder, "view", "hut.json")) {
            b.size(1440, 900).go(view.address());
            List<Long> millis = new ArrayList<>();
            for (int i = 0; i <= SAVES; i++) {
                long from = System.nanoTime();
                Files.writeString(folder.resolve("east.json"), wall.replace("East wall", "number " + i));
                b.await("document.body !== null && document.body.textContent.includes('number " + i + "')");
                millis.add((System.nanoTime() - from) / 1_000_000);
            }
            List<Long> warm = millis.subList(1, millis.size()).stream().sorted().toList();
            assertTrue(warm.get(SAVES / 2) < 1000, "milliseconds from saving to the new name in the index, the first to warm up: " + millis);
            b.screenshot("view-building-1440");
            b.click(".index a[href='2/']");
            b.await(TITLE + " === 'number " + SAVES + "'");
            b.click(".home");
            b.await(TITLE + " === 'Hut'");
            assertEquals(List.of(), b.complaints());
            assertTrue(b.requests().stream().allMatch(r -> r.startsWith(view.address())), b.requests().toString());
        }
    }

    @Test void saysWhenItIsLost() throws IOException {
        Run.file(folder, "shed.json", WALL.replace("\"M1\",", "\"M1\""));
        try (Browser b = browser()) {
            ViewCommandTest.Running view = ViewCommandTest.Running.start(folder, "view", "shed.json");
            b.go(view.address());
            assertEquals(1, b.eval("document.querySelectorAll('#problems li').length").asInt());
            assertTrue(b.eval("document.querySelector('#lost').hidden").asBoolean());
            view.close();
            b.await("!document.querySelector('#lost').hidden");
            assertFalse(b.text("document.querySelector('#lost').textContent").isBlank());
        }
    }
}
