package rainlap.paper;

/** Sizes of sheet in use, with the drawing space inside the frame of ISO 5457: 20 mm on the left, 10 mm elsewhere. */
public enum SheetSize {
    A3("A3", 420, 297), A3_UPRIGHT("A3", 297, 420), A4("A4", 210, 297), A4_LYING("A4", 297, 210);

    private static final double FILING_MARGIN = 20;
    private static final double MARGIN = 10;

    private final String word;
    private final double width;
    private final double height;

    SheetSize(String word, double width, double height) {
        this.word = word;
        this.width = width;
        this.height = height;
    }

    /** The paper it is cut from, as printed: {@code A3}. */
    public String word() {
        return word;
    }

    /** Width in millimetres: A3 lies and A4 stands, where nothing else is said. */
    public double width() {
        return width;
    }

    /** Height in millimetres. */
    public double height() {
        return height;
    }

    /** The whole trimmed sheet. */
    public PaperBox sheet() {
        return new PaperBox(0, 0, width, height);
    }

    /** The middle of the frame's line; drawing goes inside. */
    public PaperBox frame() {
        return new PaperBox(FILING_MARGIN, MARGIN, width - MARGIN, height - MARGIN);
    }
}
