package rainlap.water;

/** Water that cannot get on along a closed edge: where it stands, in its cell's frame. */
record Trapped(Wet water, long from, long to) {}
