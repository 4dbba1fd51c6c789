package rainlap.joint;

import rainlap.geom.EdgeFrame;
import rainlap.material.Edge;
import rainlap.wall.Side;

/**
 * Which way an edge of a piece faces on its surface.
 *
 * @param down the part of the outward normal that points down the surface, from -1 (up) to 1 (down)
 * @param across the part that points to the right along the surface (on a jamb: inwards)
 */
public record Direction(double down, double across) {
    /** Leaning by no more than this (5 mm in a metre) an edge is plumb. Our own tolerance: common practice, no source. */
    public static final double PLUMB = 0.005;
    /** The least sideways part that is judged as an end lap too: the sine of 5 degrees. Our own choice: common practice, no source. */
    public static final double SIDEWAYS = 0.0872;

    static Direction of(EdgeFrame e, Side side) {
        double nx = e.uy(), ny = -e.ux();
        return switch (side) {
            case WALL, SILL -> new Direction(-ny, nx);
            case LEFT, RIGHT -> new Direction(-nx, ny);
            case HEAD -> new Direction(0, Math.abs(nx) >= Math.abs(ny) ? Math.signum(nx) : Math.signum(ny));
        };
    }

    public boolean facesUp() {
        return down < -PLUMB;
    }

    public boolean facesDown() {
        return down > PLUMB;
    }

    public boolean facesSideways() {
        return Math.abs(across) > SIDEWAYS;
    }

    /** The kind of a lap whose outer piece's edge faces this way. */
    JointKind lapKind() {
        if (facesUp()) {
            return JointKind.REVERSE_LAP;
        }
        return facesDown() && down >= Math.abs(across) ? JointKind.COURSE_LAP : JointKind.END_LAP;
    }

    /** The edge of a piece, as a bond names it, that this is: the nearest of the four. */
    Edge asEdge() {
        if (Math.abs(down) >= Math.abs(across)) {
            return down > 0 ? Edge.BOTTOM : Edge.TOP;
        }
        return across > 0 ? Edge.RIGHT : Edge.LEFT;
    }
}
