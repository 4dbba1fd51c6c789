package rainlap.report;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;
import rainlap.check.Checker;
import rainlap.check.Rules;
import rainlap.file.ElevationFile;
import rainlap.practice.Practices;
import rainlap.rule.Evidence;
import rainlap.wall.Elevation;
import rainlap.wall.Stage;

/** A list of joints must not make an upper edge look like a fault that is none. */
class JointCountsTest {
    private static Elevation wall(String more) {
        return ElevationFile.read("wall.json", ("{'rainlap': 1, 'wall': {'outline': [[0,0],[1800,0],[1800,1200],[0,1200]], 'edges': ['free','free','free','free']}, 'pieces': ["
                + "{'id': 'M1', 'material': 'foil-membrane', 'rect': [-50,-40,1900,740]}, {'id': 'M2', 'material': 'foil-membrane', 'rect': [-50,550,1900,690]}" + more + "]}")
                .replace('\'', '"').getBytes(StandardCharsets.UTF_8)).elevation().orElseThrow();
    }

    @Test void anUpperEdgeThatIsTapedIsNoFault() {
        String patch = ", {'id': 'N1', 'material': 'foil-membrane', 'rect': [600,200,200,200]}", flashing = ", {'id': 'N1', 'material': 'head-flashing', 'rect': [600,200,400,100]}";
        String tape = ", {'id': 'T2', 'material': 'foil-tape-75', 'line': [[570,300],[1030,300]]}";
        assertEquals("2 course laps, 2 end laps, 1 reverse lap", counts(patch));
        assertEquals("2 course laps, 2 end laps, 1 reverse lap (upper edge taped or beneath another piece)", counts(flashing + tape));
    }

    private static String counts(String more) {
        return JointCounts.inWords(Checker.check(Evidence.of(wall(more), Stage.WRAP, Practices.common()), Rules.all()));
    }
}
