/**
 * Holes of 6 mm put into the drawn wall, one at a time, and what the water does that comes in by each.
 *
 * <p><b>What it follows.</b> NCC 2022 Volume Two, H2V1(5)(d) and (6), tests a wall with 6 mm holes at jambs at three quarters of their height, just above the
 * head flashing, through joint seals and at penetrations; it repeats its tests with them, then holds 50 Pa for 15 min; water may touch
 * battens but not pool on them. This is a desk study on a drawing and not that test: no time, no amount of water, no thickness.
 *
 * <p><b>A hole</b> is an upright square of 6 mm, which holds the round one. It goes through the outermost piece at its middle and through nothing further in: a
 * defect of the outer sheet or seal alone. Its rim is as the piece holds: beside a hole in an adhered piece the bond is sound; a
 * piece sealed along some edges only is taken as loose, since its seals are not at the rim. Where it lies:
 * <ol>
 * <li><em>Jamb</em>: beside the edge of the opening, left and right, its middle three quarters of the way up.
 * <li><em>Head flashing</em>: one hole's width above the highest part of the flashing that shows, in the middle of what it covers of the opening's width; of a
 * flashing that does not show, above its foot.
 * <li><em>Joint seal</em>: in the middle of the longest stretch of a joint that an adhered strip or a sealant covers and nothing else hides.
 * <li><em>Penetration</em>: at its top, 1 mm of it over the pipe.
 * </ol>
 * The document as read does not say more exactly where; the rest is our choice. Holes lie on the wall's face, not in reveals. What could not be placed, and what lies across the outline, is listed with
 * the reason ({@link rainlap.defect.NotPlaced}).
 *
 * <p><b>The trace.</b> For each hole and pressure only the water is followed that comes in by the hole ({@link rainlap.water.Inflow}), nothing failing. So holes
 * do not meet one another's water, and a leak as drawn hides none. A hole <em>reaches the frame</em> where that water
 * comes onto it, and <em>pools</em> where it comes to lie on the level upper side of a batten, or is trapped on one: a batten is taken to lie tight
 * against the wrap. The upper end of a batten that stands is only touched. Each is compared with the wall as drawn in rain at the same pressure.
 *
 * <p><b>A building.</b> Holes are put into each wall as it is built, with what comes round onto it; each is cut into the walls laid flat side by side, and its
 * water followed over these: it may come onto the frame round the corner. It is driven as the wall with the hole states. Walls further round are not looked at.
 *
 * <p><b>Pressures.</b> 50 Pa everywhere, behind cladding too; and what the wall itself states. The pressures of the tests that are repeated before the 50 Pa
 * are not in what was read of these clauses.
 */
package rainlap.defect;
