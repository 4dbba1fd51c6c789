/**
 * Rules of openings: what the sheets turn into the reveal, what the corners leave bare, how the head flashing sits, and how flashings are folded.
 *
 * <p><b>Returns.</b> What is asked of a side is the practice's return for it, or all of the reveal where that is shallower. An edge is
 * judged between its two end zones, each as long as what is asked is deep: there the bisectors narrow the flaps of a cut, and the corner
 * is judged on its own. On an edge no longer than both zones its middle is judged, as deep as a flap can reach there. Edges beyond which
 * the wall does not go on (the foot of a door) are not judged.
 *
 * <p><b>Corners.</b> On each of the two faces of a corner the square is looked at that is as deep as is asked or as the return beside it
 * really goes, whichever is more. A face with no return beside its corner is left to {@code short-return}.
 *
 * <p><b>Head flashings</b> are told by their place ({@link rainlap.rule.HeadFlashings}). The shapes of one piece on the wall count as
 * one. Along each edge of it that faces up ({@link rainlap.rule.opening.HeadEdge}), inside the outline, every stretch is in one of three
 * states: a membrane that lies outside the flashing crosses the edge (lapped over); else one that lies inside crosses it (the
 * flashing is in front); else none crosses it (no flap). Touching is not crossing.
 *
 * <p><b>Folded shape.</b> Fall, drip and end dams of a flashing cannot be seen in an elevation: what the piece or its material states counts. Where neither
 * states it the rule cannot tell and says so, which is no pass. The built-in flashings state all of them.
 *
 * <p><b>Decisions.</b> A second layer of membrane over the upstand counts as lapping over it, whatever lies behind the flashing: every
 * document read agrees that something must lap over the upstand. Tape over the upper edge of a flashing in front does not mend it but
 * is one defence more; it is enough only where the practice's own limit accepts tape ({@code or_taped}). Of those shipped
 * {@code nz-metal-cop} does, for E2/AS1; the ruling of the Canadian appeal on tape over the upstand was not seen. A reason without the figures of the eave cannot be judged, and the rule says so.
 *
 * <p><b>Tolerance.</b> Stretches and bare parts under 1 mm are within the drawing's own tolerance and are left out.
 */
package rainlap.rule.opening;
