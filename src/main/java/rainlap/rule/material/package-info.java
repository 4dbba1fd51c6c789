/**
 * Rules of materials: which may not touch, which wear out in the heat, the sun and the wet that the file states.
 *
 * <p><b>Contact.</b> Two pieces touch where they overlap on one surface with nothing between them. A tape, corner piece or collar stuck over its
 * whole face turns its adhesive to what is beneath it, and its facing to what is laid on it. Cladding and trims beneath which a batten is drawn stand
 * off what is not of the face or the cavity. Contact less than 1 mm across is within the drawing's own tolerance.
 *
 * <p><b>Run-off.</b> Flashings, trims, cladding and frames of which something is outermost drain plumb down on to those of which something is outermost
 * beneath, whatever lies between.
 *
 * <p>What such a finding says is no way of the water: it has no defences of its own and hides none of the trace's.
 */
package rainlap.rule.material;
