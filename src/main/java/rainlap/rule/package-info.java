/**
 * What a rule is, what it is shown and what it answers.
 *
 * <p>A rule is pure: the same {@link rainlap.rule.Evidence} gives the same outcomes, in any order of rules and on any thread. Its answer
 * is one {@link rainlap.rule.Outcome} for each place it looked at: <em>holds</em>, <em>broken</em>, <em>does not apply</em> or
 * <em>cannot tell</em>; silence is never a pass. A {@link rainlap.rule.Finding} carries numbers, places and words, and knows nothing
 * of how it is printed.
 *
 * <p><b>Defences</b> are those of the water's whole way, which the check adds when all rules have spoken. A rule states a number only where the trace
 * does not look: at the fold of a building corner, where what lies round the corner is not drawn.
 */
package rainlap.rule;
