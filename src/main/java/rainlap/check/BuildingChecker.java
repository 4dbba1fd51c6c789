package rainlap.check;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import rainlap.building.Building;
import rainlap.building.Unfolded;
import rainlap.geom.Box;
import rainlap.practice.Practice;
import rainlap.rule.Evidence;
import rainlap.rule.Finding;
import rainlap.rule.Rule;
import rainlap.stack.Crew;
import rainlap.wall.Elevation;
import rainlap.wall.Stage;

/**
 * Checks each wall of a building with what comes round from its neighbours, by its own practice and exposure, and ranks all that is found in one
 * list. What lies beyond a joined corner is told on the wall there, and what lies exactly along one on the wall to the left of it.
 */
public final class BuildingChecker {
    private BuildingChecker() {}

    /** @param practices the practice that each wall is judged by */
    public static BuildingResult check(Building building, Stage stage, Function<Elevation, Practice> practices, List<Rule> rules, int threads) {
        List<Unfolded> unfolded = new ArrayList<>();
        List<CheckResult> results = new ArrayList<>();
        for (int i = 0; i < building.walls().size(); i++) {
            Unfolded wall = Unfolded.of(building, i);
            Crew crew = Crew.of(threads, wall.flat().pieces().size());
            Evidence evidence = Evidence.ofWall(wall, stage, practices.apply(wall.asBuilt()), crew);
            unfolded.add(wall);
            results.add(Checker.check(evidence, rules, crew));
        }
        List<Ranked> all = new ArrayList<>();
        for (int i = 0; i < results.size(); i++) {
            int wall = i;
            results.get(i).weakPoints().stream().map(WeakPoint::finding).filter(f -> !isToldBeyond(unfolded.get(wall), f))
                    .forEach(f -> all.add(new Ranked(wall, f)));
        }
        all.sort(Ranked.ORDER);
        List<BuildingResult.OneWall> walls = new ArrayList<>();
        for (int i = 0; i < results.size(); i++) {
            walls.add(new BuildingResult.OneWall(building.walls().get(i), unfolded.get(i), numbered(results.get(i), all, i)));
        }
        return new BuildingResult(building, walls);
    }

    private static boolean isToldBeyond(Unfolded wall, Finding f) {
        Box place = f.where().box();
        boolean left = wall.left().map(c -> c.line().box()).filter(c -> place.maxX() <= c.minX() && isBeside(c, place)).isPresent();
        boolean right = wall.right().map(c -> c.line().box())
                .filter(c -> place.minX() >= c.minX() && place.maxX() > c.minX() && isBeside(c, place)).isPresent();
        return f.where().surface().isWall() && (left || right);
    }

    /** Whether a place stands at a height at which the corner is joined. */
    private static boolean isBeside(Box corner, Box place) {
        return place.minY() < corner.maxY() && place.maxY() > corner.minY();
    }

    private static CheckResult numbered(CheckResult r, List<Ranked> all, int wall) {
        List<WeakPoint> points = new ArrayList<>();
        for (int i = 0; i < all.size(); i++) {
            if (all.get(i).wall() == wall) {
                points.add(new WeakPoint(i + 1, all.get(i).finding()));
            }
        }
        return new CheckResult(r.evidence(), points, r.held(), r.notApplicable(), r.unchecked(), r.crashes());
    }
}
