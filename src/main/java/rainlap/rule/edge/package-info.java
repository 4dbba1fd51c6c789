/**
 * Rules of building corners: whether a membrane goes round, how far, and whether the fold is taped.
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
 * <p><b>Tolerance.</b> Stretches under 1 mm are within the drawing's own tolerance and are left out.
 */
package rainlap.rule.edge;
