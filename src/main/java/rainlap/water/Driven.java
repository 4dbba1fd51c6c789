package rainlap.water;

/** Water that wind drives into a cell, or that overruns a lap there: it waits until all that falls is done. */
sealed interface Driven extends Coming permits Lifts.Lift, Lifts.Overrun, Push {
    int cost();

    /** Whether it tells nothing new in its cell. */
    boolean isKnown();

    /** Whether it overruns a lap, however wide that is. */
    boolean isOverrun();

    /** Lets it in. */
    void go(Winds winds);

    @Override
    default void into(Flow flow) {
        flow.later(this);
    }
}
