/**
 * Rules of laps: which way sheets lap, by how much, and where nothing laps at all.
 *
 * <p>The practices' lap limits speak of membrane over membrane and are asked of nothing else. Where a membrane and a flashing meet at an
 * opening is for {@code rainlap.rule.opening}. What leaves a hole (a butt, a gap, bare wall) or catches water (a reverse lap) is
 * judged whatever the pieces are, cladding excepted.
 */
package rainlap.rule.lap;
