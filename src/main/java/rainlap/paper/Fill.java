package rainlap.paper;

/** What covers an area: a tone and how much of it hides what lies beneath, above 0 to 1. */
public record Fill(Tone tone, double opacity) {

    public Fill {
        if (!(opacity > 0 && opacity <= 1)) {
            throw new IllegalArgumentException("opacity is above 0 and at most 1, not " + opacity);
        }
    }

    public static Fill of(Tone tone) {
        return new Fill(tone, 1);
    }
}
