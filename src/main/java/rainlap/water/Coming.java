package rainlap.water;

/** Water on its way into a cell. */
sealed interface Coming permits Wet, Driven {
    Cell cell();

    /** Comes in. */
    void into(Flow flow);
}
