package rainlap.wall;

/**
 * A cut of a sheet at an opening.
 *
 * @param returned how deep what remains is trimmed, grid units
 */
public record Cut(String opening, CutPattern pattern, long returned) {}
