/**
 * Follows the water: where it goes, and how many things must fail before it reaches the frame.
 *
 * <h2>State</h2>
 * At a place of a surface (the wall inside its outline; the sill, jambs and head of each reveal) lie <em>layers</em>: the frame, then the faces
 * of the stage in laying order outwards. A <em>gap</em> is what lies directly outside a layer: up to the next layer, or open to the air. Water
 * is at a place, on a layer, in that gap: (place, layer). It is <em>running</em>, or <em>driven</em> (lifted or pushed by wind). A gap is
 * <em>closed</em> where the layer outside it is adhered over its whole face. The <em>defences</em> of a state are the least sum of costs over all
 * ways to it; 0, 1 and 2 are traced, and what is not reached by then has three or more.
 *
 * <p><b>Down</b> is down the wall and the jambs, towards the front edge on a sill, inwards on a head.
 *
 * <h2>Sources</h2>
 * Rain: running water, for nothing, on the outermost layer of every place of every surface, the frame too where it is bare. So each sill is wet,
 * as if its window leaked at the foot. Nothing comes in over the outline: what a piece has beyond it is folded round the corner, over the top or
 * under the base, and its edge there, also exactly on the outline, is not an edge that is driven.
 *
 * <h2>Crossing a line</h2>
 * All moves go from a place p to the place q next to it. Layers of the same piece at both are <em>through</em> (also over a fold); at p only,
 * they <em>end</em>; at q only, they <em>begin</em>. The frame is through. Water on layer F at p, the layer outside it being R (or the air):
 * <ol>
 * <li>{@code lo} is F if it is through, else the outermost through layer inside it. {@code hi} is the innermost through layer outside F (or the air).
 * <li>The layers that begin between lo and hi are N1 … Nm, outwards. The water may go on lo, on N1, … on Nm: it drops on the outermost piece
 * that does not lie further out, runs over whatever begins there, and in behind each of them.
 * <li>A gap under X (N1 … Nm, or hi) costs one if X is adhered in full, unless X is R: who is in a gap moves on in it for nothing.
 * It costs one, and not two, if X begins here and is sealed at the edge that faces the water; edges of a piece are named as it lies with down at the
 * bottom, a head with the wall at the top and a right jamb with inwards to the right. The air costs nothing.
 * <li>Leaving from under R through an edge of R that is sealed (R not being adhered in full) costs one more.
 * </ol>
 * So with several top edges in one line, water gets over the outermost for nothing, and behind any of them by the bond of that one alone
 * (a sheet under a strip that ends exactly with it is no better held than without it).
 *
 * <h2>Moves of running water</h2>
 * <ul>
 * <li><b>Fall.</b> Straight down, crossing each line; it stays running.
 * <li><b>Run along.</b> Where every gap below costs something, or there is nothing below but a pipe, it runs along the line: down a slope, both
 * ways on the level, crossing sideways for nothing, to the first place where it can fall for nothing. There is no nearest way on a level line: which way a
 * level drains is not drawn. All along its way it is running water, one grid unit high: it is driven under what begins beside it, and falls at a cost.
 * Running over the outline at a building corner is a way out. An edge of an opening without reveal is one too. Where there is no way out at all it is
 * <em>trapped</em>.
 * <li><b>Ledge.</b> Along the top edge of a batten water also runs to both ends (down the slope of a sloped one) and falls there, crossing sideways.
 * A flashing with an upstand holds a ledge where the upstand ends, {@code upstand} below its highest point (not below its lowest): water on its face at or above that level
 * also leaves by each end there, crossing sideways, unless the end is dammed; the ledge stands out in front of what lies over the upstand, so on its way
 * to the ends that water wets nothing. A batten has no dams, and on its way along one water is running as along any line.
 * <li><b>Sill.</b> On a sill running water spreads: it crosses every line in every direction and stays running. At the front edge it falls to the wall
 * below; at the ends it stops, but for lifts under what ends on the jamb there. Driven water does not spread: what falls back onto it from a jamb keeps to the corner, one grid unit wide.
 * <li><b>Head.</b> A head has no down of its own: water that comes over the wall's edge above an opening is taken to run on inwards over the whole head, as if inwards were
 * down, and drips off at its inner end. Against that, outwards, it is lifted by the greater of rise and creep, and from there up the wall by
 * the rise at most.
 * </ul>
 *
 * <h2>Drive</h2>
 * Running water at q, on any layer from lo up to and below hi, next to a place p where a piece P begins (seen from q) by a free edge:
 * <ul>
 * <li><b>Lift</b>, P being above: up, at most the <em>rise</em> from the edge. <b>Push</b>, P being beside: sideways, at most the <em>creep</em>. A
 * sloped edge is both: water is lifted and pushed under it.
 * <li>It enters the gap directly under P, at the cost of that gap, and keeps its direction: line after line is crossed as above, straight
 * on. It is driven water; at exactly the rise, or the creep, it does not pass an edge.
 * <li>Where the layer it was on has ended and it is now on a layer further in, it has got behind: at that place it is running too, a stream one grid unit
 * wide or high; beyond, it is driven.
 * <li>What is driven sideways along a sill to its end goes on up the jamb, by the rise at most, however far the creep would take it.
 * <li>Driven water falls back as water falls, and stays driven. Driven water starts no drive, no ledge and no run along.
 * </ul>
 * <b>Overrun</b>, cost one (and the cost of the gap under P): P is a sheet, not an adhered strip, and Q, the outermost layer under P at p that is no adhered strip, is through from p to q and
 * not the frame. The water goes on straight on from the edge (up, or sideways at an edge steeper than 45 degrees) directly under P, whatever the width, to the first place where Q is no more; there it is
 * running. P may not end before. On its way it is driven water, and falls back as such: off the foot
 * of Q too, if Q ends there beneath P. Strips between P and Q close nothing.
 *
 * <h2>Pipes</h2>
 * A penetration is a hole in every layer and in the frame. Water at a place next to its edge, on any layer, running or driven, gets onto every layer further
 * in there, and is running: for nothing; at a cost of one, however many they are, where a layer that it leaves outside is adhered in full, or is a collar: that
 * is the seal to the pipe. So the rain gets in behind loose sheets all round, and what has got behind a collar gets to the cut of the sheet under it. Next to the edge is,
 * above it and beside its plumb sides, one grid unit; below it all that stands as high as the edge. Over a pipe water runs along and down both its sides, as along a line.
 *
 * <h2>Surfaces glued together</h2>
 * Wall over head edge: falls onto the head. Jamb over sill: falls. Sill over front edge: falls onto the wall below (and lifts go the other way). Wall
 * beside jamb: crossed sideways. Nothing passes from head to jamb. Where an opening has no reveal its edge is like the outline. A stiff piece
 * goes on in front of an opening: at the head and jambs, water on it, or on a layer outside it, goes past the opening and leaves. It hangs free there: wind drives
 * water from the head and the jambs in behind it as if it began at the edge.
 *
 * <h2>Results</h2>
 * <ul>
 * <li>{@link rainlap.water.Reach}: the frame that is wet at 0, 1, 2 defences, as polygons.
 * <li>{@link rainlap.water.Arrival}: the lines along which water comes onto the frame from another layer, with the defences and the way it came, also where the frame is
 * wet already from elsewhere: each is a defect of its own.
 * <li>Trapped water, and ends of ledges by which water leaves.
 * <li>Where running water comes to lie on the upper edge of a batten.
 * <li>{@link rainlap.water.Litres}: how much running rain meets a place on the wall as drawn, and {@link rainlap.water.Balance}: where all of it goes. Where water parts
 * for nothing each way gets an equal share. What wind drives, what runs along pipes and what falls into reveals is in neither.
 * </ul>
 * Of a wall in a building the water of that wall and of those beside it, laid flat as one elevation, is followed, and what is to be seen of it on the wall is
 * told ({@code OneWall}); a joined corner is then no side of the outline. The balance is the wall's alone.
 *
 * After two failures water gets nearly everywhere, and what a wall is judged by needs to know of it in few places. So at first all of it is followed through one failure only; the second is followed on
 * from there near those places that ask for it ({@link rainlap.water.Trace#ofTwoFailures}), and everywhere when somebody asks for the {@link rainlap.water.Trace#reach} of two.
 * Of what took one failure nobody asks but where it comes onto the frame. So it is followed only where it may still get there for nothing ({@code Upstream}), which on a careful wall
 * is a tenth of the cells, and in all cells near the places that ask for the second: a way through two failures is told where both happen near, or the first led onto the frame.
 *
 * {@link rainlap.water.Inflow} tells the same, for nothing failing, of water that comes in at one place alone, such as a hole; {@link rainlap.water.Trace#worstFrom} follows rain at one
 * place alone over the same cells, which forget what came before.
 *
 * <h2>Exactness, ties, tolerances</h2>
 * Level and plumb lines are exact on the 0.01 mm grid. The gaps of a surface are cut into trapezoids by plumb lines at corners and crossings; crossings
 * of sloped edges are rounded to the grid in x (beside a steep edge that moves them up or down by as much as it rises in 0.01 mm, and a drive may just pass there, or just not), and sloped edges nearer than 0.01 mm to each other are one line. A stream that falls from the end of
 * a line is one grid unit wide, and so is one at the end of a lap that is overrun sideways; but a real one is wider: like water (running, or driven) that fills the height
 * of a cell is one where less than 1 mm parts it from water of no higher cost, and what lies between is wet too. Else ever more streams, a few hundredths apart, would gather down a high wall. Water is told where nothing is yet at no
 * higher cost; a stream one unit wide in its midst is told with it. Of ways with equal cost that come together the one told in the fewest steps is told, else the one found first in a fixed order. What comes onto the frame for
 * one failure is told as the first to wet it if some of the frame there is dry as drawn, whatever else comes there for one failure.
 *
 * <h2>How it is followed</h2>
 * <ol>
 * <li>Each gap of a surface is cut by itself into cells whose places all have the same layer beneath and above ({@code Carving}, {@code Sweep}): an edge of one layer cuts the gaps next to it and no others. Cells meet along level
 * or sloped {@code Seam}s and plumb {@code Flank}s, each a {@code Crossing} that knows the piles on both sides, and those of a wall and its reveals are glued along the opening's edges ({@code Glue}). Where litres are asked for,
 * cells in the open end at each edge beneath as well, since each wants to know what runs over it. How far a lap is overrun is read off the lower sheet's outline ({@code Underlay}), which may end beneath others.
 * <li>All water is followed at once, everything that costs nothing before what costs one ({@code Flow}): a shortest way with whole costs. A cell keeps what has come to it;
 * only what is new there moves on, cells from the top down, and falls go before drives.
 * <li>A wide wall is followed in strips, always the same ones ({@code Strips}, {@code Flows}); what crosses from one into another waits for the next round. So threads change nothing
 * but the time.
 * <li>Where a line holds water, its ways out are found once for every stretch of it ({@code Ways}), so that a long edge costs no more than it has stretches.
 * </ol>
 *
 * <h2>Left out</h2>
 * Absorption, evaporation, splashing, ice, water in the air of the cavity, capillary flow (a wetted height is stated, it is not in the rise), deflection and movement,
 * fixings that are not drawn as penetrations, thickness: water does not pond against a lap. Elevations beyond a corner. A stated simplification: leaving a peeled tape and entering
 * it again costs twice.
 */
package rainlap.water;
