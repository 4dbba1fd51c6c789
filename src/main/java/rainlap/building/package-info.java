/**
 * A building: elevations joined at their corners, and each wall of it seen with what comes round from its neighbours.
 *
 * <h2>Unfolding</h2>
 * A wall is looked at in its own coordinates. The walls to its left and right are laid flat beside it: the corner edge of one on that of the other,
 * levels as they are. A corner is joined over the height that both corner edges share; above and below it each wall keeps its own outline. What the
 * neighbours have is named with their id before it: {@code north M1}. Walls further round are not looked at.
 *
 * <h2>One piece, or two</h2>
 * <ol>
 * <li><b>Drawn from both sides.</b> Two pieces of one material and bond, one of each wall, that cross the same corner from the same foot to the same
 * top (within 1 mm) are one piece: it runs round, each wall's drawing holds on its own side of the fold, and no joint is between them. A sheet that is
 * joined at the corner is drawn on one of the walls only, as far as it goes round.
 * <li><b>Comes round.</b> Any other piece that crosses a corner lies on the neighbour as it is drawn: it is added there as a piece of the wall that
 * draws it.
 * <li><b>Left out.</b> A piece drawn wholly beyond a joined corner lies on the neighbour alone, and the neighbour's own drawing stands for it.
 * </ol>
 *
 * <h2>Order</h2>
 * Each wall's own order and tucks hold. Between two walls that meet at a corner no order is drawn, so it is taken to be a crew's that goes round the
 * building course by course:
 * <ol>
 * <li>A piece never goes on before what its own wall lays before it.
 * <li>Of the next pieces of the two walls that one goes on first of whose layer (wrap, cavity, face) its wall has the innermost still to lay; then that one of
 * whose wall the membrane still to lay begins lower, then ends lower. What is no membrane goes on after the last membrane that its own wall lays later.
 * <li>Where all that is equal, the wall whose id comes first in the alphabet goes first.
 * </ol>
 * Where two walls draw two common pieces in opposite orders, one of the two is not common. What is tucked under a piece of its wall is tucked under what
 * other walls lay over that piece before it.
 *
 * <h2>As built</h2>
 * {@link rainlap.building.Unfolded#asBuilt}: the wall with its own outline, its own pieces as drawn, and with the pieces of neighbours that come round,
 * those of the wrap as far as 300 mm beyond the fold, and membranes that end exactly at it. {@link rainlap.building.Unfolded#flat}: all of the walls side by side as one elevation.
 *
 * <h2>Known limits</h2>
 * Corners are the plumb sides of an outline at its left and right end; a corner within an elevation (a nib, an oriel) is not joined. Thickness is not
 * looked at: at an external corner what lies further out is drawn as long as what lies further in.
 */
package rainlap.building;
