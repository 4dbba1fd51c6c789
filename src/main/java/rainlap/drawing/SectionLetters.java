package rainlap.drawing;

/** Letters of sections: A to Z without I and O, then two of them. */
final class SectionLetters {
    /** With a letter of their own. */
    static final int SINGLE = 24;
    private static final String LETTERS = "ABCDEFGHJKLMNPQRSTUVWXYZ";
    private int count;

    /** How many were taken. */
    int count() {
        return count;
    }

    String peek() {
        return at(count);
    }

    String next() {
        return at(count++);
    }

    private static String at(int n) {
        String last = String.valueOf(LETTERS.charAt(n % SINGLE));
        return n < SINGLE ? last : at(n / SINGLE - 1) + last;
    }
}
