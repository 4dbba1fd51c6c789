package rainlap.rule.tape;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import rainlap.Shipped;
import rainlap.rule.Finding;

/** Loose tape over a joint seals nothing, but it is there to be seen: its words speak of it. */
class LooseTapeTest {
    private static final Shipped WALL = Shipped.all().stream().filter(w -> w.file().equals("bakery-trailer-right")).findFirst().orElseThrow();

    private static Finding untaped() {
        return WALL.result().weakPoints().stream().map(p -> p.finding()).filter(f -> f.rule().equals("untaped-joint")).findFirst().orElseThrow();
    }

    @Test void isNotToldAsNone() {
        assertEquals("not stuck down", untaped().drawn());
        assertTrue(untaped().says().startsWith("No tape seals the course lap of M4 over M3 at +1560, x 2300 to 3600: T3 over it is not stuck down."), untaped().says());
    }
}
