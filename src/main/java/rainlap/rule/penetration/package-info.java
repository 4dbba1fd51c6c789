/**
 * Rules of penetrations: whether a pipe, duct, cable or flue has a collar, and whether the collar is sealed to the sheet.
 *
 * <p><b>Collar.</b> A place at the rim of a penetration is closed where a collar lies beside it, however it is fixed, or something adhered: a tape, a
 * corner piece, a self-adhered membrane. A sheet that is only cut to the pipe closes nothing, however neat the cut.
 *
 * <p><b>Seals.</b> The sides of a loose collar are to be taped or bonded to what they lie on. Its foot may stay open, so that what gets in can leave.
 * Its upper edge belongs to {@code reverse-lap}: one place, one weak point.
 *
 * <p><b>Tolerance.</b> Stretches under 1 mm are within the drawing's own tolerance and are left out.
 */
package rainlap.rule.penetration;
