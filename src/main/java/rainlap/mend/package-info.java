/**
 * A weak point's neighbourhood as it should be: the pieces there changed as a crew would mend them, to be drawn beside the wall as drawn.
 *
 * <p><b>Nothing is drawn as mended that is not.</b> {@link rainlap.mend.Mending} changes the pieces near the place by rule ({@link rainlap.mend.Mends}), checks
 * what comes of it with all rules, mends what the change brings with it (a lap turned round may be short, or ask for tape), and gives a wall
 * only when the weak point is gone and no other has come in its place. Else it gives the reason in words, which stands where the mended cut would:
 * {@link rainlap.mend.Mends} has for every rule either ways to mend it or why no cut shows them.
 *
 * <p><b>Only near the place.</b> Pieces further off than {@link rainlap.mend.Mending} looks are left out, so the changed wall is good for a cut there and for
 * nothing else. What such a part cannot show mended is tried on the whole wall: only that has the word that no cut is drawn. Weak points that its neighbourhood has anyway are left as they are.
 */
package rainlap.mend;
