package rainlap.practice;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The practices that ship with the product. */
public final class Practices {
    /** Id of the practice that holds where none is chosen, and where a chosen one is silent. */
    public static final String COMMON = "common";

    private static final List<String> OTHERS = List.of("au-abcb-2022", "ca-obc", "ie-guide", "jp-inspection", "jp-manual", "nz-metal-cop",
            "uk-nhbc-2021", "us-irc-2015");

    private Practices() {}

    /** Loads on first use; a fault in the shipped data stops the program at once. */
    private static final class Shipped {
        static final List<Practice> ALL = load();

        private static List<Practice> load() {
            List<Practice> all = new ArrayList<>();
            Practice common = PracticeReader.readCommon(COMMON);
            all.add(common);
            for (String id : OTHERS) {
                all.add(PracticeReader.read(id, common));
            }
            return List.copyOf(all);
        }
    }

    /** All of them: {@code common} first, then sorted by id. */
    public static List<Practice> all() {
        return Shipped.ALL;
    }

    /** Their ids, in the same order. */
    public static List<String> ids() {
        return all().stream().map(Practice::id).toList();
    }

    /** The practice that holds where none is chosen. */
    public static Practice common() {
        return all().get(0);
    }

    /** The practice with exactly this id. */
    public static Optional<Practice> find(String id) {
        return all().stream().filter(p -> p.id().equals(id)).findFirst();
    }
}
