package rainlap.rule.opening;

import java.util.List;
import java.util.function.Consumer;
import java.util.stream.Stream;
import rainlap.geom.Point;
import rainlap.geom.Segment;
import rainlap.joint.Sheets;
import rainlap.material.EndDams;
import rainlap.material.MaterialKind;
import rainlap.material.Profile;
import rainlap.rule.Evidence;
import rainlap.rule.Finding;
import rainlap.rule.Outcome;
import rainlap.rule.PieceWords;
import rainlap.rule.Place;
import rainlap.rule.RuleInfo;
import rainlap.source.Known;
import rainlap.source.Source;
import rainlap.stack.Face;
import rainlap.wall.Opening;
import rainlap.wall.Side;
import rainlap.wall.Surface;

/** The turned-up end of a sill pan lies over the strip on the jamb: water that runs down the strip goes in behind the pan. */
public final class PanOverJamb implements RevealRule {
    static final RuleInfo INFO = RuleInfo.of("pan-over-jamb", "pan over the jamb strip", RuleInfo.Theme.OPENINGS);
    private static final Source SOURCE = new Source("EPA Indoor airPLUS technical guidance", "", "1.6", Known.PUBLISHED);

    @Override
    public RuleInfo info() {
        return INFO;
    }

    @Override
    public void judgeReveal(Evidence e, Opening o, Consumer<Outcome> tell) {
        List<Face> pans = SillFlashings.pans(e, o);
        if (pans.isEmpty()) {
            tell.accept(new Outcome.DoesNotApply("no pan lies on the sill of " + o.id()));
        }
        for (Face pan : pans) {
            tell.accept(judge(e, new End(o, pan, Side.LEFT)));
            tell.accept(judge(e, new End(o, pan, Side.RIGHT)));
        }
    }

    /** One end of a pan, at one jamb. */
    private record End(Opening opening, Face pan, Side jamb) {
        String id() {
            return pan.piece().id();
        }

        String inWords() {
            return jamb.inWords() + " of " + opening.id();
        }

        Surface surface() {
            return new Surface(opening.id(), jamb);
        }

        boolean isAtJamb() {
            return jamb == Side.LEFT ? pan.box().minX() < AskedReturn.LEAST : pan.box().maxX() > opening.along(Side.SILL) - AskedReturn.LEAST;
        }

        /** How high it goes up the jamb, drawn there or stated as an end dam. */
        long high(Evidence e) {
            long drawn = e.stack().on(surface()).stream().filter(f -> f.number() == pan.number()).mapToLong(f -> f.box().maxX()).max().orElse(0);
            Profile folded = pan.piece().material().profile();
            boolean dam = isAtJamb() && folded.endDams().map(d -> isAt(d)).orElse(false);
            return Math.max(drawn, dam ? Math.round(folded.endDamMm().orElse(0) * 100) : 0);
        }

        private boolean isAt(EndDams d) {
            return jamb == Side.LEFT ? d.atLeft() : d.atRight();
        }

        /** Tapes that run along at least half of the jamb and come down to behind or in front of the turned-up end. */
        List<Face> strips(Evidence e, long high) {
            return e.stack().on(surface()).stream().filter(f -> f.kind() == MaterialKind.TAPE && Sheets.isStrip(f) && f.number() != pan.number()
                    && 2 * f.box().width() >= opening.along(jamb) && f.box().minX() < high && f.box().minY() < pan.box().maxY()).toList();
        }
    }

    private static Outcome judge(Evidence e, End end) {
        long high = end.high(e);
        if (high == 0) {
            return new Outcome.DoesNotApply(end.id() + " is not turned up at the " + end.inWords());
        }
        List<Face> strips = end.strips(e, high), behind = strips.stream().filter(f -> !e.stack().isOutside(f, end.pan)).toList();
        return strips.isEmpty() ? new Outcome.DoesNotApply("no strip on the " + end.inWords() + " comes down to the turned-up end of " + end.id())
                : behind.isEmpty() ? Outcome.Holds.of(ids(end, strips)) : broken(e, end, behind, high);
    }

    private static List<String> ids(End end, List<Face> strips) {
        return Stream.concat(Stream.of(end.id()), strips.stream().map(f -> f.piece().id()).distinct()).toList();
    }

    private static Outcome broken(Evidence e, End end, List<Face> behind, long high) {
        Place where = Place.line(e.elevation(), end.surface(), new Segment(new Point(high, 0), new Point(high, Math.min(end.opening.reveal(), end.pan.box().maxY()))));
        List<String> ids = ids(end, behind);
        String strips = PieceWords.list(ids.subList(1, ids.size()));
        return Finding.of(INFO, where, ids).source(SOURCE)
                .reads("pan over jamb", "jamb over pan")
                .says("At the " + end.inWords() + " the turned-up end of the pan " + end.id() + " lies over " + strips + ": water that runs down " + strips
                        + " goes in behind the pan. Sides go over the pan (" + SOURCE.document() + ", " + SOURCE.clause() + ").",
                        "Free the foot of " + strips + ", set the pan " + end.id() + " against the jamb and stick " + strips + " down over its turned-up end;"
                        + " or stick another tape over both, from above the end of the pan down over it. Mind the sheet-metal edges.");
    }
}
