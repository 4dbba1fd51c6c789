package rainlap.file;

import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import rainlap.building.Building;
import rainlap.building.Building.Wall;
import rainlap.building.Corner;
import rainlap.building.Unfolded;
import rainlap.file.BuildingReader.Entry;
import rainlap.file.BuildingReader.Form;
import rainlap.geom.Box;
import rainlap.geom.Grid;
import rainlap.wall.Elevation;
import rainlap.wall.Opening;
import rainlap.wall.OutlineEdge;
import rainlap.wall.Penetration;
import rainlap.wall.Piece;

/** Joins elevations that are sound by themselves, and says where they do not fit one another. */
final class Joining {
    private final Form form;
    private final List<Wall> walls;
    private final Building building;
    private final Problems problems;

    private Joining(Form form, List<Wall> walls, Problems problems) {
        this.form = form;
        this.walls = walls;
        this.building = new Building(form.name(), walls, form.closed());
        this.problems = problems;
    }

    static Optional<Building> joined(Form form, List<Reading> elevations, Problems problems) {
        Joining j = new Joining(form, BuildingFile.walls(form, elevations), problems);
        for (int i = 0; i < j.walls.size(); i++) {
            OptionalInt next = j.building.rightOf(i);
            if (next.isPresent()) {
                j.corner(i, next.getAsInt());
                j.names(i, next.getAsInt());
            } else {
                j.end(i, true);
                j.end(0, false);
            }
        }
        for (int i = 0; i < j.walls.size() && problems.isEmpty(); i++) {
            j.width(i);
        }
        for (int i = 0; i < j.walls.size() && problems.isEmpty(); i++) {
            j.knots(i);
        }
        return problems.isEmpty() ? Optional.of(j.building) : Optional.empty();
    }

    private void corner(int i, int next) {
        Optional<OutlineEdge> right = side(i, true), left = side(next, false);
        if (right.isEmpty() || left.isEmpty()) {
            return;
        }
        neighbour(i, right.get(), OptionalInt.of(next), "right");
        neighbour(next, left.get(), OptionalInt.of(i), "left");
        String a = id(i), b = id(next);
        if (right.get().role() != left.get().role()) {
            problems.add(at(next), b + " stands round the right-hand corner of " + a + ", which is an " + right.get().role().word() + " there and an "
                    + left.get().role().word() + " here", "give both sides one role");
        } else if (building.cornerRightOf(i).isEmpty()) {
            problems.add(at(next), "the corner of " + a + " and " + b + " has no height in common", "levels must be counted from the same zero on both");
        }
    }

    private Optional<OutlineEdge> side(int wall, boolean right) {
        Optional<OutlineEdge> side = Corner.sideOf(walls.get(wall).elevation().outline(), right);
        if (side.isEmpty()) {
            String which = right ? "right" : "left";
            problems.add(at(wall), id(wall) + " has no plumb corner at its " + which + "-hand end, where " + id(right ? next(wall) : previous(wall))
                    + " goes on", "give that side of its outline the role external-corner or internal-corner, or list the elevations in order"
                    + " round the plan, each round the right-hand corner of the one before");
        }
        return side;
    }

    private int next(int wall) {
        return building.rightOf(wall).orElseThrow();
    }

    private int previous(int wall) {
        return building.leftOf(wall).orElseThrow();
    }

    /** An end of an open ring. */
    private void end(int wall, boolean right) {
        Corner.sideOf(walls.get(wall).elevation().outline(), right)
                .ifPresent(side -> neighbour(wall, side, OptionalInt.empty(), right ? "right" : "left"));
    }

    /** Where an elevation names another one of this building as its neighbour, that one must stand there. */
    private void neighbour(int wall, OutlineEdge side, OptionalInt there, String which) {
        Optional<String> said = side.neighbour();
        boolean isThere = said.isPresent() && there.isPresent() && isFile(there.getAsInt(), said.get());
        if (said.isPresent() && !isThere && IntStream.range(0, walls.size()).anyMatch(k -> isFile(k, said.get()))) {
            problems.add(at(wall), id(wall) + " names " + Quoted.text(said.get()) + " as its neighbour on the " + which + ", but "
                    + (there.isPresent() ? id(there.getAsInt()) + " stands there" : "the building is open there"), "list the elevations in order round the plan, each round the right-hand corner of the one before");
        }
    }

    private boolean isFile(int wall, String name) {
        Path file = form.entries().get(wall).path().getFileName();
        return file != null && file.toString().equals(name);
    }

    private void names(int i, int next) {
        clash(walls.get(i), walls.get(next), form.entries().get(next));
        clash(walls.get(next), walls.get(i), form.entries().get(i));
    }

    /** What one wall calls its own must not be what it would call something of its neighbour. */
    private void clash(Wall wall, Wall beside, Entry entry) {
        Set<String> own = new HashSet<>(things(wall.elevation()));
        things(beside.elevation()).stream().filter(t -> own.contains(beside.name(t))).findFirst().ifPresent(t -> problems.add(entry.at(),
                Quoted.text(t) + " of this elevation is called " + Quoted.text(beside.name(t)) + " on " + Quoted.text(wall.id())
                + ", which has something of that name", "give the elevation another id"));
    }

    private static List<String> things(Elevation e) {
        return Stream.of(e.pieces().stream().map(Piece::id), e.openings().stream().map(Opening::id), e.penetrations().stream().map(Penetration::id))
                .flatMap(s -> s).toList();
    }

    /** Water is followed over a wall and those beside it, laid flat: places there are kept as whole numbers that end a little beyond 20 km. */
    private void width(int wall) {
        Box own = box(wall);
        long left = building.leftOf(wall).isPresent() ? box(previous(wall)).width() : 0, right = building.rightOf(wall).isPresent() ? box(next(wall)).width() : 0;
        if (Math.max(left - own.minX(), own.maxX() + right) > 2 * Grid.of(Grid.LIMIT_MM)) {
            problems.add(at(wall), id(wall) + " and the walls beside it, laid flat, reach further than 20 km from the origin of its drawing", "coordinates are in mm");
        }
    }

    private Box box(int wall) {
        return walls.get(wall).elevation().outline().box();
    }

    private void knots(int wall) {
        KnotFinder.find(Unfolded.of(building, wall).flat().pieces()).ifPresent(k -> problems.add(at(wall), "seen from " + id(wall) + ", pieces "
                + Quoted.text(k.tucked().id()) + ", " + Quoted.text(k.over().id()) + " and " + Quoted.text(k.third().id())
                + " lie round in a circle at one point", "tuck them alike on both walls, or end one of them before the corner"));
    }

    private int at(int wall) {
        return form.entries().get(wall).at();
    }

    private String id(int wall) {
        return Quoted.text(walls.get(wall).id());
    }
}
