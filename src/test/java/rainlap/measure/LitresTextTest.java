package rainlap.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

class LitresTextTest {
    @Test void twoFiguresAndAtMostOneDecimal() {
        assertEquals("1200", LitresText.perHour(1_234.5));
        assertEquals("240", LitresText.perHour(242.4657));
        assertEquals("100", LitresText.perHour(99.6));
        assertEquals("32", LitresText.perHour(31.9885));
        assertEquals("10", LitresText.perHour(9.96));
        assertEquals("5.5", LitresText.perHour(5.5299));
        assertEquals("0.7", LitresText.perHour(0.74));
        assertEquals("0.1", LitresText.perHour(0.05));
    }

    @Test void littleIsNotNothing() {
        assertEquals("<0.1", LitresText.perHour(0.049));
        assertEquals("0", LitresText.perHour(0));
        assertEquals("<1%", LitresText.percent(0.4, 100));
        assertEquals("0%", LitresText.percent(0, 100));
    }

    @Test void sharesAreWholePercent() {
        assertEquals("71%", LitresText.percent(710, 1_000));
        assertEquals("100%", LitresText.percent(3, 3));
        assertEquals("0%", LitresText.percent(0, 0));
    }
}
