package rainlap.rule;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import rainlap.building.Unfolded;
import rainlap.geom.EdgeFrame;
import rainlap.geom.Point;
import rainlap.geom.Region;
import rainlap.geom.Segment;
import rainlap.joint.Bare;
import rainlap.joint.BuildingCorner;
import rainlap.joint.Joint;
import rainlap.joint.Joints;
import rainlap.joint.OpeningEdge;
import rainlap.joint.OpeningCorner;
import rainlap.joint.Reveals;
import rainlap.joint.Run;
import rainlap.material.Material;
import rainlap.material.MaterialKind;
import rainlap.practice.Practice;
import rainlap.stack.Crew;
import rainlap.stack.Face;
import rainlap.stack.Found;
import rainlap.stack.Stack;
import rainlap.wall.Elevation;
import rainlap.wall.Opening;
import rainlap.wall.Piece;
import rainlap.wall.Stage;
import rainlap.wall.Surface;
import rainlap.water.Drive;
import rainlap.water.DrivingRain;
import rainlap.water.Trace;

/**
 * All a rule is shown.
 *
 * @param jointsHere those of the joints of which any part lies on this wall or on a reveal; what lies wholly beyond the outline is folded
 *     round a corner, over the top or under the base, and the elevation there judges it, with the sheets it has there
 * @param membraneJoints those of them that join membrane to membrane
 * @param shared what rules that look at the same need work out but once
 */
