package rainlap.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import rainlap.mend.Mended;
import rainlap.paper.Group;
import rainlap.paper.Mark;
import rainlap.paper.PaperBox;
import rainlap.paper.Text;
import rainlap.paper.TextMetrics;

/** A place seen close to in its cell: as drawn, and as it should be beneath it or in a cell of its own. */
final class CloseUpCell {
    static final double HEIGHT = 48;
    /** Of the place as it should be, which has no head of its own but is drawn in as much room, so that both have one scale. */
    private static final double SECOND = 44;
    /** Room for the sentence beside it. */
    private static final double BESIDE = 33;
    private static final int MOST_LINES = 8;
    /** Of the place as it should be. */
    private static final int SECOND_LINES = 9;
    private final CloseUp view;
    private final String letter;
    /** Where it is, in words; blank where its letter stands on the elevation. */
    private final Optional<String> place;

    CloseUpCell(CloseUp view, String letter, Optional<String> place) {
        this.view = view;
        this.letter = letter;
        this.place = place;
    }

    /** How high it stands as drawn, for what is told of it. */
    double height(Optional<String> because) {
        return HEIGHT + SectionWords.more(view.point().finding(), notes(because), BESIDE, MOST_LINES - (because.isPresent() ? 0 : 1));
    }

    /** The same as it should be, for what is told of that. */
    static double height(Mended mended) {
        return HEIGHT + SectionWords.more(mended.what(), BESIDE, SECOND_LINES);
    }

    /** Both. */
    double pairHeight(Mended mended) {
        return height(Optional.empty()) + height(mended) - (HEIGHT - SECOND);
    }

    /** That of the place as drawn, alone or above another. */
    static int scale(CloseUp view, PaperBox cell) {
        return view.scale(field(cell));
    }

    private PaperBox first(PaperBox cell) {
        return new PaperBox(cell.left(), cell.top(), cell.right(), cell.top() + height(Optional.empty()));
    }

    /** It has no heading, and so begins a little higher. */
    private PaperBox second(PaperBox cell) {
        return new PaperBox(cell.left(), first(cell).bottom() - 5, cell.right(), cell.bottom());
    }

    /** Where the place is drawn in a cell that holds it twice: as drawn, and as it should be. */
    List<PaperBox> fields(PaperBox cell) {
        return List.of(field(first(cell)), field(second(cell)));
    }

    /** As high whatever is told beside it. */
    private static PaperBox field(PaperBox cell) {
        return new PaperBox(cell.left() + BESIDE + 4, cell.top() + 6, cell.right() - 9, cell.top() + HEIGHT - 0.5);
    }

    private Group group(List<Mark> marks) {
        return Group.of("section-" + letter, marks).withData("weak", Integer.toString(view.point().number()));
    }

    private List<Mark> head(PaperBox cell) {
        return SectionCell.head(cell, letter, view.title(), words(cell), List.of(view.point()), field(cell).left() - 0.5);
    }

    private String words(PaperBox cell) {
        return "1:" + scale(view, cell) + ", " + view.seen();
    }

    /** As drawn, and why there is nothing beside it. */
    Group drawn(PaperBox cell, Optional<String> because) {
        List<Mark> out = new ArrayList<>(head(cell));
        out.addAll(view.drawn(field(cell)));
        out.addAll(SectionCell.text(told(because, MOST_LINES), cell.left(), cell.top() + 17.4));
        return group(out);
    }

    private List<String> told(Optional<String> because, int most) {
        return SectionWords.told(view.point().finding(), notes(because), view.elsewhere().stream().toList(), BESIDE, most);
    }

    private List<String> notes(Optional<String> because) {
        return Stream.of(place, because).flatMap(Optional::stream).toList();
    }

    /** As drawn, and as it should be beneath it. */
    Group pair(PaperBox cell, Mended mended) {
        PaperBox first = first(cell);
        List<Mark> out = new ArrayList<>(head(first));
        out.addAll(view.drawn(field(first)));
        out.add(Text.of(cell.left(), cell.top() + 17.4, SectionPair.DRAWN, Looks.STRONG));
        out.addAll(SectionCell.text(told(Optional.empty(), MOST_LINES - 1), cell.left(), cell.top() + 17.4 + Looks.LINE));
        out.add(Group.of("mended-" + letter, should(mended, second(cell), first.bottom() + 4)));
        return group(out);
    }

    /** As it should be alone, where both do not find room together. */
    Group mended(PaperBox cell, Mended mended) {
        List<Mark> out = new ArrayList<>(head(cell));
        out.addAll(should(mended, cell, cell.top() + 17.4));
        return Group.of("mended-" + letter, out).withData("weak", Integer.toString(view.point().number()));
    }

    private List<Mark> should(Mended mended, PaperBox cell, double top) {
        List<Mark> out = new ArrayList<>(view.mended(mended, field(cell)));
        out.add(Text.of(cell.left(), top, SectionPair.SHOULD, Looks.STRONG));
        out.addAll(SectionCell.text(TextMetrics.wrap(String.join(" ", mended.what()), BESIDE, Looks.PLAIN), cell.left(), top + Looks.LINE));
        return out;
    }

    /** The view alone, for where head and words are set beside it. */
    SectionPicture picture() {
        PaperBox cell = PaperBox.ofSize(0, 0, Slots.SECTIONS.width(), HEIGHT);
        return new SectionPicture(view.drawn(field(cell)), words(cell));
    }

    /** The same as it should be. */
    SectionPicture picture(Mended mended) {
        PaperBox cell = PaperBox.ofSize(0, 0, Slots.SECTIONS.width(), HEIGHT);
        return new SectionPicture(view.mended(mended, field(cell)), words(cell));
    }
}
