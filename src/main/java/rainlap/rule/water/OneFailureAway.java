package rainlap.rule.water;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import rainlap.geom.Box;
import rainlap.material.MaterialKind;
import rainlap.measure.LengthText;
import rainlap.practice.Limit;
import rainlap.rule.Evidence;
import rainlap.rule.Finding;
import rainlap.rule.MendSizes;
import rainlap.rule.Outcome;
import rainlap.rule.Place;
import rainlap.rule.Rule;
import rainlap.rule.RuleInfo;
import rainlap.wall.Opening;
import rainlap.wall.Piece;
import rainlap.water.Step;

/** A single bond or seal stands between the rain and the frame, where practice asks for more. */
public final class OneFailureAway implements Rule {
    static final RuleInfo INFO = RuleInfo.of("one-failure-away", "one failure away", RuleInfo.Theme.WATER);
    /** 200 mm: as far as the strips in a corner of an opening, or round a pipe, commonly reach. Our own choice. */
    private static final long AROUND = 20_000;

    @Override
    public RuleInfo info() {
        return INFO;
    }

    @Override
    public Stream<Outcome> check(Evidence e) {
        List<Way> ways = Ways.of(e, 1).stream().filter(w -> !w.leavesALedge()).toList();
        Set<String> alone = e.pieces(MaterialKind.CORNER_PIECE, MaterialKind.COLLAR).map(Piece::id).collect(Collectors.toSet());
        return ways.isEmpty() ? Stream.of(Outcome.Holds.of())
                : ways.stream().map(w -> isAllThatIsAsked(e, w, alone) ? new Outcome.Holds(w::pieces) : broken(e, w));
    }

    /** A lap that is overrun is for the rules of laps and tape; in corners, reveals and round pipes one strip is what practice asks. */
    private static boolean isAllThatIsAsked(Evidence e, Way w, Set<String> alone) {
        Step failing = w.failing().orElseThrow();
        return failing.kind() == Step.Kind.OVERRUN || failing.kind() == Step.Kind.ALONG_A_PIPE || alone.contains(failing.piece())
                || !w.surface().isWall() || !failing.on().isWall() || w.startsInsideAnOpening() || isAround(e, w) || isTapeForALap(e, w);
    }

    /** Where a practice takes tape instead of a lap, a lap that wind gets over once the tape is off is what it asks. */
    private static boolean isTapeForALap(Evidence e, Way w) {
        Step last = w.last().orElseThrow();
        return !last.failure() && (last.kind() == Step.Kind.LIFT_UNDER && e.practice().get(Limit.COURSE_LAP).orTaped()
                || last.kind() == Step.Kind.PUSH_UNDER && e.practice().get(Limit.END_LAP).orTaped());
    }

    private static boolean isAround(Evidence e, Way w) {
        Box line = w.where().stream().map(p -> new Box(p.x(), p.y(), p.x(), p.y())).reduce(Box::join).orElseThrow();
        Box near = line.grow(AROUND);
        Stream<Box> corners = e.elevation().openingsMeeting(near).stream().map(Opening::rect).flatMap(r -> Stream.of(new Box(r.minX(), r.minY(), r.minX(), r.minY()),
                new Box(r.maxX(), r.minY(), r.maxX(), r.minY()), new Box(r.minX(), r.maxY(), r.minX(), r.maxY()), new Box(r.maxX(), r.maxY(), r.maxX(), r.maxY())));
        return Stream.concat(corners, e.elevation().penetrationsMeeting(near).stream().map(p -> p.region().box())).anyMatch(b -> b.grow(AROUND).contains(line));
    }

    private static Outcome broken(Evidence e, Way w) {
        Place where = w.place(e);
        String strip = w.failing().orElseThrow().piece();
        return Finding.of(INFO, where, w.pieces()).way(1, w.path()).litres(w.litresPerHour()).reads("1 failure", "2 failures")
                .says("Only the bond of " + strip + " keeps water from the frame at " + where.inWords() + ". When it fails: " + Steps.told(w.path()) + ".",
                        w.last().filter(OneFailureAway::isByALap).map(s -> longer(e, strip, s)).orElseGet(() -> behind(e, strip)));
    }

    /** Whether water comes in by a lap that wind gets over, so that a longer one is the first line. */
    private static boolean isByALap(Step last) {
        return !last.failure() && !last.layer().equals(Step.FRAME) && (last.kind() == Step.Kind.LIFT_UNDER || last.kind() == Step.Kind.PUSH_UNDER);
    }

    private static String longer(Evidence e, String strip, Step s) {
        boolean lift = s.kind() == Step.Kind.LIFT_UNDER;
        String outer = s.piece(), inner = s.layer(), lap = LengthText.mm(MendSizes.lap(e, s)), cover = e.practice().get(Limit.TAPE_COVER).number();
        return (strip.equals(outer) ? "Let " : "Take " + strip + " off and let ") + outer + " lap " + inner + " by at least " + lap + ", no less than wind "
                + (lift ? "lifts" : "pushes") + " water: slide " + (lift ? outer + " down or " + inner + " up" : "one of them over") + ", or slip a strip in behind " + outer
                + " and over " + inner + " that laps each by " + lap + ". Then tape each " + (lift ? "lower" : "side") + " edge again, " + cover + " to each side.";
    }

    /** A sheet where there is none. */
    private static String behind(Evidence e, String strip) {
        String lap = LengthText.mm(MendSizes.lap(e)), side = LengthText.mm(MendSizes.side(e));
        return "Lay a sheet behind " + strip + ", tucked in by " + lap + " above behind the sheet there, drawn out by " + lap + " below over the sheet there and lapped by " + side
                + " to both sides, and tape its edges, so that " + strip + " is the second line and not the only one.";
    }
}
