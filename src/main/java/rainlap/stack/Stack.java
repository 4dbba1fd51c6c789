package rainlap.stack;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import java.util.stream.IntStream;
import rainlap.geom.Box;
import rainlap.geom.BoxTree;
import rainlap.wall.Elevation;
import rainlap.wall.LayingOrder;
import rainlap.wall.Piece;
import rainlap.wall.Stage;
import rainlap.wall.Surface;

/** All faces of an elevation at a stage, by surface, and who lies outside whom. */
public final class Stack {
    private final Elevation elevation;
    private final Stage stage;
    private final LayingOrder order;
    /** In order: a wall has many, and is asked for one by another. */
    private final Map<Surface, Layer> surfaces = new LinkedHashMap<>();

    private record Layer(List<Face> faces, BoxTree tree) {
        static Layer of(List<Face> faces) {
            List<Box> boxes = new ArrayList<>(faces.size());
            faces.forEach(f -> boxes.add(f.box()));
            return new Layer(List.copyOf(faces), new BoxTree(boxes));
        }
    }

    private Stack(Elevation elevation, Stage stage, LayingOrder order) {
        this.elevation = elevation;
        this.stage = stage;
        this.order = order;
    }

    public static Stack of(Elevation elevation, Stage stage) {
        return of(elevation, stage, Crew.ALONE);
    }

    public static Stack of(Elevation elevation, Stage stage, Crew crew) {
        Found<LayingOrder> order = new Found<>(() -> new LayingOrder(elevation.pieces()));
        Found<Map<Surface, List<Face>>> faces = new Found<>(() -> folded(elevation, stage, crew));
        crew.all(List.of(faces, order));
        Stack stack = new Stack(elevation, stage, order.found());
        stack.lay(faces.found(), crew);
        return stack;
    }

    private void lay(Map<Surface, List<Face>> faces, Crew crew) {
        List<Surface> all = faces.keySet().stream().sorted().toList();
        List<Layer> layers = crew.gather(all, run -> run.stream().map(s -> Layer.of(faces.get(s))).toList());
        IntStream.range(0, all.size()).forEach(i -> surfaces.put(all.get(i), layers.get(i)));
    }

    private static Map<Surface, List<Face>> folded(Elevation elevation, Stage stage, Crew crew) {
        Folding folding = new Folding(elevation);
        List<Integer> seen = IntStream.range(0, elevation.pieces().size())
                .filter(i -> stage.sees(elevation.pieces().get(i).material().layer())).boxed().toList();
        Map<Surface, List<Face>> all = new HashMap<>();
        crew.inRuns(seen, run -> bySurface(folded(folding, elevation.pieces(), run)))
                .forEach(some -> some.forEach((on, faces) -> all.merge(on, faces, Stack::joined)));
        return all;
    }

    private static List<Face> joined(List<Face> first, List<Face> more) {
        first.addAll(more);
        return first;
    }

    private static Map<Surface, List<Face>> bySurface(List<Face> faces) {
        Map<Surface, List<Face>> out = new HashMap<>();
        List<Face> wall = new ArrayList<>(faces.size());
        faces.forEach(f -> (f.surface().isWall() ? wall : out.computeIfAbsent(f.surface(), s -> new ArrayList<>())).add(f));
        if (!wall.isEmpty()) {
            out.put(Surface.WALL, wall);
        }
        return out;
    }

    /** The faces of pieces with these numbers. */
    private static List<Face> folded(Folding folding, List<Piece> pieces, List<Integer> numbers) {
        List<Face> faces = new ArrayList<>(2 * numbers.size());
        numbers.forEach(i -> folding.addFaces(i, pieces.get(i), faces));
        return faces;
    }

    public Elevation elevation() {
        return elevation;
    }

    public Stage stage() {
        return stage;
    }

    /** The surfaces that carry anything, in order. */
    public List<Surface> surfaces() {
        return List.copyOf(surfaces.keySet());
    }

    /** The faces on a surface, in laying order. */
    public List<Face> on(Surface surface) {
        Layer l = surfaces.get(surface);
        return l == null ? List.of() : l.faces();
    }

    /** Hands over every face on a surface whose box shares at least a point with a box, in no particular order. */
    public void meeting(Surface surface, Box box, Consumer<Face> each) {
        Layer l = surfaces.get(surface);
        if (l != null) {
            l.tree().query(box, i -> each.accept(l.faces().get(i)));
        }
    }

    /** The same in laying order. */
    public List<Face> meeting(Surface surface, Box box) {
        Layer l = surfaces.get(surface);
        if (l == null) {
            return List.of();
        }
        int[] found = l.tree().meeting(box);
        List<Face> out = new ArrayList<>(found.length);
        for (int i : found) {
            out.add(l.faces().get(i));
        }
        return Collections.unmodifiableList(out);
    }

    /** Whether face a lies outside face b where they overlap. */
    public boolean isOutside(Face a, Face b) {
        return order.isOutside(a.number(), b.number());
    }

    public LayingOrder order() {
        return order;
    }
}
