package rainlap.check;

import rainlap.rule.Finding;

/**
 * A ranked finding.
 *
 * @param number rank from 1, as printed on the sheet: fewest defences first, then most litres, then rule id, then place
 */
public record WeakPoint(int number, Finding finding) {}
