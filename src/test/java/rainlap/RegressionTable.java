package rainlap;

import java.util.List;
import java.util.function.Function;
import java.util.function.ToLongFunction;
import java.util.stream.Collectors;
import rainlap.check.Rules;
import rainlap.joint.JointKind;
import rainlap.wall.Stage;

/** What the shipped walls give, rule by rule, as a page that shows every change. */
final class RegressionTable {
    private RegressionTable() {}

    static String of(List<Shipped> walls) {
        StringBuilder page = new StringBuilder("# Regression table\n\nWhat the walls in `elevations/` give under their own practice, at the wrap stage and"
                + " finished; written by `ShippedWallsTest`, which fails when it changed.\n\n## Weak points at the wrap stage\n\n");
        List<Shipped> wrapped = walls.stream().map(w -> w.at(Stage.WRAP)).toList();
        weakPoints(page, wrapped);
        page.append("\n## Weak points of the finished walls\n\nThose on which anything of the cavity or the face is drawn.\n\n");
        weakPoints(page, walls.stream().filter(Shipped::hasTwoStages).map(w -> w.at(Stage.FINISHED)).toList());
        page.append("\n## Buildings\n\nWhat the walls give as parts of the buildings in `elevations/buildings/`, at the wrap stage.\n\n");
        weakPoints(page, Shipped.inBuildings());
        page.append("\n## The walls\n\nCounted at the wrap stage.\n\n");
        theWalls(page, wrapped);
        return page.toString();
    }

    private static void weakPoints(StringBuilder page, List<Shipped> walls) {
        row(page, "rule", walls, Shipped::file);
        row(page, "---", walls, w -> "--:");
        Rules.all().forEach(r -> counts(page, r.info().id(), walls, w -> w.result().weakPoints().stream()
                .filter(p -> p.finding().rule().equals(r.info().id())).count()));
        counts(page, "**all**", walls, w -> w.result().weakPoints().size());
        for (int d = 0; d <= 2; d++) {
            int defences = d;
            counts(page, "with " + d + (d == 1 ? " defence" : " defences"), walls,
                    w -> w.result().weakPoints().stream().filter(p -> p.finding().defences() == defences).count());
        }
        counts(page, "not judged", walls, w -> w.result().unchecked().size());
    }

    private static void theWalls(StringBuilder page, List<Shipped> walls) {
        row(page, "", walls, Shipped::file);
        row(page, "---", walls, w -> "--:");
        row(page, "practice", walls, w -> w.wall().practice().orElseThrow());
        counts(page, "pieces", walls, w -> w.wall().pieces().size());
        for (JointKind kind : JointKind.values()) {
            counts(page, kind.inWords() + "s", walls, w -> w.result().evidence().joints().ofKind(kind).count());
        }
        counts(page, "places as asked", walls, w -> w.result().held().values().stream().mapToInt(Integer::intValue).sum());
    }

    private static void counts(StringBuilder page, String name, List<Shipped> walls, ToLongFunction<Shipped> count) {
        row(page, name, walls, w -> count.applyAsLong(w) == 0 ? "" : Long.toString(count.applyAsLong(w)));
    }

    private static void row(StringBuilder page, String name, List<Shipped> walls, Function<Shipped, String> cell) {
        page.append("| ").append(name).append(" | ").append(walls.stream().map(cell).collect(Collectors.joining(" | "))).append(" |\n");
    }
}
