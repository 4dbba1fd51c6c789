package rainlap.rule.opening;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import java.util.stream.Stream;
import rainlap.geom.Intervals;
import rainlap.geom.Point;
import rainlap.geom.Segment;
import rainlap.joint.OpeningEdge;
import rainlap.joint.Sheets;
import rainlap.measure.LengthText;
import rainlap.practice.Limit;
import rainlap.rule.Asked;
import rainlap.rule.Beside;
import rainlap.rule.Evidence;
import rainlap.rule.Finding;
import rainlap.rule.MendSizes;
import rainlap.rule.Outcome;
import rainlap.rule.PieceWords;
import rainlap.rule.Place;
import rainlap.rule.RuleInfo;
import rainlap.wall.Opening;
import rainlap.wall.Side;

/** A sill, jamb or head of an opening is turned less deep than asked, or not at all. */
public final class ShortReturn implements RevealRule {
    static final RuleInfo INFO = RuleInfo.of("short-return", "return too short", RuleInfo.Theme.OPENINGS, Limit.RETURN_HEAD,
            Limit.RETURN_JAMB, Limit.RETURN_SILL);

    @Override
    public RuleInfo info() {
        return INFO;
    }

    @Override
    public void judgeReveal(Evidence e, Opening o, Consumer<Outcome> tell) {
        e.edges(o).forEach(edge -> judge(e, edge).forEach(tell));
    }

    private Stream<Outcome> judge(Evidence e, OpeningEdge edge) {
        AskedReturn asked = AskedReturn.of(e, edge.opening(), edge.side());
        long along = edge.opening().along(edge.side());
        Intervals look = Intervals.of(asked.deep(), along - asked.deep()).intersect(asked.wall());
        if (look.isEmpty()) {
            return Stream.of(new Outcome.DoesNotApply("beyond the " + Openings.name(edge.opening(), edge.side())
                    + " there is no wall"));
        }
        Intervals none = edge.depth().below(1).intersect(look);
        Intervals some = edge.depth().below(asked.deep()).intersect(look).minus(none);
        List<Outcome> out = new ArrayList<>();
        add(e, edge, asked, none, out);
        add(e, edge, asked, some, out);
        if (out.isEmpty()) {
            out.add(new Outcome.Holds(() -> turning(edge, 0, along)));
        }
        return out.stream();
    }

    private void add(Evidence e, OpeningEdge edge, AskedReturn asked, Intervals where, List<Outcome> out) {
        for (int i = 0; i < where.count(); i++) {
            if (where.to(i) - where.from(i) >= AskedReturn.LEAST) {
                out.add(broken(e, edge, asked, new Span(where.from(i), where.to(i))));
            }
        }
    }

    /** Two places along an edge. */
    private record Span(double from, double to) {
        Segment line() {
            return new Segment(new Point(Math.round(from), 0), new Point(Math.round(to), 0));
        }

        /** With the end zones, where the stretch reaches them. */
        Span toTheEnds(long zone, long along) {
            return new Span(from <= zone ? 0 : from, to >= along - zone ? along : to);
        }

        String length() {
            return LengthText.mmUp(Math.round(to - from));
        }
    }

    private Outcome broken(Evidence e, OpeningEdge edge, AskedReturn asked, Span span) {
        long deep = Math.round(edge.depth().part(span.from, span.to).least());
        Place where = Place.line(e.elevation(), edge.surface(), span.line());
        List<String> turning = turning(edge, span.from, span.to);
        List<String> pieces = turning.isEmpty()
                ? Beside.membranes(e.stack(), new Segment(where.line().get(0), where.line().get(1)), AskedReturn.LEAST) : turning;
        String drawn = deep == 0 ? "not turned" : LengthText.mm(deep) + " deep";
        return Finding.of(INFO, where, pieces).asks(asked.limit()).requires(asked.deep()).measures(deep)
                .reads(drawn, asked.inWords(edge.opening()))
                .says(says(edge, asked, deep, pieces), remedy(e, edge, asked, span, pieces));
    }

    /** Sheets that turn the edge within a stretch; strips where no sheet does. */
    private static List<String> turning(OpeningEdge edge, double from, double to) {
        Intervals span = Intervals.of(from, to);
        List<OpeningEdge.Turn> turns = edge.turns().stream().filter(t -> !t.where().intersect(span).isEmpty()).toList();
        List<String> sheets = turns.stream().filter(t -> Sheets.isSheet(t.face())).map(t -> t.face().piece().id()).distinct().toList();
        return sheets.isEmpty() ? turns.stream().map(t -> t.face().piece().id()).distinct().toList() : sheets;
    }

    private static String says(OpeningEdge edge, AskedReturn asked, long deep, List<String> pieces) {
        String name = Openings.name(edge.opening(), edge.side());
        String what = pieces.isEmpty() ? "Nothing turns in at the " + name
                : deep == 0 ? PieceWords.does(pieces, "stops", "stop") + " at the " + name + " and nothing turns into it"
                : PieceWords.does(pieces, "turns", "turn") + " only " + LengthText.mm(deep) + " into the " + name;
        return what + ". " + Asked.sentence(asked.limit(), "a return " + asked.inWords(edge.opening()));
    }

    /** Water that is driven up from within the opening gets in over the strip at the head, which therefore lies on the frame. */
    private static String remedy(Evidence e, OpeningEdge edge, AskedReturn asked, Span span, List<String> pieces) {
        Opening o = edge.opening();
        String onto = pieces.isEmpty() ? "the wall" : PieceWords.list(pieces) + " on the wall";
        String on = edge.side() == Side.HEAD ? LengthText.mm(MendSizes.upFromHead(e)) + " up the frame, behind " + (pieces.isEmpty() ? "the sheet" : PieceWords.list(pieces))
                + ", which is slit or lifted for it" : "50 onto " + onto;
        return "Stick flexible flashing tape along the " + Openings.name(o, edge.side()) + ", "
                + span.toTheEnds(asked.deep(), o.along(edge.side())).length() + " long: at least " + LengthText.mm(asked.deep())
                + " deep into the reveal and " + on + ".";
    }
}
