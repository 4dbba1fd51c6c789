/**
 * Reading elevation files, with the line and column of everything that is wrong.
 *
 * <p><b>How.</b> {@link rainlap.file.ElevationFile} checks the encoding, reads the bytes in one streaming pass into a tree of values that
 * know their byte ({@code TreeReader}), and hands the tree to one reader for each part of the form. Readers note problems and go on, so
 * that one run finds as many as it can; only a syntax fault or a file beyond {@link rainlap.file.Limits} ends the reading. An elevation
 * comes out only when nothing is wrong.
 *
 * <p>{@link rainlap.file.BuildingFile} reads the list of a building the same way, then each elevation it names, and says where they do not fit one
 * another.
 *
 * <p><b>Guarantees.</b> Never an exception for what a file holds; the same bytes give the same problems in the same order; no problem
 * speaks of anything but the file. What depends on something wrong already noted (a piece of a misspelt material) is not noted again.
 *
 * <p><b>Lengths.</b> Millimetres are rounded to the grid of 0.01 mm; a shape that has no area on the grid is refused.
 *
 * <p><b>Known limit.</b> A stacking that goes round in a circle is found where the shapes lie as drawn on one surface, not where one is
 * folded into a reveal onto another that was drawn there.
 */
package rainlap.file;
