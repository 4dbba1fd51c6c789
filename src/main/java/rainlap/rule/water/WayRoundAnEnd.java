package rainlap.rule.water;

import java.util.List;
import java.util.stream.Stream;
import rainlap.material.MaterialKind;
import rainlap.geom.Box;
import rainlap.practice.Limit;
import rainlap.rule.Evidence;
import rainlap.rule.Finding;
import rainlap.rule.HeadFlashings;
import rainlap.rule.Outcome;
import rainlap.rule.Place;
import rainlap.rule.Rule;
import rainlap.rule.RuleInfo;
import rainlap.water.Step;
import rainlap.wall.Piece;

/** Water runs off an end of a ledge that has no dam there, and from there it reaches the frame. */
public final class WayRoundAnEnd implements Rule {
    static final RuleInfo INFO = RuleInfo.of("way-round-an-end", "way round an end", RuleInfo.Theme.WATER);

    @Override
    public RuleInfo info() {
        return INFO;
    }

    @Override
    public Stream<Outcome> check(Evidence e) {
        List<Piece> ledges = e.pieces(MaterialKind.BATTEN, MaterialKind.FLASHING).filter(WayRoundAnEnd::isLedge).toList();
        if (ledges.isEmpty()) {
            return Stream.of(new Outcome.DoesNotApply("no batten and no flashing with an upstand is drawn at this stage"));
        }
        List<Outcome> found = Stream.of(0, 1).flatMap(n -> Ways.of(e, n).stream()).filter(Way::leavesALedge).map(w -> broken(e, w)).toList();
        return found.isEmpty() ? ledges.stream().map(p -> Outcome.Holds.of(p.id())) : found.stream();
    }

    private static boolean isLedge(Piece p) {
        return p.material().kind() == MaterialKind.BATTEN || p.material().profile().upstandMm().isPresent();
    }

    private static Outcome broken(Evidence e, Way w) {
        Place where = w.place(e);
        String ledge = w.path().stream().filter(s -> s.kind() == Step.Kind.OFF_A_LEDGE).findFirst().orElseThrow().piece();
        return Finding.of(INFO, where, Stream.concat(Stream.of(ledge), w.pieces().stream()).distinct().toList()).way(w.defences(), w.path()).litres(w.litresPerHour())
                .reads("no end dam", "end dam")
                .says("Water runs off an end of " + ledge + " and comes onto the frame at " + where.inWords()
                        + (w.defences() == 0 ? " with nothing failing: " : " when one thing fails: ") + Steps.told(w.path())
                        + ". Tape on the wall across that end does not hold it: the ledge stands out in front of the wall.",
                        "Turn that end of " + ledge + " up by " + e.practice().get(Limit.END_DAM).number() + " as an end dam" + HeadFlashings.slit(e, ledge, at(e, ledge, where)) + "; or carry " + ledge + " on until its end lies over sound membrane.");
    }

    /** The end that the water runs off. */
    private static long at(Evidence e, String ledge, Place where) {
        Box own = e.onWall(ledge).stream().flatMap(f -> f.piece().wallBox().stream()).findFirst().orElse(where.box());
        return Math.abs(where.box().minX() - own.minX()) < Math.abs(where.box().maxX() - own.maxX()) ? own.minX() : own.maxX();
    }
}
