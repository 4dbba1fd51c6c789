/**
 * Practices: named sets of limits, each limit with its source.
 *
 * <p>A practice holds only what its document says. Where it is silent its limit falls back on {@code common}, the cautious
 * default that holds a value for every limit, and {@link rainlap.practice.LimitValue#spokenBy()} names the practice that
 * spoke. Where documents disagree they are different practices; nothing is averaged.
 *
 * <p>The values are data, in {@code /practices/<id>.json}: one entry a limit, unknown keys refused. A new practice is one such
 * file and its id in {@link rainlap.practice.Practices}; a new kind of limit is a constant in {@link rainlap.practice.Limit}
 * and a value in {@code common}.
 */
package rainlap.practice;
