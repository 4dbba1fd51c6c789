package rainlap.paper;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;

class OccupiedTest {

    @Test
    void boxesKeepHalfAMillimetre() {
        Occupied occupied = new Occupied();
        occupied.add(new PaperBox(0, 0, 10, 10));
        assertFalse(occupied.isFree(new PaperBox(10.49, 0, 20, 10)));
        assertTrue(occupied.isFree(new PaperBox(10.5, 0, 20, 10)));
    }

    @Test
    void linesAreKeptFreeToo() {
        Occupied occupied = new Occupied();
        occupied.add(Polyline.line(0, 0, 100, 100, Edge.of(Pen.NARROW)));
        assertFalse(occupied.isFree(new PaperBox(40, 40, 60, 60)));
        assertTrue(occupied.isFree(new PaperBox(60, 40, 70, 50)));
    }

    @Test
    void linesKeepClearOfBoxesButMayPassCloseToLines() {
        Occupied occupied = new Occupied();
        occupied.add(new PaperBox(0, 0, 10, 10));
        occupied.add(Polyline.line(0, 20, 100, 20, Edge.of(Pen.NARROW)));
        assertFalse(occupied.isFree(PaperSegment.of(0, 10.49, 100, 10.49)));
        assertTrue(occupied.isFree(PaperSegment.of(0, 10.51, 100, 10.51)));
        assertTrue(occupied.isFree(PaperSegment.of(0, 19.9, 100, 19.9)));
    }

    @Test
    void theFirstFreeCandidateIsTaken() {
        Occupied occupied = new Occupied();
        PaperBox a = new PaperBox(0, 0, 10, 10);
        PaperBox b = new PaperBox(5, 0, 15, 10);
        PaperBox c = new PaperBox(11, 0, 21, 10);
        assertEquals(Optional.of(a), occupied.place(List.of(a, b)));
        assertEquals(Optional.of(c), occupied.place(List.of(b, c)));
        assertEquals(Optional.empty(), occupied.place(List.of(a, b, c)));
    }

    @Test
    void theCellsAnswerAsComparingWithEveryBox() {
        long seed = 4711;
        Random random = new Random(seed);
        Occupied occupied = new Occupied();
        List<PaperBox> taken = new ArrayList<>();
        for (int i = 0; i < 3000; i++) {
            PaperBox box = PaperBox.ofSize(random.nextDouble() * 400 - 20, random.nextDouble() * 290 - 20,
                    random.nextDouble() * 25, random.nextDouble() * 5);
            boolean free = taken.stream().noneMatch(box.grown(Occupied.CLEARANCE)::meets);
            assertEquals(free, occupied.isFree(box), "seed " + seed + " round " + i);
            if (free) {
                occupied.add(box);
                taken.add(box);
            }
        }
    }
}
