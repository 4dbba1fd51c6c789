package rainlap.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import rainlap.geom.Box;
import rainlap.geom.Region;
import rainlap.material.Catalogue;
import rainlap.practice.Practices;
import rainlap.rule.Evidence;
import rainlap.rule.Outcome;
import rainlap.rule.Rule;
import rainlap.wall.EdgeRole;
import rainlap.wall.Elevation;
import rainlap.wall.Exposure;
import rainlap.wall.Outline;
import rainlap.wall.OutlineEdge;
import rainlap.wall.Stage;

/** Rules are pure: in whatever order and on whatever thread they run, they say the same; and they always say something. */
class PurityTest {
    @TestFactory
    Stream<DynamicTest> forwardBackwardAndInParallelFindTheSame() {
        return Example.all().stream().map(x -> DynamicTest.dynamicTest(x.rule() + "/" + x.name(), () -> {
            Evidence e = x.evidence();
            List<List<Outcome>> forward = Rules.all().stream().map(r -> r.check(e).toList()).toList();
            List<Rule> turned = new ArrayList<>(Rules.all());
            Collections.reverse(turned);
            List<List<Outcome>> backward = new ArrayList<>(turned.stream().map(r -> r.check(e).toList()).toList());
            Collections.reverse(backward);
            assertEquals(forward, backward, "backward");
            assertEquals(forward, Rules.all().parallelStream().map(r -> r.check(e).toList()).toList(), "in parallel");
            Evidence again = Evidence.of(x.elevation(), x.evidence().stage(), x.practice());
            assertEquals(forward, Rules.all().stream().map(r -> r.check(again).toList()).toList(), "on evidence gathered anew");
        }));
    }

    @TestFactory
    Stream<DynamicTest> silenceIsNeverAPass() {
        return Example.all().stream().map(x -> DynamicTest.dynamicTest(x.rule() + "/" + x.name(), () -> {
            Evidence e = x.evidence();
            Rules.all().forEach(r -> assertFalse(r.check(e).toList().isEmpty(), () -> r.info().id() + " says nothing at all"));
        }));
    }

    @Test
    void aWallWithoutPiecesIsBareAndNothingElse() {
        Region outline = Region.of(Box.ofMm(0, 0, 3000, 2400));
        List<OutlineEdge> edges = outline.edges().stream().map(s -> new OutlineEdge(s, EdgeRole.FREE, Optional.empty())).toList();
        Elevation empty = new Elevation("empty", Optional.empty(), Exposure.UNSTATED, new Outline(outline, edges, OptionalLong.empty()),
                List.of(), List.of(), Catalogue.builtIn(), List.of(), List.of());
        CheckResult r = Checker.check(empty, Stage.WRAP, Practices.common());
        assertEquals(List.of(), r.crashes());
        assertEquals(List.of("bare-wall"), r.weakPoints().stream().map(w -> w.finding().rule()).toList());
        assertEquals(Rules.all().size(), r.weakPoints().size() + r.notApplicable().size() + r.held().size() + r.unchecked().size(),
                "each rule said one thing: " + r.notApplicable() + r.held() + r.unchecked());
    }
}
