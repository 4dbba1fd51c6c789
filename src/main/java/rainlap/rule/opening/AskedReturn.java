package rainlap.rule.opening;

import rainlap.geom.EdgeFrame;
import rainlap.geom.Intervals;
import rainlap.measure.LengthText;
import rainlap.practice.Limit;
import rainlap.practice.LimitValue;
import rainlap.rule.Evidence;
import rainlap.wall.Opening;
import rainlap.wall.Side;

/**
 * How deep one side of an opening is to be turned.
 *
 * @param deep what is asked, grid units: the limit, all of a shallower reveal, or what the middle of a very short edge can have
 * @param wall where along the edge the wall goes on beyond it
 */
record AskedReturn(LimitValue limit, long deep, Intervals wall) {
    /** The drawing's own tolerance: 1 mm. */
    static final long LEAST = 100;

    static AskedReturn of(Evidence e, Opening o, Side side) {
        LimitValue limit = e.practice().get(limitOf(side));
        long deep = Math.min(Math.min(o.reveal(), limit.hundredths()), Math.max(0, o.along(side) / 2 - LEAST));
        EdgeFrame edge = EdgeFrame.of(o.edge(side));
        double outwards = side == Side.HEAD || side == Side.LEFT ? edge.side() : -edge.side();
        return new AskedReturn(limit, deep, edge.inside(e.elevation().outline().region(), outwards));
    }

    static Limit limitOf(Side side) {
        return switch (side) {
            case SILL -> Limit.RETURN_SILL;
            case HEAD -> Limit.RETURN_HEAD;
            case LEFT, RIGHT -> Limit.RETURN_JAMB;
            case WALL -> throw new IllegalArgumentException("the wall is no side of an opening");
        };
    }

    /** Whether the reveal, not the practice, sets what is asked. */
    boolean isWholeReveal(Opening o) {
        return deep == o.reveal();
    }

    /** {@code 50 deep}, or {@code 40 deep, the whole reveal}. */
    String inWords(Opening o) {
        return LengthText.mm(deep) + " deep" + (isWholeReveal(o) && deep < limit.hundredths() ? ", the whole reveal" : "");
    }
}
