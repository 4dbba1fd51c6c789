/**
 * Joints: the lines along which a piece ends over, under or beside another; and which sheet turns each corner and opening edge.
 *
 * <p><b>Who forms joints.</b> Sheets: membranes, flashings, collars and loose corner pieces with one another, cladding sheets with
 * one another. An adhered strip (tape, corner piece or collar stuck over its whole face) forms none: it covers joints. A loose
 * strip is judged by its upper edge only. Two parts of one piece never form a joint.
 *
 * <p><b>Definition.</b> For every stretch of a free edge of a sheet P, look at the sheets just inside and just outside the edge.
 * <ol>
 * <li>Sheets present on both sides and inside P (nearer the frame): P lies <em>on</em> the outermost of them, Q. The stretch is a lap.
 * <li>Else, a sheet present on both sides that lies outside P: P's edge ends beneath it; the joint there is that sheet's own.
 * <li>Else look square to the edge, outwards: a facing edge of a sheet within {@link rainlap.joint.JointFinder#BUTT} is a butt, within
 * {@link rainlap.joint.JointFinder#GAP} a gap; nothing there is an <em>open</em> stretch, and what it borders may be bare wall
 * ({@link rainlap.joint.Bare}). Only where the wall, or the surface of the reveal, goes on beside the edge; at a building corner it does.
 * </ol>
 * A sheet whose edge coincides with P's is present on one side only and so is no partner: both end together.
 *
 * <p><b>Kind of a lap</b>, by the outward normal of P's edge and the surface's down: the downward part of the normal within
 * {@link rainlap.joint.Direction#PLUMB} (5 mm in a metre) of zero: end lap. Facing up by more: reverse lap, since water that runs down Q
 * meets the edge. Facing down: course lap when at least as much down as sideways, else end lap; both limits are asked of a sloped
 * edge ({@link rainlap.joint.Direction#facesDown}, {@link rainlap.joint.Direction#facesSideways}). An adhered or sealed upper edge is no
 * joint: water runs over it.
 *
 * <p><b>Lap</b>: from a place on P's edge, square to it and inwards, how far both P and Q run on before the first of them ends; over
 * one fold if need be. An edge ends a sheet here only if it stands square to this direction within 60 degrees: a foot that slopes
 * towards the plumb side of both sheets is not a lap of nothing. Where no edge stands against it anywhere along a stretch, the lap is the
 * furthest one gets before either sheet ends sideways. It is exact for level and plumb edges. A joint keeps the lap along its whole length.
 *
 * <p><b>Cover</b>: an adhered strip that lies outside both pieces and on both sides of the edge covers it; how far it runs on to each side
 * is the cover (beyond a gap, from the far edge of the gap). Of several strips the one that covers its worse side best counts, by the least it
 * covers on each part between their ends.
 * Stretches that lie beneath a further sheet are <em>hidden</em> and need no tape.
 *
 * <p><b>A joint</b> is a maximal chain of stretches of P's boundary with one partner and one kind; it may bend. Butts and gaps are
 * reported once, from the piece laid later.
 *
 * <p><b>Ids.</b> Outer piece, inner piece, kind and the middle of the line in whole millimetres: the same wall gives the same id,
 * whatever else is added elsewhere and in whatever order the file lists pieces that do not overlap.
 *
 * <p><b>Degenerate cases</b>, each a test: corner to corner only (no joint); T-joint; the same edge in opposite sense (butt); the same
 * polygon twice (no joint, it ends together); a lap that starts at nothing (0 at one end); three sheets at a point; an edge exactly on
 * another; a ring of four flaps; lap and gap of 0.01 mm; tape with its edge on the joint (no cover); two tapes end to end;
 * tape that ends at the joint's end; sloped coincident edges with different ends; kinked joint; hole touching the shell; a sheet cut in two
 * by an opening.
 *
 * <p><b>Tolerances.</b> Level and plumb edges are told apart exactly (half a grid unit). Beside a sloped edge, 0.02 mm is the same line.
 * Stretches under 0.005 mm vanish; beside a lap of sheets with sloped edges, an open stretch under 0.5 mm belongs to the lap (edges that cross at a slant are seen
 * to cross a little late).
 */
package rainlap.joint;
