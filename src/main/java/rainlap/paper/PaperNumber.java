package rainlap.paper;

/** Numbers as a drawing writes them: at most three decimals, no trailing zeros, no locale, no exponent. */
final class PaperNumber {

    private PaperNumber() {
    }

    /** Appends a length in millimetres. */
    static void append(StringBuilder out, double value) {
        if (!(Math.abs(value) < 1e12)) {
            throw new IllegalArgumentException("not a length on paper: " + value);
        }
        long thousandths = Math.round(value * 1000);
        if (thousandths < 0) {
            out.append('-');
            thousandths = -thousandths;
        }
        out.append(thousandths / 1000);
        int rest = (int) (thousandths % 1000);
        if (rest != 0) {
            out.append('.').append((char) ('0' + rest / 100));
            if (rest % 100 != 0) {
                out.append((char) ('0' + rest / 10 % 10));
                if (rest % 10 != 0) {
                    out.append((char) ('0' + rest % 10));
                }
            }
        }
    }

    static String of(double value) {
        StringBuilder out = new StringBuilder();
        append(out, value);
        return out.toString();
    }
}
