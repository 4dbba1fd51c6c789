package rainlap.material;

/** The barrier a piece belongs to, from the frame outwards. */
public enum Layer {
    /** Membrane, tapes and flashings: the secondary barrier. */
    WRAP("wrap"),
    /** Battens and the drainage gap between them. */
    CAVITY("cavity"),
    /** Cladding and trims: the primary barrier. */
    FACE("face");

    private final String word;

    Layer(String word) {
        this.word = word;
    }

    /** The word in text. */
    public String word() {
        return word;
    }
}
