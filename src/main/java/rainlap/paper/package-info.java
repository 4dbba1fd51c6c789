/**
 * Drawing on a sheet of paper: marks, pens, text, frames, hatching, placing of labels, SVG, PNG and PDF. It knows no wall.
 *
 * <p><b>Units.</b> All lengths are printed millimetres as {@code double}, measured from the upper left corner of the
 * sheet, x to the right and <b>y down</b> (as in SVG). Angles are degrees, positive clockwise on paper. Text height is
 * the height of its capitals.
 *
 * <p><b>Flow.</b> A drawing is a list of {@link rainlap.paper.Mark}s in painting order, held by a
 * {@link rainlap.paper.Sheet}; {@link rainlap.paper.SvgWriter} streams it out, {@link rainlap.paper.PdfWriter} makes it a page, {@link rainlap.paper.PngWriter} paints
 * it, {@link rainlap.paper.SheetCheck} lists what a reader would stumble over.
 *
 * <p><b>Text.</b> One typeface in three weights ships with its licence and is embedded as a subset, so that measuring
 * ({@link rainlap.paper.TextMetrics}) and every renderer agree. Kerning is off. Letters it lacks are painted by a
 * sans-serif of the reader's machine and measured as one em; what a PDF or PNG cannot show is told by {@link rainlap.paper.Shown}.
 *
 * <p><b>Same input, same bytes.</b> No clock, no locale, no hash order: marks are written in their order, attributes in
 * a fixed order, numbers with at most three decimals.
 */
package rainlap.paper;
