package rainlap.rule.edge;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import rainlap.practice.Practices;
import rainlap.rule.Evidence;
import rainlap.rule.Outcome;
import rainlap.rule.Rule;
import rainlap.rule.Written;
import rainlap.wall.Stage;

/** Cladding is cut clear of the ground and hung down past the base: whoever does the one must not undo the other. */
class FootHeightsTest {
    private static final String GLOVES = " Wear gloves: sheet edges cut.", CUT = " Wear gloves and eye protection: cut sheet is sharp.";

    /** The remedies for a sheet that ends at a level, above ground at another. */
    private static List<String> remedies(Rule rule, String base, long ground, long foot) {
        Evidence e = Evidence.of(Written.read("{'rainlap': 1, 'wall': {'outline': [[0,0],[800,0],[800,1200],[0,1200]], 'edges': ['" + base + "','free','free','free'], 'ground': " + ground
                + "}, 'pieces': [{'id': 'S1', 'material': 'corrugated-sheet', 'rect': [0," + foot + ",800," + (1200 - foot) + "]}]}"), Stage.FINISHED, Practices.common());
        return rule.check(e).filter(o -> o instanceof Outcome.Broken).map(o -> ((Outcome.Broken) o).finding().remedy()).toList();
    }

    @Test void bothTellTheSameLevels() {
        String between = "to end between \u2212250 and \u221250: at least 150 above the ground and at least 50 below the base";
        assertEquals(List.of("Cut S1 " + between + ", and treat the cut edges; or lower the ground." + CUT), remedies(new LowCladding(), "base", -400, -300));
        assertEquals(List.of("Replace S1 by a longer one, or set it lower, " + between + "." + GLOVES), remedies(new ShortCladding(), "base", -400, 0));
        for (long foot : new long[] {-250, -50}) {
            assertEquals(List.of(), remedies(new LowCladding(), "base", -400, foot));
            assertEquals(List.of(), remedies(new ShortCladding(), "base", -400, foot));
        }
    }

    @Test void whereTheGroundLiesTooHighItIsLoweredFirst() {
        String lower = "No foot is at least 150 above the ground and at least 50 below the base as the ground lies: lower that by at least 100, to \u2212200. ";
        assertEquals(List.of(lower + "Have S1 cut or set to end at \u221250, and treat cut edges." + CUT), remedies(new LowCladding(), "base", -100, -60));
        assertEquals(List.of(lower + "Replace S1 by a longer one, or set it lower, to end at \u221250." + GLOVES), remedies(new ShortCladding(), "base", -100, 0));
        assertEquals(List.of(), remedies(new LowCladding(), "base", -200, -50));
        assertEquals(List.of(), remedies(new ShortCladding(), "base", -200, -50));
    }

    @Test void oneLevelAloneIsTold() {
        assertEquals(List.of("Cut S1 to end at \u221250: at least 150 above the ground and at least 50 below the base, and treat the cut edges; or lower the ground." + CUT),
                remedies(new LowCladding(), "base", -200, -60));
    }

    @Test void withoutABaseOnlyTheGroundBoundsIt() {
        assertEquals(List.of("Cut S1 to end at +50, at least 150 above the ground, treat the cut edges and leave the frame covered; or lower the ground." + CUT),
                remedies(new LowCladding(), "free", -100, -60));
    }
}
