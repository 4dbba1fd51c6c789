package rainlap.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import rainlap.Shipped;
import rainlap.check.CheckResult;

/** The page in a real browser, as a person uses it. Skipped, with the reason, where none is installed. */
class PageInBrowserTest {
    private static final String CHOSEN = "[...document.querySelectorAll('.f.on')].map(f => f.dataset.weak).join()";
    private static Browser browser;
    private static CheckResult hut;
    private static String address;

    @BeforeAll
    static void open() throws IOException {
        assumeTrue(Browser.program().isPresent(), "no Chromium is installed: what only a browser can show was not looked at");
        browser = Browser.open(Browser.program().get());
        hut = Shipped.all().stream().filter(w -> w.file().equals("estuary-hut-north")).findFirst().orElseThrow().result();
        address = write("hut", HtmlPageTest.page(hut));
    }

    @AfterAll
    static void close() {
        if (browser != null) {
            browser.close();
        }
    }

    static String write(String name, String page) throws IOException {
        Path file = Files.createDirectories(Path.of("target/pages")).resolve(name + ".html");
        Files.write(file, page.getBytes(StandardCharsets.UTF_8));
        return file.toUri().toString();
    }

    private static Browser fresh() {
        return browser.size(1440, 900).calm(true).go(address);
    }

    /** The part of the elevation that is shown. */
    private static String viewBox() {
        return browser.text("document.querySelector('#elevation').getAttribute('viewBox').split(' ').map(Number).join(' ')");
    }

    /** Whatever a test did, the page asked nobody for anything and had nothing to complain of. */
    @AfterEach
    void quiet() {
        assertEquals(List.of(), browser.complaints());
        assertTrue(browser.requests().stream().allMatch(r -> r.startsWith("file:") && r.contains("/target/pages/")), browser.requests().toString());
    }

    @Test void aClickInTheListOrOnAMarkChooses() {
        fresh().click("#weak-3 .head");
        assertEquals("3", browser.text(CHOSEN));
        assertEquals("true", browser.text("document.querySelector('#weak-3 .head').getAttribute('aria-expanded')"));
        assertTrue(browser.eval("document.querySelector('#weak-3 figure svg').getBoundingClientRect().height > 50").asBoolean());
        assertEquals("0.5", browser.text("getComputedStyle(document.querySelector('.wp[data-weak=\"2\"]')).opacity"));
        assertEquals("1", browser.text("getComputedStyle(document.querySelector('.wp[data-weak=\"3\"]')).opacity"));
        assertNotEquals(browser.text("document.querySelector('#elevation').dataset.paper"), viewBox());
        assertEquals("inline", browser.text("getComputedStyle(document.querySelector('.way[data-way=\"3\"]')).display"));
        browser.screenshot("chosen-1440");
        browser.click("#weak-3 .head");
        assertEquals("", browser.text(CHOSEN));
        browser.click(".wp[data-weak=\"7\"] .mark");
        assertEquals("7", browser.text(CHOSEN));
    }

    @Test void aChosenPlaceIsShownAsItShouldBeToo() {
        fresh().click("#weak-1 .head");
        assertEquals(2, browser.eval("document.querySelectorAll('#weak-1 figure svg').length").asInt());
        assertTrue(browser.text("document.querySelector('#weak-1 .should figcaption').textContent").startsWith("as it should be, 1:5"));
        assertTrue(browser.eval("document.querySelector('#weak-1 .should svg').getBoundingClientRect().height > 50").asBoolean());
        assertEquals("", browser.text("[...document.querySelectorAll('.f')].filter(f => /^[01]/.test([...f.querySelectorAll('dd')].pop().textContent) && f.querySelector('figure')"
                + " && !f.querySelector('.should figure') && !f.querySelector('.should p').textContent.startsWith('No mended cut is drawn: ')).map(f => f.id).join()"));
        assertEquals(0, browser.eval("document.querySelectorAll('[data-should]').length").asInt());
    }

