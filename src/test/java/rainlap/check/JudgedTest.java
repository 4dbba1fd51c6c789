package rainlap.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.function.Consumer;
import org.junit.jupiter.api.Test;
import rainlap.joint.Joint;
import rainlap.joint.RandomWall;
import rainlap.practice.Practices;
import rainlap.rule.Evidence;
import rainlap.rule.JointRule;
import rainlap.rule.OpeningRule;
import rainlap.rule.Outcome;
import rainlap.rule.Rule;
import rainlap.rule.RuleInfo;
import rainlap.stack.Crew;
import rainlap.wall.Stage;

/** Rules asked about one joint or opening after the other answer as they do when each is asked about all. */
class JudgedTest {
    private static final List<JointRule> OF_JOINTS = only(JointRule.class);
    private static final List<OpeningRule> OF_OPENINGS = only(OpeningRule.class);

    private static <R extends Rule> List<R> only(Class<R> sort) {
        return Rules.all().stream().filter(sort::isInstance).map(sort::cast).toList();
    }

    @Test
    void onePlaceAfterTheOtherIsAsOneRuleAfterTheOther() {
        int held = 0;
        for (long seed = 0; seed < 100; seed++) {
            Evidence e = evidence(seed);
            Crew crew = seed % 2 == 0 ? Crew.ALONE : Crew.of(3, 20_000);
            held += compared(OF_JOINTS, Judged.placeByPlace(OF_JOINTS, e, crew), e, seed);
            held += compared(OF_OPENINGS, Judged.placeByPlace(OF_OPENINGS, e, crew), e, seed);
        }
        assertTrue(held > 1_000, "these walls have too little to judge: " + held);
    }

    private static int compared(List<? extends Rule> rules, List<Judged> together, Evidence e, long seed) {
        int held = 0;
        for (int i = 0; i < rules.size(); i++) {
            Judged alone = Judged.by(rules.get(i), e);
            String where = alone.rule() + " on wall of seed " + seed;
            assertEquals(alone.rule(), together.get(i).rule(), where);
            assertEquals(alone.outcomes(), together.get(i).outcomes(), where);
            assertEquals(alone.held(), together.get(i).held(), where);
            held += alone.held();
        }
        return held;
    }

    @Test
    void aRuleThatFailsAtOneJointTellsNothingButThat() {
        Evidence e = evidence(1);
        assertTrue(e.jointsHere().size() > 2, "a wall with joints");
        Joint last = e.jointsHere().get(e.jointsHere().size() - 1);
        Rule failing = new Failing(last);
        List<Rule> all = List.of(failing, OF_JOINTS.get(0));
        CheckResult r = Checker.check(e, all);
        assertEquals(List.of(new Crash("failing", "IllegalStateException: no such joint")), r.crashes());
        assertTrue(!r.held().containsKey("failing") && !r.notApplicable().containsKey("failing"), r.held() + " " + r.notApplicable());
        CheckResult without = Checker.check(e, List.of(OF_JOINTS.get(0)));
        assertEquals(without.weakPoints(), r.weakPoints());
        assertEquals(without.held(), r.held());
    }

    private static Evidence evidence(long seed) {
        return Evidence.of(RandomWall.of(seed).elevation(), Stage.WRAP, Practices.all().get((int) (seed % Practices.all().size())));
    }

    private record Failing(Joint at) implements JointRule {
        @Override
        public RuleInfo info() {
            return RuleInfo.of("failing", "fails", RuleInfo.Theme.LAPS);
        }

        @Override
        public String none() {
            return "nothing to fail at";
        }

        @Override
        public void judge(Evidence e, Joint j, Consumer<Outcome> tell) {
            if (j == at) {
                throw new IllegalStateException("no such joint");
            }
            tell.accept(Outcome.Holds.of(j.outer().piece().id()));
        }
    }
}
