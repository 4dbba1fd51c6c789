package rainlap.joint;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;

import java.util.List;
import org.junit.jupiter.api.Test;
import rainlap.geom.Intervals;
import rainlap.geom.Profile;

class CoverTest {
    @Test
    void tapeThatCoversBothSidesAlikeIsKeptOnce() {
        Cover alike = new Cover(Intervals.of(0, 10), Profile.constant(0, 10, 3_000), Profile.constant(0, 10, 3_000), List.of());
        assertSame(alike.onOuter(), alike.onInner());
        Cover aside = new Cover(Intervals.of(0, 10), Profile.constant(0, 10, 2_000), Profile.constant(0, 10, 4_000), List.of());
        assertEquals(4_000, aside.onInner().least());
    }
}
