/**
 * Rules of the face: how cladding sheets and trims lap, meet and move.
 *
 * <p><b>Run of a sheet.</b> Sheets are laid upright, their ribs from foot to top, or across, as boards are. A file does not say which: a sheet as high as its material
 * is wide lies across, one as wide as that stands; where neither holds, as after cutting, its longer side is its run. Laps along the run are <em>side laps</em>, laps
 * across it <em>end laps</em>.
 *
 * <p>Only sheets on the wall are looked at; joints are those of {@link rainlap.joint}, with cladding for sheets.
 */
package rainlap.rule.face;
