package rainlap.material;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

class BondTest {
    @Test
    void fullSealsEveryEdgeAndLooseNone() {
        for (Edge edge : Edge.values()) {
            assertTrue(Bond.FULL.seals(edge));
            assertFalse(Bond.LOOSE.seals(edge));
        }
        assertEquals("full", Bond.FULL.text());
        assertEquals("loose", Bond.LOOSE.text());
    }

    @Test
    void sealedEdgesKeepOneOrder() {
        Bond bond = Bond.sealedAt(Edge.LEFT, Edge.TOP);
        assertEquals(List.of(Edge.TOP, Edge.LEFT), List.copyOf(bond.sealedEdges()));
        assertEquals("sealed top, left", bond.text());
        assertEquals(Bond.sealedAt(Edge.TOP, Edge.LEFT), bond);
        assertTrue(bond.seals(Edge.TOP) && !bond.seals(Edge.BOTTOM));
        assertFalse(bond.isLoose() || bond.isFull());
    }

    @Test
    void allEdgesSealedIsNotAdheredOverTheFace() {
        assertNotEquals(Bond.FULL, Bond.sealedAt(Edge.values()));
        assertEquals(Bond.LOOSE, Bond.sealedAt(List.of()));
        assertThrows(IllegalArgumentException.class, () -> new Bond(true, Set.of(Edge.TOP)));
    }

    @Test
    void theSetCannotBeChanged() {
        assertThrows(UnsupportedOperationException.class, () -> Bond.FULL.sealedEdges().clear());
    }

    @Test
    void edgesAndEndDamsAreFoundByTheirWords() {
        assertEquals(Edge.BOTTOM, Edge.find("bottom").orElseThrow());
        assertTrue(Edge.find("Bottom").isEmpty());
        assertEquals(EndDams.LEFT, EndDams.find("left").orElseThrow());
        assertTrue(EndDams.find("").isEmpty());
        assertTrue(EndDams.LEFT.atLeft() && !EndDams.LEFT.atRight());
        assertTrue(EndDams.BOTH.atLeft() && EndDams.BOTH.atRight());
        assertFalse(EndDams.NONE.atLeft() || EndDams.NONE.atRight());
        assertTrue(EndDams.RIGHT.atRight() && !EndDams.RIGHT.atLeft());
    }
}
