package rainlap.paper;

/** Which part of a line of text stands at its point. */
public enum Anchor {
    START, MIDDLE, END
}
