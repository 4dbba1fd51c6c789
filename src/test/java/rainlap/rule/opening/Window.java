package rainlap.rule.opening;

import rainlap.rule.Written;
import rainlap.wall.Elevation;

/** A wall with one opening, W1, from 500 to 1300 and 400 to 1100, for tests. */
final class Window {
    static final String FREE = "'free','free','free','free'";
    static final String W1 = window("'reveal': 90");
    static final String H1 = flashing("[350,1100,1100,75]", "'under': ['M1']");

    private Window() {}

    static String window(String more) {
        return "{'id': 'W1', 'kind': 'window', 'rect': [500,400,800,700], " + more + "}";
    }

    static Elevation wall(String opening, String... pieces) {
        return Written.wall(FREE, opening, pieces);
    }

    /** A sheet over all of the wall, cut at W1. */
    static String sheet(String pattern, String deep) {
        return "{'id': 'M1', 'material': 'foil-membrane', 'rect': [-50,-50,1900,1700], 'cuts': [{'at': 'W1', 'pattern': '" + pattern
                + "'" + (pattern.equals("flush") ? "" : ", 'return': " + deep) + "}]}";
    }

    static String membrane(String id, String shape) {
        return "{'id': '" + id + "', 'material': 'foil-membrane', " + shape + "}";
    }

    static String flashing(String rect, String more) {
        return "{'id': 'H1', 'material': 'head-flashing', 'rect': " + rect + (more.isEmpty() ? "" : ", " + more) + "}";
    }

    static String tape(String id, String shapes) {
        return "{'id': '" + id + "', 'material': 'wide-flashing-tape-150', 'shapes': [" + shapes + "]}";
    }
}
