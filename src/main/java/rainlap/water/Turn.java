package rainlap.water;

/** Which rain is followed. All surfaces of a wall share one, so that the next rain is told them at once. */
final class Turn {
    int now;
}
