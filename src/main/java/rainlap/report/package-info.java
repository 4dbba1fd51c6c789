/**
 * What a check found, as text: the findings file for programs, the table for the terminal, lists for spreadsheets.
 *
 * <p>All are pure functions of a {@link rainlap.check.CheckResult}: no clock, no locale, no hash order, so that the same check gives
 * the same bytes. Nothing here judges: what a rule could not tell, what did not apply and what failed is passed on, never left out.
 */
package rainlap.report;
