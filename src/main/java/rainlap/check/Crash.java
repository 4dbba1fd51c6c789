package rainlap.check;

/** A rule that failed through our own fault; the others went on. */
public record Crash(String rule, String what) {}
