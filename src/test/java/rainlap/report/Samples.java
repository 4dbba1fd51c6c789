package rainlap.report;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import rainlap.check.CheckResult;
import rainlap.check.Checker;
import rainlap.check.Crash;
import rainlap.check.Unchecked;
import rainlap.check.WeakPoint;
import rainlap.file.ElevationFile;
import rainlap.geom.Point;
import rainlap.practice.Practice;
import rainlap.practice.Practices;
import rainlap.rule.Evidence;
import rainlap.rule.Finding;
import rainlap.rule.Place;
import rainlap.source.Source;
import rainlap.wall.Elevation;
import rainlap.wall.Stage;
import rainlap.wall.Surface;
import rainlap.water.Step;

/** Results with known content. */
final class Samples {
    /** Two courses, the upper one tucked behind the lower; a third beside them, 0.5 short of it; tape over the butt. */
    static final String WALL = """
            { "rainlap": 1, "name": "Sample", "practice": "au-abcb-2022",
              "wall": { "outline": [[0, 0], [3000, 0], [3000, 2400], [0, 2400]], "edges": ["base", "free", "eave", "free"] },
              "openings": [ { "id": "W1", "kind": "window", "rect": [300, 600, 600, 300], "reveal": 90 } ],
              "pieces": [
                { "id": "M1", "material": "foil-membrane", "rect": [0, 0, 2000, 1350] },
                { "id": "M2", "material": "foil-membrane", "rect": [0, 1212.5, 2000, 1350], "under": ["M1"] },
                { "id": "M3", "material": "foil-membrane", "rect": [2000.5, 0, 1000, 1000] },
                { "id": "T1", "material": "foil-tape-60", "line": [[2000, 0], [2000, 800]] } ] }
            """;

    private Samples() {}

    static Elevation elevation() {
        var reading = ElevationFile.read("sample.json", WALL.getBytes(StandardCharsets.UTF_8));
        return reading.elevation().orElseThrow(() -> new AssertionError(reading.problems()));
    }

    static Evidence evidence() {
        return Evidence.of(elevation(), Stage.WRAP, Practices.find("au-abcb-2022").orElseThrow());
    }

    static Finding finding(int defences, String rule) {
        Practice practice = Practices.common();
        Place where = new Place(Surface.WALL, List.of(new Point(0, 121250), new Point(200000, 121250)), List.of());
        return new Finding(rule, List.of("M1", "M2"), where, OptionalDouble.of(137.5), OptionalDouble.of(150), "mm", "137 reversed",
                "150, or tape", Source.commonPractice(), java.util.Optional.of(practice.id()), "The lower sheet lies outside the upper one.",
                "Lift the upper sheet over the lower one by at least 150 mm, or cover the joint with tape centred on it, pressed on along its whole length.",
                defences, java.util.Optional.of("M1/M2"), List.of(new Step(Step.Kind.RUN_BEHIND, "M2", "M1", defences > 0, Surface.WALL, where.line())),
                OptionalDouble.empty());
    }

    /** Without a weak point, and with nothing unchecked. */
    static CheckResult sound() {
        return new CheckResult(evidence(), List.of(), Map.of("b-rule", 2, "a-rule", 1), Map.of(), List.of(), List.of());
    }

    /** A reverse lap of 100 from +1100 to +1200 on 1200 by 2000 of wall, in 50 mm/h of rain and no stated wind. */
    static CheckResult rain() {
        String wall = """
                { "rainlap": 1, "name": "Rain", "exposure": { "rain_mm_h": 50 },
                  "wall": { "outline": [[0, 0], [1200, 0], [1200, 2000], [0, 2000]], "edges": ["base", "free", "free", "free"] },
                  "pieces": [
                    { "id": "M2", "material": "foil-membrane", "rect": [0, 1100, 1200, 900] },
                    { "id": "M1", "material": "foil-membrane", "rect": [0, -40, 1200, 1240] } ] }
                """;
        return Checker.check(ElevationFile.read("rain.json", wall.getBytes(StandardCharsets.UTF_8)).elevation().orElseThrow(), Stage.WRAP, Practices.common());
    }

    /** Long words in every column. */
    static CheckResult widest() {
        Finding f = finding(2, "a-rule-with-a-very-long-name-indeed");
        Finding wide = new Finding(f.rule(), List.of("a-piece-with-a-long-name", "another-one"), f.where(), f.measured(), f.required(), f.unit(),
                "words that go on and on", "and so do what is asked of it", f.source(), f.spokenBy(), f.says(), f.remedy(), 2, f.joint(), f.path(),
                OptionalDouble.of(123_456));
        return new CheckResult(evidence(), List.of(new WeakPoint(1, wide)), Map.of(), Map.of(), List.of(), List.of());
    }

    /** One weak point of each rank, two unchecked for one reason, a rule that failed. */
    static CheckResult mixed() {
        List<WeakPoint> points = List.of(new WeakPoint(1, finding(0, "reverse-lap")), new WeakPoint(2, finding(0, "bare-wall")),
                new WeakPoint(3, finding(1, "joint-without-tape")), new WeakPoint(4, finding(2, "laps-not-staggered")));
        List<Unchecked> unchecked = List.of(new Unchecked("short-corner-wrap", List.of("M1"), "the neighbour is not known"),
                new Unchecked("short-corner-wrap", List.of("M2"), "the neighbour is not known"));
        return new CheckResult(evidence(), points, Map.of("a-rule", 1), Map.of("tape-order", "there is no opening"), unchecked,
                List.of(new Crash("z-rule", "ArithmeticException: / by zero")));
    }
}
