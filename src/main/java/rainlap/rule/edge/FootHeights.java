package rainlap.rule.edge;

import java.util.Optional;
import java.util.OptionalLong;
import rainlap.geom.Box;
import rainlap.measure.LengthText;
import rainlap.practice.Limit;
import rainlap.practice.LimitValue;
import rainlap.rule.Evidence;
import rainlap.rule.Place;
import rainlap.wall.EdgeRole;
import rainlap.wall.GroundCover;

/**
 * The levels between which the foot of the cladding is right: clear of the ground and down past the base. Both rules of it tell both, so that mending what one finds does not bring about
 * what the other does. Where the ground lies too high no level is right before it is lowered.
 *
 * @param ground its level, grid units
 * @param lowest the level below which the foot comes too near to it
 * @param highest the level above which the foot leaves the base open
 */
record FootHeights(long ground, long lowest, long highest, LimitValue clear, LimitValue below) {

    /** Over a stretch of the wall; empty where only one of the two bounds it, or a practice takes no length for enough. */
    static Optional<FootHeights> at(Evidence e, Box where) {
        LimitValue clear = e.practice().get(clearance(e.elevation().outline().groundCover())), below = e.practice().get(Limit.CLADDING_BELOW_FRAME);
        OptionalLong base = e.elevation().outline().edges().stream().filter(s -> s.role() == EdgeRole.BASE).map(s -> s.line().box())
                .filter(b -> b.minX() < where.maxX() && where.minX() < b.maxX()).mapToLong(Box::minY).min(), ground = e.elevation().outline().ground();
        return base.isEmpty() || ground.isEmpty() || clear.isNever() || below.isNever() ? Optional.empty()
                : Optional.of(new FootHeights(ground.getAsLong(), ground.getAsLong() + clear.hundredths(), base.getAsLong() - below.hundredths(), clear, below));
    }

    static Limit clearance(GroundCover cover) {
        return switch (cover) {
            case SOIL -> Limit.GROUND_CLEARANCE;
            case SANDY -> Limit.SANDY_CLEARANCE;
            case PAVED -> Limit.PAVED_CLEARANCE;
        };
    }

    /** What is to be done first where no level is right; else empty. */
    String first() {
        return lowest <= highest ? "" : "No foot is " + asked() + " as the ground lies: lower that by at least " + LengthText.mm(lowest - highest) + ", to "
                + Place.level(ground - lowest + highest) + ". ";
    }

    /** {@code to end between −250 and −50: at least 150 above the ground and at least 50 below the base}. */
    String inWords() {
        return lowest < highest ? "to end between " + Place.level(lowest) + " and " + Place.level(highest) + ": " + asked()
                : "to end at " + Place.level(highest) + (lowest > highest ? "" : ": " + asked());
    }

    private String asked() {
        return "at least " + clear.number() + " above the ground and at least " + below.number() + " below the base";
    }
}
