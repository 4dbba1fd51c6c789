package rainlap.wall;

/** Which surface of the wall or of an opening's reveal. */
public enum Side {
    WALL("wall"), SILL("sill"), LEFT("left"), RIGHT("right"), HEAD("head");

    private final String word;

    Side(String word) {
        this.word = word;
    }

    public String word() {
        return word;
    }

    public boolean isJamb() {
        return this == LEFT || this == RIGHT;
    }

    /** {@code sill}, {@code left jamb}, {@code right jamb}, {@code head} or {@code wall}. */
    public String inWords() {
        return isJamb() ? word + " jamb" : word;
    }
}
