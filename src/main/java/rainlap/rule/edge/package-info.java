/**
 * Rules of building edges. At corners: whether a membrane goes round, how far, and whether the fold is taped. At the base and the top: whether what covers the wall
 * runs on past it. At the foot of the cladding: whether it hangs below the frame and clear of the ground.
 *
 * <p>A corner is a side of the outline with the role of an external or internal corner, from its foot to its top; what a sheet has beyond
 * the outline's ends is not part of it. Each place along it is judged by the membrane that runs furthest past it. Where none crosses it,
 * {@code unwrapped-corner} speaks and the other two do not apply. Pieces that end exactly at the fold do not cross it.
 *
 * <p><b>Tape.</b> That a tape lies over each corner is common practice. It counts where it runs at least the practice's tape cover to both
 * sides of the fold, seen from the outside, on whatever lies beneath.
 *
 * <p><b>In a building</b> a corner is joined to the wall beyond it: membranes and tapes of both walls count, and a membrane goes round as far as it does on
 * the wall where it has less.
 *
 * <p><b>Base and top.</b> Each place along such a side of the outline is judged by the sheet, flashing or adhered strip that runs furthest past it
 * ({@link rainlap.rule.edge.PastEdge}). Where nothing reaches the side the wall is bare, which {@code bare-wall} tells; openings that stand on it are left out.
 *
 * <p><b>Tolerance.</b> Stretches under 1 mm are within the drawing's own tolerance and are left out.
 */
package rainlap.rule.edge;
