package rainlap.report;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import rainlap.building.Building;
import rainlap.check.BuildingResult;
import rainlap.check.BuildingResult.OneWall;
import rainlap.check.BuildingResult.Ranking;
import rainlap.check.WeakPoint;

/** What the check of a building found as plain text for a terminal: one list, worst first, then what holds for each wall. */
public final class BuildingTable {
    private static final List<Columns.Column> HEADINGS = List.of(new Columns.Column("no.", 4, true), new Columns.Column("wall", 8, false),
            new Columns.Column("defences", 8, true), new Columns.Column("l/h", 6, true), new Columns.Column("rule", 22, false),
            new Columns.Column("pieces", 14, false), new Columns.Column("drawn", 12, false), new Columns.Column("asked", 12, false));
    private static final int RULE = 4;

    private final BuildingResult result;
    private final List<String> lines = new ArrayList<>();

    private BuildingTable(BuildingResult result) {
        this.result = result;
    }

    /** @param files the name of each elevation's file, in order */
    public static List<String> lines(String file, List<String> files, BuildingResult result) {
        BuildingTable table = new BuildingTable(result);
        table.addHeading(file);
        table.addWeakPoints();
        table.addCorners();
        for (int i = 0; i < files.size(); i++) {
            table.lines.add("");
            table.add("", result.walls().get(i).wall().id().toUpperCase(java.util.Locale.ROOT));
            table.lines.addAll(TerminalTable.besides(files.get(i), result.walls().get(i).result()));
        }
        return List.copyOf(table.lines);
    }

    private void addHeading(String file) {
        Building b = result.building();
        add("", b.name() + " (" + file + ")");
        add("", TerminalTable.count(b.walls().size(), "elevation") + " round the plan, seen from outside from left to right: "
                + b.walls().stream().map(Building.Wall::id).collect(Collectors.joining(", ")) + (b.closed() ? ", and round to the first" : "; open at both ends"));
        add("", "Each wall is judged by its own practice and exposure. Pieces of another wall have its name before theirs.");
        lines.add("");
    }

    private void addWeakPoints() {
        List<Ranking> all = result.weakPoints();
        if (!all.isEmpty()) {
            Columns columns = new Columns(HEADINGS);
            all.forEach(r -> columns.add(cells(r)));
            lines.addAll(columns.heading());
            for (int i = 0; i < all.size(); i++) {
                lines.addAll(columns.row(i));
                lines.addAll(TerminalTable.below(all.get(i).point().finding(), practice(all.get(i).wall()), " ".repeat(columns.indent(RULE))));
            }
            lines.add("");
        }
        List<WeakPoint> points = all.stream().map(Ranking::point).toList();
        add("", TerminalTable.capital(TerminalTable.counts(points)));
    }

    private static List<String> cells(Ranking r) {
        List<String> out = new ArrayList<>(TerminalTable.cells(r.point()));
        out.add(1, r.wall());
        return out;
    }

    private String practice(String wall) {
        return result.walls().stream().filter(w -> w.wall().id().equals(wall)).findFirst().orElseThrow().result().evidence().practice().id();
    }

    private void addCorners() {
        lines.add("");
        add("", "What goes round the corners:");
        for (RoundCorner c : RoundCorner.all(result)) {
            add("  ", c.left() + " and " + c.right() + ": " + (c.isNothing() ? "nothing" : told(c)));
        }
        for (OneWall w : result.walls()) {
            if (!w.unfolded().leftOut().isEmpty()) {
                add("  ", w.wall().id() + " draws wholly beyond a corner, where the wall there holds: " + String.join(", ", w.unfolded().leftOut()));
            }
        }
    }

    private static String told(RoundCorner c) {
        List<String> parts = new ArrayList<>();
        if (!c.together().isEmpty()) {
            parts.add("one piece drawn on both: " + c.together().stream().map(p -> String.join(" = ", p)).collect(Collectors.joining(", ")));
        }
        if (!c.ontoRight().isEmpty()) {
            parts.add("onto " + c.right() + ": " + String.join(", ", c.ontoRight()));
        }
        if (!c.ontoLeft().isEmpty()) {
            parts.add("onto " + c.left() + ": " + String.join(", ", c.ontoLeft()));
        }
        return String.join("; ", parts);
    }

    private void add(String leadIn, String text) {
        lines.addAll(Columns.hanging(leadIn, PlainText.of(text), TerminalTable.COLUMNS));
    }
}
