/**
 * Rules that only the trace can tell: where the water goes, and how many things must fail before it reaches the frame.
 *
 * <p>A finding here is one <em>way</em>: water that gets under the same pieces in the same order and comes onto the frame along one line. Where a
 * rule of dimensions finds something on that way, the check keeps that finding, with the way added to it, and drops the one from here.
 */
package rainlap.rule.water;