public record Evidence(Stack stack, Joints joints, List<Joint> jointsHere, List<Joint> membraneJoints, List<OpeningEdge> openingEdges,
        List<OpeningCorner> openingCorners, List<BuildingCorner> buildingCorners, List<Bare> bare, Trace trace, Practice practice, Shared shared) {
    /** A line further than this inside the outline lies on the wall without a closer look, grid units. */
    private static final long NEAR = 3;

    public Evidence {
        jointsHere = List.copyOf(jointsHere);
        membraneJoints = List.copyOf(membraneJoints);
        openingEdges = List.copyOf(openingEdges);
        openingCorners = List.copyOf(openingCorners);
        buildingCorners = List.copyOf(buildingCorners);
        bare = List.copyOf(bare);
    }

    /** With nothing worked out yet. */
    private Evidence(Stack stack, Joints joints, List<Joint> jointsHere, List<Joint> membraneJoints, List<OpeningEdge> openingEdges,
            List<OpeningCorner> openingCorners, List<BuildingCorner> buildingCorners, List<Bare> bare, Trace trace, Practice practice) {
        this(stack, joints, jointsHere, membraneJoints, openingEdges, openingCorners, buildingCorners, bare, trace, practice, new Shared());
    }

    public static Evidence of(Elevation elevation, Stage stage, Practice practice) {
        return of(elevation, stage, practice, Crew.ALONE);
    }

    public static Evidence of(Elevation elevation, Stage stage, Practice practice, Crew crew) {
        Stack stack = Stack.of(elevation, stage, crew);
        Found<Joined> joined = new Found<>(() -> Joined.of(stack, crew.aside()));
        Found<Trace> trace = new Found<>(() -> Trace.of(stack, Drive.of(elevation.exposure(), practice, stage), DrivingRain.of(elevation.exposure()), crew));
        Found<Reveals> reveals = new Found<>(() -> Reveals.of(stack));
        crew.all(List.of(trace, joined, reveals));
        Joined j = joined.found();
        Reveals r = reveals.found();
        return new Evidence(stack, j.joints, j.here, j.ofMembrane, r.edges(), r.corners(), BuildingCorner.of(stack), j.bare,
                trace.found(), practice);
    }

    /** The joints, those that lie here, those of them that join membrane to membrane, and what all leave bare. */
    private record Joined(Joints joints, List<Joint> here, List<Joint> ofMembrane, List<Bare> bare) {
        static Joined of(Stack stack, Crew crew) {
            Joints joints = Joints.of(stack, crew);
            List<Joint> here = crew.gather(joints.all(), run -> run.stream().filter(j -> isOnWall(stack, j)).toList());
            return new Joined(joints, here, crew.gather(here, MembraneJoints::among), Bare.of(stack, joints, crew));
        }
    }

    /**
     * One wall of a building: it is judged as it is built, with what comes round from its neighbours; its corners and its water by the walls laid flat
     * side by side.
     */
    public static Evidence ofWall(Unfolded wall, Stage stage, Practice practice, Crew crew) {
        Evidence alone = of(wall.asBuilt(), stage, practice, crew);
        Stack flat = Stack.of(wall.flat(), stage, crew);
        List<BuildingCorner> corners = new ArrayList<>(wall.corners().stream().map(c -> BuildingCorner.between(flat, c)).toList());
        alone.buildingCorners.stream().flatMap(c -> wall.unjoined(c.edge()).stream()).map(c -> BuildingCorner.of(alone.stack, c)).forEach(corners::add);
        Trace trace = Trace.ofWall(alone.trace, flat, wall.left().isPresent(), crew);
        return new Evidence(alone.stack, alone.joints, alone.jointsHere, alone.membraneJoints, alone.openingEdges, alone.openingCorners, corners,
                alone.bare, trace, practice);
    }

    public Elevation elevation() {
        return stack.elevation();
    }

    /** Where a piece lies on the wall, in the order of its parts; nowhere for one that is not seen at this stage. */
    public List<Face> onWall(String piece) {
        Map<String, List<Face>> faces = shared.of(Face.class, () -> stack.on(Surface.WALL).stream().collect(Collectors.groupingBy(f -> f.piece().id())));
        return faces.getOrDefault(piece, List.of());
    }

    /** The faces of one kind on the wall, in laying order. */
    public List<Face> onWall(MaterialKind kind) {
        Map<MaterialKind, List<Face>> faces = shared.of(MaterialKind.class, () -> stack.on(Surface.WALL).stream().collect(Collectors.groupingBy(f -> f.kind())));
        return faces.getOrDefault(kind, List.of());
    }

    /** The edges of one opening: sill, left, right, head; none where it has no reveal. */
    public List<OpeningEdge> edges(Opening o) {
        Map<String, List<OpeningEdge>> edges = shared.of(OpeningEdge.class, () -> openingEdges.stream().collect(Collectors.groupingBy(x -> x.opening().id())));
        return edges.getOrDefault(o.id(), List.of());
    }

    /** The corners of one opening: lower left, lower right, upper left, upper right; none where it has no reveal. */
    public List<OpeningCorner> corners(Opening o) {
        Map<String, List<OpeningCorner>> corners = shared.of(OpeningCorner.class, () -> openingCorners.stream().collect(Collectors.groupingBy(c -> c.opening().id())));
        return corners.getOrDefault(o.id(), List.of());
    }

    /** The pieces that are looked at at this stage, those of one material together; in laying order. */
    public Collection<List<Piece>> byMaterial() {
        Map<String, List<Piece>> pieces = shared.of(Material.class, () -> elevation().pieces().stream().filter(p -> stage().sees(p.material().layer()))
                .collect(Collectors.groupingBy(p -> p.material().id(), LinkedHashMap::new, Collectors.toList())));
        return pieces.values();
    }

    /** Those of some kinds that are looked at at this stage, material by material. */
    public Stream<Piece> pieces(MaterialKind... kinds) {
        Set<MaterialKind> wanted = Set.of(kinds);
        return byMaterial().stream().filter(all -> wanted.contains(all.get(0).material().kind())).flatMap(List::stream);
    }

    /** The same wall under another practice, the water driven as before. */
    public Evidence under(Practice other) {
        return new Evidence(stack, joints, jointsHere, membraneJoints, openingEdges, openingCorners, buildingCorners, bare, trace, other);
    }

    /** The same with more of its water told. */
    public Evidence with(Trace more) {
        return new Evidence(stack, joints, jointsHere, membraneJoints, openingEdges, openingCorners, buildingCorners, bare, more, practice);
    }

    /** Whether any of a line lies on this wall or on a reveal; see {@link #jointsHere}. */
    public boolean isOnThisWall(Surface surface, List<Point> line) {
        for (int i = 0; surface.isWall() && i + 1 < line.size(); i++) {
            if (isOnWall(elevation().outline().region(), new Segment(line.get(i), line.get(i + 1)))) {
                return true;
            }
        }
        return !surface.isWall();
    }

    private static boolean isOnWall(Stack stack, Joint j) {
        for (Run r : j.runs()) {
            if (j.surface().isWall() && isOnWall(stack.elevation().outline().region(), r.line())) {
                return true;
            }
        }
        return !j.surface().isWall();
    }

    private static boolean isOnWall(Region outline, Segment s) {
        if (outline.isBox() && outline.box().contains(s.box().grow(NEAR))) {
            return true;
        }
        EdgeFrame edge = EdgeFrame.of(s);
        return !edge.inside(outline, edge.side()).isEmpty() || !edge.inside(outline, -edge.side()).isEmpty();
    }

    public Stage stage() {
        return stack.stage();
    }
}
