/**
 * The list of rules, the run over them, and the weak points in order of rank.
 *
 * <p><b>One place, one weak point.</b> When all rules have spoken, {@link rainlap.check.OnePlace} looks which ways of the water pass each finding of a
 * rule of dimensions, gives it the defences and the steps of the worst of them, and drops findings of the trace that say the same again. Water
 * that is trapped stays a weak point of its own beside the edge by which it gets in: that edge leaks in at one place, and the water stands at another.
 *
 * <p><b>A building</b> ({@link rainlap.check.BuildingChecker}) is one run for each wall, and one ranking over all of them.
 */
package rainlap.check;
