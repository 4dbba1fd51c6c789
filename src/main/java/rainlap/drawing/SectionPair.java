package rainlap.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import rainlap.check.Checker;
import rainlap.check.Rules;
import rainlap.mend.Mended;
import rainlap.mend.Mending;
import rainlap.paper.Group;
import rainlap.paper.Mark;
import rainlap.paper.PaperBox;
import rainlap.paper.TextMetrics;
import rainlap.rule.Evidence;
import rainlap.wall.Piece;

/** A section as drawn and the same cut as it should be: side by side when plumb, else one beneath the other. */
final class SectionPair {
    static final String DRAWN = "as drawn";
    static final String SHOULD = "as it should be";
    /** A mended level cut has no head of its own. */
    private static final double SECOND = 35;
    private static final double GAP = 3;

    private SectionPair() {}

    /** How high both stand together. */
    static double height(SectionPlan plan, Evidence evidence, Mended mended) {
        double drawn = height(plan, evidence, Optional.empty()), should = height(plan, mended);
        return plan.cut().plumb() ? Math.max(drawn, should) : drawn + should - (SectionView.LEVEL_HEIGHT - SECOND);
    }

    /** How high the one as drawn stands for what is told of it, in the narrowest column that a sheet has. */
    static double height(SectionPlan plan, Evidence evidence, Optional<String> note) {
        boolean plumb = plan.cut().plumb();
        return single(plumb) + narrowest(plan, evidence).more(plumb ? List.of() : note.stream().toList(), lines(plumb));
    }

    /** The same as it should be. */
    static double height(SectionPlan plan, Mended mended) {
        String numbers = plan.points().stream().map(p -> Integer.toString(p.number())).collect(Collectors.joining(" and "));
        List<String> what = new ArrayList<>(mended.what());
        what.add(plan.points().size() < 2 ? "" : " This mends " + numbers + " only.");
        return single(plan.cut().plumb()) + SectionWords.more(what, narrowest(plan, mended.evidence()).wordsWidth(), lines(plan.cut().plumb()));
    }

    private static double single(boolean plumb) {
        return plumb ? SectionView.PLUMB_HEIGHT : SectionView.LEVEL_HEIGHT;
    }

    private static SectionView narrowest(SectionPlan plan, Evidence evidence) {
        double width = plan.cut().plumb() ? (Slots.COLUMN - GAP) / 2 : Slots.COLUMN;
        return new SectionView(plan, evidence, PaperBox.ofSize(0, 0, width, SectionView.PLUMB_HEIGHT), SectionCell.HEAD);
    }

    /** How many lines of words a cell has room for. */
    static int lines(boolean plumb) {
        return plumb ? 4 : 7;
    }

    static Group of(SectionPlan plan, Evidence evidence, Mended mended, PaperBox cell) {
        boolean plumb = plan.cut().plumb();
        double half = (cell.width() - GAP) / 2, foot = cell.top() + height(plan, evidence, Optional.empty());
        PaperBox first = plumb ? new PaperBox(cell.left(), cell.top(), cell.left() + half, cell.bottom())
                : new PaperBox(cell.left(), cell.top(), cell.right(), foot);
        PaperBox second = plumb ? new PaperBox(cell.right() - half, cell.top(), cell.right(), cell.bottom())
                : new PaperBox(cell.left(), foot, cell.right(), cell.bottom());
        SectionView drawn = new SectionView(plan, evidence, first, SectionCell.HEAD);
        drawn.caption(DRAWN);
        drawn.words(drawn.told(drawn.drawCut(evidence), List.of(), lines(plumb)));
        List<Mark> out = new ArrayList<>(SectionCell.pairHead(cell, plan.letter() + "–" + plan.letter(), drawn.title(), drawn.scale(evidence), plan.points()));
        out.addAll(drawn.marks());
        out.add(Group.of("mended-" + plan.letter(), should(plan, mended, second, plumb ? SectionCell.HEAD : 0)));
        return SectionView.group(plan, out);
    }

    /** A plumb section as drawn, and beside it why there is no other. */
    static Group without(SectionPlan plan, Evidence evidence, String why, PaperBox cell) {
        double half = (cell.width() - GAP) / 2;
        SectionView drawn = new SectionView(plan, evidence, new PaperBox(cell.left(), cell.top(), cell.left() + half, cell.bottom()), SectionCell.HEAD);
        drawn.caption(DRAWN);
        drawn.words(drawn.told(drawn.drawCut(evidence), List.of(), lines(true)));
        List<Mark> out = new ArrayList<>(SectionCell.pairHead(cell, plan.letter() + "–" + plan.letter(), drawn.title(), drawn.scale(evidence), plan.points()));
        out.addAll(drawn.marks());
        out.addAll(SectionCell.text(TextMetrics.wrap(why, half, Looks.PLAIN), cell.right() - half, cell.top() + SectionCell.HEAD + 6));
        return SectionView.group(plan, out);
    }

    /** As it should be alone, where both do not find room together. */
    static Group mended(SectionPlan plan, Evidence evidence, Mended mended, PaperBox cell) {
        SectionView view = new SectionView(plan, evidence, cell, SectionCell.HEAD);
        List<Mark> out = new ArrayList<>(SectionCell.head(cell, plan.letter() + "–" + plan.letter(), view.title(), view.scale(evidence), plan.points()));
        out.addAll(should(plan, mended, cell, SectionCell.HEAD));
        return Group.of("mended-" + plan.letter(), out).withData("weak", Integer.toString(plan.first().number()));
    }

    private static List<Mark> should(SectionPlan plan, Mended mended, PaperBox cell, double head) {
        SectionView view = new SectionView(MendedGauge.in(plan, mended), mended.evidence(), cell, head);
        view.caption(SHOULD);
        view.drawMended();
        view.words(TextMetrics.wrap(String.join(" ", mended.what()) + only(plan, mended), view.wordsWidth(), Looks.PLAIN));
        return view.marks();
    }

    /** Which of several weak points in one cut are gone, where others are left. */
    private static String only(SectionPlan plan, Mended mended) {
        if (plan.points().size() < 2) {
            return "";
        }
        Set<String> left = Checker.check(mended.evidence(), Rules.all()).weakPoints().stream().map(p -> Mending.key(p.finding())).collect(Collectors.toSet());
        Set<String> ids = mended.evidence().elevation().pieces().stream().map(Piece::id).collect(Collectors.toSet());
        List<String> gone = plan.points().stream().filter(p -> p == plan.first() || ids.containsAll(p.finding().pieces()) && !left.contains(Mending.key(p.finding())))
                .map(p -> Integer.toString(p.number())).toList();
        return gone.size() == plan.points().size() ? "" : " This mends " + String.join(" and ", gone) + " only.";
    }
}
