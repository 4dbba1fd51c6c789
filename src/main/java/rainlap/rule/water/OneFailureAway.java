package rainlap.rule.water;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import rainlap.geom.Box;
import rainlap.material.MaterialKind;
import rainlap.practice.Limit;
import rainlap.rule.Evidence;
import rainlap.rule.Finding;
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
    /** Where these are laid, one strip is what practice asks. */
    private static final Set<MaterialKind> ALONE = Set.of(MaterialKind.CORNER_PIECE, MaterialKind.COLLAR);

    @Override
    public RuleInfo info() {
        return INFO;
    }

    @Override
    public Stream<Outcome> check(Evidence e) {
        List<Way> ways = Ways.of(e, 1).stream().filter(w -> !w.leavesALedge()).toList();
        Set<String> alone = e.elevation().pieces().stream().filter(p -> ALONE.contains(p.material().kind())).map(Piece::id).collect(Collectors.toSet());
        return ways.isEmpty() ? Stream.of(Outcome.Holds.of())
                : ways.stream().map(w -> isAllThatIsAsked(e, w, alone) ? new Outcome.Holds(w.pieces()) : broken(e, w));
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
        Stream<Box> corners = e.elevation().openings().stream().map(Opening::rect).flatMap(r -> Stream.of(new Box(r.minX(), r.minY(), r.minX(), r.minY()),
                new Box(r.maxX(), r.minY(), r.maxX(), r.minY()), new Box(r.minX(), r.maxY(), r.minX(), r.maxY()), new Box(r.maxX(), r.maxY(), r.maxX(), r.maxY())));
        return Stream.concat(corners, e.elevation().penetrations().stream().map(p -> p.region().box())).anyMatch(b -> b.grow(AROUND).contains(line));
    }

    private static Outcome broken(Evidence e, Way w) {
        Place where = w.place(e);
        String strip = w.failing().orElseThrow().piece(), lap = e.practice().get(Limit.COURSE_LAP).number();
        return Finding.of(INFO, where, w.pieces()).way(1, w.path()).litres(w.litresPerHour()).reads("1 failure", "2 failures")
                .says("Only the bond of " + strip + " keeps water from the frame at " + where.inWords() + ". When it fails: " + Steps.told(w.path()) + ".",
                        "Lay a sheet behind " + strip + " that laps what lies round it by " + lap + ", tucked in above behind the sheet there and drawn out below over the sheet there, so that "
                        + strip + " is the second line and not the only one.");
    }
}
