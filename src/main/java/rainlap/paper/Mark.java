package rainlap.paper;

/** Something drawn on a sheet. Later marks cover earlier ones. */
public sealed interface Mark permits Polyline, Strokes, Area, Disc, Text, Halo, Group, Clip {

    /** The box of the mark's geometry, without the width of its line; a clip has the box of what it lets through. */
    PaperBox box();

    /** The same somewhere else on the sheet, by so many millimetres. */
    Mark moved(double dx, double dy);
}
