/**
 * Where a number comes from: document, edition, clause, and how well it is known.
 *
 * <p>A number never travels without its {@link rainlap.source.Source}. What nobody published is common practice and says so;
 * what is only remembered is never shown as read. Knows nothing of walls, limits or files.
 */
package rainlap.source;
