package rainlap.report;

import java.util.List;
import java.util.function.Function;
import java.util.function.ToLongFunction;
import java.util.stream.Stream;
import rainlap.check.CheckResult;
import rainlap.geom.Box;
import rainlap.joint.Joint;
import rainlap.report.ListTable.Column;
import rainlap.rule.Place;

/** The joints as a table, wall by wall, in the order of the findings file. */
final class JointList {
    private JointList() {}

    /**
     * @param wall its id in a building, else the elevation's name
     * @param joint on it
     */
    record Row(String wall, CheckResult result, Joint joint) {
        private Place place() {
            return Place.line(result.evidence().elevation(), joint().surface(), joint().line());
        }

        private Box box() {
            return place().box();
        }
    }

    private static final List<Column<Row>> COLUMNS = List.of(
            new Column<>("wall", 16, r -> Cell.of(r.wall())),
            joint("joint", 16, Joint::id),
            joint("kind", 12, j -> j.kind().word()),
            joint("outer piece", 14, j -> j.outer().piece().id()),
            joint("inner piece", 14, j -> j.inner().piece().id()),
            new Column<>("place", 30, r -> Cell.of("at " + r.place().inWords())),
            joint("surface", 10, j -> j.surface().name()),
            new Column<>("x from mm", 9, r -> Cell.mm(r.box().minX())),
            new Column<>("x to mm", 9, r -> Cell.mm(r.box().maxX())),
            new Column<>("level from mm", 9, r -> Cell.mm(r.box().minY())),
            new Column<>("level to mm", 9, r -> Cell.mm(r.box().maxY())),
            new Column<>("length mm", 9, r -> Cell.mm(Math.round(r.joint().lengthMm() * 100))),
            new Column<>("lap mm", 9, r -> r.joint().kind().isLap() ? Cell.mm(r.joint().lap()) : Cell.NOTHING),
            new Column<>("gap mm", 9, r -> r.joint().kind().isLap() ? Cell.NOTHING : Cell.mm(r.joint().gap())),
            new Column<>("sealed by its own adhesive", 10, r -> Cell.of(r.joint().sealed())),
            new Column<>("taped", 8, r -> Cell.of(taped(r.joint()))),
            tape("tape on outer mm", Joint::coverOnOuter),
            tape("tape on inner mm", Joint::coverOnInner),
            new Column<>("litres per hour", 9, r -> Cell.of(r.result().evidence().trace().litresAt(r.joint()))),
            new Column<>("geometry (WKT, mm)", 40, r -> Cell.of(r.place().wkt())));

    private static Column<Row> joint(String heading, int width, Function<Joint, String> text) {
        return new Column<>(heading, width, r -> Cell.of(text.apply(r.joint())));
    }

    private static Column<Row> tape(String heading, ToLongFunction<Joint> cover) {
        return new Column<>(heading, 9, r -> r.joint().isTaped() ? Cell.mm(cover.applyAsLong(r.joint())) : Cell.NOTHING);
    }

    /** In part where neither tape nor a further sheet covers some of it. */
    private static String taped(Joint j) {
        return !j.isTaped() ? "no" : j.uncovered().isEmpty() ? "yes" : "in part";
    }

    static Stream<Row> rows(String wall, CheckResult result) {
        return result.evidence().joints().all().stream().map(j -> new Row(wall, result, j));
    }

    static ListTable of(List<Row> rows) {
        return ListTable.of("Joints", COLUMNS, rows);
    }
}
