package rainlap.paper;

/** A line drawn round an area, along a path or between points. */
public record Edge(Pen pen, Tone tone) {

    public static Edge of(Pen pen) {
        return new Edge(pen, Tone.INK);
    }

    public static Edge of(Pen pen, Tone tone) {
        return new Edge(pen, tone);
    }
}
