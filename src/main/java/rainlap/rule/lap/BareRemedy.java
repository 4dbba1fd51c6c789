package rainlap.rule.lap;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import rainlap.geom.Box;
import rainlap.measure.LengthText;
import rainlap.rule.Evidence;
import rainlap.rule.MendSizes;
import rainlap.rule.PieceWords;
import rainlap.rule.Place;
import rainlap.stack.Face;

/** How a bare place is covered, as it allows: there is not always a sheet below, beside or above. */
record BareRemedy(Evidence evidence, Box place, BareCover cover) {
    static String of(Evidence e, Box place) {
        return new BareRemedy(e, place, BareCover.of(e, place)).text();
    }

    private String text() {
        boolean below = !cover.foot().isEmpty(), above = !cover.head().isEmpty(), beside = cover.isBesideSomething(true) || cover.isBesideSomething(false);
        if (!below && !above && !beside && turned().isEmpty()) {
            return "Wrap it in courses from the base up: each laps the one below by " + course() + ", sheets of one course lap by " + end() + ".";
        }
        List<String> how = new ArrayList<>();
        if (below) {
            how.add("laps the sheet below by " + course());
        } else if (cover.whole().minY() <= wall().minY()) {
            how.add("runs on past the base");
        }
        how.addAll(besides(below));
        if (cover.whole().minX() <= wall().minX() || cover.whole().maxX() >= wall().maxX()) {
            how.add("runs on past the side of the wall");
        }
        String lay = together() + " that " + PieceWords.list(how.isEmpty() ? List.of("covers it all") : how);
        return lay + (above ? tucked() : ", and carry it on past the upper end of the wall. Tape its edges.");
    }

    /** Places that only tape parts are covered by one sheet. */
    private String together() {
        Box all = cover.whole();
        return cover.parting().isEmpty() ? "Lay membrane over it" : "Take " + PieceWords.list(cover.parting()) + " off there and lay one membrane over all that is bare from "
                + Place.level(all.minY()) + " to " + Place.level(all.maxY());
    }

    private List<String> turned() {
        return Stream.of(cover.left(), cover.right()).flatMap(Optional::stream).map(o -> {
            List<String> tapes = cover.jambTapes(o);
            return "turns " + LengthText.mm(cover.into(o)) + " into " + o.id() + (tapes.isEmpty() ? "" : " beneath " + PieceWords.list(tapes));
        }).toList();
    }

    private List<String> besides(boolean below) {
        boolean left = cover.left().isEmpty() && cover.isBesideSomething(true), right = cover.right().isEmpty() && cover.isBesideSomething(false);
        String laps = (below ? "" : "laps ") + (turned().isEmpty() ? "those beside it" : "the one beside it") + " by " + end();
        return left || right ? Stream.concat(Stream.of(laps), turned().stream()).toList() : turned();
    }

    /** Behind the sheet above; through a slit where that goes on below. A tape that lies there has to come off first, and where there is no sheet behind it, it alone closes the edge. */
    private String tucked() {
        List<String> tapes = cover.tapesAbove(), slit = cover.slit().stream().map(f -> f.piece().id()).distinct().toList();
        String first = tapes.isEmpty() ? "" : " Take off " + PieceWords.list(tapes) + " first and put " + (tapes.size() > 1 ? "new ones" : "a new one") + " over the upper edge.";
        List<Face> sheets = cover.above();
        if (sheets.isEmpty()) {
            return "." + first + " Tape the other edges.";
        }
        String through = slit.isEmpty() ? "behind the sheet above" : "through a slit in " + PieceWords.list(slit);
        return ", with its upper edge tucked in " + through + " by " + course() + "." + first + (tapes.isEmpty() ? " Tape its edges." : " Tape the other edges.");
    }

    private Box wall() {
        return evidence.elevation().outline().box();
    }

    private String course() {
        return LengthText.mm(MendSizes.lap(evidence));
    }

    private String end() {
        return LengthText.mm(MendSizes.side(evidence));
    }
}
