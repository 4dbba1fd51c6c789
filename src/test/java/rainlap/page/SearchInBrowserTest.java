package rainlap.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import org.junit.jupiter.api.Test;
import rainlap.Shipped;
import rainlap.check.CheckResult;

/** What is searched for is seen, wherever the list stood before. Skipped, with the reason, where no browser is installed. */
class SearchInBrowserTest {
    private static final String FIRST = "document.querySelector('.f:not([hidden])').getBoundingClientRect()", LIST = "document.querySelector('aside').getBoundingClientRect()";

    @Test void theFirstThatIsFoundIsInView() throws IOException {
        assumeTrue(Browser.program().isPresent(), "no Chromium is installed: the search was not looked at");
        CheckResult wall = Shipped.all().stream().filter(w -> w.file().equals("bakery-trailer-right")).findFirst().orElseThrow().result();
        try (Browser b = Browser.open(Browser.program().get())) {
            b.size(1440, 700).calm(true).go(PageInBrowserTest.write("search", HtmlPageTest.page(wall)));
            b.eval("document.querySelector('aside').scrollTop = 100000");
            assertTrue(b.eval("document.querySelector('aside').scrollTop > 300").asBoolean(), "scrolled far down");
            b.eval("(() => { const s = document.querySelector('#search'); s.value = 'no flap'; s.dispatchEvent(new Event('input')); })()");
            assertTrue(b.text("document.querySelector('#found').textContent").startsWith("1 of"), b.text("document.querySelector('#found').textContent"));
            assertEquals("true true", b.text("(" + FIRST + ".top >= " + LIST + ".top - 1) + ' ' + (" + FIRST + ".top < " + LIST + ".bottom - 20)"));
        }
    }
}
