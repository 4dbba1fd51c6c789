/**
 * One check as one HTML page: the elevation to explore, the weak points with section, way, rule, source and remedy.
 *
 * <p><b>One file.</b> Style, script, typeface and drawing stand in the page; its own policy forbids it to fetch anything and to run any script
 * but its own. Nothing of a user's file ever becomes script: it is text of the page, and {@link rainlap.page.Html} escapes all text.
 *
 * <p><b>Works without script</b> as a page to read and to print; script adds choosing, layers, laying order and search.
 */
package rainlap.page;
