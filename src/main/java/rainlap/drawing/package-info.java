/**
 * The marked-up sheet: from a check's result to marks on paper.
 *
 * <p><b>Flow.</b> {@link rainlap.drawing.Sheets} chooses scale and sheets, {@link rainlap.drawing.ElevationView} draws the wall in a
 * fixed order of layers, the other classes fill the slots beside it: weak points with their labels, table, sections, legend, notes,
 * title block. A {@link rainlap.drawing.View} turns grid units of the wall into printed millimetres, y down.
 *
 * <p><b>Nothing is dropped.</b> Weak points that do not fit a sheet go on to the next; names that find no room are listed. {@link rainlap.drawing.Sections} shows each
 * weak point of no or one defence: cut by a plane, or close to ({@link rainlap.drawing.CloseUp}) where a cut would show nothing, and says where it is when its letter finds no room.
 *
 * <p><b>Who gives way.</b> Texts and marks keep clear of each other by {@link rainlap.paper.Occupied}, in this order: marks and leaders,
 * dimensions, section letters, piece names, lap figures, notes.
 */
package rainlap.drawing;
