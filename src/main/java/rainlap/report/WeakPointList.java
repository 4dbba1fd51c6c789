package rainlap.report;

import java.util.List;
import java.util.function.Function;
import rainlap.check.CheckResult;
import rainlap.check.Rules;
import rainlap.check.WeakPoint;
import rainlap.geom.Box;
import rainlap.report.ListTable.Column;
import rainlap.rule.Finding;
import rainlap.source.Source;

/** The weak points as a table, worst first. */
final class WeakPointList {
    private WeakPointList() {}

    /** @param wall its id in a building, else the elevation's name */
    record Row(String wall, CheckResult result, WeakPoint point) {
        private Finding finding() {
            return point.finding();
        }

        private Box box() {
            return point.finding().where().box();
        }
    }

    private static final List<Column<Row>> COLUMNS = List.of(
            new Column<>("weak point", 8, r -> Cell.of(r.point().number())),
            new Column<>("wall", 16, r -> Cell.of(r.wall())),
            new Column<>("defences (3: or more)", 10, r -> Cell.of(r.finding().defences())),
            new Column<>("litres per hour", 9, r -> Cell.of(r.finding().litresPerHour())),
            finding("rule", 22, Finding::rule),
            finding("title", 26, f -> Rules.find(f.rule()).map(i -> i.info().title()).orElse(f.rule())),
            finding("pieces", 18, f -> String.join(", ", f.pieces())),
            finding("place", 30, f -> "at " + f.where().inWords()),
            finding("surface", 10, f -> f.where().surface().name()),
            new Column<>("x from mm", 9, r -> Cell.mm(r.box().minX())),
            new Column<>("x to mm", 9, r -> Cell.mm(r.box().maxX())),
            new Column<>("level from mm", 9, r -> Cell.mm(r.box().minY())),
            new Column<>("level to mm", 9, r -> Cell.mm(r.box().maxY())),
            new Column<>("measured", 10, r -> Cell.of(r.finding().measured())),
            new Column<>("required", 10, r -> Cell.of(r.finding().required())),
            finding("unit", 7, Finding::unit),
            finding("drawn", 18, Finding::drawn),
            finding("asked", 18, Finding::asked),
            source("document", 28, Source::document),
            source("edition", 10, Source::edition),
            source("clause", 16, Source::clause),
            source("known", 16, s -> s.known().text()),
            new Column<>("practice that asks", 14, r -> Cell.of(r.finding().spokenBy())),
            finding("says", 60, Finding::says),
            finding("remedy", 60, Finding::remedy),
            new Column<>("joint", 14, r -> Cell.of(r.finding().joint())),
            finding("geometry (WKT, mm)", 40, f -> f.where().wkt()));

    private static Column<Row> finding(String heading, int width, Function<Finding, String> text) {
        return new Column<>(heading, width, r -> Cell.of(text.apply(r.finding())));
    }

    private static Column<Row> source(String heading, int width, Function<Source, String> text) {
        return finding(heading, width, f -> text.apply(f.source()));
    }

    static ListTable of(List<Row> rows) {
        return ListTable.of("Weak points", COLUMNS, rows);
    }
}
