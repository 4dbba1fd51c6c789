package rainlap.water;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import rainlap.geom.Box;
import rainlap.wall.Opening;

/** Which of the wall's cells border on which opening that has a reveal. */
final class Bordering {
    private final OpeningSides heads = new OpeningSides();
    private final OpeningSides sills = new OpeningSides();
    private final OpeningSides left = new OpeningSides();
    private final OpeningSides right = new OpeningSides();

    /**
     * @param beside by the opening's id
     * @param inFront cells that lie in an opening, of what goes on in front of it
     */
    record Cells(Map<String, List<Cell>> beside, List<Cell> inFront) {
        Cells() {
            this(new HashMap<>(), new ArrayList<>());
        }

        void add(Cells more) {
            more.beside.forEach((o, cells) -> beside.computeIfAbsent(o, k -> new ArrayList<>(cells.size())).addAll(cells));
            inFront.addAll(more.inFront);
        }
    }

    Bordering(List<Opening> openings) {
        for (Opening o : openings) {
            Box r = o.rect();
            sills.add(r.minY(), r.minX(), r.maxX(), o);
            heads.add(r.maxY(), r.minX(), r.maxX(), o);
            left.add(r.minX(), r.minY(), r.maxY(), o);
            right.add(r.maxX(), r.minY(), r.maxY(), o);
        }
    }

    /** Of some cells of the wall; asked as soon as they are cut, while they are at hand. */
    Cells among(List<Cell> cells) {
        Cells out = new Cells();
        for (Cell c : cells) {
            if (c.isFramed()) {
                note(c, c.lower.isLevel() ? heads.touching(c.lower.ay(), c.x0, c.x1) : List.of(), out.beside);
                note(c, c.upper.isLevel() ? sills.touching(c.upper.ay(), c.x0, c.x1) : List.of(), out.beside);
                note(c, left.touching(c.x1, c.lower.at(c.x1), c.upper.at(c.x1)), out.beside);
                note(c, right.touching(c.x0, c.lower.at(c.x0), c.upper.at(c.x0)), out.beside);
            } else {
                out.inFront.add(c);
            }
        }
        return out;
    }

    /** A cell at the corner of an opening meets two of its sides. */
    private static void note(Cell c, List<Opening> met, Map<String, List<Cell>> beside) {
        for (Opening o : met) {
            List<Cell> cells = beside.computeIfAbsent(o.id(), k -> new ArrayList<>());
            if (cells.isEmpty() || cells.get(cells.size() - 1) != c) {
                cells.add(c);
            }
        }
    }
}
