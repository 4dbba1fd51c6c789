package rainlap.check;

import java.util.List;
import java.util.TreeSet;
import rainlap.geom.BoxTree;
import rainlap.geom.Grid;
import rainlap.rule.Evidence;
import rainlap.rule.Finding;

/** Which findings of dimensions the way of a finding of the trace passes. */
final class Passed {
    private static final String OPEN_GAP = "open-gap";

    private final Evidence evidence;
    private final List<Finding> dimensions;
    private final BoxTree tree;

    Passed(Evidence evidence, List<Finding> dimensions) {
        this.evidence = evidence;
        this.dimensions = List.copyOf(dimensions);
        this.tree = new BoxTree(dimensions.stream()
                .map(f -> f.where().box().grow(Math.max(across(f), Passing.near(evidence.elevation(), f.where())))).toList());
    }

    List<Finding> by(Finding traced) {
        TreeSet<Integer> found = new TreeSet<>();
        for (Passing.Mark m : Passing.marks(evidence.elevation(), traced.where(), traced.path())) {
            tree.query(m.line().box(), i -> {
                if (!found.contains(i) && Passing.isNear(evidence.elevation(), m, dimensions.get(i).where(), across(dimensions.get(i)))) {
                    found.add(i);
                }
            });
        }
        return found.stream().map(dimensions::get).toList();
    }

    /** An open gap is told by one of its edges; water may get in at the other. */
    private static long across(Finding f) {
        return Passing.NEAR + (f.rule().equals(OPEN_GAP) ? Grid.of(f.measured().orElse(0)) : 0);
    }
}
