/**
 * Which pieces lie where, in which order.
 *
 * <p><b>Face.</b> What one piece covers on one flat surface (the wall, or a side of an opening's reveal). Drawn shapes become faces by
 * {@link rainlap.stack.Folding}:
 * <ol>
 * <li>A shape of a stiff material (flashing, batten, cladding, trim) stays as drawn, also in front of an opening.
 * <li>A shape of a soft material on the wall loses what lies inside an opening. What lies there is returned: every place inside the
 * opening belongs to the side whose edge is nearest (the corner bisectors divide them), no deeper than the reveal and, where the piece
 * is cut there, than the cut is trimmed. A cut pattern that leaves no flap on a side gives that side's share away: the neighbouring
 * flap then keeps its full length. A soft sheet without a cut is folded as a diagonal cut would let it, untrimmed.
 * <li>A diagonal cut so leaves, at each corner, a bare triangle on each of the two surfaces.
 * <li>Shapes a piece lists for several surfaces are faces as they are.
 * </ol>
 *
 * <p><b>Folds.</b> Where two faces of one piece both end at the line that their surfaces share, the piece goes on there: the
 * shared stretch is a fold and not an edge. All other edges are <em>free</em>. Lengths measured across a surface run on over one fold
 * (not over two: what turns twice within a lap is measured to the second fold).
 *
 * <p><b>Down.</b> On the wall and the jambs gravity points down the surface; on a sill towards the front edge (v = 0); a head
 * has no down: all its edges are side edges.
 *
 * <p><b>Order</b> is {@link rainlap.wall.LayingOrder}; pieces of layers that the stage does not look at have no faces.
 *
 * <p><b>Tolerances.</b> Faces are on the 0.01 mm grid. Flaps of sloped shapes come from overlays and may be rounded by half a unit.
 */
package rainlap.stack;
