package rainlap.page;

/** One page of a server, which it brings up to date. */
public interface Live {
    /** Counts the states that were drawn, so that a page knows whether it is behind. */
    int drawing();

    /** The whole page. */
    String html();

    /** What is wrong with the files as they are now; nothing when nothing is. */
    String panel();

    /** A weak point's place as it should be, drawn now; nothing where there is none. */
    String should(int number);
}
