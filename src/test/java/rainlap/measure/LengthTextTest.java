package rainlap.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

class LengthTextTest {
    @Test
    void noDecimalsThatSayNothing() {
        assertEquals("90", LengthText.mm(9000));
        assertEquals("62.5", LengthText.mm(6250));
        assertEquals("0.01", LengthText.mm(1));
        assertEquals("0", LengthText.mm(0));
        assertEquals("\u221212.5", LengthText.mm(-1250));
        assertEquals("1000000", LengthText.mm(100_000_000));
    }

    @Test
    void upToWholeMillimetresWhereSomethingIsCut() {
        assertEquals("60", LengthText.mmUp(6000));
        assertEquals("30", LengthText.mmUp(2958));
        assertEquals("1", LengthText.mmUp(1));
        assertEquals("0", LengthText.mmUp(0));
    }

    @Test
    void besideALimitOnlyTheDecimalsThatTellThemApart() {
        assertEquals("106", LengthText.mmBeside(10_607, 15_000));
        assertEquals("149.99", LengthText.mmBeside(14_999, 15_000));
        assertEquals("149.6", LengthText.mmBeside(14_960, 15_000));
        assertEquals("149", LengthText.mmBeside(14_940, 15_000));
        assertEquals("150", LengthText.mmBeside(15_000, 15_000));
        assertEquals("150.01", LengthText.mmBeside(15_001, 15_000));
    }
}
