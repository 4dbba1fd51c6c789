/**
 * What a rule is, what it is shown and what it answers.
 *
 * <p>A rule is pure: the same {@link rainlap.rule.Evidence} gives the same outcomes, in any order of rules and on any thread. Its answer
 * is one {@link rainlap.rule.Outcome} for each place it looked at: <em>holds</em>, <em>broken</em>, <em>does not apply</em> or
 * <em>cannot tell</em>; silence is never a pass. A {@link rainlap.rule.Finding} carries numbers, places and words, and knows nothing
 * of how it is printed.
 *
 * <p><b>Tolerance.</b> A stretch of a joint or an edge, or a bare part, under 1 mm long is within the drawing's own tolerance, and the rules of dimensions leave it out: where
 * edges cross at a slant, as at the end of a mitre, rounding to the grid leaves butts, laps and uncovered stretches of 0.01 mm. Nothing that leaks is lost by it: the trace
 * has no such tolerance, and rules on water tell what comes in by a hole of any size.
 *
 * <p><b>Defences</b> are those of the water's whole way, which the check adds when all rules have spoken. A rule states a number only where the trace
 * does not look: at the fold of a building corner, where what lies round the corner is not drawn.
 */
package rainlap.rule;
