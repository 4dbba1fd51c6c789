package rainlap.paper;

import java.util.Locale;
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

    /** As a printer without colour prints it. */
    public Tone grey() {
        int grey = (int) Math.round(0.2126 * channel(1) + 0.7152 * channel(3) + 0.0722 * channel(5));
        return of(grey, grey, grey);
    }

    /** What is seen where this lies over another tone and hides so much of it, 0 to 1. */
    public Tone over(Tone beneath, double opacity) {
        int[] mixed = new int[3];
        for (int i = 0; i < 3; i++) {
            mixed[i] = (int) Math.round(opacity * channel(1 + 2 * i) + (1 - opacity) * beneath.channel(1 + 2 * i));
        }
        return of(mixed[0], mixed[1], mixed[2]);
    }

    private static Tone of(int red, int green, int blue) {
        return new Tone(String.format(Locale.ROOT, "#%02x%02x%02x", red, green, blue));
    }

    private int channel(int at) {
        return Integer.parseInt(hex.substring(at, at + 2), 16);
    }

    private double linear(int at) {
        double share = channel(at) / 255.0;
        return share <= 0.04045 ? share / 12.92 : Math.pow((share + 0.055) / 1.055, 2.4);
    }
}