    @Test void keysAloneSuffice() {
        fresh();
        String whole = viewBox();
        browser.key("2");
        assertEquals("2", browser.text(CHOSEN));
        browser.key("j").key("j");
        assertEquals("4", browser.text(CHOSEN));
        assertEquals("4", browser.text("document.activeElement.closest('.f').dataset.weak"));
        browser.key("k");
        assertEquals("3", browser.text(CHOSEN));
        browser.key("Escape");
        assertEquals("", browser.text(CHOSEN));
        browser.eval("document.querySelector('.wp[data-weak=\"6\"]').focus()");
        browser.key("Tab");
        assertEquals("7", browser.text("document.activeElement.dataset.weak"));
        assertEquals("solid", browser.text("getComputedStyle(document.activeElement.querySelector('.mark')).outlineStyle"));
        browser.screenshot("focus-1440");
        browser.key("Enter");
        assertEquals("7", browser.text(CHOSEN));
        String zoomed = viewBox();
        browser.key("ArrowRight");
        assertNotEquals(zoomed, viewBox());
        browser.key("0");
        assertEquals(whole, viewBox());
        browser.eval("window.print = () => { window.printed = true; }");
        browser.key("p");
        assertTrue(browser.eval("window.printed").asBoolean());
    }

    @Test void everythingToUseHasANameAndTakesFocus() {
        fresh();
        assertEquals("", browser.text("[...document.querySelectorAll('button,input,[role=button]')].filter(e => !(e.getAttribute('aria-label') || e.labels?.[0]?.textContent"
                + " || e.textContent).trim()).map(e => e.outerHTML).join()"));
        assertEquals("", browser.text("[...document.querySelectorAll('.wp')].filter(e => e.tabIndex !== 0 || !e.getAttribute('aria-label')).length || ''"));
    }

    @Test void theLayingOrderGoesStepByStep() {
        fresh();
        int last = Integer.parseInt(browser.text("document.querySelector('#step').max"));
        String shown = "[...document.querySelectorAll('#elevation [data-piece]')].filter(p => p.getClientRects().length && !p.closest('.off')).length";
        int all = browser.eval(shown).asInt();
        browser.key("[");
        assertEquals(last - 1 + " of " + last, browser.text("document.querySelector('#now').textContent.split(':')[0]"));
        assertEquals(0, browser.eval("[...document.querySelectorAll('.wp[tabindex]:not(.off)')].length").asInt());
        assertTrue(browser.eval(shown).asInt() < all);
        browser.key("]");
        assertEquals(hut.weakPoints().size(), browser.eval("[...document.querySelectorAll('.wp[tabindex]:not(.off)')].length").asInt());
        assertEquals(all, browser.eval(shown).asInt());
        browser.eval("(() => { const s = document.querySelector('#step'); s.value = 0; s.dispatchEvent(new Event('input')); })()");
        assertEquals(0, browser.eval(shown).asInt());
        for (int step = 1, before = 0; step <= last; step++) {
            browser.key("]");
            int now = browser.eval(shown).asInt();
            assertTrue(now >= before, "step " + step);
            before = now;
            if (step == last / 2) {
                browser.screenshot("half-laid-1440");
            }
        }
        assertEquals(all, browser.eval(shown).asInt());
    }

    @Test void layersGoOnAndOff() {
        fresh();
        String battens = "[...document.querySelectorAll('[data-layer~=battens]')].filter(e => !e.classList.contains('off')).length";
        assertEquals(0, browser.eval(battens).asInt());
        assertTrue(browser.text("document.querySelector('.not').textContent").contains("battens"));
        browser.click("[data-l=battens]").click("[data-l=cladding]").click("[data-l=trims]");
        assertTrue(browser.eval(battens).asInt() > 0);
        browser.screenshot("finished-layers-1440");
        browser.click("[data-l=tapes]").click("[data-l=battens]").click("[data-l=cladding]").click("[data-l=trims]").click("[data-l=weak]");
        assertEquals(0, browser.eval("[...document.querySelectorAll('[data-layer~=tapes]')].filter(e => !e.classList.contains('off')).length").asInt());
        assertEquals(0, browser.eval("document.querySelectorAll('.wp[tabindex]:not(.off)').length").asInt());
        browser.key("1");
        assertEquals(1, browser.eval("document.querySelectorAll('.wp[tabindex]:not(.off)').length").asInt());
    }

