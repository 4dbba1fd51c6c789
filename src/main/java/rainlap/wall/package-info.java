/**
 * The wall as drawn: outline, openings with their reveals, penetrations, pieces, exposure and laying order.
 *
 * <p><b>The unfolded sheet.</b> The wall is seen from outside, x to the right, y up. What a piece has outside the outline is folded
 * round the corner, over the top or under the base; what a soft piece has inside an opening is returned onto the reveal. A reveal is
 * four surfaces, each with its own flat frame: u along the edge (sill and head from left to right, jambs from the bottom up), v
 * inwards from the wall's face. On a surface of a reveal x is u and y is v.
 *
 * <p><b>Laying order.</b> A later piece of the file lies outside an earlier one unless it is tucked under it. The order is a relation
 * between two pieces, not a global number, so that flaps may lie in a ring; a ring at one and the same point is impossible and
 * refused by {@link rainlap.wall.LayingOrder#findKnot}.
 */
package rainlap.wall;
