package rainlap.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rainlap.check.WeakPoint;
import rainlap.mend.Answer;
import rainlap.mend.Mended;
import rainlap.paper.Disc;
import rainlap.paper.Mark;
import rainlap.paper.PaperBox;
import rainlap.paper.PaperPoint;
import rainlap.paper.Polyline;
import rainlap.rule.Evidence;

/** A weak point's place seen close to, where a cut across it would show nothing of what is wrong. */
interface CloseUp {

    /** The corner of an opening or a view from outside; empty where a cut shows the place. */
    static Optional<CloseUp> of(WeakPoint p, Evidence evidence) {
        return CornerView.corner(p, evidence).<CloseUp>map(c -> new CornerCloseUp(p, evidence, c)).or(() -> FrontView.of(p, evidence));
    }

    WeakPoint point();

    /** The rule's title, and of what. */
    String title();

    /** From where: {@code seen from outside}. */
    String seen();

    /** The number after 1 to. */
    int scale(PaperBox field);

    /** A circle round the place, printed mm on an elevation. */
    Circle circle(View elevation);

    /** Of two that are equal the second would show the same once more. */
    Object shows();

    /** As it should be; empty where the weak point has defences enough. */
    Optional<Answer> answer();

    List<Mark> drawn(PaperBox field);

    List<Mark> mended(Mended mended, PaperBox field);

    /** Where the water gets in, if that is not to be seen here; known once {@link #drawn} has been asked. */
    default Optional<String> elsewhere() {
        return Optional.empty();
    }

    /** A circle on paper. */
    record Circle(PaperPoint middle, double radius) {
        /** Chords of a circle of 12 printed mm lie within 0.02 of it. */
        private static final int CHORDS = 60;

        /** Its line, for what has to keep off it. */
        Polyline line() {
            List<PaperPoint> points = new ArrayList<>(ring().around(CHORDS));
            points.add(points.get(0));
            return new Polyline(points, Looks.CENTRE);
        }

        /** As it is drawn. */
        Disc ring() {
            return Disc.ring(middle, radius, Looks.CENTRE);
        }
    }
}
