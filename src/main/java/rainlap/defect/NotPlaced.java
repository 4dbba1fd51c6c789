package rainlap.defect;

/**
 * A place where no hole could be put.
 *
 * @param of what it would be at, as in {@link Hole}; empty if the wall has nothing of the kind
 */
public record NotPlaced(Hole.Kind kind, String of, String why) {}
