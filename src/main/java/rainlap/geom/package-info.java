/**
 * Points, boxes, rings and regions on the grid, and the one gate to JTS.
 *
 * <p><b>Grid.</b> Coordinates are {@code long} hundredths of a millimetre (1 mm = 100 units), within 10 km of the origin, so
 * that differences fit in 32 bits and cross products in 64: the side tests here are exact.
 *
 * <p><b>Guarantees.</b> A {@link rainlap.geom.Ring} has no repeated point and no spike and runs counter-clockwise; a
 * {@link rainlap.geom.Region} is a shell with holes that lie inside it, its interior on the left of every edge (holes are kept
 * clockwise). Sloped results of JTS overlays are rounded to the grid by snap rounding and may move by half a unit; level and
 * plumb edges never move.
 *
 * <p><b>One gate to JTS.</b> Only this package calls JTS: {@link rainlap.geom.BoxTree} for finding boxes and {@link
 * rainlap.geom.Overlay} for overlays, and there only {@code OverlayNG} on this grid: the
 * older {@code Geometry.intersection} family runs another algorithm that returns wrong dimensions on some inputs.
 */
package rainlap.geom;