    @Test void theListIsSearched() {
        fresh().key("/");
        assertEquals("search", browser.text("document.activeElement.id"));
        for (String letter : "tape m3a".split("")) {
            browser.key(letter);
        }
        int found = browser.eval("document.querySelectorAll('.f:not([hidden])').length").asInt();
        assertTrue(found > 0 && found < hut.weakPoints().size(), "found " + found);
        assertTrue(browser.text("document.querySelector('#found').textContent").startsWith(found + " of "));
        for (String letter : "zzz".split("")) {
            browser.key(letter);
        }
        assertFalse(browser.eval("document.querySelector('#none').hidden").asBoolean());
        browser.key("Escape");
        assertEquals(hut.weakPoints().size(), browser.eval("document.querySelectorAll('.f:not([hidden])').length").asInt());
    }

    @Test void theAddressKeepsTheChoice() {
        fresh().key("5");
        String kept = browser.text("location.href");
        assertTrue(kept.endsWith("#weak-5"));
        browser.go(kept);
        assertEquals("5", browser.text(CHOSEN));
        browser.eval("location.hash = '#weak-2'");
        browser.await(CHOSEN + " === '2'");
        browser.key("Escape");
        assertEquals("", browser.text("location.hash"));
    }

    @Test void theWaterRunsItsWayStepByStep() {
        fresh().calm(false).key("1");
        browser.await("document.querySelector('#weak-1 .way-in li.here') !== null");
        assertTrue(browser.eval("document.querySelectorAll('.way.on .leg.off').length > 0").asBoolean());
        browser.await("document.querySelectorAll('.way.on .leg.off').length === 0");
        assertTrue(browser.eval("document.querySelectorAll('.way.on [stroke-dasharray]').length > 0").asBoolean(), "the last leg is behind M2");
    }

    @ParameterizedTest
    @ValueSource(ints = {360, 800, 1440, 2560})
    void fitsEveryWidth(int width) {
        browser.size(width, width == 360 ? 740 : width * 5 / 8).calm(true).go(address);
        browser.screenshot("page-" + width);
        for (String key : List.of("", "1", "4", "8")) {
            if (!key.isEmpty()) {
                browser.key(key);
            }
            assertEquals(width, browser.eval("document.documentElement.scrollWidth").asInt(), "weak point " + key);
        }
        browser.screenshot("page-" + width + "-chosen");
        browser.eval("document.querySelectorAll('details').forEach(d => d.open = true)");
        assertEquals(width, browser.eval("document.documentElement.scrollWidth").asInt());
    }

    @Test void printsOnA3WithEveryWeakPointOpen() {
        fresh().key("3");
        String pdf = new String(browser.pdf("page"), StandardCharsets.ISO_8859_1);
        List<String> sizes = Pattern.compile("/MediaBox \\[([^\\]]*)\\]").matcher(pdf).results().map(m -> m.group(1)).toList();
        assertTrue(sizes.size() >= 2 && sizes.size() <= 4, sizes.toString());
        for (String size : sizes) {
            String[] s = size.strip().split(" +");
            assertEquals(420, Double.parseDouble(s[2]) / 72 * 25.4, 0.5, size);
            assertEquals(297, Double.parseDouble(s[3]) / 72 * 25.4, 0.5, size);
        }
    }

    @Test void isTrueToScaleOnPaper() {
        fresh();
        browser.print(true);
        double pixels = browser.eval("(() => { const s = document.querySelector('#elevation'); dispatchEvent(new Event('beforeprint'));"
                + " return s.getScreenCTM().a; })()").asDouble();
        assertEquals(96 / 25.4, pixels, 0.001, "one unit of the drawing is one millimetre of paper");
        assertEquals(96 / 25.4, browser.eval("document.querySelector('#weak-1 figure svg').getScreenCTM().a").asDouble(), 0.001);
        assertEquals(hut.weakPoints().size(), browser.eval("[...document.querySelectorAll('.b')].filter(b => b.getClientRects().length).length").asInt());
        assertEquals(0, browser.eval("[...document.querySelectorAll('input,#print,#clear,.tools button,.again')].filter(b => b.getClientRects().length).length").asInt());
        browser.print(false);
    }

