package rainlap.paper;

/** The three weights of the typeface. */
public enum Weight {
    REGULAR(400, "Regular"), MEDIUM(500, "Medium"), SEMIBOLD(600, "SemiBold");

    private final int css;
    private final String fileWord;

    Weight(int css, String fileWord) {
        this.css = css;
        this.fileWord = fileWord;
    }

    public int css() {
        return css;
    }

    String fileName() {
        return "BarlowSemiCondensed-" + fileWord + ".ttf";
    }
}
