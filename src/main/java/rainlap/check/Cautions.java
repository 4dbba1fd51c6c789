package rainlap.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import rainlap.material.MaterialKind;
import rainlap.rule.Evidence;
import rainlap.wall.Elevation;
import rainlap.wall.Exposure;
import rainlap.wall.Penetration;
import rainlap.wall.Piece;

/** What can hurt those who lay this wall, and only what belongs to it: told with every check, on the sheet in brief and in the terminal in full. */
public final class Cautions {
    private static final Caution HEIGHT = new Caution("Mind heights and sheet edges.",
            "Work at height from a platform or scaffold, not from the top of a ladder; a loose sheet catches the wind. Cut sheet edges are sharp: wear gloves.");
    private static final Caution HEAT = new Caution("Hot-air tools burn skin and membrane; tape lets go in heat.",
            "Hot-air tools burn skin and set light to membrane and insulation: keep water at hand and never leave one running. In heat tape lets go and metal "
            + "burns: work in the cool of the day.");
    private static final Caution TOWING = new Caution("Before towing fix loose edges, check the legal size.",
            "Before towing fix every loose edge, measure height and width as loaded, and check them against the road's own law.");

    /** So many characters of ids are named. */
    private static final int LONGEST = 30;

    private Cautions() {}

    /**
     * One thing to mind.
     *
     * @param brief for the sheet
     * @param full for the terminal
     */
    public record Caution(String brief, String full) {}

    /** Those that this wall calls for, in the order of the work. */
    public static List<Caution> of(Evidence e) {
        Elevation wall = e.elevation();
        List<Caution> out = new ArrayList<>(List.of(HEIGHT));
        if (wall.pieces().stream().anyMatch(Cautions::isStuckOn)) {
            out.add(HEAT);
        }
        String hot = wall.penetrations().stream().filter(Cautions::isHot).map(Penetration::id).sorted().collect(Collectors.joining(", "));
        if (!hot.isEmpty()) {
            out.add(flue(hot));
        }
        if (travels(wall.exposure())) {
            out.add(TOWING);
        }
        return List.copyOf(out);
    }

    private static boolean isStuckOn(Piece p) {
        return p.bond().isFull() || p.material().kind() == MaterialKind.TAPE;
    }

    /** By its name: flues, chimneys, and ducts that carry heat. */
    private static boolean isHot(Penetration p) {
        String kind = p.kind().toLowerCase(Locale.ROOT);
        return Stream.of("flue", "chimney", "exhaust", "stove", "hot ").anyMatch(kind::contains);
    }

    private static Caution flue(String ids) {
        String named = ids.length() <= LONGEST ? ids : ids.substring(0, LONGEST) + "\u2026";
        return new Caution("Keep membrane and tape clear of hot " + named + ": how far, local code and licensed people say.",
                "Membrane, tape and collar keep clear of what is hot (" + named + "): how far is for its maker, licensed people and local code, and Rainlap does not judge it.");
    }

    private static boolean travels(Exposure x) {
        return x.towingKmPerH().orElse(0) > 0 || x.road().isPresent();
    }
}
