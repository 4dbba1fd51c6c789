package rainlap.rule.opening;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import rainlap.geom.Box;
import rainlap.geom.BoxTree;
import rainlap.geom.Point;
import rainlap.geom.Segment;
import rainlap.material.EndDams;
import rainlap.measure.LengthText;
import rainlap.practice.Limit;
import rainlap.practice.LimitValue;
import rainlap.rule.Asked;
import rainlap.rule.Evidence;
import rainlap.rule.Finding;
import rainlap.rule.HeadFlashings;
import rainlap.rule.Outcome;
import rainlap.rule.Place;
import rainlap.rule.Rule;
import rainlap.rule.RuleInfo;
import rainlap.wall.Opening;
import rainlap.wall.Piece;
import rainlap.wall.Surface;

/** An end of a flashing at an opening's head or sill is not turned up, or less high than asked. */
public final class NoEndDam implements Rule {
    static final RuleInfo INFO = RuleInfo.of("no-end-dam", "no end dam", RuleInfo.Theme.OPENINGS, Limit.END_DAM);

    @Override
    public RuleInfo info() {
        return INFO;
    }

    @Override
    public Stream<Outcome> check(Evidence e) {
        Map<String, Piece> found = new LinkedHashMap<>();
        for (Opening o : e.elevation().openings()) {
            Stream.concat(HeadFlashings.of(e, o).stream(), SillFlashings.of(e, o).stream().filter(f -> f.surface().isWall()))
                    .forEach(f -> found.putIfAbsent(f.piece().id(), f.piece()));
        }
        return found.isEmpty() ? Stream.of(new Outcome.DoesNotApply("the wall has no flashing at a head or sill"))
                : ends(e, List.copyOf(found.values()));
    }

    private static Stream<Outcome> ends(Evidence e, List<Piece> all) {
        List<Box> boxes = all.stream().map(p -> p.wallBox().orElseThrow()).toList();
        BoxTree tree = new BoxTree(boxes);
        return IntStream.range(0, all.size()).boxed().flatMap(i -> {
            List<Piece> beside = Arrays.stream(tree.meeting(boxes.get(i))).mapToObj(all::get).toList();
            return Stream.of(true, false).map(left -> judge(e, new End(all.get(i), boxes.get(i), left), beside));
        });
    }

    /** One end of a flashing. */
    private record End(Piece piece, Box box, boolean left) {
        long tip() {
            return left ? box.minX() : box.maxX();
        }

        String inWords() {
            return (left ? "left" : "right") + " end of " + piece.id();
        }

        /** Whether another flashing goes on from here: that is a joint and no end. */
        boolean isJoint(Piece other) {
            Box b = other.wallBox().orElseThrow();
            return !other.id().equals(piece.id()) && b.minY() < box.maxY() && box.minY() < b.maxY()
                    && (left ? b.minX() < tip() && tip() <= b.maxX() : b.minX() <= tip() && tip() < b.maxX());
        }
    }

    private static Outcome judge(Evidence e, End end, List<Piece> beside) {
        for (Piece other : beside) {
            if (end.isJoint(other)) {
                return new Outcome.DoesNotApply("at the " + end.inWords() + " the flashing goes on as " + other.id());
            }
        }
        Box wall = e.elevation().outline().box();
        if (end.left ? end.tip() <= wall.minX() : end.tip() >= wall.maxX()) {
            return new Outcome.CannotTell(List.of(end.piece.id()), "the " + end.inWords()
                    + " lies at the edge of the wall; whether the flashing goes on round that edge is not drawn here");
        }
        if (end.piece.material().profile().endDams().isEmpty()) {
            return LevelFlashings.notStated(end.piece, "which ends are turned up", "end_dams");
        }
        return judged(e, end, end.piece.material().profile().endDams().get());
    }

    private static Outcome judged(Evidence e, End end, EndDams dams) {
        LimitValue asked = e.practice().get(Limit.END_DAM);
        boolean turnedUp = end.left ? dams.atLeft() : dams.atRight();
        if (turnedUp && end.piece.material().profile().endDamMm().isEmpty()) {
            return LevelFlashings.notStated(end.piece, "how high its ends are turned up", "end_dam");
        }
        long high = turnedUp ? Math.round(end.piece.material().profile().endDamMm().getAsDouble() * 100) : 0;
        return high >= asked.hundredths() ? Outcome.Holds.of(end.piece.id()) : broken(e, end, high, asked);
    }

    private static Outcome broken(Evidence e, End end, long high, LimitValue asked) {
        Box b = end.box();
        Place where = Place.line(e.elevation(), Surface.WALL, new Segment(new Point(end.tip(), b.minY()), new Point(end.tip(), b.maxY())));
        String mm = LengthText.mm(high);
        return Finding.of(INFO, where, List.of(end.piece.id())).asks(asked).measures(high)
                .reads(high == 0 ? "not turned up" : mm + " high", asked.number() + " high")
                .says("The " + end.inWords() + (high == 0 ? " is not turned up" : " is turned up by only " + mm) + ": water that runs along it leaves there, behind what is beside it. "
                        + Asked.sentence(asked, "an end dam " + asked.number() + " high"),
                        "Fold the " + end.inWords() + " up by at least " + asked.number() + ", out to the face of the cladding beside it, its corner folded and not cut"
                        + HeadFlashings.slit(e, end.piece.id(), end.tip()) + "; or replace " + end.piece.id() + ". Wear gloves: sheet-metal edges cut.");
    }
}
