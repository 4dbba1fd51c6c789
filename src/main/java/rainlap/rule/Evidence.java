package rainlap.rule;

import java.util.List;
import rainlap.joint.Bare;
import rainlap.joint.BuildingCorner;
import rainlap.joint.Joints;
import rainlap.joint.OpeningEdge;
import rainlap.joint.OpeningCorner;
import rainlap.practice.Practice;
import rainlap.stack.Stack;
import rainlap.wall.Elevation;
import rainlap.wall.Stage;

/** All a rule is shown. */
public record Evidence(Stack stack, Joints joints, List<OpeningEdge> openingEdges, List<OpeningCorner> openingCorners,
        List<BuildingCorner> buildingCorners, List<Bare> bare, Practice practice) {
    public Evidence {
        openingEdges = List.copyOf(openingEdges);
        openingCorners = List.copyOf(openingCorners);
        buildingCorners = List.copyOf(buildingCorners);
        bare = List.copyOf(bare);
    }

    public static Evidence of(Elevation elevation, Stage stage, Practice practice) {
        Stack stack = Stack.of(elevation, stage);
        Joints joints = Joints.of(stack);
        return new Evidence(stack, joints, OpeningEdge.of(stack), OpeningCorner.of(stack), BuildingCorner.of(stack),
                Bare.of(stack, joints), practice);
    }

    public Elevation elevation() {
        return stack.elevation();
    }

    public Stage stage() {
        return stack.stage();
    }
}
