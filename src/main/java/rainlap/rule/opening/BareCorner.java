package rainlap.rule.opening;

import java.util.List;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import rainlap.joint.OpeningCorner;
import rainlap.measure.LengthText;
import rainlap.practice.Limit;
import rainlap.rule.Asked;
import rainlap.rule.Evidence;
import rainlap.rule.Finding;
import rainlap.rule.Outcome;
import rainlap.rule.Place;
import rainlap.rule.RuleInfo;
import rainlap.wall.Opening;
import rainlap.wall.Surface;

/** Part of a corner of an opening lies bare, on sill or head and on the jamb, between the returns that a cut parts there. */
public final class BareCorner implements RevealRule {
    static final RuleInfo INFO = RuleInfo.of("bare-corner", "bare corner", RuleInfo.Theme.OPENINGS, Limit.RETURN_HEAD,
            Limit.RETURN_JAMB, Limit.RETURN_SILL);

    @Override
    public RuleInfo info() {
        return INFO;
    }

    @Override
    public void judgeReveal(Evidence e, Opening o, Consumer<Outcome> tell) {
        e.corners(o).forEach(c -> judge(e, c, tell));
    }

    private static void judge(Evidence e, OpeningCorner c, Consumer<Outcome> tell) {
        List<CornerFace> faces = CornerFace.both(e, c);
        List<CornerFace> judged = faces.stream().filter(CornerFace::isTurned).toList();
        List<CornerFace> bare = judged.stream().filter(f -> !f.bare().isEmpty()).toList();
        faces.stream().filter(f -> !f.isTurned()).forEach(f -> tell.accept(new Outcome.DoesNotApply(
                "at the " + c.inWords() + " of " + c.opening().id() + " nothing turns into the " + f.side().inWords())));
        if (!bare.isEmpty()) {
            tell.accept(broken(e, c, bare));
        } else if (!judged.isEmpty()) {
            tell.accept(new Outcome.Holds(c::pieces));
        }
    }

    private static Outcome broken(Evidence e, OpeningCorner c, List<CornerFace> bare) {
        CornerFace worst = bare.stream().reduce((a, b) -> b.covered() < a.covered() ? b : a).orElseThrow();
        return Finding.of(INFO, place(e, c, bare), c.pieces()).asks(worst.asked().limit()).requires(worst.deep())
                .measures(worst.covered()).reads(drawn(bare), "none bare")
                .says(says(c, bare, worst), remedy(e, c, bare));
    }

    private static Place place(Evidence e, OpeningCorner c, List<CornerFace> bare) {
        List<Place> each = bare.stream()
                .map(f -> Place.area(e.elevation(), new Surface(c.opening().id(), f.side()), f.bare())).toList();
        return new Place(each.get(0).surface(), List.of(), each.stream().flatMap(p -> p.area().stream()).toList());
    }

    /** {@code 2 of 90 × 90}, or {@code 60 × 90 on the sill, 90 × 90 on the left jamb}. */
    private static String drawn(List<CornerFace> bare) {
        List<String> sizes = bare.stream().map(CornerFace::size).distinct().toList();
        return bare.size() == 1 ? sizes.get(0) + " bare" : sizes.size() == 1 ? bare.size() + " bare " + sizes.get(0) : onEach(bare);
    }

    private static String onEach(List<CornerFace> bare) {
        return bare.stream().map(f -> f.size() + " on the " + f.side().inWords()).collect(Collectors.joining(", "));
    }

    private static String says(OpeningCorner c, List<CornerFace> bare, CornerFace worst) {
        String deep = LengthText.mm(worst.deep()) + " deep";
        return "At the " + c.inWords() + " of " + c.opening().id() + " the frame lies bare: " + onEach(bare) + ". "
                + (worst.deep() > worst.asked().deep() ? "The return beside it goes in " + deep + ". " : "")
                + Asked.sentence(worst.asked().limit(), "a return " + worst.asked().inWords(c.opening())) + " No corner may lie bare as deep as the returns go.";
    }

    private static String remedy(Evidence e, OpeningCorner c, List<CornerFace> bare) {
        long lap = e.practice().get(Limit.TAPE_COVER).hundredths();
        long deep = bare.stream().mapToLong(CornerFace::deep).max().orElseThrow();
        return "Stick one corner piece into the " + c.inWords() + " of " + c.opening().id() + ", " + LengthText.mm(deep)
                + " deep, at least " + CornerLegs.overBare(e, c).inWords() + ", and turn it at least " + LengthText.mm(lap) + " out onto the wall.";
    }
}