    /** Paper has no list beside it that a click explains: the signs are told there, and on the screen too. */
    @Test void theSignsOfTheElevationAreToldOnPaper() {
        fresh();
        browser.print(true);
        String told = "[...document.querySelectorAll('.signs li')].filter(l => l.getClientRects().length && l.querySelector('svg').getClientRects()[0].width > 30).map(l => l.querySelector('span').textContent).join('; ')";
        assertEquals("membrane, visible edge; lap: inner sheet ends at dashes; reversed lap: ticks point uphill; tape over an edge; corner piece, collar; flashing; "
                + "wall outline, ground; return, fold: laid flat; frame wet as drawn, beneath; centre line; defences left, none: leaks as drawn; defences left, one failure from the frame; defences left, two or more: fails safe", browser.text(told));
        browser.print(false);
    }

    /** A table that is wider than the window says so; where it fits it does not. */
    @Test void anIndexThatGoesOnSidewaysSaysSo() throws IOException {
        List<IndexPage.Entry> entries = Shipped.all().stream().map(w -> new IndexPage.Entry(w.file(), w.file() + ".html", w.result())).toList();
        String index = write("index", IndexPage.of("All", entries)), wider = "(() => { const w = document.querySelector('.wide'); return w.scrollWidth > w.clientWidth; })()";
        for (int width : List.of(360, 700, 1440)) {
            browser.size(width, 740).calm(true).go(index);
            assertEquals(browser.eval(wider).asBoolean(), browser.eval("document.querySelector('.sideways').getClientRects().length > 0").asBoolean(), width + " wide");
            assertEquals(width, browser.eval("document.documentElement.scrollWidth").asInt());
            browser.screenshot("index-" + width);
        }
        browser.size(360, 740).go(index);
        assertTrue(browser.eval(wider).asBoolean());
    }

    @Test void markupInNamesStaysText() throws IOException {
        browser.size(1440, 900).go(write("nasty", HtmlPageTest.page(HtmlPageTest.nasty()))).key("1");
        assertTrue(browser.text("document.querySelector('h1').textContent").startsWith("</script><script>alert(1)</script> \"quoted\" 'n' <b>&amp;"));
        assertEquals(1, browser.eval("document.scripts.length").asInt());
        browser.screenshot("nasty-1440");
    }

    @Test void everyWeakPointOfACrowdedWallCanBeChosen() throws IOException {
        CheckResult crowded = HtmlPageTest.crowded();
        int count = crowded.weakPoints().size();
        assertTrue(count > 60, "only " + count);
        browser.size(1440, 900).calm(true).go(write("crowded", HtmlPageTest.page(crowded)));
        browser.screenshot("crowded-1440");
        for (int n = 1; n <= count; n += 7) {
            browser.eval("location.hash = '#weak-" + n + "'");
            browser.await(CHOSEN + " === '" + n + "'");
            assertTrue(browser.eval("[...document.querySelectorAll('#front .mark')].filter(m => m.getClientRects().length).length === 1").asBoolean(), "mark of " + n);
        }
        browser.screenshot("crowded-1440-chosen");
    }

    @Test void theRulesPageComesToTheChosenFinding() {
        fresh().key("4");
        assertEquals("end lap too short", browser.text("document.querySelector('#weak-4 details summary').textContent.split(': ')[1]"));
        browser.click("#weak-4 details summary");
        assertTrue(browser.text("document.querySelector('#weak-4 details').innerText").contains("common"));
        assertTrue(browser.eval("document.querySelectorAll('#weak-4 details table tr').length > 3").asBoolean());
    }
}
