package rainlap.rule.transport;

import java.util.Optional;
import rainlap.wall.Exposure;

/** Whether and where a building travels. */
final class Travel {
    static final String STAYS = "the building does not travel: the exposure states neither towing nor a road";

    private Travel() {}

    static boolean goesByRoad(Exposure x) {
        return x.towingKmPerH().orElse(0) > 0 || x.road().isPresent();
    }

    /** Why the road that the file names cannot be used; empty where it is known or none is named. */
    static Optional<String> unknownRoad(Exposure x) {
        return x.road().filter(r -> Road.find(r).isEmpty()).map(r -> "the road \"" + r + "\" is not known; known are " + String.join(", ", Road.words()));
    }

    static Optional<Road> road(Exposure x) {
        return x.road().flatMap(Road::find);
    }
}
