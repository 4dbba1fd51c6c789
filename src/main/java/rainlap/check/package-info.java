/**
 * The list of rules, the run over them, and the weak points in order of rank.
 *
 * <p><b>One place, one weak point.</b> When all rules have spoken, {@link rainlap.check.OnePlace} looks which ways of the water pass each finding of a
 * rule of dimensions, gives it the defences and the steps of the worst of them, and drops findings of the trace that say the same again.
 */
package rainlap.check;
