package rainlap.paper;

import java.util.regex.Pattern;

/** A colour on paper as {@code #rrggbb}, lower case. */
public record Tone(String hex) {

    private static final Pattern FORM = Pattern.compile("#[0-9a-f]{6}");

    /** Lines and text. */
    public static final Tone INK = new Tone("#111111");
    /** Text of second rank. */
    public static final Tone GREY = new Tone("#555555");
    /** Bare paper. */
    public static final Tone WHITE = new Tone("#ffffff");

    public Tone {
        if (!FORM.matcher(hex).matches()) {
            throw new IllegalArgumentException("a tone is written #rrggbb in lower case, not " + hex);
        }
    }

    public static Tone of(String hex) {
        return new Tone(hex);
    }

    /** The shortest form SVG understands. */
    String css() {
        return hex.charAt(1) == hex.charAt(2) && hex.charAt(3) == hex.charAt(4) && hex.charAt(5) == hex.charAt(6)
                ? "#" + hex.charAt(1) + hex.charAt(3) + hex.charAt(5) : hex;
    }

    /** Relative luminance by WCAG 2: 0 black, 1 white. */
    public double luminance() {
        return 0.2126 * linear(1) + 0.7152 * linear(3) + 0.0722 * linear(5);
    }

    /** Contrast ratio by WCAG 2, from 1 to 21. */
    public double contrast(Tone other) {
        double a = luminance();
        double b = other.luminance();
        return (Math.max(a, b) + 0.05) / (Math.min(a, b) + 0.05);
    }

    private double linear(int at) {
        double share = Integer.parseInt(hex.substring(at, at + 2), 16) / 255.0;
        return share <= 0.04045 ? share / 12.92 : Math.pow((share + 0.055) / 1.055, 2.4);
    }
}
