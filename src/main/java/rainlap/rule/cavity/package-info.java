/**
 * Rules of the cavity: whether what gets behind the cladding finds a gap to run down in, and a way out at its foot.
 *
 * <p><b>Cavity.</b> The gap between wrap and cladding that battens keep. It is as deep as the batten that the cladding rests on stands off the
 * wrap: its own depth and that of battens beneath it. The profile of the cladding itself is not counted.
 *
 * <p><b>Foot.</b> A lower edge of the cladding below which none goes on: at a base edge of the wall, above an opening, or on the wall itself. Sheets side
 * by side at one level are one foot. Where the outline is a free edge, as where a drawing stops, there is none. Upright battens part a foot in bays.
 */
package rainlap.rule.cavity;
