package rainlap.check;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import rainlap.practice.Limit;
import rainlap.practice.ShiftedPractice;
import rainlap.rule.Rule;

/** A practice of the user's own may ask for anything: no value of a limit, not even one that is never enough, makes a rule fail. */
class AnyLimitTest {
    @TestFactory
    Stream<DynamicTest> noValueOfALimitMakesARuleFail() {
        return Rules.all().stream().filter(r -> !r.info().limits().isEmpty()).map(r -> DynamicTest.dynamicTest(r.info().id(),
                () -> Example.of(r.info().id()).forEach(x -> r.info().limits().forEach(limit -> judge(r, x, limit)))));
    }

    private static void judge(Rule rule, Example x, Limit limit) {
        for (double value : new double[] {Double.POSITIVE_INFINITY, 100_000, 1e-6}) {
            CheckResult result = Checker.check(x.evidence().under(ShiftedPractice.of(x.practice(), limit, value)), List.of(rule));
            assertEquals(List.of(), result.crashes(), () -> x.file() + " with " + limit.id() + " " + value);
        }
    }
}
